/**
 * Where curvature turns so that along the pieces it goes up, down, up, down, each for any number of pieces or none: of all
 * such choices the one that lets the wished-for rises through with the most weight, the sum of wish^2 / length over the pieces
 * whose wish has the allowed sign. Exact, by dynamic programming over the three turns.
 *
 * Gives the number of pieces before each turn. `near`, where given, keeps each turn within `reach` pieces of a former place.
 * A mirrored wish (reversed and negated) gives mirrored turns, ties aside.
 */
export function chooseTurns(
  wish: Float64Array,
  lengths: Float64Array,
  near: readonly number[] | null = null,
  reach = wish.length,
): number[] {
  const count = wish.length
  const best = new Float64Array(4)
  const before = new Float64Array(4)
  const cameFrom = new Int8Array(4 * (count + 1))
  // At i = count nothing is weighed; it lets the last phases be empty.
  for (let i = 0; i <= count; i++) {
    before.set(best)
    for (let phase = 1; phase < 4; phase++) {
      const open = near === null || Math.abs(near[phase - 1]! - i) <= reach
      const stay = i === 0 && phase > 0 ? Number.NEGATIVE_INFINITY : before[phase]!
      const enter = open ? before[phase - 1]! : Number.NEGATIVE_INFINITY
      before[phase] = Math.max(stay, enter)
      cameFrom[4 * i + phase] = enter > stay ? 1 : 0
    }
    const weight = i < count ? (wish[i]! * wish[i]!) / lengths[i]! : 0
    for (let phase = 0; phase < 4; phase++) {
      const through = i < count && (phase % 2 === 0 ? wish[i]! > 0 : wish[i]! < 0)
      best[phase] = before[phase]! + (through ? weight : 0)
    }
  }
  const turns = [0, 0, 0]
  let phase = 3
  for (let i = count; i >= 0; i--) {
    while (phase > 0 && cameFrom[4 * i + phase] === 1) turns[--phase] = i
  }
  return turns
}

/** +1 where curvature may rise, -1 where it may fall, in piece i between those turns. */
export const signBetweenTurns = (turns: readonly number[], i: number): 1 | -1 =>
  turns.filter((turn) => turn <= i).length % 2 === 0 ? 1 : -1

/**
 * Where one more side brace goes, mm round the outside from the tail: half-way along the widest stretch of a half without any, its ends
 * counting as stops. Places in any order; a half of that length.
 */
export function nextBraceMm(placesMm: readonly number[], halfLengthMm: number): number {
  const stops = [0, ...placesMm.toSorted((a, b) => a - b), halfLengthMm]
  let widestMm = 0
  let middleMm = halfLengthMm / 2
  stops.slice(1).forEach((toMm, i) => {
    const fromMm = stops[i]!
    if (toMm - fromMm <= widestMm) return
    widestMm = toMm - fromMm
    middleMm = (fromMm + toMm) / 2
  })
  return middleMm
}

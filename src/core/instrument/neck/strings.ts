import type { SetupPlan, StringsPlan } from '../../neckPlan.ts'
import { crossingMm, type Fretboard } from './fretboard.ts'
import { stringAtFretMm } from './stringHeight.ts'

/** A string in place: across at nut and saddle line (bass negative), and its height over the plane of the frets' crest there. */
export interface StringLine {
  readonly nutAcrossMm: number
  readonly saddleAcrossMm: number
  /** Along x, uncompensated. */
  readonly scaleMm: number
  readonly nutHeightMm: number
  readonly saddleHeightMm: number
  /** Where its nut and its saddle stand, from the tail. */
  readonly nutMm: number
  readonly saddleMm: number
}

/** Middles of strings across, bass negative, and the gap between neighbouring courses, edge to edge. */
export interface Spacing {
  readonly acrossMm: readonly number[]
  readonly gapMm: number
}

/**
 * Strings spread so that the gaps between neighbours are equal, not their middles: thick strings take more room. The outer middles stand the
 * spread apart; strings of one course keep their own gap.
 *
 *   gap = (spread - way from the first middle to the last through strings and pairs) / (courses - 1)
 *
 * Lengths mm. A spread too small for the strings gives a negative gap: a finding is made of it elsewhere. Derived.
 */
export function spaceStrings({ set, pairGapMm }: StringsPlan, spreadMm: number): Spacing {
  if (set.length < 2) return { acrossMm: set.map(() => 0), gapMm: 0 }
  const between = set.slice(1).map((string, i) => ({
    radiiMm: (set[i]!.diameterMm + string.diameterMm) / 2,
    isPair: set[i]!.pairedWithNext,
  }))
  const free = between.filter(({ isPair }) => !isPair).length
  const takenMm = between.reduce((sum, { radiiMm, isPair }) => sum + radiiMm + (isPair ? pairGapMm : 0), 0)
  // One single course: nothing is free, so the pair's own gap gives way to the spread.
  const gapMm = free > 0 ? (spreadMm - takenMm) / free : 0
  const stretch = free > 0 ? 0 : (spreadMm - takenMm) / between.length
  const acrossMm = [-spreadMm / 2]
  for (const { radiiMm, isPair } of between)
    acrossMm.push(acrossMm.at(-1)! + radiiMm + (isPair ? pairGapMm + stretch : gapMm))
  return { acrossMm, gapMm }
}

/** A value given at the outer strings, at a string between them: straight across by its place. */
export const betweenOuter = (bass: number, treble: number, acrossMm: number, spreadMm: number): number =>
  spreadMm > 0 ? bass + (treble - bass) * (acrossMm / spreadMm + 0.5) : (bass + treble) / 2

/**
 * Every string in place. Over the plane of the crest it stands at the nut and at fret 12 as high as asked, less what the board lies lower under it;
 * at the saddle, as far beyond fret 12 as that is from the nut, it stands
 *
 *   a = 2 A - n      A over the plane at fret 12, n at the nut
 *
 * Derived; the compensation's share, a few thousandths of a millimetre, is left out.
 */
export function placeStrings(strings: StringsPlan, setup: SetupPlan, shape: Fretboard): readonly StringLine[] {
  const { nutSpreadMm, saddleSpreadMm } = strings
  const atSaddle = spaceStrings(strings, saddleSpreadMm).acrossMm
  return spaceStrings(strings, nutSpreadMm).acrossMm.map((nutAcrossMm, i) => {
    const saddleAcrossMm = atSaddle[i] ?? 0
    const nutMm = crossingMm(shape.fretLine(0), nutAcrossMm)
    const saddleMm = crossingMm(shape.saddleLine, saddleAcrossMm)
    const plan = { nutAcrossMm, saddleAcrossMm, nutMm, saddleMm, scaleMm: nutMm - saddleMm }
    const twelfthMm = stringAtFretMm(plan, shape, 12)
    const part = plan.scaleMm > 0 ? (nutMm - twelfthMm) / plan.scaleMm : 0.5
    const twelfthAcrossMm = nutAcrossMm + (saddleAcrossMm - nutAcrossMm) * part
    const nutHeightMm =
      betweenOuter(setup.nutBassMm, setup.nutTrebleMm, nutAcrossMm, nutSpreadMm) - shape.dropMm(nutMm, nutAcrossMm)
    const twelfthHeightMm =
      betweenOuter(setup.actionBassMm, setup.actionTrebleMm, nutAcrossMm, nutSpreadMm) -
      shape.dropMm(twelfthMm, twelfthAcrossMm)
    return { ...plan, nutHeightMm, saddleHeightMm: 2 * twelfthHeightMm - nutHeightMm }
  })
}

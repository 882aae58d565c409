import { type Fretboard, toSaddlePart } from './fretboard.ts'
import type { StringLine } from './strings.ts'

/** A string as it lies over the board, seen from above. */
export type StringInPlan = Pick<StringLine, 'nutMm' | 'saddleMm' | 'nutAcrossMm' | 'saddleAcrossMm'>

/** Where a string lies across at a place along the centreline: straight from nut to saddle. */
export function stringAcrossMm({ nutMm, saddleMm, nutAcrossMm, saddleAcrossMm }: StringInPlan, xMm: number): number {
  const runMm = nutMm - saddleMm
  return runMm > 0 ? nutAcrossMm + ((saddleAcrossMm - nutAcrossMm) * (nutMm - xMm)) / runMm : nutAcrossMm
}

/** Where a string crosses the line of a fret, from the tail: two straight lines in plan. */
export function stringAtFretMm(line: StringInPlan, shape: Fretboard, fret: number): number {
  const { xMm, slant } = shape.fretLine(fret)
  const runMm = line.nutMm - line.saddleMm
  const spread = runMm > 0 ? (line.saddleAcrossMm - line.nutAcrossMm) / runMm : 0
  const turn = 1 + slant * spread
  return Math.abs(turn) > 1e-6
    ? (xMm + slant * (line.nutAcrossMm + spread * line.nutMm)) / turn
    : line.saddleMm + (line.nutMm - line.saddleMm) * toSaddlePart(fret)
}

/**
 * A string over the crown of a fret, mm, the neck straight: the string runs straight from nut to saddle; the crown under it lies lower than
 * the crest by the board's radius and, beyond the joint, by the fall-off. Derived.
 */
export function stringOverFretMm(line: StringLine, shape: Fretboard, fret: number): number {
  const xMm = stringAtFretMm(line, shape, fret)
  const part = (line.nutMm - xMm) / Math.max(line.nutMm - line.saddleMm, 1)
  const heightMm = line.nutHeightMm + (line.saddleHeightMm - line.nutHeightMm) * part
  return heightMm + shape.dropMm(xMm, stringAcrossMm(line, xMm)) + shape.fallOffMm(xMm)
}

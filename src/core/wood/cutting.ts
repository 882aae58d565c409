import type { Size } from './part.ts'

/** What is left on a piece when it is sawn out, mm, none under 0. */
export interface CuttingAllowances {
  /** Round a plate, outside its outline. */
  readonly plateMarginMm: number
  /** Over the finished size in all, both ends, edges or faces together. */
  readonly lengthMm: number
  readonly widthMm: number
  readonly thicknessMm: number
  /** What one cut turns to dust. */
  readonly sawKerfMm: number
}

/** Common practice of a small shop that saws on a band saw; no published source. */
export const DEFAULT_CUTTING: CuttingAllowances = {
  plateMarginMm: 6,
  lengthMm: 10,
  widthMm: 3,
  thicknessMm: 1,
  sawKerfMm: 1.2,
}

/** A finished size with the allowances on it; an allowance under 0 counts as none. */
export const withAllowances = (finished: Size, cutting: CuttingAllowances): Size => ({
  lengthMm: finished.lengthMm + Math.max(cutting.lengthMm, 0),
  widthMm: finished.widthMm + Math.max(cutting.widthMm, 0),
  thicknessMm: finished.thicknessMm + Math.max(cutting.thicknessMm, 0),
})

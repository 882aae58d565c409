import type { Figure } from '../figure.ts'
import { curveAt } from '../geometry/curve.ts'
import type { Outline } from './outline.ts'

/** A treble side of its own: a cutaway, or a drawn half that differs. 'none' where there is no such thing. */
export interface CutawayNumbers {
  /** Once round the outer face of the treble side, tail to where its wood ends. */
  readonly trebleLengthMm: Figure
  /** The tip of the horn: from the tail along the centreline, from the centreline, and along the outer face. */
  readonly hornAtMm: Figure
  readonly hornHalfWidthMm: Figure
  readonly hornOnRimMm: Figure
  /** Between the two sides at a pointed horn, in the wood. */
  readonly hornAngleRad: Figure
  /** Between the end of the hollow and the centreline. */
  readonly angleAtNeckRad: Figure
  /** What the bass side runs on over the neck block, past the centreline to the cut. */
  readonly runsOnMm: Figure
}

export function measureCutaway(
  { treble, isMirrored, trebleWoodEndMm, cut }: Outline,
  runsOnMm: number,
): CutawayNumbers {
  const horn = cut === null || cut.hornMm === null ? null : curveAt(treble, cut.hornMm)
  return {
    trebleLengthMm: isMirrored ? 'none' : trebleWoodEndMm,
    hornAtMm: horn?.point.x ?? 'none',
    hornHalfWidthMm: horn?.point.y ?? 'none',
    hornOnRimMm: horn?.sMm ?? 'none',
    hornAngleRad: cut?.hornAngleRad ?? 'none',
    angleAtNeckRad: cut?.angleAtNeckRad ?? 'none',
    runsOnMm: cut === null ? 'none' : runsOnMm,
  }
}

import type { BoardPlan, FretsPlan } from '../../neckPlan.ts'
import { crossingMm, type Fretboard } from './fretboard.ts'
import { stringOverFretMm } from './stringHeight.ts'
import type { StringLine } from './strings.ts'

export interface FretRow {
  readonly number: number
  /** On the centreline. */
  readonly fromNutMm: number
  /** From the fret before, or from the nut. */
  readonly fromLastMm: number
  readonly toSaddleMm: number
  /** Along x at the board's edges, from where the nut's line crosses that edge; the same as on the centreline where frets are square. */
  readonly bassEdgeMm: number
  readonly trebleEdgeMm: number
  /** Against square to the centreline; positive where the treble end stands nearer the nut. */
  readonly slantRad: number
  /** Of the board there, square across. */
  readonly widthMm: number
  /** Of the slot, along it, within the binding; of the wire with its overhang. */
  readonly slotMm: number
  readonly wireMm: number
  readonly radiusMm: number | 'flat'
  /** How far the board's edge lies under its crest, and the frets under their plane. */
  readonly edgeDropMm: number
  readonly fallOffMm: number
  /** Outer strings over this fret's crown, strings at pitch and the neck straight. */
  readonly bassOverMm: number
  readonly trebleOverMm: number
}

/**
 * Every fret from the first to the last; lengths mm. One of slant k is as long as its ends stand apart across the board, times sqrt(1 + k^2).
 * The slot stops the binding's thickness short of either edge, measured along it. Source: equal temperament (ISO 16) for the places, else derived.
 */
export function fretRows(
  board: BoardPlan,
  frets: FretsPlan,
  shape: Fretboard,
  outer: { readonly bass: StringLine; readonly treble: StringLine },
): readonly FretRow[] {
  const nut = shape.fretLine(0)
  const nutEnds = shape.endsOf(nut)
  return Array.from({ length: shape.lastFret }, (_, i): FretRow => {
    const line = shape.fretLine(i + 1)
    const ends = shape.endsOf(line)
    const lengthMm = (ends.bassMm + ends.trebleMm) * Math.hypot(1, line.slant)
    return {
      number: i + 1,
      fromNutMm: nut.xMm - line.xMm,
      fromLastMm: shape.fretLine(i).xMm - line.xMm,
      toSaddleMm: line.xMm - shape.saddleLine.xMm,
      bassEdgeMm: crossingMm(nut, -nutEnds.bassMm) - crossingMm(line, -ends.bassMm),
      trebleEdgeMm: crossingMm(nut, nutEnds.trebleMm) - crossingMm(line, ends.trebleMm),
      slantRad: Math.atan(line.slant),
      widthMm: 2 * shape.halfWidthAtMm(line.xMm),
      slotMm: Math.max(lengthMm - 2 * board.bindingMm, 0),
      wireMm: lengthMm + 2 * frets.overhangMm,
      radiusMm: shape.radiusAtMm(line.xMm),
      edgeDropMm: shape.dropMm(line.xMm, shape.halfWidthAtMm(line.xMm)),
      fallOffMm: shape.fallOffMm(line.xMm),
      bassOverMm: stringOverFretMm(outer.bass, shape, i + 1),
      trebleOverMm: stringOverFretMm(outer.treble, shape, i + 1),
    }
  })
}

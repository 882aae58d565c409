import type { Computed } from '../core/compute.ts'
import type { RimRow } from '../core/instrument/rim.ts'
import type { Drawing } from './drawing.ts'
import { drawn, through } from './line.ts'
import { LEVEL, onSheetMm } from './profile.ts'
import { taperOf } from './taper.ts'

/** How far the mark of a place stands out over both edges, so that it is not taken for one of the side's own lines. */
const BEYOND_MM = 9

/** A side elevation with the place in hand marked across it. */
export function markOnSide(drawing: Drawing, computed: Computed, row: RimRow): Drawing {
  const topY = onSheetMm(LEVEL, drawing.heightsTimes, row.xMm, row.topEdgeMm)
  const backY = onSheetMm(taperOf(computed), drawing.heightsTimes, row.xMm, row.backEdgeMm)
  return marked(drawing, row.xMm, topY, backY)
}

/** A flat blank with the same place marked, from its straight edge to the line to saw. */
export function markOnBlank(drawing: Drawing, { numbers }: Computed, row: RimRow, side: 'treble' | 'bass'): Drawing {
  const { blankLengthMm, flatLengthMm } = numbers.sides
  const fromTailEndMm = (blankLengthMm - flatLengthMm) / 2 + row.alongBlankMm
  return marked(drawing, side === 'treble' ? fromTailEndMm : blankLengthMm - fromTailEndMm, 0, row.cutWidthMm)
}

function marked(drawing: Drawing, x: number, fromY: number, toY: number): Drawing {
  const mark = drawn(
    'edge',
    through([
      { x, y: fromY - BEYOND_MM },
      { x, y: toY + BEYOND_MM },
    ]),
  )
  return { ...drawing, shapes: [...drawing.shapes, mark] }
}

import type { Computed } from '../core/compute.ts'
import type { RimRow } from '../core/instrument/rim.ts'
import type { Drawing } from './drawing.ts'
import { drawn, through } from './line.ts'
import { LEVEL, onSheetMm } from './profile.ts'
import { taperOf } from './taper.ts'

/** How far the mark of a place stands out over both edges, so that it is not taken for one of the side's own lines. */
const BEYOND_MM = 9

/** A side elevation, of either side and for either hand, with the place in hand marked across it. */
export function markOnSide(drawing: Drawing, computed: Computed, row: RimRow): Drawing {
  const topY = onSheetMm(LEVEL, drawing.heightsTimes, row.xMm, row.topEdgeMm)
  const backY = onSheetMm(taperOf(computed), drawing.heightsTimes, row.xMm, row.backEdgeMm)
  return marked(drawing, row.xMm, topY, backY)
}

/** A flat blank that has the place on it, with the same place marked, from its straight edge to the line to saw. */
export function markOnBlank(drawing: Drawing, { numbers }: Computed, row: RimRow): Drawing {
  const { blankLengthMm, flatLengthMm } = numbers.sides
  return marked(drawing, (blankLengthMm - flatLengthMm) / 2 + row.alongBlankMm, 0, row.cutWidthMm)
}

function marked(drawing: Drawing, fromTailMm: number, fromY: number, toY: number): Drawing {
  const { left, right } = drawing.marks
  const isTurned = right === 'tail' || left === 'neck'
  const x = isTurned ? -fromTailMm : fromTailMm
  const mark = drawn(
    'edge',
    through([
      { x, y: fromY - BEYOND_MM },
      { x, y: toY + BEYOND_MM },
    ]),
  )
  return { ...drawing, shapes: [...drawing.shapes, mark] }
}

import type { SawnBoard } from '../../core/wood/boardLayout.ts'
import type { Size } from '../../core/wood/part.ts'
import type { Drawing, Shape } from '../drawing.ts'
import { drawn, rectangle } from '../line.ts'

/**
 * A plank as it is sawn: x along it, y across it, both from the corner everything is measured from, which lies at the upper left.
 * Pieces are numbered from 1 in the order of the layout. It lies as it lies for either hand. Total.
 */
export function plankDrawing({ lengthMm, widthMm, thicknessMm }: Size, sawn: SawnBoard): Drawing {
  // A slab left over a resawn piece lies under the piece, and is no place of its own.
  const isWholeDepth = (offcut: SawnBoard['offcuts'][number]) => offcut.thicknessMm >= thicknessMm - SAME_MM
  const left = sawn.placements.length === 0 ? [] : sawn.offcuts.filter(isWholeDepth)
  return {
    name: 'plank',
    seenFrom: 'face',
    bounds: { minX: 0, minY: 0, maxX: lengthMm, maxY: widthMm },
    heightsTimes: 1,
    marks: {},
    shapes: [
      ...left.map((offcut): Shape => drawn('hidden', outlineOf(offcut))),
      drawn('edge', rectangle(0, 0, lengthMm, widthMm)),
      ...sawn.placements.map((piece): Shape => drawn('edge', outlineOf(piece))),
      ...sawn.placements.map(
        (piece, row): Shape => ({
          kind: 'station',
          list: 'pieces',
          row,
          number: row + 1,
          ticks: [],
          numberAt: { x: piece.xMm + piece.lengthMm / 2, y: piece.yMm + piece.widthMm / 2 },
          away: { x: 0, y: 0 },
          urgency: 0,
        }),
      ),
    ],
  }
}

/** Thicknesses that differ by less are the same. */
const SAME_MM = 1e-6

const outlineOf = ({ xMm, yMm, lengthMm, widthMm }: SawnBoard['placements'][number] | SawnBoard['offcuts'][number]) =>
  rectangle(xMm, yMm, xMm + lengthMm, yMm + widthMm)

import { heightOf, widthOf } from '../drawing/bounds.ts'
import type { Drawing } from '../drawing/drawing.ts'
import { layAtScale, layDrawing } from '../drawing/layDrawing.ts'
import type { Laid, Sheet } from '../drawing/sheet.ts'

/** Scales a drawing may have, largest first, each as mm of the instrument to one of the paper. Source: ISO 5455, from 5 : 1 to 1 : 50. */
export const STANDARD_SCALES = [
  { ratio: '5 : 1', mmPerUnit: 1 / 5 },
  { ratio: '2 : 1', mmPerUnit: 1 / 2 },
  { ratio: '1 : 1', mmPerUnit: 1 },
  { ratio: '1 : 2', mmPerUnit: 2 },
  { ratio: '1 : 5', mmPerUnit: 5 },
  { ratio: '1 : 10', mmPerUnit: 10 },
  { ratio: '1 : 20', mmPerUnit: 20 },
  { ratio: '1 : 50', mmPerUnit: 50 },
] as const

/** A drawing laid at a scale, and how much paper it takes; `ratio` null: at no standard one. */
export interface ScaledDrawing {
  readonly laid: Laid
  readonly ratio: string | null
  readonly mmPerUnit: number
  readonly widthMm: number
  readonly heightMm: number
}

export interface Room {
  readonly widthMm: number
  readonly heightMm: number
}

/** The largest standard scale at which a drawing with its figures fits a room; to fit, where none does: then its room is taken whole. */
export function layAtStandardScale(
  drawing: Drawing,
  lettering: Pick<Sheet, 'figureUnits' | 'formatValue' | 'wordOf'>,
  room: Room,
): ScaledDrawing {
  const sheet: Sheet = { ...lettering, widthUnits: room.widthMm, heightUnits: room.heightMm }
  for (const { ratio, mmPerUnit } of STANDARD_SCALES) {
    // Figures only ever add to a drawing: one that is too large bare need not be laid.
    if (widthOf(drawing.bounds) > room.widthMm * mmPerUnit || heightOf(drawing.bounds) > room.heightMm * mmPerUnit)
      continue
    const laid = layAtScale(drawing, sheet, mmPerUnit)
    const scaled = { laid, ratio, mmPerUnit, ...paperOf(laid) }
    if (scaled.widthMm <= room.widthMm && scaled.heightMm <= room.heightMm) return scaled
  }
  const laid = layDrawing(drawing, sheet)
  return { laid, ratio: null, mmPerUnit: laid.mmPerUnit, ...room }
}

const paperOf = ({ box, mmPerUnit }: Laid): Room => ({
  widthMm: widthOf(box) / mmPerUnit,
  heightMm: heightOf(box) / mmPerUnit,
})

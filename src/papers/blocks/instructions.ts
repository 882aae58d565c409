import type { Bounds, Drawing, DrawingName } from '../../drawing/drawing.ts'
import { isCoarse } from '../../record/patterns/workWithin.ts'
import type { Block, Mark } from '../page.ts'
import { blockOf, type Column, linesHeightMm, linesMarks, rightMm, TYPE } from '../pen.ts'
import { noteLines } from '../../record/stageInHand.ts'
import { buildingOrder, ownOf } from '../stageFigures.ts'
import type { StageOnSheet, StageSheetOrder } from '../stageSheetOrder.ts'
import { wrapText } from '../textWidth.ts'
import { smallDrawing } from './smallDrawing.ts'

const BESIDE_MM = 84
const BESIDE_MOST_MM = 62
const ACROSS_MOST_MM = 70
const PLAN_MOST_MM = 88
const GUTTER_MM = 6
/** Wider than this against its height, a drawing takes the whole column, as do those with figures on all sides. */
const LONG = 2
const FULL: ReadonlySet<DrawingName> = new Set(['plan', 'domes'])
const DASH_MM = 4
const LINE_AIR_MM = 0.9

/** What to do, with a small drawing beside it, two under it side by side, or long ones under it. */
export function layInstructions(
  order: StageSheetOrder,
  drawings: readonly Drawing[],
  stage: StageOnSheet,
  column: Column,
): Block {
  const long = drawings.filter(takesColumn)
  const short = drawings.filter((drawing) => !takesColumn(drawing))
  const besideText = short.length === 1
  const textMm = besideText ? column.widthMm - BESIDE_MM - GUTTER_MM : column.widthMm

  const marks: Mark[] = []
  let bottom = 0
  for (const line of linesOf(order, stage)) {
    const wrapped = wrapText(line, textMm - DASH_MM, TYPE.text)
    marks.push(...linesMarks(['–'], column.leftMm, bottom, { sizePt: TYPE.text }))
    marks.push(...linesMarks(wrapped, column.leftMm + DASH_MM, bottom, { sizePt: TYPE.text }))
    bottom += linesHeightMm(wrapped.length, TYPE.text) + LINE_AIR_MM
  }

  /** Draws at this place and gives where the next thing may begin. */
  const draw = (drawing: Drawing, xMm: number, yMm: number, widthMm: number, mostMm: number): number => {
    const drawn = smallDrawing(order, drawing, { xMm, yMm, widthMm, mostMm })
    marks.push(...drawn.marks)
    return yMm + drawn.heightMm
  }
  if (besideText) {
    for (const drawing of short)
      bottom = Math.max(bottom, draw(drawing, rightMm(column) - BESIDE_MM, 0, BESIDE_MM, BESIDE_MOST_MM))
  } else {
    const halfMm = (column.widthMm - GUTTER_MM) / 2
    for (let i = 0; i < short.length; i += 2) {
      const top = bottom + 1
      const pair = short.slice(i, i + 2)
      const feet = pair.map((drawing, n) =>
        draw(drawing, column.leftMm + n * (halfMm + GUTTER_MM), top, halfMm, BESIDE_MOST_MM),
      )
      bottom = Math.max(...feet)
    }
  }
  for (const drawing of long) {
    const mostMm = drawing.name === 'plan' ? PLAN_MOST_MM : ACROSS_MOST_MM
    bottom = draw(drawing, column.leftMm, bottom + 1, column.widthMm, mostMm)
  }
  return blockOf('instructions', column, bottom, marks, stage)
}

/** What is said of a stage, by its maker or by the house: more in fewer words where the work of finer stages is done with it. */
function linesOf(order: StageSheetOrder, stage: StageOnSheet): readonly string[] {
  const { key } = stage
  const { note } = ownOf(order, stage)
  if (note !== undefined) return noteLines(note)
  const { lines, whole = lines } = order.words.stages[key]
  return isCoarse(key, buildingOrder(order), order.doc.family) ? whole : lines
}

const takesColumn = ({ name, bounds }: Drawing): boolean => FULL.has(name) || aspect(bounds) > LONG
const aspect = ({ minX, minY, maxX, maxY }: Bounds): number => (maxX - minX) / Math.max(maxY - minY, 1)

import { aboutNumber } from '../../core/catalogue.ts'
import type { NumberKey } from '../../core/numbers.ts'
import { getsBox, STAGES } from '../../record/patterns/stages.ts'
import type { Piece } from '../flow.ts'
import { LEAST_BOX, type Mark } from '../page.ts'
import {
  blockOf,
  boxMark,
  capitalMm,
  cellFigureMarks,
  type Column,
  figureMark,
  level,
  LINE,
  rightMm,
  textMark,
  TYPE,
} from '../pen.ts'
import type { StageOnSheet, StageSheetOrder } from '../stageSheetOrder.ts'
import { targetFigure, toleranceFigure, valuesOf } from '../targetCell.ts'

const BOX = { widthMm: 22.4, heightMm: LEAST_BOX.heightMm + 0.2 } as const
const ROW_MM = 10.2
const HEAD_MM = 14
const PLACE_MM = 22
const TIGHT_TARGET_MM = 22
const LOOSE_TARGET_MM = 42

interface Group {
  readonly key: NumberKey
  /** A length round the rim is read on both halves, an angle on one. */
  readonly boxes: 0 | 1 | 2
  readonly leftMm: number
  readonly targetRightMm: number
}

/** The named places of the rim, a row each, with some of their numbers side by side. */
export function placesPiece(
  order: StageSheetOrder,
  keys: readonly NumberKey[],
  stage: StageOnSheet,
  column: Column,
): Piece | null {
  const places = order.computed.numbers.places
  if (places.length === 0) return null
  const { paper, numbers } = order.words
  const groups: Group[] = []
  let left = column.leftMm + PLACE_MM
  for (const key of keys) {
    const isAngle = aboutNumber(key).quantity === 'angle'
    const boxes = !getsBox(STAGES[stage.key], key) ? 0 : isAngle ? 1 : 2
    const targetMm = boxes === 0 ? LOOSE_TARGET_MM : TIGHT_TARGET_MM
    groups.push({ key, boxes, leftMm: left, targetRightMm: left + targetMm - 2 })
    left += targetMm + boxes * (BOX.widthMm + 0.6) + 2
  }
  const right = Math.min(rightMm(column), left - 2)

  const headMarks = (): Mark[] => {
    const style = { sizePt: TYPE.caption }
    const marks: Mark[] = [
      textMark(paper.columns.place, column.leftMm, HEAD_MM - 1.4, style),
      level(column.leftMm, right, HEAD_MM, LINE.narrowMm),
    ]
    groups.forEach(({ key, boxes, leftMm, targetRightMm }, i) => {
      const endMm = groups[i + 1]?.leftMm ?? right
      const within = toleranceFigure(order, key, valuesOf(order, key)[0] ?? 'none')
      marks.push(
        textMark(numbers[key].name, leftMm + 2, 4, { sizePt: TYPE.small, weight: 'strong' }, endMm - leftMm - 3),
        textMark(paper.columns.target, targetRightMm, HEAD_MM - 1.4, { ...style, anchor: 'end' }),
      )
      if (within !== null) marks.push(figureMark(within, leftMm + 2, 8.2, { sizePt: TYPE.small }, endMm - leftMm - 3))
      const captions =
        boxes === 2 ? [paper.columns.bass, paper.columns.treble] : boxes === 1 ? [paper.columns.measured] : []
      captions.forEach((caption, n) =>
        marks.push(textMark(caption, boxLeft(targetRightMm, n), HEAD_MM - 1.4, style, BOX.widthMm)),
      )
    })
    return marks
  }
  const boxLeft = (targetRightMm: number, n: number) => targetRightMm + 2 + n * (BOX.widthMm + 0.6)

  const rowMarks = (row: number, top: number): Mark[] => {
    const middle = top + ROW_MM / 2
    const place = places[row]!
    const marks: Mark[] = [
      textMark(
        paper.places[place.place],
        column.leftMm,
        middle + capitalMm(TYPE.name) / 2,
        { sizePt: TYPE.name, weight: 'strong' },
        PLACE_MM,
      ),
      level(column.leftMm, right, top + ROW_MM, LINE.hairMm),
    ]
    for (const { key, boxes, leftMm, targetRightMm } of groups) {
      marks.push(
        ...cellFigureMarks(
          targetFigure(order, key, valuesOf(order, key)[row] ?? 'none'),
          targetRightMm,
          middle,
          { sizePt: TYPE.cellTarget, weight: 'strong', anchor: 'end' },
          targetRightMm - leftMm,
        ),
      )
      for (let n = 0; n < boxes; n++)
        marks.push(boxMark({ xMm: boxLeft(targetRightMm, n), yMm: middle - BOX.heightMm / 2, ...BOX }, 'measured'))
    }
    return marks
  }

  const heightMm = (from: number, to: number) => HEAD_MM + (to - from) * ROW_MM
  return {
    kind: 'rows',
    count: places.length,
    airMm: 3,
    least: places.length,
    heightMm,
    lay: (from, to) => {
      const marks = headMarks()
      for (let row = from; row < to; row++) marks.push(...rowMarks(row, HEAD_MM + (row - from) * ROW_MM))
      return blockOf('rows', column, heightMm(from, to), marks, stage)
    },
  }
}

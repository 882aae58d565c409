import { cutText } from '../textWidth.ts'
import { type Block, LEAST_BOX, type Mark } from '../page.ts'
import { blockOf, boxMark, capitalMm, type Column, level, LINE, rightMm, textMark, TYPE } from '../pen.ts'
import { stageTitle } from '../stageFigures.ts'
import type { StageOnSheet, StageSheetOrder } from '../stageSheetOrder.ts'

type HeadingOrder = Pick<StageSheetOrder, 'doc' | 'words'>

const HEIGHT_MM = 12
const NUMBER_MM = 14
const BOX = { widthMm: 30, heightMm: LEAST_BOX.heightMm + 0.5 } as const
const AGAIN_MM = 8

/** Number and title of a stage under a wide line, with a box for the day it is done. */
export function layHeading(order: HeadingOrder, stage: StageOnSheet, column: Column): Block {
  const { words } = order
  const title = stageTitle(order, stage)
  const right = rightMm(column)
  const middle = 0.5 + BOX.heightMm / 2 + 0.8
  const box = boxMark({ xMm: right - BOX.widthMm, yMm: middle - BOX.heightMm / 2, ...BOX }, 'done')
  const base = middle + capitalMm(TYPE.stageTitle) / 2
  const doneRight = right - BOX.widthMm - 2
  const marks: Mark[] = [
    level(column.leftMm, right, LINE.wideMm / 2, LINE.wideMm),
    textMark(String(stage.place), column.leftMm, base, { sizePt: TYPE.stageNumber, weight: 'strong' }),
    textMark(
      title,
      column.leftMm + NUMBER_MM,
      base,
      { sizePt: TYPE.stageTitle, weight: 'strong' },
      doneRight - 22 - column.leftMm - NUMBER_MM,
    ),
    textMark(words.paper.done, doneRight, base, { sizePt: TYPE.caption, anchor: 'end' }),
    box,
  ]
  if (stage.done)
    marks.push(
      textMark(
        words.paper.alreadyDone,
        box.xMm + BOX.widthMm / 2,
        middle + capitalMm(TYPE.small) / 2,
        { sizePt: TYPE.small, anchor: 'middle' },
        BOX.widthMm - 2,
      ),
    )
  return blockOf('heading', column, HEIGHT_MM, marks, stage)
}

/** The same again, small, where a stage runs on to a further page. */
export function layHeadingAgain(order: HeadingOrder, stage: StageOnSheet, column: Column): Block {
  const text = `${stageTitle(order, stage)}, ${order.words.paper.continued}`
  const base = 5.2
  return blockOf(
    'heading',
    column,
    AGAIN_MM,
    [
      level(column.leftMm, rightMm(column), LINE.wideMm / 2, LINE.wideMm),
      textMark(String(stage.place), column.leftMm, base, { sizePt: TYPE.text, weight: 'strong' }),
      textMark(cutText(text, column.widthMm - NUMBER_MM, TYPE.text, 'strong'), column.leftMm + NUMBER_MM, base, {
        sizePt: TYPE.text,
        weight: 'strong',
      }),
    ],
    stage,
  )
}

/** The heading over something that is no stage. */
export function layPlainHeading(title: string, column: Column): Block {
  return blockOf('heading', column, 9, [
    level(column.leftMm, rightMm(column), LINE.wideMm / 2, LINE.wideMm),
    textMark(title, column.leftMm, 6.6, { sizePt: TYPE.stageTitle, weight: 'strong' }),
  ])
}

/** The heading over one of many parts of a paper. */
export function layPartHeading(title: string, column: Column): Block {
  return blockOf('heading', column, 6.6, [
    level(column.leftMm, rightMm(column), LINE.wideMm / 2, LINE.wideMm),
    textMark(title, column.leftMm, 5, { sizePt: TYPE.name, weight: 'strong' }, column.widthMm),
  ])
}

import type { CautionWords } from '../../words/cautions.ts'
import type { Block, Mark } from '../page.ts'
import { ascentMm, blockOf, boxMark, type Column, linesHeightMm, linesMarks, textMark, TYPE } from '../pen.ts'
import type { StageOnSheet } from '../stageSheetOrder.ts'
import { wrapText } from '../textWidth.ts'

const PAD_MM = 1.6
const SIGN_MM = 5.6
const GUTTER_MM = 2.5
const FULL_GUTTER_MM = 8
const TEXT_LEFT_MM = PAD_MM + SIGN_MM + 2

/** The cautions of a stage side by side: sign, title and one short rule, each in its frame. */
export function layCautions(
  cautions: readonly Pick<CautionWords, 'title' | 'short'>[],
  stage: StageOnSheet | null,
  column: Column,
): Block {
  const widthMm = (column.widthMm - GUTTER_MM * (cautions.length - 1)) / cautions.length
  const bodies = cautions.map(({ short }) => wrapText(short, widthMm - TEXT_LEFT_MM - PAD_MM, TYPE.caution))
  const most = Math.max(...bodies.map((lines) => lines.length))
  const titleMm = linesHeightMm(1, TYPE.caution)
  const heightMm = Math.max(titleMm + linesHeightMm(most, TYPE.caution), SIGN_MM) + 2 * PAD_MM
  const marks = cautions.flatMap((caution, i): Mark[] => {
    const x = column.leftMm + i * (widthMm + GUTTER_MM)
    return [
      boxMark({ xMm: x, yMm: 0, widthMm, heightMm }, 'frame'),
      { kind: 'sign', xMm: x + PAD_MM, yMm: PAD_MM, sizeMm: SIGN_MM },
      textMark(caution.title, x + TEXT_LEFT_MM, PAD_MM + ascentMm(TYPE.caution), {
        sizePt: TYPE.caution,
        weight: 'strong',
      }),
      ...linesMarks(bodies[i] ?? [], x + TEXT_LEFT_MM, PAD_MM + titleMm, { sizePt: TYPE.caution }),
    ]
  })
  return blockOf('caution', column, heightMm, marks, stage)
}

/** Cautions in full, two side by side, as they are read before the work begins. */
export function layCautionsInFull(cautions: readonly CautionWords[], column: Column): Block {
  const widthMm = (column.widthMm - FULL_GUTTER_MM) / 2
  const marks: Mark[] = []
  let deepest = 0
  cautions.forEach((caution, i) => {
    const x = column.leftMm + i * (widthMm + FULL_GUTTER_MM)
    const left = x + SIGN_MM + 2
    marks.push({ kind: 'sign', xMm: x, yMm: 0, sizeMm: SIGN_MM })
    marks.push(textMark(caution.title, left, ascentMm(TYPE.name) + 0.4, { sizePt: TYPE.name, weight: 'strong' }))
    let bottom = linesHeightMm(1, TYPE.name) + 1
    for (const line of caution.full) {
      const lines = wrapText(line, widthMm - SIGN_MM - 2, TYPE.small)
      marks.push(...linesMarks(lines, left, bottom, { sizePt: TYPE.small }))
      bottom += linesHeightMm(lines.length, TYPE.small) + 0.6
    }
    deepest = Math.max(deepest, bottom)
  })
  return blockOf('cautionInFull', column, deepest, marks)
}

/** A few lines of small text across the column. */
export function layNote(text: string, column: Column): Block {
  const lines = wrapText(text, column.widthMm, TYPE.small)
  return blockOf(
    'note',
    column,
    linesHeightMm(lines.length, TYPE.small) + 0.5,
    linesMarks(lines, column.leftMm, 0, { sizePt: TYPE.small }),
  )
}

import type { Block, Mark } from '../page.ts'
import { blockOf, type Column, level, LINE, linesHeightMm, linesMarks, textMark, TYPE } from '../pen.ts'
import { wrapText } from '../textWidth.ts'

const GUTTER_MM = 8
const LINE_MM = 15
const SHARES = { sign: 0.6, date: 0.36 } as const

/** One who signs: in what part, and the name under the line where it is known. */
export interface Signer {
  readonly part: string
  readonly name: string
}

/** What is signed, and for each who signs it a line for the name and one for the day: long enough to be written on with a pen. */
export function laySignatures(statement: string, signers: readonly Signer[], dateWord: string, column: Column): Block {
  const lines = wrapText(statement, column.widthMm, TYPE.text)
  const textMm = linesHeightMm(lines.length, TYPE.text)
  const widthMm = (column.widthMm - GUTTER_MM * (signers.length - 1)) / signers.length
  const lineY = textMm + LINE_MM
  const small = { sizePt: TYPE.caption }
  const marks = signers.flatMap(({ part, name }, i): Mark[] => {
    const x = column.leftMm + i * (widthMm + GUTTER_MM)
    const signMm = widthMm * SHARES.sign
    const dateX = x + widthMm * (1 - SHARES.date)
    const under = name.trim() === '' ? part : `${part}: ${name}`
    return [
      level(x, x + signMm, lineY, LINE.narrowMm),
      textMark(under, x, lineY + 3.6, small, signMm),
      level(dateX, x + widthMm, lineY, LINE.narrowMm),
      textMark(dateWord, dateX, lineY + 3.6, small, widthMm * SHARES.date),
    ]
  })
  return blockOf('signatures', column, lineY + 5.2, [
    ...linesMarks(lines, column.leftMm, 0, { sizePt: TYPE.text }),
    ...marks,
  ])
}

import type { Piece } from '../flow.ts'
import type { Mark } from '../page.ts'
import {
  ascentMm,
  blockOf,
  type Column,
  figureMark,
  leadingMm,
  level,
  LINE,
  linesHeightMm,
  linesMarks,
  rightMm,
  textMark,
  TYPE,
} from '../pen.ts'
import type { SetFigure } from '../targetCell.ts'
import { wrapText } from '../textWidth.ts'

/** One thing agreed: what it is, and its figure or its words. */
export interface Fact {
  readonly name: string
  readonly value: SetFigure | string
}

const GUTTER_MM = 8
const NAME_SHARE = 0.56
const BETWEEN_MM = 2
const PAD_MM = 0.9

interface SetFact {
  readonly name: readonly string[]
  readonly lines: readonly string[]
  readonly figure: SetFigure | null
  readonly heightMm: number
}

/** Facts in two columns, read across, a pair to a row. */
export function factsPiece(facts: readonly Fact[], column: Column): Piece {
  const widthMm = (column.widthMm - GUTTER_MM) / 2
  const nameMm = widthMm * NAME_SHARE
  const valueMm = widthMm - nameMm - BETWEEN_MM
  const set = facts.map(({ name, value }): SetFact => {
    const names = wrapText(name, nameMm, TYPE.small)
    const lines = typeof value === 'string' ? wrapText(value, valueMm, TYPE.small, 'strong') : []
    return {
      name: names,
      lines,
      figure: typeof value === 'string' ? null : value,
      heightMm: linesHeightMm(Math.max(names.length, lines.length, 1), TYPE.small) + 2 * PAD_MM,
    }
  })
  const rows = set.flatMap((_, i) => (i % 2 === 0 ? [set.slice(i, i + 2)] : []))
  const rowMm = (row: readonly SetFact[]) => Math.max(...row.map((fact) => fact.heightMm))
  const heightMm = (from: number, to: number) => rows.slice(from, to).reduce((sum, row) => sum + rowMm(row), 0)

  const factMarks = (fact: SetFact, leftMm: number, topMm: number): Mark[] => {
    const right = leftMm + widthMm
    const base = topMm + PAD_MM + ascentMm(TYPE.small)
    const style = { sizePt: TYPE.small, weight: 'strong', anchor: 'end' } as const
    return [
      ...linesMarks(fact.name, leftMm, topMm + PAD_MM, { sizePt: TYPE.small }),
      ...(fact.figure === null
        ? fact.lines.map((line, i) => textMark(line, right, base + i * leadingMm(TYPE.small), style))
        : [figureMark(fact.figure, right, base, style, valueMm)]),
    ]
  }
  return {
    kind: 'rows',
    count: rows.length,
    airMm: 1,
    least: Math.min(rows.length, 2),
    heightMm,
    lay: (from, to) => {
      const marks: Mark[] = []
      let top = 0
      for (const row of rows.slice(from, to)) {
        row.forEach((fact, i) => {
          const left = column.leftMm + i * (widthMm + GUTTER_MM)
          marks.push(
            ...factMarks(fact, left, top),
            level(left, i === 0 ? left + widthMm : rightMm(column), top + rowMm(row), LINE.hairMm),
          )
        })
        top += rowMm(row)
      }
      return blockOf('facts', column, heightMm(from, to), marks)
    },
  }
}

/** Running text, split between its lines. */
export function textPiece(text: string, column: Column, airMm = 1): Piece {
  const lines = text
    .split('\n')
    .flatMap((line) => (line.trim() === '' ? [''] : wrapText(line, column.widthMm, TYPE.text)))
  const heightMm = (from: number, to: number) => linesHeightMm(to - from, TYPE.text) + 0.5
  return {
    kind: 'rows',
    count: lines.length,
    airMm,
    least: Math.min(lines.length, 2),
    heightMm,
    lay: (from, to) =>
      blockOf(
        'facts',
        column,
        heightMm(from, to),
        linesMarks(lines.slice(from, to), column.leftMm, 0, { sizePt: TYPE.text }),
      ),
  }
}

import type { NumberKey } from '../../core/numbers.ts'
import type { Piece } from '../flow.ts'
import type { Mark } from '../page.ts'
import { blockOf, type Column, figureMark, level, LINE, rightMm, textMark, TYPE } from '../pen.ts'
import type { StageOnSheet, StageSheetOrder } from '../stageSheetOrder.ts'
import { targetFigure, valuesOf } from '../targetCell.ts'

const NAME_MM = 34
const LEAST_CELL_MM = 15
const LINE_MM = 5.4

/** The true face of a block to look up: a line of places going outward, and under it how far the face falls back there. */
export function contourPiece(
  order: StageSheetOrder,
  keys: readonly NumberKey[],
  stage: StageOnSheet,
  column: Column,
): Piece | null {
  const lines = keys.map((key) => ({ key, values: valuesOf(order, key) }))
  const count = lines[0]?.values.length ?? 0
  if (count === 0) return null
  const perLine = Math.floor((column.widthMm - NAME_MM) / LEAST_CELL_MM)
  const cellMm = (column.widthMm - NAME_MM) / perLine
  const bands = Math.ceil(count / perLine)
  const bandMm = lines.length * LINE_MM + 1.2
  const marks: Mark[] = [level(column.leftMm, rightMm(column), 0.2, LINE.narrowMm)]
  for (let band = 0; band < bands; band++) {
    lines.forEach(({ key, values }, n) => {
      const base = band * bandMm + (n + 1) * LINE_MM - 1.2
      marks.push(
        textMark(shortName(order.words.numbers[key].name), column.leftMm, base, { sizePt: TYPE.small }, NAME_MM - 1),
      )
      values.slice(band * perLine, (band + 1) * perLine).forEach((value, i) => {
        const right = column.leftMm + NAME_MM + (i + 1) * cellMm
        const weight = n === 0 ? 'plain' : 'strong'
        const figure = targetFigure(order, key, value)
        marks.push(figureMark(figure, right, base, { sizePt: TYPE.text, weight, anchor: 'end' }, cellMm - 1))
      })
    })
    marks.push(level(column.leftMm, rightMm(column), (band + 1) * bandMm, LINE.hairMm))
  }
  const block = blockOf('contour', column, bands * bandMm + 0.3, marks, stage)
  return { kind: 'whole', block, airMm: 2.5, keepsWithNext: false }
}

/** 'Tail block, across the face' stands under a heading that names the block already. */
const shortName = (name: string): string => {
  const own = name.slice(name.indexOf(', ') + 1).trim()
  return own.charAt(0).toUpperCase() + own.slice(1)
}

import { aboutNumber } from '../core/catalogue.ts'
import type { Figure as Value } from '../core/figure.ts'
import { type NumberKey, readNumbers } from '../core/numbers.ts'
import { type Figure, figureText } from '../format/figure.ts'
import { formatQuantity } from '../format/formatQuantity.ts'
import { formatTolerance } from '../format/formatTolerance.ts'
import { followsReading } from '../record/bench/follows.ts'
import { effectiveTolerance } from './effectiveTolerance.ts'
import type { StageSheetOrder } from './stageSheetOrder.ts'

/** A value ready to be set: the figure, and the word that stands where there is no number. */
export interface SetFigure {
  readonly figure: Figure
  readonly word: string
}

type Ask = Pick<StageSheetOrder, 'doc' | 'shop' | 'computed' | 'planned' | 'words'>

/** The values under a key, row by row. */
export const valuesOf = (order: Pick<StageSheetOrder, 'computed'>, key: NumberKey): readonly Value[] =>
  readNumbers(order.computed.numbers, key)

/** A target in the shop's unit, with a sign where it came out otherwise than planned because something was measured. */
export function targetFigure(order: Ask, key: NumberKey, value: Value): SetFigure {
  const plain = formatQuantity(value, aboutNumber(key).quantity, order.shop.units)
  const figure = isFromReading(order, key, value) ? { ...plain, noted: order.words.paper.readingSign } : plain
  const { flat, none } = order.words.paper
  return { figure, word: figure.word === null ? '' : { flat, none }[figure.word] }
}

/** Whether a value under a key follows a reading, and reads otherwise than planned. Rows of one list with one value are one to the eye. */
export function isFromReading(
  { computed, planned, shop }: Pick<Ask, 'computed' | 'planned' | 'shop'>,
  key: NumberKey,
  value: Value,
): boolean {
  if (planned === undefined || !followsReading(key, planned.taken)) return false
  const row = valuesOf({ computed }, key).indexOf(value)
  const before = readNumbers(planned.numbers, key)[row] ?? 'none'
  if (row < 0 || before === value) return false
  const text = (one: Value) => figureText(formatQuantity(one, aboutNumber(key).quantity, shop.units))
  return text(before) !== text(value)
}

/** The tolerance as it is printed; null where the number has none, or where there is no number to allow anything on. */
export function toleranceFigure(order: Ask, key: NumberKey, value: Value): SetFigure | null {
  if (typeof value !== 'number') return null
  const tolerance = effectiveTolerance(key, order.doc.tolerances, order.shop.tolerances)
  if (tolerance === null) return null
  return { figure: plusMinus(formatTolerance(tolerance, aboutNumber(key).quantity, order.shop.units)), word: '' }
}

const plusMinus = (figure: Figure): Figure => ({ ...figure, whole: `± ${figure.whole}` })

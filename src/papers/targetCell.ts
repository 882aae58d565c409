import { aboutNumber } from '../core/catalogue.ts'
import type { Figure as Value } from '../core/figure.ts'
import { type NumberKey, readNumbers } from '../core/numbers.ts'
import type { Figure } from '../format/figure.ts'
import { formatQuantity } from '../format/formatQuantity.ts'
import { formatTolerance } from '../format/formatTolerance.ts'
import { effectiveTolerance } from './effectiveTolerance.ts'
import type { StageSheetOrder } from './stageSheetOrder.ts'

/** A value ready to be set: the figure, and the word that stands where there is no number. */
export interface SetFigure {
  readonly figure: Figure
  readonly word: string
}

type Ask = Pick<StageSheetOrder, 'doc' | 'shop' | 'computed' | 'words'>

/** The values under a key, row by row. */
export const valuesOf = (order: Pick<StageSheetOrder, 'computed'>, key: NumberKey): readonly Value[] =>
  readNumbers(order.computed.numbers, key)

/** A target in the shop's unit. */
export function targetFigure(order: Ask, key: NumberKey, value: Value): SetFigure {
  const figure = formatQuantity(value, aboutNumber(key).quantity, order.shop.units)
  const { flat, none } = order.words.paper
  return { figure, word: figure.word === null ? '' : { flat, none }[figure.word] }
}

/** The tolerance as it is printed; null where the number has none, or where there is no number to allow anything on. */
export function toleranceFigure(order: Ask, key: NumberKey, value: Value): SetFigure | null {
  if (typeof value !== 'number') return null
  const tolerance = effectiveTolerance(key, order.doc.tolerances, order.shop.tolerances)
  if (tolerance === null) return null
  return { figure: plusMinus(formatTolerance(tolerance, aboutNumber(key).quantity, order.shop.units)), word: '' }
}

const plusMinus = (figure: Figure): Figure => ({ ...figure, whole: `± ${figure.whole}` })

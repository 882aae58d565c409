import type { Figure } from '../../core/figure.ts'
import type { Quantity, ShopUnits } from '../../core/quantity.ts'
import type { Figure as WrittenFigure } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { FigureText } from '../../ui/FigureText.tsx'
import { FIGURE_WORDS } from '../../words/sheets.ts'
import { columnUnit } from './columnUnit.ts'

interface Column {
  readonly quantity: Quantity
  readonly units: ShopUnits
}

/** A figure in a column whose head states the unit. */
export function CellFigure({ value, quantity, units }: Column & { readonly value: Figure }) {
  const figure = formatQuantity(value, quantity, units)
  return <FigureText figure={inColumn(figure, quantity, units)} words={FIGURE_WORDS} />
}

/** The same, written already. */
export function WrittenCell({ figure, quantity, units }: Column & { readonly figure: WrittenFigure }) {
  return <FigureText figure={inColumn(figure, quantity, units)} words={FIGURE_WORDS} />
}

/** Without the unit that the head states. */
const inColumn = (figure: WrittenFigure, quantity: Quantity, units: ShopUnits): WrittenFigure =>
  figure.unit === columnUnit(quantity, units) ? { ...figure, unit: '' } : figure

import type { Figure } from '../../core/figure.ts'
import type { Quantity, ShopUnits } from '../../core/quantity.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { FigureText } from '../../ui/FigureText.tsx'
import { FIGURE_WORDS } from '../../words/sheets.ts'
import { columnUnit } from './columnUnit.ts'

/** A figure in a column whose head states the unit. */
export function CellFigure({ value, quantity, units }: { value: Figure; quantity: Quantity; units: ShopUnits }) {
  const figure = formatQuantity(value, quantity, units)
  return (
    <FigureText
      figure={figure.unit === columnUnit(quantity, units) ? { ...figure, unit: '' } : figure}
      words={FIGURE_WORDS}
    />
  )
}

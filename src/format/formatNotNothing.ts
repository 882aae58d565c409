import type { Quantity, ShopUnits } from '../core/quantity.ts'
import type { Figure } from './figure.ts'
import { formatQuantity } from './formatQuantity.ts'

/** A figure as `formatQuantity` gives it; what is more than nothing and would be written as nothing reads as under the least that is shown: <0.01. */
export function formatNotNothing(value: number, quantity: Quantity, units: ShopUnits): Figure {
  const figure = formatQuantity(value, quantity, units)
  return value > 0 && isNothing(figure) ? { ...figure, whole: `<${figure.whole.replace(/0$/u, '1')}` } : figure
}

const isNothing = ({ whole, fraction, remainder }: Figure): boolean =>
  /^0(?:\.0+)?$/u.test(whole) && fraction === null && remainder === null

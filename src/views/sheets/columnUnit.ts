import type { Quantity, ShopUnits } from '../../core/quantity.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'

/**
 * The unit that all figures of one kind are in, said once in the head of a column: '' where each figure carries its own, as fractions
 * of an inch and feet do, or where there is none.
 */
export function columnUnit(quantity: Quantity | null, units: ShopUnits): string {
  if (quantity === null) return ''
  const { unit } = formatQuantity(0, quantity, units)
  return unit === '"' || unit === 'ft' ? '' : unit
}

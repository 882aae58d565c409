import type { Quantity, ShopUnits } from '../core/quantity.ts'
import type { Figure } from './figure.ts'
import { formatLength } from './formatLength.ts'
import { formatQuantity } from './formatQuantity.ts'

/**
 * How far a number may be off, as a figure: mm, radians, pieces, N or MPa inside. A tolerance is finer than what it is allowed on: hundredths of
 * a millimetre where the shop reads that kind of length in mm or metres, else thousandths of an inch.
 */
export function formatTolerance(tolerance: number, quantity: Quantity, units: ShopUnits): Figure {
  if (quantity === 'fineLength' || quantity === 'across') return formatTolerance(tolerance, 'bodyLength', units)
  if (quantity !== 'bodyLength' && quantity !== 'domeRadius' && quantity !== 'thickness') {
    return formatQuantity(tolerance, quantity, units)
  }
  const isMetric = units[quantity] === 'mm' || units[quantity] === 'metres'
  return formatLength(tolerance, 'thickness', { ...units, thickness: isMetric ? 'mm' : 'thousandths' })
}

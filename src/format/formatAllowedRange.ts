import type { Quantity, ShopUnits } from '../core/quantity.ts'
import { RAD_PER_DEG } from '../core/units/angle.ts'
import { MM_PER_INCH, MM_PER_METRE } from '../core/units/length.ts'
import { type Figure, figureText } from './figure.ts'
import { FEW_MM3, formatQuantity } from './formatQuantity.ts'
import { stepsInward } from './rounding.ts'

export type AllowedRange = { readonly least: Figure; readonly most: Figure; readonly text: string }

/**
 * The range a field allows, for its hint: both ends in the shop's unit and, with an en dash between, as one text. Ends are rounded
 * INWARD to the unit's step, so that either end, typed as it is shown, is taken; only a range narrower than one step is rounded to
 * the nearest. Units as in formatQuantity: mm, radians, mm², mm³, pieces, N, MPa.
 */
export function formatAllowedRange(min: number, max: number, quantity: Quantity, units: ShopUnits): AllowedRange {
  const leastInside = inward(min, 'up', quantity, units)
  const mostInside = inward(max, 'down', quantity, units)
  const holds = leastInside <= mostInside
  const least = formatQuantity(holds ? leastInside : min, quantity, units)
  const most = formatQuantity(holds ? mostInside : max, quantity, units)
  return { least, most, text: `${figureText(least)} – ${figureText(most)}` }
}

function inward(value: number, direction: 'up' | 'down', quantity: Quantity, units: ShopUnits): number {
  if (!Number.isFinite(value)) return value
  const step = stepOf(value, quantity, units)
  return stepsInward(value, step, direction) * step
}

/** The step a figure of this kind is shown in near `value`, in the quantity's own core unit. */
function stepOf(value: number, quantity: Quantity, units: ShopUnits): number {
  if (quantity === 'angle') return RAD_PER_DEG / 100
  if (quantity === 'count' || quantity === 'force') return 1
  if (quantity === 'stress') return 0.1
  if (quantity === 'across') return stepOf(value, 'bodyLength', units)
  if (quantity === 'fineLength') return units.bodyLength === 'mm' ? 0.01 : MM_PER_INCH / 1000
  if (quantity === 'torque' || quantity === 'frequency') return 0.01
  if (quantity === 'linearMass' || quantity === 'ratio') return 0.001
  if (quantity === 'interval' || quantity === 'resonance') return 1
  if (quantity === 'volume') return volumeStepMm3(value, units)
  if (quantity === 'area') return units.bodyLength === 'mm' ? 10 : MM_PER_INCH ** 2 / 10
  switch (units[quantity]) {
    case 'mm':
      return { bodyLength: 0.1, domeRadius: 1, thickness: 0.01 }[quantity]
    case 'metres':
      return MM_PER_METRE / 1000
    case 'decimalInch':
      return MM_PER_INCH / 1000
    case 'fractionalInch':
      return MM_PER_INCH / 64
    case 'feetInches':
      return MM_PER_INCH / 16
    case 'thousandths':
      return (Math.abs(value) < MM_PER_INCH / 100 ? MM_PER_INCH / 10 : MM_PER_INCH) / 1000
  }
}

const volumeStepMm3 = (value: number, units: ShopUnits): number =>
  units.bodyLength !== 'mm' ? MM_PER_INCH ** 3 / 10 : Math.abs(value) < FEW_MM3 ? 1e4 : 1e5

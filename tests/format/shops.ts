import { type LengthQuantity, type ShopUnits, UNIT_CHOICES } from '../../src/core/quantity.ts'

/** Shops as they are found: all metric, all inch with fractions, and inch with decimals. */
export const METRIC: ShopUnits = { bodyLength: 'mm', domeRadius: 'metres', thickness: 'mm' }
export const FRACTIONAL: ShopUnits = {
  bodyLength: 'fractionalInch',
  domeRadius: 'feetInches',
  thickness: 'thousandths',
}
export const DECIMAL: ShopUnits = { bodyLength: 'decimalInch', domeRadius: 'mm', thickness: 'thousandths' }

/** Every unit a shop may choose, each with the kind of length it is chosen for. */
export const EVERY_CHOICE: readonly { readonly quantity: LengthQuantity; readonly units: ShopUnits }[] = [
  ...UNIT_CHOICES.bodyLength.map((unit) => ({
    quantity: 'bodyLength' as const,
    units: { ...METRIC, bodyLength: unit },
  })),
  ...UNIT_CHOICES.domeRadius.map((unit) => ({
    quantity: 'domeRadius' as const,
    units: { ...METRIC, domeRadius: unit },
  })),
  ...UNIT_CHOICES.thickness.map((unit) => ({ quantity: 'thickness' as const, units: { ...METRIC, thickness: unit } })),
]

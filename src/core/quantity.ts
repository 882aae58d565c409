/**
 * What kind of quantity a number is. The kind picks the unit and the rounding a shop reads it in:
 *   bodyLength   lengths, widths, places and depths on the body, radii of the outline and of contours
 *   fineLength   places that are cut or filed to a hair: frets, slots, strings, saddle, rings of the rosette; in the unit of bodyLength, finer
 *   across       a place square to the centreline, the bass side negative: told by its side; in the unit of bodyLength
 *   domeRadius   radii of dishes and domes
 *   thickness    thicknesses, allowances, rises, gaps
 *   angle        radians inside, degrees at the edge
 *   area, volume, count; force in newtons, stress in megapascals, torque in newton metres, frequency in hertz, linear mass in grams a metre
 *   resonance    what a box is estimated to sound: hertz, coarser than a frequency; interval: between two pitches, in cents
 *   ratio        of two alike
 */
export type Quantity =
  | LengthQuantity
  | 'fineLength'
  | 'across'
  | 'angle'
  | 'area'
  | 'volume'
  | 'ratio'
  | 'interval'
  | 'resonance'
  | 'count'
  | 'force'
  | 'stress'
  | 'torque'
  | 'frequency'
  | 'linearMass'
export type LengthQuantity = 'bodyLength' | 'domeRadius' | 'thickness'

/** The units a shop may choose for each kind of length. */
export const UNIT_CHOICES = {
  bodyLength: ['mm', 'decimalInch', 'fractionalInch'],
  domeRadius: ['feetInches', 'metres', 'mm'],
  thickness: ['mm', 'thousandths'],
} as const

export type ShopUnits = { readonly [Q in LengthQuantity]: (typeof UNIT_CHOICES)[Q][number] }

export const STARTING_UNITS: ShopUnits = { bodyLength: 'mm', domeRadius: 'metres', thickness: 'mm' }

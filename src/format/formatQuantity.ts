import type { Quantity, ShopUnits } from '../core/quantity.ts'
import { degFromRad } from '../core/units/angle.ts'
import { MM_PER_INCH } from '../core/units/length.ts'
import { type Figure, plainFigure, wordFigure } from './figure.ts'
import { formatLength } from './formatLength.ts'
import { canBeShown, decimalText } from './rounding.ts'

/** Below ten litres a tenth of one is too coarse; what rounds to ten is written 10.0. */
export const FEW_MM3 = 9.995e6

/**
 * Any of the core's numbers as a figure: lengths in mm, angles in radians (shown in degrees to 0.01), fine lengths to 0.01 mm or 0.001 in, places across as body lengths with their side, areas in mm² (shown in cm², or
 * in square inches where body lengths are in inches, to 0.1), volumes in mm³ (shown in litres to 0.1, below ten to 0.01, or in cubic inches to 0.1), ratios to 0.001, intervals to 1 cent, counts as whole numbers, forces to 1 N, stresses to 0.1 MPa, torques to 0.01 N m, frequencies to 0.01 Hz, resonances to 1 Hz, linear masses to 0.001 g/m. Flat and
 * none come back as word codes, and so does, as none, whatever is not finite.
 */
export function formatQuantity(value: number | 'flat' | 'none', quantity: Quantity, units: ShopUnits): Figure {
  if (typeof value !== 'number') return wordFigure(value)
  if (!canBeShown(value)) return wordFigure('none')
  switch (quantity) {
    case 'angle':
      return formatAngle(degFromRad(value))
    case 'area':
      return formatArea(value, units)
    case 'volume':
      return formatVolume(value, units)
    case 'ratio':
      return plainFigure(value, decimalText(Math.abs(value), 3), '')
    case 'resonance':
      return plainFigure(value, decimalText(Math.abs(value), 0), 'Hz')
    case 'interval':
      return plainFigure(value, decimalText(Math.abs(value), 0), 'cents')
    case 'count':
      return plainFigure(value, decimalText(Math.abs(value), 0), '')
    case 'force':
      return plainFigure(value, decimalText(Math.abs(value), 0), 'N')
    case 'stress':
      return plainFigure(value, decimalText(Math.abs(value), 1), 'MPa')
    case 'fineLength':
      return formatLength(value, 'bodyLength', fineUnits(units), 2)
    case 'across':
      return sided(formatLength(value, 'bodyLength', units))
    case 'torque':
      return plainFigure(value, decimalText(Math.abs(value), 2), 'N m')
    case 'frequency':
      return plainFigure(value, decimalText(Math.abs(value), 2), 'Hz')
    case 'linearMass':
      return plainFigure(value, decimalText(Math.abs(value), 3), 'g/m')
    default:
      return formatLength(value, quantity, units)
  }
}

/** A place off the centreline with its side; one that rounds to nothing lies on it. */
const sided = (figure: Figure): Figure =>
  figure.fraction === null && figure.remainder === null && !/[1-9]/u.test(figure.whole)
    ? figure
    : { ...figure, side: figure.sign === '-' ? 'bass' : 'treble' }

/** Nobody saws a slot by 64ths: a shop that reads its lengths so gets decimals of an inch. */
const fineUnits = (units: ShopUnits): ShopUnits =>
  units.bodyLength === 'fractionalInch' ? { ...units, bodyLength: 'decimalInch' } : units

/** An angle in degrees as a figure, to 0.01 degree unless told otherwise. */
export function formatAngle(deg: number, places: 1 | 2 | 3 = 2): Figure {
  return canBeShown(deg) ? plainFigure(deg, decimalText(Math.abs(deg), places), '°') : wordFigure('none')
}

function formatArea(areaMm2: number, units: ShopUnits): Figure {
  const size = Math.abs(areaMm2)
  return units.bodyLength === 'mm'
    ? plainFigure(areaMm2, decimalText(size / 100, 1), 'cm²')
    : plainFigure(areaMm2, decimalText(size / MM_PER_INCH ** 2, 1), 'sq in')
}

function formatVolume(volumeMm3: number, units: ShopUnits): Figure {
  const size = Math.abs(volumeMm3)
  if (units.bodyLength !== 'mm') return plainFigure(volumeMm3, decimalText(size / MM_PER_INCH ** 3, 1), 'cu in')
  return plainFigure(volumeMm3, decimalText(size / 1e6, size < FEW_MM3 ? 2 : 1), 'l')
}

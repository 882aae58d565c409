import type { LengthQuantity, ShopUnits } from '../core/quantity.ts'
import { MM_PER_INCH, MM_PER_METRE } from '../core/units/length.ts'
import { type Figure, plainFigure, wordFigure } from './figure.ts'
import { canBeShown, decimalText, stepsNearest, trimZeros } from './rounding.ts'

const MM_PER_THOU = MM_PER_INCH / 1000
const SIXTEENTHS_PER_FOOT = 16 * 12

/**
 * A length in mm as a figure in the shop's unit for its kind. What cannot be shown (not finite) becomes the word code none.
 *
 * Rounded, halves away from zero, to: body lengths 0.1 mm (`placesMm` 2 for 0.01), 0.001 in, or 1/64 in with the rest in
 * thousandths; dome radii 1/16 in, 0.001 m, 1 mm; thicknesses 0.01 mm, 1 thou (0.1 thou below ten).
 */
export function formatLength(mm: number, quantity: LengthQuantity, units: ShopUnits, placesMm: 1 | 2 = 1): Figure {
  if (!canBeShown(mm)) return wordFigure('none')
  const size = Math.abs(mm)
  switch (units[quantity]) {
    case 'mm':
      return plainFigure(mm, digitsMm(size, quantity, placesMm), 'mm')
    case 'metres':
      return plainFigure(mm, trimZeros(decimalText(size / MM_PER_METRE, 3), 1), 'm')
    case 'decimalInch':
      return plainFigure(mm, decimalText(size / MM_PER_INCH, 3), 'in')
    case 'thousandths':
      return plainFigure(mm, digitsThou(size), 'thou')
    case 'fractionalInch':
      return fractionalInches(mm)
    case 'feetInches':
      return feetAndInches(mm)
  }
}

function digitsMm(sizeMm: number, quantity: LengthQuantity, placesMm: 1 | 2): string {
  if (quantity === 'domeRadius') return decimalText(sizeMm, 0)
  return quantity === 'thickness' ? trimZeros(decimalText(sizeMm, 2), 1) : decimalText(sizeMm, placesMm)
}

function digitsThou(sizeMm: number): string {
  const tenths = stepsNearest(sizeMm, MM_PER_THOU / 10)
  return tenths < 100 ? trimZeros(decimalText(tenths / 10, 1), 0) : decimalText(sizeMm / MM_PER_THOU, 0)
}

function fractionalInches(mm: number): Figure {
  const sixtyFourths = stepsNearest(mm, MM_PER_INCH / 64)
  const restThou = stepsNearest(mm - (sixtyFourths * MM_PER_INCH) / 64, MM_PER_THOU)
  const size = Math.abs(sixtyFourths)
  const wholeInches = Math.floor(size / 64)
  const fraction = lowestTerms(size % 64, 64)
  return {
    sign: sixtyFourths < 0 ? '-' : '',
    whole: wholeInches === 0 && fraction !== null ? '' : decimalText(wholeInches, 0),
    fraction,
    remainder: restThou === 0 ? null : `${restThou < 0 ? '-' : '+'}${Math.abs(restThou)} thou`,
    unit: '"',
    word: null,
  }
}

function feetAndInches(mm: number): Figure {
  const sixteenths = Math.abs(stepsNearest(mm, MM_PER_INCH / 16))
  const feet = Math.floor(sixteenths / SIXTEENTHS_PER_FOOT)
  const rest = sixteenths % SIXTEENTHS_PER_FOOT
  const wholeInches = Math.floor(rest / 16)
  const fraction = lowestTerms(rest % 16, 16)
  const feetText = decimalText(feet, 0)
  const inchText = wholeInches === 0 && feet === 0 && fraction !== null ? '' : String(wholeInches)
  return {
    sign: mm < 0 && sixteenths > 0 ? '-' : '',
    whole: rest === 0 ? feetText : feet === 0 ? inchText : `${feetText}' ${inchText}`,
    fraction,
    remainder: null,
    unit: rest === 0 ? 'ft' : '"',
    word: null,
  }
}

function lowestTerms(numerator: number, denominator: number): Figure['fraction'] {
  if (numerator === 0) return null
  return numerator % 2 === 0 ? lowestTerms(numerator / 2, denominator / 2) : { numerator, denominator }
}

import { describe, expect, test } from 'vitest'
import { STARTING_UNITS, type ShopUnits } from '../../src/core/quantity.ts'
import { figureText } from '../../src/format/figure.ts'
import { formatBoardFeet } from '../../src/format/formatBoardFeet.ts'
import { formatNotNothing } from '../../src/format/formatNotNothing.ts'

const INCHES: ShopUnits = { bodyLength: 'fractionalInch', domeRadius: 'feetInches', thickness: 'thousandths' }

describe('wood to be bought', () => {
  test.each([
    [0, '0.0'],
    [0.0001, '0.1'],
    [0.1, '0.1'],
    [0.3, '0.3'],
    [0.301, '0.4'],
    [1, '1.0'],
    [12.34, '12.4'],
    [-1, '0.0'],
    [Number.NaN, '0.0'],
    [Number.POSITIVE_INFINITY, '0.0'],
  ])('%f board feet are never written as less than they are', (boardFeet, text) => {
    expect(formatBoardFeet(boardFeet)).toBe(text)
  })

  test.each([
    [7520, STARTING_UNITS, '0.01 l'],
    [4900, STARTING_UNITS, '<0.01 l'],
    [0, STARTING_UNITS, '0.00 l'],
    [1_234_000, STARTING_UNITS, '1.23 l'],
    // A cubic inch is 16387.064 mm³: 800 are a twentieth of one, scant.
    [800, INCHES, '<0.1 cu in'],
    [16387, INCHES, '1.0 cu in'],
  ] as const)('%f mm³ read as %s are not nothing', (mm3, units, text) => {
    expect(figureText(formatNotNothing(mm3, 'volume', units))).toBe(text)
  })
})

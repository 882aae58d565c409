import { describe, expect, it } from 'vitest'
import type { Quantity, ShopUnits } from '../../src/core/quantity.ts'
import { figureText } from '../../src/format/figure.ts'
import { formatTolerance } from '../../src/format/formatTolerance.ts'

const METRIC: ShopUnits = { bodyLength: 'mm', domeRadius: 'metres', thickness: 'mm' }
const INCH: ShopUnits = { bodyLength: 'fractionalInch', domeRadius: 'feetInches', thickness: 'thousandths' }

describe('a tolerance', () => {
  // 0.5 mm / 25.4 = 0.019685 in; 50 mm / 25.4 = 1.9685 in; 0.3 degree = 0.0052360 rad.
  it.each<[number, Quantity, ShopUnits, string]>([
    [0.5, 'bodyLength', METRIC, '0.5 mm'],
    [0.05, 'thickness', METRIC, '0.05 mm'],
    [50, 'domeRadius', METRIC, '50.0 mm'],
    [0.5, 'bodyLength', INCH, '20 thou'],
    [50, 'domeRadius', INCH, '1969 thou'],
    [0.005235987755982988, 'angle', INCH, '0.30°'],
    [1, 'count', INCH, '1'],
    [25, 'force', INCH, '25 N'],
    [2.5, 'stress', METRIC, '2.5 MPa'],
  ])('%s of a %s', (tolerance, quantity, units, text) => {
    expect(figureText(formatTolerance(tolerance, quantity, units))).toBe(text)
  })
})

import { describe, expect, test } from 'vitest'
import { STARTING_UNITS, type LengthQuantity, type ShopUnits } from '../../src/core/quantity.ts'
import { figureText } from '../../src/format/figure.ts'
import { formatAllowedRange } from '../../src/format/formatAllowedRange.ts'
import { formatLength } from '../../src/format/formatLength.ts'
import { formatAngle, formatQuantity } from '../../src/format/formatQuantity.ts'
import { formatTolerance } from '../../src/format/formatTolerance.ts'
import { DECIMAL, EVERY_CHOICE, FRACTIONAL, METRIC } from './shops.ts'

// Expected texts by hand from 1 in = 25.4 mm exactly (NIST SP 811).
describe('lengths', () => {
  const rows: (readonly [number, LengthQuantity, ShopUnits, string])[] = [
    [98.5, 'bodyLength', METRIC, '98.5 mm'],
    [400, 'bodyLength', METRIC, '400.0 mm'],
    [98.45, 'bodyLength', METRIC, '98.5 mm'],
    [0.35, 'bodyLength', METRIC, '0.4 mm'],
    [-2.04, 'bodyLength', METRIC, '-2.0 mm'],
    [-0.04, 'bodyLength', METRIC, '0.0 mm'],
    [-0, 'bodyLength', METRIC, '0.0 mm'],
    [2.2, 'thickness', METRIC, '2.2 mm'],
    [2.25, 'thickness', METRIC, '2.25 mm'],
    [2, 'thickness', METRIC, '2.0 mm'],
    [10.05, 'thickness', METRIC, '10.05 mm'],
    [1.005, 'thickness', METRIC, '1.01 mm'],
    [98.425, 'bodyLength', DECIMAL, '3.875 in'],
    [25.4, 'bodyLength', DECIMAL, '1.000 in'],
    [98.425, 'bodyLength', FRACTIONAL, '3 7/8"'],
    [98.425 + 4 * 0.0254, 'bodyLength', FRACTIONAL, '3 7/8" +4 thou'],
    [98.425 - 3 * 0.0254, 'bodyLength', FRACTIONAL, '3 7/8" -3 thou'],
    [98.425 + 0.01, 'bodyLength', FRACTIONAL, '3 7/8"'],
    [-98.425 - 4 * 0.0254, 'bodyLength', FRACTIONAL, '-3 7/8" -4 thou'],
    [12.7, 'bodyLength', FRACTIONAL, '1/2"'],
    [-12.7, 'bodyLength', FRACTIONAL, '-1/2"'],
    [101.6, 'bodyLength', FRACTIONAL, '4"'],
    [0, 'bodyLength', FRACTIONAL, '0"'],
    [-2 * 0.0254, 'bodyLength', FRACTIONAL, '0" -2 thou'],
    [39.290625, 'bodyLength', FRACTIONAL, '1 35/64"'],
    [2.159, 'thickness', FRACTIONAL, '85 thou'],
    [0.1092, 'thickness', FRACTIONAL, '4.3 thou'],
    [0.1016, 'thickness', FRACTIONAL, '4 thou'],
    [9.96 * 0.0254, 'thickness', FRACTIONAL, '10 thou'],
    [0, 'thickness', FRACTIONAL, '0 thou'],
    [100 * 0.0254, 'thickness', FRACTIONAL, '100 thou'],
    [4572, 'domeRadius', METRIC, '4.572 m'],
    [4600, 'domeRadius', METRIC, '4.6 m'],
    [8000, 'domeRadius', METRIC, '8.0 m'],
    [4572.4, 'domeRadius', DECIMAL, '4572 mm'],
    [4572, 'domeRadius', FRACTIONAL, '15 ft'],
    [4470.4, 'domeRadius', FRACTIONAL, `14' 8"`],
    [4483.1, 'domeRadius', FRACTIONAL, `14' 8 1/2"`],
    [4279.9, 'domeRadius', FRACTIONAL, `14' 0 1/2"`],
    [4571.9, 'domeRadius', FRACTIONAL, '15 ft'],
    [-4470.4, 'domeRadius', FRACTIONAL, `-14' 8"`],
    [215.9, 'domeRadius', FRACTIONAL, '8 1/2"'],
    [12.7, 'domeRadius', FRACTIONAL, '1/2"'],
    [0, 'domeRadius', FRACTIONAL, '0 ft'],
  ]
  test.each(rows)('%d as %s', (mm, quantity, units, text) => {
    expect(figureText(formatLength(mm, quantity, units))).toBe(text)
  })

  test('to the hundredth of a millimetre on request', () => {
    expect(figureText(formatLength(98.456, 'bodyLength', METRIC, 2))).toBe('98.46 mm')
  })

  test('a figure comes in pieces', () => {
    expect(formatLength(-98.425 - 0.1016, 'bodyLength', FRACTIONAL)).toEqual({
      sign: '-',
      whole: '3',
      fraction: { numerator: 7, denominator: 8 },
      remainder: '-4 thou',
      unit: '"',
      word: null,
    })
  })

  test.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, 1e300])('%d is no figure', (mm) => {
    for (const { quantity, units } of EVERY_CHOICE) expect(formatLength(mm, quantity, units).word).toBe('none')
    expect(formatAngle(mm).word).toBe('none')
    expect(formatQuantity(mm, 'area', METRIC).word).toBe('none')
  })
})

describe('other quantities', () => {
  test('words keep their code', () => {
    expect(figureText(formatQuantity('flat', 'domeRadius', METRIC))).toBe('flat')
    expect(formatQuantity('none', 'bodyLength', METRIC).word).toBe('none')
  })

  test('a place across is told by its side, in the unit of body lengths; on the centreline by none', () => {
    const inches = { ...METRIC, bodyLength: 'fractionalInch' } as const
    expect(figureText(formatQuantity(-137.3, 'across', METRIC))).toBe('bass 137.3 mm')
    expect(figureText(formatQuantity(188.76, 'across', METRIC))).toBe('treble 188.8 mm')
    expect(figureText(formatQuantity(-0.04, 'across', METRIC))).toBe('0.0 mm')
    expect(figureText(formatQuantity(-0.375 * 25.4, 'across', inches))).toBe('bass 3/8"')
    // A spreadsheet gets the sign.
    expect(formatQuantity(-137.3, 'across', METRIC)).toMatchObject({ sign: '-', whole: '137.3' })
    expect(figureText(formatTolerance(0.5, 'across', METRIC))).toBe('0.5 mm')
  })

  test('angles: radians in, degrees out', () => {
    expect(figureText(formatQuantity(Math.PI / 6, 'angle', METRIC))).toBe('30.00°')
    expect(figureText(formatQuantity(-1e-6, 'angle', METRIC))).toBe('0.00°')
    expect(figureText(formatAngle(1.312))).toBe('1.31°')
    expect(figureText(formatAngle(1.312, 3))).toBe('1.312°')
  })

  test('volumes: 1 cu in = 16.387064 cm³ exactly, litres finer below ten', () => {
    expect(figureText(formatQuantity(14_500_000, 'volume', METRIC))).toBe('14.5 l')
    expect(figureText(formatQuantity(9_996_000, 'volume', METRIC))).toBe('10.0 l')
    expect(figureText(formatQuantity(9_994_000, 'volume', METRIC))).toBe('9.99 l')
    expect(figureText(formatQuantity(512_000, 'volume', METRIC))).toBe('0.51 l')
    expect(figureText(formatQuantity(1_638_706.4, 'volume', FRACTIONAL))).toBe('100.0 cu in')
    expect(figureText(formatQuantity(1_638_706.4, 'volume', DECIMAL))).toBe('100.0 cu in')
  })

  test('what air sounds: whole hertz, whole cents, ratios to a thousandth', () => {
    expect(figureText(formatQuantity(126.275, 'resonance', METRIC))).toBe('126 Hz')
    expect(figureText(formatQuantity(-49.6, 'interval', METRIC))).toBe('-50 cents')
    expect(figureText(formatQuantity(0.8126, 'ratio', METRIC))).toBe('0.813')
    expect(figureText(formatQuantity('none', 'ratio', METRIC))).toBe('none')
  })

  test('areas: 1 sq in = 6.4516 cm² exactly', () => {
    expect(figureText(formatQuantity(645.16, 'area', METRIC))).toBe('6.5 cm²')
    expect(figureText(formatQuantity(6451.6, 'area', FRACTIONAL))).toBe('10.0 sq in')
    expect(figureText(formatQuantity(6451.6, 'area', DECIMAL))).toBe('10.0 sq in')
  })

  test('counts and lengths', () => {
    expect(figureText(formatQuantity(14, 'count', METRIC))).toBe('14')
    expect(figureText(formatQuantity(98.5, 'bodyLength', STARTING_UNITS))).toBe('98.5 mm')
  })
})

describe('allowed range', () => {
  test.each([
    [300, 600, 'bodyLength', METRIC, '300.0 mm – 600.0 mm'],
    [0.123, 9.999, 'thickness', METRIC, '0.13 mm – 9.99 mm'],
    // 300 mm is 11.811 in, above 11 51/64 (11.797); 600 mm is 23.622 in, below 23 5/8 (23.625)
    [300, 600, 'bodyLength', FRACTIONAL, '11 13/16" – 23 39/64"'],
    [300, 600, 'bodyLength', DECIMAL, '11.812 in – 23.622 in'],
    // 2 m is 6 ft 6.740 in, 20 m is 65 ft 7.402 in
    [2000, 20000, 'domeRadius', FRACTIONAL, `6' 6 3/4" – 65' 7 3/8"`],
    [-2, 2, 'bodyLength', METRIC, '-2.0 mm – 2.0 mm'],
    [1, 12, 'count', METRIC, '1 – 12'],
    [0, Math.PI / 18, 'angle', METRIC, '0.00° – 10.00°'],
    [1.01, 1.02, 'bodyLength', METRIC, '1.0 mm – 1.0 mm'],
  ] as const)('%d to %d as %s', (min, max, quantity, units, text) => {
    expect(formatAllowedRange(min, max, quantity, units).text).toBe(text)
  })
})

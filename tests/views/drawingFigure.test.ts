import { expect, it } from 'vitest'
import { STARTING_UNITS } from '../../src/core/quantity.ts'
import { drawingFigure } from '../../src/views/sheets/drawingFigure.ts'

const words = { flat: 'flat', none: 'none' }
const metric = drawingFigure(STARTING_UNITS, words)
const inches = drawingFigure({ ...STARTING_UNITS, bodyLength: 'fractionalInch' }, words)

it.each([
  [98.5, '98.5'],
  [-1.25, '\u22121.3'],
])('leaves the stated unit out: %s mm', (mm, text) => {
  expect(metric(mm, 'bodyLength')).toBe(text)
})

it('keeps units that are not stated once', () => {
  expect(metric(0.0259, 'angle')).toBe('1.48°')
  expect(metric(4600, 'domeRadius')).toBe('4.6 m')
  expect(metric('flat', 'bodyLength')).toBe('flat')
})

it('hints at what a 64th leaves over', () => {
  // 4 3/32 in is 103.98125 mm; a thousandth is 0.0254 mm.
  expect(inches(103.98125, 'bodyLength')).toBe('4 3/32"')
  expect(inches(103.98125 + 0.06, 'bodyLength')).toBe('4 3/32"+')
  expect(inches(103.98125 - 0.06, 'bodyLength')).toBe('4 3/32"\u2212')
})

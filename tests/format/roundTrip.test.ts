import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { figureText } from '../../src/format/figure.ts'
import { formatAllowedRange } from '../../src/format/formatAllowedRange.ts'
import { formatLength } from '../../src/format/formatLength.ts'
import { formatAngle } from '../../src/format/formatQuantity.ts'
import { parseAngle } from '../../src/format/parseAngle.ts'
import { parseCount } from '../../src/format/parseCount.ts'
import { parseLength } from '../../src/format/parseLength.ts'
import { EVERY_CHOICE } from './shops.ts'

/** Half of the step each choice is promised to be shown in, mm; fractions of an inch show the rest to one thousandth. */
const HALF_STEP_MM: Readonly<Record<string, number>> = {
  'bodyLength mm': 0.05,
  'bodyLength decimalInch': 0.0127,
  'bodyLength fractionalInch': 0.0127,
  'domeRadius feetInches': 25.4 / 32,
  'domeRadius metres': 0.5,
  'domeRadius mm': 0.5,
  'thickness mm': 0.005,
  'thickness thousandths': 0.0127,
}

const lengthMm = fc.oneof(
  fc.double({ min: -2000, max: 20000, noNaN: true }),
  fc.double({ min: -1, max: 1, noNaN: true }),
  fc.integer({ min: -200_000, max: 2_000_000 }).map((tenths) => tenths / 10),
)

describe.each(EVERY_CHOICE)('$quantity $units', ({ quantity, units }) => {
  test('a length shown and typed again is the same to half a step', () => {
    const halfStepMm = HALF_STEP_MM[`${quantity} ${units[quantity]}`] ?? 0
    expect(halfStepMm).toBeGreaterThan(0)
    fc.assert(
      fc.property(lengthMm, (mm) => {
        const text = figureText(formatLength(mm, quantity, units))
        const parsed = parseLength(text, quantity, units)
        expect(!text.startsWith('-') || /[1-9]/u.test(text)).toBe(true)
        expect(parsed.ok && Math.abs(parsed.mm - mm) <= halfStepMm + 1e-9).toBe(true)
      }),
    )
  })

  test('the ends of an allowed range, typed as shown, lie within it', () => {
    fc.assert(
      fc.property(lengthMm, fc.double({ min: 2, max: 500, noNaN: true }), (min, width) => {
        const range = formatAllowedRange(min, min + width, quantity, units)
        for (const end of [range.least, range.most]) {
          const parsed = parseLength(figureText(end), quantity, units)
          expect(parsed.ok && parsed.mm >= min - 1e-6 && parsed.mm <= min + width + 1e-6).toBe(true)
        }
      }),
    )
  })

  test('whatever is typed is answered, with a finite number or a problem', () => {
    fc.assert(
      fc.property(typed, (text) => {
        const parsed = parseLength(text, quantity, units)
        if (parsed.ok) expect(Number.isFinite(parsed.mm) && !Object.is(parsed.mm, -0)).toBe(true)
        else if (parsed.problem.code === 'ambiguous') {
          const [first, second] = parsed.problem.readings
          expect(first).not.toBe(second)
        } else if (parsed.problem.code === 'unreadable') expect(parsed.problem.at).not.toBe('')
      }),
      { numRuns: 1000 },
    )
  })
})

const PIECES = [
  ...'0 1 2 3 4 5 6 7 8 9 . , + - * / ( ) \' " r m x'.split(' '),
  ' ',
  '½',
  '″',
  '′',
  '−',
  '\u202f',
  'in',
  'ft',
  'mm',
  'thou',
  '1/2',
  '3-7/8',
  '1,234',
]
const typed = fc.oneof(
  fc.string({ unit: 'binary', maxLength: 300 }),
  fc.array(fc.constantFrom(...PIECES), { maxLength: 30 }).map((pieces) => pieces.join('')),
)

test('an angle shown and typed again is the same to half a step', () => {
  fc.assert(
    fc.property(fc.double({ min: -90, max: 90, noNaN: true }), (deg) => {
      const parsed = parseAngle(figureText(formatAngle(deg)))
      expect(parsed.ok && Math.abs(parsed.deg - deg) <= 0.005 + 1e-12).toBe(true)
    }),
  )
})

test('angles and counts answer whatever is typed', () => {
  fc.assert(
    fc.property(typed, (text) => {
      const angle = parseAngle(text)
      const count = parseCount(text)
      expect(!angle.ok || Number.isFinite(angle.deg)).toBe(true)
      expect(!count.ok || Number.isInteger(count.count)).toBe(true)
    }),
    { numRuns: 2000 },
  )
})

test('d,ddd is always asked in a length', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 999 }), fc.integer({ min: 0, max: 999 }), (whole, part) => {
      const digits = String(part).padStart(3, '0')
      expect(
        parseLength(`${whole},${digits}`, 'bodyLength', { bodyLength: 'mm', domeRadius: 'mm', thickness: 'mm' }),
      ).toEqual({
        ok: false,
        problem: { code: 'ambiguous', readings: [`${whole}.${digits}`, `${whole}${digits}`] },
      })
    }),
  )
})

test('sums of binary fractions agree with plain arithmetic, which is exact for them', () => {
  const sixtyFourths = fc.integer({ min: 0, max: 64 * 40 })
  fc.assert(
    fc.property(sixtyFourths, sixtyFourths, (a, b) => {
      const inches = { bodyLength: 'fractionalInch', domeRadius: 'feetInches', thickness: 'thousandths' } as const
      const mixed = (n: number) => `${Math.floor(n / 64)} ${n % 64}/64`
      const parsed = parseLength(`${mixed(a)} + ${mixed(b)}`, 'bodyLength', inches)
      expect(parsed.ok && Math.abs(parsed.mm - ((a + b) / 64) * 25.4) < 1e-9).toBe(true)
    }),
  )
})

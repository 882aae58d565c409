// @vitest-environment jsdom
import { act, cleanup, render, screen } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, describe, expect, it } from 'vitest'
import type { ShopUnits } from '../../src/core/quantity.ts'
import { FIELDS } from '../../src/record/fields.ts'
import { LengthField, type LengthRange, type LengthValue } from '../../src/ui/LengthField.tsx'
import { type Bench, Bound, makeBench } from './boundField.tsx'

afterEach(cleanup)

const METRIC: ShopUnits = { bodyLength: 'mm', domeRadius: 'metres', thickness: 'mm' }
const INCH: ShopUnits = { bodyLength: 'fractionalInch', domeRadius: 'feetInches', thickness: 'thousandths' }

function show(
  bench: Bench<LengthValue>,
  more: { start?: LengthValue; range?: LengthRange; units?: ShopUnits; readOnly?: boolean; solvedMm?: number } = {},
) {
  const { start = 98.5, range = FIELDS['rim.depthAtTailMm'], units = METRIC, readOnly = false, solvedMm } = more
  render(
    <Bound start={start} bench={bench} readOnly={readOnly}>
      {(binding) => (
        <LengthField label="Depth" binding={binding} range={range} units={units} solvedMm={solvedMm ?? null} />
      )}
    </Bound>,
  )
  return { input: screen.getByLabelText<HTMLInputElement>('Depth'), user: userEvent.setup() }
}
const describedBy = (input: HTMLElement): string =>
  document.getElementById(input.getAttribute('aria-describedby') ?? '')?.textContent ?? ''

describe('a length field', () => {
  it('takes every keystroke that makes a length in range, in one gesture', async () => {
    const bench = makeBench<LengthValue>()
    const { input, user } = show(bench)
    await user.click(input)
    await user.clear(input)
    await user.type(input, '101,5')
    await user.tab()
    // 1 and 10 are below the range of 20 to 250 mm, 101 is in it; "101," is unfinished; the comma of 101,5 can only be a decimal sign.
    expect(bench.taken.at(-1)).toBe(101.5)
    expect(bench.taken).toContain(101)
    expect(bench.taken).not.toContain(10)
    expect(bench.log).toEqual(['begin', 'end'])
    expect(input.value).toBe('101.5')
    expect(bench.draft()).toBeNull()
  })

  // Closed forms: 15 ft = 15 * 304.8 mm; 1 1/2 + 3/64 = 99/64 in; 0.085 in = 2.159 mm; 3 7/8 in = 98.425 mm.
  it.each([
    ['15 ft', FIELDS['back.radiusMm'], 4572],
    ['14\'8"', FIELDS['back.radiusMm'], 4470.4],
    ['4.6 m', FIELDS['back.radiusMm'], 4600],
    ['3 7/8"', FIELDS['rim.depthAtTailMm'], 98.425],
    ['1 1/2 + 3/64', FIELDS['rim.depthAtTailMm'], 39.290625],
    ['0.085 in', FIELDS['rim.sideThicknessMm'], 2.159],
    ['98.5-2.2', FIELDS['rim.depthAtTailMm'], 96.3],
  ] as const)('understands %s', async (text, range, mm) => {
    const bench = makeBench<LengthValue>()
    const { input, user } = show(bench, { range, start: range.minMm })
    await user.click(input)
    await user.clear(input)
    await user.type(input, text)
    expect(bench.taken.at(-1)).toBeCloseTo(mm, 9)
  })

  it('says beside it what was understood', async () => {
    const { input, user } = show(makeBench(), { range: FIELDS['back.radiusMm'], start: 5000 })
    await user.click(input)
    await user.clear(input)
    await user.type(input, '15 ft')
    expect(document.querySelector('output')?.textContent).toMatch(/^= 4\.572.m$/u)
  })

  it('keeps text it cannot take as typed, says why in one sentence, and leaves the record alone', async () => {
    const bench = makeBench<LengthValue>()
    const { input, user } = show(bench)
    await user.click(input)
    await user.clear(input)
    await user.type(input, 'ninety')
    await user.tab()
    expect(input.value).toBe('ninety')
    expect(input.getAttribute('aria-invalid')).toBe('true')
    expect(describedBy(input)).toContain('Depth')
    expect(describedBy(input)).toContain('20.0 mm – 250.0 mm')
    expect(bench.taken).toEqual([])
    expect(bench.draft()).toBe('ninety')
  })

  it('says which side of the range a value lies on', async () => {
    const { input, user } = show(makeBench())
    await user.click(input)
    await user.clear(input)
    await user.type(input, '9"')
    await user.tab()
    expect(describedBy(input)).not.toContain('more than')
    await user.clear(input)
    await user.type(input, '12"')
    expect(describedBy(input)).toContain('304.8 mm')
    expect(describedBy(input)).toContain('more than')
  })

  it('comes back with the draft that was left', () => {
    const { input } = show(makeBench<LengthValue>('98 3/'))
    expect(input.value).toBe('98 3/')
    expect(input.getAttribute('aria-invalid')).toBe('true')
  })

  it('asks where a text can mean two things, and takes the answer', async () => {
    const bench = makeBench<LengthValue>()
    const { input, user } = show(bench, {
      range: FIELDS['back.radiusMm'],
      start: 5000,
      units: { ...METRIC, domeRadius: 'mm' },
    })
    await user.click(input)
    await user.clear(input)
    await user.type(input, '1,234')
    expect(bench.taken).not.toContain(1.234)
    const asked = screen.getByRole('group', { name: /Which is meant/u })
    const answers = [...asked.querySelectorAll('button')].map((one) => one.textContent)
    expect(answers).toHaveLength(2)
    await user.click(screen.getByRole('button', { name: '1234' }))
    expect(bench.taken.at(-1)).toBe(1234)
  })

  it('puts back on Escape what stood there before', async () => {
    const bench = makeBench<LengthValue>()
    const { input, user } = show(bench)
    await user.click(input)
    await user.clear(input)
    await user.type(input, '120')
    expect(bench.taken.at(-1)).toBe(120)
    await user.keyboard('{Escape}')
    expect(bench.taken.at(-1)).toBe(98.5)
    expect(input.value).toBe('98.5')
    expect(bench.draft()).toBeNull()

    await user.clear(input)
    await user.type(input, '120')
    await user.tab()
    await user.click(input)
    await user.clear(input)
    await user.type(input, '130')
    await user.keyboard('{Escape}')
    expect(bench.taken.at(-1)).toBe(120)
  })

  it('shows the value that undo brings, and keeps text that could not be taken', async () => {
    const bench = makeBench<LengthValue>()
    const { input, user } = show(bench)
    await user.click(input)
    await user.clear(input)
    await user.type(input, '120')
    act(() => bench.set(98.5))
    expect(input.value).toBe('98.5')
    await user.clear(input)
    await user.type(input, 'xx')
    act(() => bench.set(77))
    expect(input.value).toBe('xx')
  })

  it('leaves a field open, shows what it was solved to, and takes that when it is closed again', async () => {
    const bench = makeBench<LengthValue>()
    const { input, user } = show(bench, { range: FIELDS['outline.lengthMm'], start: 500, solvedMm: 503.21 })
    const toggle = screen.getByRole('button', { name: 'Depth: open: solve it' })
    await user.click(toggle)
    expect(bench.taken.at(-1)).toBeNull()
    expect(toggle.getAttribute('aria-pressed')).toBe('true')
    expect(input.value).toBe('')
    expect(input.placeholder).toBe('503.2 mm')
    await user.click(toggle)
    expect(bench.taken.at(-1)).toBe(503.21)
  })

  it('knows flat where the field does', async () => {
    const bench = makeBench<LengthValue>()
    const { input, user } = show(bench, { range: FIELDS['outline.keyWidths.tailRadiusMm'], start: 800 })
    await user.click(screen.getByRole('button', { name: 'Depth: flat' }))
    expect(bench.taken.at(-1)).toBe('flat')
    expect(input.value).toBe('flat')
  })

  it('shows inch fractions so that they read back as they stand', async () => {
    const bench = makeBench<LengthValue>()
    const { input, user } = show(bench, { units: INCH, start: 98.5 })
    // 98.5 mm = 3.87795 in = 3 7/8 in and 0.00295 in.
    expect(input.value).toBe('3 7/8" +3 thou')
    await user.click(input)
    await user.type(input, ' ')
    expect(bench.taken.at(-1)).toBeCloseTo((3.875 + 0.003) * 25.4, 9)
  })

  it('cannot be written into where another tab has the pen', async () => {
    const bench = makeBench<LengthValue>()
    const { input, user } = show(bench, { readOnly: true })
    await user.click(input)
    await user.type(input, '1')
    expect(bench.taken).toEqual([])
    expect(bench.log).toEqual([])
    expect(input.value).toBe('98.5')
  })
})

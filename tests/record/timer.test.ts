import { describe, expect, it } from 'vitest'
import { addMinutes, beginTimer, endTimer, needsNotice, readTimer, timeLeftMs } from '../../src/record/timer.ts'

const ID = '0a000000-0000-4000-8000-000000000001'
const DOC = '0b000000-0000-4000-8000-000000000001'
const NINE = '2026-11-27T09:00:00.000Z'
const begin = (seconds: number) =>
  beginTimer(ID, { docId: DOC, stageId: null, number: '26-07', label: 'Braces', seconds }, NINE)

describe('a timer', () => {
  // Written by hand from the calendar: the last one runs over the end of a year.
  it.each([
    [5400, '2026-11-27T10:30:00.000Z'],
    [35 * 86_400, '2027-01-01T09:00:00.000Z'],
    [0, '2026-11-27T09:00:01.000Z'],
    [Number.NaN, '2026-11-27T09:00:01.000Z'],
    [Number.POSITIVE_INFINITY, '2027-02-25T09:00:00.000Z'],
  ])('of %d s ends at %s and can be read back', (seconds, endsAt) => {
    expect(begin(seconds).endsAt).toBe(endsAt)
    expect(readTimer(structuredClone(begin(seconds)))).toEqual(begin(seconds))
  })

  it('gets time on top while it runs, from now once it has run out, and never more than ninety days', () => {
    expect(addMinutes(begin(3600), 10, '2026-11-27T09:30:00.000Z').endsAt).toBe('2026-11-27T10:10:00.000Z')
    const late = addMinutes({ ...begin(60), noticedAt: '2026-11-27T09:01:00.000Z' }, 10, '2026-11-27T12:00:00.000Z')
    expect(late).toMatchObject({ endsAt: '2026-11-27T12:10:00.000Z', noticedAt: null })
    expect(addMinutes(begin(90 * 86_400), 60, NINE).endsAt).toBe('2027-02-25T09:00:00.000Z')
  })

  it('takes the clock in either way it is written', () => {
    expect(timeLeftMs(begin(60), '2026-11-27T09:00:30Z')).toBe(30_000)
    expect(timeLeftMs(begin(60), '2026-11-27T09:01:30.5Z')).toBe(-30_500)
  })

  it('needs a notice once, unless the clock that gave it was ahead', () => {
    const timer = begin(60)
    const after = '2026-11-27T09:01:00.000Z'
    expect(needsNotice(timer, '2026-11-27T09:00:59.999Z')).toBe(false)
    expect(needsNotice(timer, after)).toBe(true)
    expect(needsNotice({ ...timer, noticedAt: after }, after)).toBe(false)
    expect(needsNotice({ ...timer, noticedAt: '2030-01-01T00:00:00.000Z' }, after)).toBe(true)
    expect(needsNotice(endTimer(timer, after), after)).toBe(false)
  })

  it.each([
    ['nothing', undefined],
    ['a text', 'timer'],
    ['a moment that is none', { ...begin(60), endsAt: 'soon' }],
    ['an id that is none', { ...begin(60), id: 'first' }],
    ['a field of a later version', { ...begin(60), repeats: 3 }],
    ['a field that is missing', { ...begin(60), noticedAt: undefined }],
  ])('is not read from %s', (_, row) => {
    expect(readTimer(row)).toBeNull()
  })
})

import { expect, test } from 'vitest'
import { formatDate } from '../../src/format/formatDate.ts'

test.each([
  ['2027-03-12', '12 Mar 2027'],
  ['2026-01-01', '1 Jan 2026'],
  ['2026-12-31', '31 Dec 2026'],
  ['2028-02-29', '29 Feb 2028'],
])('%s', (iso, text) => {
  expect(formatDate(iso)).toBe(text)
})

test('the same day in every time zone', () => {
  const before = process.env['TZ']
  for (const zone of ['Pacific/Kiritimati', 'Pacific/Pago_Pago', 'Europe/Berlin']) {
    process.env['TZ'] = zone
    expect(formatDate('2027-03-28')).toBe('28 Mar 2027')
  }
  if (before === undefined) delete process.env['TZ']
  else process.env['TZ'] = before
})

test('another language by name', () => {
  expect(formatDate('2027-03-12', 'en-US')).toBe('Mar 12, 2027')
})

test.each(['', '2027-02-30', '2027-13-01', 'soon', '2027-3-1'])('no date: %s', (text) => {
  expect(formatDate(text)).toBe(text)
})

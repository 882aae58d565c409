import { describe, expect, test } from 'vitest'
import { formatPitch } from '../../src/format/formatPitch.ts'
import { readTable } from '../tables/readTable.ts'

const notes = readTable('equal_temperament.csv').map((row) => [row.number('freq_Hz_A440'), row.text('note')] as const)

describe('a frequency as a note', () => {
  test.each(notes)('%d Hz is %s with A at 440', (hz, note) => expect(formatPitch(hz, 440)).toBe(note))
  test.each(notes)('a tenth of a semitone over and under %d Hz', (hz, note) => {
    // Ten cents are the 120th root of two.
    expect(formatPitch(hz * 2 ** (1 / 120), 440)).toBe(`${note} +10`)
    expect(formatPitch(hz / 2 ** (1 / 120), 440)).toBe(`${note} -10`)
  })
  test('half way it belongs to the note above', () => {
    expect(formatPitch(110 * 2 ** (0.499 / 12), 440)).toBe('Bb2 -50')
    expect(formatPitch(110 * 2 ** (0.49 / 12), 440)).toBe('A2 +49')
  })
  test('with A at 415 an A is lower', () => expect(formatPitch(207.5, 415)).toBe('A3'))
  test.each([0, -3, Number.NaN, Number.POSITIVE_INFINITY])('%d is no note', (hz) =>
    expect(formatPitch(hz, 440)).toBe(''),
  )
})

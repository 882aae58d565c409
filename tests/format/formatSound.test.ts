import { describe, expect, test } from 'vitest'
import { formatBand, formatSound } from '../../src/format/formatSound.ts'
import { parseSound } from '../../src/format/parseSound.ts'
import { readTable } from '../tables/readTable.ts'

const notes = readTable('equal_temperament.csv').map((row) => [row.number('freq_Hz_A440'), row.text('note')] as const)

describe('a frequency as a note', () => {
  test.each(notes)('%d Hz is %s with A at 440', (hz, note) => expect(formatSound(hz, 440)).toBe(note))
  test.each(notes)('a tenth of a semitone over and under %d Hz', (hz, note) => {
    // Ten cents are the 120th root of two.
    expect(formatSound(hz * 2 ** (1 / 120), 440)).toBe(`${note} +10\u00a0cents`)
    expect(formatSound(hz / 2 ** (1 / 120), 440)).toBe(`${note} −10\u00a0cents`)
  })
  test('half way it belongs to the note above', () => {
    expect(formatSound(110 * 2 ** (0.499 / 12), 440)).toBe('Bb2 −50\u00a0cents')
    expect(formatSound(110 * 2 ** (0.49 / 12), 440)).toBe('A2 +49\u00a0cents')
  })
  test('with A at 415 an A is lower', () => expect(formatSound(207.5, 415)).toBe('A3'))
  test.each([0, -3, Number.NaN, Number.POSITIVE_INFINITY])('%d is no note', (hz) =>
    expect(formatSound(hz, 440)).toBe(''),
  )
})

describe('a band of frequencies', () => {
  test('is told by the notes at its ends, spelt alike', () => {
    expect(formatBand(110, 220, 440)).toBe('A2 – A3')
    expect(formatBand(110, 111, 440)).toBe('A2')
    // F#2 and the note over A2: one a sharp, so the other is one as well.
    expect(formatBand(92.5, 116.5, 440)).toBe('F#2 – A#2')
    expect(formatBand(110, 116.5, 440)).toBe('A2 – Bb2')
  })
})

describe('a note as a tuner shows it', () => {
  test.each(notes)('%d Hz is what %s is read as', (hz, note) => {
    // The table is written to two decimals.
    expect(Math.abs((parseSound(note, 440) ?? 0) - hz)).toBeLessThan(0.0051)
  })
  test.each([
    ['A2', 110],
    [' a 2 ', 110],
    ['A2 +10', 110 * 2 ** (1 / 120)],
    ['a2-10 cents', 110 / 2 ** (1 / 120)],
    ['A2 −10ct', 110 / 2 ** (1 / 120)],
    ['G#2', 110 / 2 ** (1 / 12)],
    ['ab2', 110 / 2 ** (1 / 12)],
    ['Bb2', 110 * 2 ** (1 / 12)],
  ])('%s', (text, hz) => expect(parseSound(text, 440)).toBeCloseTo(hz, 9))
  test('with A at 432', () => expect(parseSound('A3', 432)).toBeCloseTo(216, 9))
  test.each(['', 'H2', 'g', '104', '104 Hz', 'A2 +', 'A2 10', 'A2 + 1 2 3 4'])('“%s” is none', (text) =>
    expect(parseSound(text, 440)).toBeNull(),
  )
})

import { describe, expect, it } from 'vitest'
import { formatNote, parseNote } from '../../src/format/formatNote.ts'

// MIDI's count and scientific pitch notation: A4 is 69, middle C is C4 and 60 (general knowledge, from memory).
describe('notes', () => {
  it.each([
    [69, 'A4'],
    [60, 'C4'],
    [40, 'E2'],
    [54, 'F#3'],
    [46, 'Bb2'],
    [51, 'Eb3'],
    [56, 'G#3'],
    [49, 'C#3'],
    [35, 'B1'],
  ])('%d is written %s, and read again', (note, text) => {
    expect(formatNote(note)).toBe(text)
    expect(parseNote(text)).toBe(note)
  })

  it.each([
    ['e2', 40],
    [' F♯ 3', 54],
    ['Gb3', 54],
    ['Ab3', 56],
    ['A♭3', 56],
    ['D#3', 51],
    ['A#2', 46],
    ['Db3', 49],
    ['Cb4', 59],
    ['B#3', 60],
  ])('%s is read as %d', (text, note) => expect(parseNote(text)).toBe(note))

  it.each(['', 'H2', 'E', '2E', 'E#b2', 'E22', 'forty'])('“%s” is none', (text) => expect(parseNote(text)).toBeNull())

  it('every note comes back', () => {
    for (let note = 0; note < 128; note++) expect(parseNote(formatNote(note))).toBe(note)
  })
})

const NAMES = ['C', 'C#', 'D', 'Eb', 'E', 'F', 'F#', 'G', 'G#', 'A', 'Bb', 'B'] as const
const LETTERS: Readonly<Record<string, number>> = { c: 0, d: 2, e: 4, f: 5, g: 7, a: 9, b: 11 }
const OCTAVE = 12

const SHARPS = NAMES.map((name, i) => (name.endsWith('b') ? `${NAMES[i - 1]}#` : name))

/** A note by MIDI's count as scientific pitch notation has it: 40 is E2, 69 is A4. Black keys by the name guitarists use most. */
export const formatNote = (note: number): string => named(note, NAMES)

/** The same with sharps alone, for notes that stand together. */
export const formatNoteInSharps = (note: number): string => named(note, SHARPS)

function named(note: number, names: readonly string[]): string {
  const whole = Math.round(note)
  return `${names[((whole % OCTAVE) + OCTAVE) % OCTAVE]}${Math.floor(whole / OCTAVE) - 1}`
}

/** The note a maker typed: E2, e2, F#3, Bb2, with ♯ and ♭ as well. null: it is none. Scientific pitch notation: C4 is middle C. */
export function parseNote(text: string): number | null {
  const found = /^([a-g])([#b♯♭]?)(-?\d)$/iu.exec(text.replaceAll(/\s/gu, ''))
  const letter = found?.[1]?.toLowerCase()
  const step = letter === undefined ? undefined : LETTERS[letter]
  if (found === null || step === undefined) return null
  const sharp = found[2] === '#' || found[2] === '♯' ? 1 : found[2] === '' ? 0 : -1
  return (Number(found[3]) + 1) * OCTAVE + step + sharp
}

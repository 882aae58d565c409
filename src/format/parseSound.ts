import { parseNote } from './formatNote.ts'
import { A4 } from './formatSound.ts'

const CENTS_AN_OCTAVE = 1200

/**
 * The frequency, Hz, of a note a maker typed as a tuner shows it: G#2, Bb2 +12, A2 -5 cents. null: it is none. `pitchHz` is that of the A over
 * middle C. Source: equal temperament.
 */
export function parseSound(text: string, pitchHz: number): number | null {
  const found = /^([a-g][#b♯♭]?-?\d)(?:([+\-−])(\d{1,3})(?:c|ct|cents?)?)?$/iu.exec(text.replaceAll(/\s/gu, ''))
  const note = parseNote(found?.[1] ?? '')
  if (found === null || note === null) return null
  const cents = Number(found[3] ?? 0) * (found[2] === '+' ? 1 : -1)
  return pitchHz * 2 ** ((100 * (note - A4) + cents) / CENTS_AN_OCTAVE)
}

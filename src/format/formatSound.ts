import { formatNote, formatNoteInSharps } from './formatNote.ts'
import { stepsNearest } from './rounding.ts'

/** The A over middle C by MIDI's count. */
export const A4 = 69
const STEPS = 12

/**
 * The note of equal temperament nearest to a frequency, by MIDI's count, and how far the frequency lies from it in cents, -50 to 49. `pitchHz` is
 * what the A over middle C is tuned to. Not finite for what is not finite or not above 0. Source: equal temperament, ISO 16 for the pitch.
 */
export function nearestNote(hz: number, pitchHz: number): { readonly note: number; readonly cents: number } {
  const all = stepsNearest(100 * (A4 + STEPS * Math.log2(hz / pitchHz)), 1)
  const note = Math.floor((all + 50) / 100)
  return { note, cents: all - 100 * note }
}

/** A frequency as a tuner shows it: 110 Hz as A2, 112 Hz as A2 +31 cents; `pitchHz` is that of the A over middle C. Nothing for what has none. */
export function formatSound(hz: number, pitchHz: number): string {
  const { note, cents } = nearestNote(hz, pitchHz)
  if (!Number.isFinite(cents)) return ''
  const name = formatNote(note)
  return cents === 0 ? name : `${name} ${cents > 0 ? '+' : '−'}${Math.abs(cents)}\u00a0cents`
}

/** A band of frequencies above 0 as the notes nearest to its ends, both spelt alike: F#2 – A#2; one note where both are the same. */
export function formatBand(lowHz: number, highHz: number, pitchHz: number): string {
  const ends = [nearestNote(lowHz, pitchHz).note, nearestNote(highHz, pitchHz).note]
  const usual = ends.map((note) => formatNote(note))
  const isMixed = usual.some((name) => name.includes('#')) && usual.some((name) => name.includes('b'))
  const [low, high] = isMixed ? ends.map((note) => formatNoteInSharps(note)) : usual
  return low === high ? `${low}` : `${low} – ${high}`
}

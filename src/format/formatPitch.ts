import { formatNote } from './formatNote.ts'
import { stepsNearest } from './rounding.ts'

/** The A over middle C by MIDI's count. */
const A4 = 69
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

/** A frequency as the nearest note and how far it lies from it: 110 Hz as A2, 112 Hz as A2 +31. Nothing for what has none. */
export function formatPitch(hz: number, pitchHz: number): string {
  const { note, cents } = nearestNote(hz, pitchHz)
  if (!Number.isFinite(cents)) return ''
  return cents === 0 ? formatNote(note) : `${formatNote(note)} ${cents < 0 ? '-' : '+'}${Math.abs(cents)}`
}

import { formatNote } from './formatNote.ts'
import { stepsNearest } from './rounding.ts'

/** The A over middle C by MIDI's count. */
const A4 = 69
const STEPS = 12

/**
 * A frequency as the nearest note and how far it lies from it in cents, -50 to 49: 110 Hz as A2, 112 Hz as A2 +31. `pitchHz` is what
 * the A over middle C is tuned to. Nothing for what is not finite or not above 0. Source: equal temperament, ISO 16 for the pitch.
 */
export function formatPitch(hz: number, pitchHz: number): string {
  const cents = stepsNearest(100 * (A4 + STEPS * Math.log2(hz / pitchHz)), 1)
  if (!Number.isFinite(cents)) return ''
  const note = Math.floor((cents + 50) / 100)
  const off = cents - 100 * note
  return off === 0 ? formatNote(note) : `${formatNote(note)} ${off < 0 ? '-' : '+'}${Math.abs(off)}`
}

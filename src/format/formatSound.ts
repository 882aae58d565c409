import { formatNote } from './formatNote.ts'

const A4 = 69
const CENTS = 100
const OCTAVE = 12

/** How far a frequency lies from the nearest note of equal temperament, in semitones as MIDI counts and in cents. */
function nearest(hz: number, pitchHz: number): { readonly note: number; readonly cents: number } {
  const exact = A4 + OCTAVE * Math.log2(hz / pitchHz)
  const note = Math.round(exact)
  return { note, cents: Math.round((exact - note) * CENTS) }
}

/** A frequency as a tuner shows it: G2 +12 cents; `pitchHz` is that of the A over middle C. Frequencies above 0. */
export function formatSound(hz: number, pitchHz: number): string {
  const { note, cents } = nearest(hz, pitchHz)
  const name = formatNote(note)
  return cents === 0 ? name : `${name} ${cents > 0 ? '+' : '−'}${Math.abs(cents)}\u00a0cents`
}

/** A band of frequencies as the notes nearest to its ends: F#2 to A2; one note where both are the same. */
export function formatBand(lowHz: number, highHz: number, pitchHz: number): string {
  const [low, high] = [nearest(lowHz, pitchHz).note, nearest(highHz, pitchHz).note]
  return low === high ? formatNote(low) : `${formatNote(low)} – ${formatNote(high)}`
}

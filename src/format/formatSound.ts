import { formatNote } from './formatNote.ts'
import { nearestNote } from './formatPitch.ts'

/** A frequency as a tuner shows it: G2 +12 cents; `pitchHz` is that of the A over middle C. Frequencies above 0. */
export function formatSound(hz: number, pitchHz: number): string {
  const { note, cents } = nearestNote(hz, pitchHz)
  const name = formatNote(note)
  return cents === 0 ? name : `${name} ${cents > 0 ? '+' : '−'}${Math.abs(cents)}\u00a0cents`
}

/** A band of frequencies as the notes nearest to its ends: F#2 to A2; one note where both are the same. */
export function formatBand(lowHz: number, highHz: number, pitchHz: number): string {
  const [low, high] = [nearestNote(lowHz, pitchHz).note, nearestNote(highHz, pitchHz).note]
  return low === high ? formatNote(low) : `${formatNote(low)} – ${formatNote(high)}`
}

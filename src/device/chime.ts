/** Two short tones, as a bell at a counter: Hz, and when each begins, s. */
const TONES = [
  [880, 0],
  [660, 0.25],
] as const
const LOUDNESS = 0.2
const TONE_S = 0.6

let audio: AudioContext | null = null

/** A browser lets no page be heard that has not been touched. */
const mayBeHeard = (): boolean =>
  typeof AudioContext !== 'undefined' && (navigator.userActivation?.hasBeenActive ?? true)

/** Makes ready to be heard; where the page has not been touched yet, at the first touch. */
export function readyChime(): void {
  const wake = (): void => {
    if (!mayBeHeard()) return
    audio ??= new AudioContext()
    // Some tablets only let that be heard later which was begun under a finger. Between chimes it rests.
    void audio.resume().then(
      () => audio?.suspend(),
      () => undefined,
    )
  }
  if (mayBeHeard()) wake()
  else window.addEventListener('pointerdown', wake, { once: true })
}

/** Sounds the chime; false where the browser does not let it be heard. Never throws. */
export async function playChime(): Promise<boolean> {
  try {
    if (!mayBeHeard()) return false
    audio ??= new AudioContext()
    await audio.resume()
    const out = audio
    for (const [i, [hertz, beginsS]] of TONES.entries()) {
      const tone = new OscillatorNode(out, { frequency: hertz })
      const gain = new GainNode(out, { gain: 0 })
      const from = out.currentTime + beginsS
      gain.gain.setValueAtTime(0, from)
      gain.gain.linearRampToValueAtTime(LOUDNESS, from + 0.01)
      gain.gain.exponentialRampToValueAtTime(0.001, from + TONE_S)
      tone.connect(gain).connect(out.destination)
      tone.start(from)
      tone.stop(from + TONE_S)
      if (i === TONES.length - 1) tone.addEventListener('ended', () => void out.suspend())
    }
    return true
  } catch {
    return false
  }
}

import { findRoot } from '../../geometry/root.ts'

/** What the estimate needs of one string. Lengths mm, tension at the uncompensated scale N. */
export interface CompensationSite {
  readonly scaleMm: number
  readonly tensionN: number
  /** Of what carries the pull: the core of a wound string. */
  readonly coreMm: number
  readonly modulusGPa: number
  /** Whether that core bends as one piece; a stranded one does not. */
  readonly isSolid: boolean
  /** Over fret 12, and over the crowns at the nut. */
  readonly actionMm: number
  readonly nutHeightMm: number
}

/** How far a saddle may be moved, mm: beyond that no string is meant. */
const LEAST_MM = -10
/** Where the search ends: what comes out so large is no estimate. */
export const MOST_MM = 40

/**
 * How much sharper a stiff string clamped at both ends sounds than an ideal one, as a factor of the frequency:
 *
 *   1 + 2 e + (4 + pi^2/2) e^2,   e^2 = E I / (T l^2),   I = pi d^4 / 64
 *
 * Modulus GPa, diameter and length mm, tension N. Source: Morse, Vibration and Sound, 1948 (from memory); to second order in e.
 */
export function stiffnessFactor(modulusGPa: number, diameterMm: number, tensionN: number, lengthMm: number): number {
  const bendingNMm2 = (modulusGPa * 1000 * Math.PI * diameterMm ** 4) / 64
  const e = Math.sqrt(bendingNMm2 / (tensionN * lengthMm * lengthMm))
  return 1 + 2 * e + (4 + (Math.PI * Math.PI) / 2) * e * e
}

/**
 * How far behind the uncompensated line the saddle has to stand for a true octave at fret 12, mm. An ESTIMATE to start from: intonation is set
 * from the real fret 12.
 *
 * Open, the string is S + c long and at the pull that gives its pitch. Pressed to the crown of fret 12, which stands S/2 from the nut, it goes
 * a longer way and its pull grows by dT = E A dl / l (held at nut and saddle). What is left to sound is S/2 + c long. Both are stiff:
 *
 *   f = (1 / 2 l) sqrt(T / mu) (1 + 2 e + (4 + pi^2/2) e^2)
 *
 * and c is where f(pressed) = 2 f(open). Source: Hooke's law and Morse 1948, derived from them; found by a bounded search to 1e-9 mm. A slack
 * stiff string far over the frets may ask for more than MOST_MM; it is given MOST_MM.
 */
export function compensationMm(site: CompensationSite): number {
  const { scaleMm, coreMm, modulusGPa, isSolid, actionMm, nutHeightMm } = site
  const half = scaleMm / 2
  const saddleMm = 2 * actionMm - nutHeightMm
  const stretchN = (modulusGPa * 1000 * Math.PI * coreMm * coreMm) / 4
  const stiff = (tensionN: number, lengthMm: number) =>
    isSolid ? stiffnessFactor(modulusGPa, coreMm, tensionN, lengthMm) : 1
  /** Octaves over the open string, less the one wanted. */
  const sharp = (c: number): number => {
    const openMm = scaleMm + c
    const openN = site.tensionN * (openMm / scaleMm) ** 2
    const pressedMm = half + c
    const longerMm =
      Math.hypot(half, nutHeightMm) + Math.hypot(pressedMm, saddleMm) - Math.hypot(openMm, saddleMm - nutHeightMm)
    const pressedN = openN + (stretchN * longerMm) / openMm
    const open = (Math.sqrt(openN) / openMm) * stiff(openN, openMm)
    const pressed = (Math.sqrt(pressedN) / pressedMm) * stiff(pressedN, pressedMm)
    return Math.log2(pressed / open) - 1
  }
  return findRoot(sharp, Math.max(LEAST_MM, -half / 2), MOST_MM, 1e-9)
}

import { equivalentRadiusMm } from './freeHole.ts'

/** What the air of a box sounds by. */
export interface AirSite {
  readonly volumeMm3: number
  /** Of the hole, as far as it is free. */
  readonly holeMm2: number
  /** Of the wood at the hole's edge. */
  readonly edgeMm: number
  readonly temperatureC: number
}

/** End correction of a hole flanged on both faces, in radii: 8/(3 pi) for each. Source: Rayleigh 1896; the same book. */
const END_CORRECTION = 16 / (3 * Math.PI)

/** Speed of sound in air, m/s: 331.3 sqrt(1 + T/273.15), T in degrees Celsius. Published: ideal gas; 331.3 at 0 degrees from memory. */
export const soundMPerS = (temperatureC: number): number => 331.3 * Math.sqrt(1 + temperatureC / 273.15)

/**
 * Resonance of the air in a box with rigid walls and one round hole, Hz; null without air or without a hole.
 *
 *   f = (c / 2 pi) sqrt(A / (V (t + 16 r / 3 pi)))     A free hole, V volume, t edge of the hole, r = sqrt(A / pi)
 *
 * Source: Helmholtz 1863; Kinsler et al., Fundamentals of Acoustics, 2000, 10.8 (from memory).
 */
export function rigidHz({ volumeMm3, holeMm2, edgeMm, temperatureC }: AirSite): number | null {
  const lengthMm = Math.max(edgeMm, 0) + END_CORRECTION * equivalentRadiusMm(holeMm2)
  if (!(volumeMm3 > 0 && holeMm2 > 0)) return null
  return ((soundMPerS(temperatureC) * 1000) / (2 * Math.PI)) * Math.sqrt(holeMm2 / (volumeMm3 * lengthMm))
}

/** Walls of wood give way, and a finished box sounds lower than a rigid one by 12 to 30 %. Common practice, no published source. */
export const SOUNDS = { least: 0.7, most: 0.88 } as const

/** How far one pitch lies over another, in cents: 1200 to the octave. Exact. */
export const cents = (hz: number, overHz: number): number => 1200 * Math.log2(hz / overHz)

import type { StringMaterial, StringPlan } from '../../neckPlan.ts'

/** What carries a string's pull, and what a plain string weighs. */
export interface StringStuff {
  /** Of plain strings; a wound one's mass is its maker's to state. */
  readonly densityKgPerM3: number | null
  readonly modulusGPa: number
  /** Whether what carries the pull bends as one piece: a core of many strands hardly resists. */
  readonly isSolid: boolean
}

/**
 * Steel: 7850 kg/m3 (ASTM A228 music wire; from memory), 207 GPa. Nylon and fluorocarbon: values of the trade, from memory; they change with stretch
 * and damp, so what hangs on them is an estimate. A core of stranded nylon counts with its full section in the pull.
 */
export const MATERIALS: Readonly<Record<StringMaterial, StringStuff>> = {
  steel: { densityKgPerM3: 7850, modulusGPa: 207, isSolid: true },
  nylon: { densityKgPerM3: 1060, modulusGPa: 3, isSolid: true },
  fluorocarbon: { densityKgPerM3: 1780, modulusGPa: 4, isSolid: true },
  woundOnSteel: { densityKgPerM3: null, modulusGPa: 207, isSolid: true },
  woundOnNylon: { densityKgPerM3: null, modulusGPa: 3, isSolid: false },
}

/** MIDI's count of the A over middle C, to which the pitch is given. */
const CONCERT_A = 69

/** Frequency of a note, Hz, twelve equal steps to the octave. Source: equal temperament (ISO 16 for the pitch). */
export const noteHz = (note: number, pitchHz: number): number => pitchHz * 2 ** ((note - CONCERT_A) / 12)

/** Grams a metre: as entered, else rho pi d^2 / 4 of a plain string; 'none' of a wound one whose maker's figure is not entered. */
export function massGPerM({ material, diameterMm, massGPerM: entered }: StringPlan): number | 'none' {
  if (entered !== null) return entered
  const { densityKgPerM3 } = MATERIALS[material]
  return densityKgPerM3 === null ? 'none' : (densityKgPerM3 * Math.PI * diameterMm * diameterMm) / 4 / 1000
}

/** Diameter of what carries the pull, mm: a plain string whole, of a wound one the core, 'none' where that is not known. */
export const coreOf = ({ material, diameterMm, coreMm }: StringPlan): number | 'none' =>
  MATERIALS[material].densityKgPerM3 === null ? (coreMm ?? 'none') : diameterMm

/**
 * Pull of an ideal string, N:
 *
 *   T = mu (2 S f)^2      mu mass per length, S speaking length, f frequency
 *
 * Source: Mersenne's law, any text of acoustics; good to the stiffness of the string, a few parts in a thousand.
 */
export const tensionN = (massGPerM: number, scaleMm: number, frequencyHz: number): number =>
  (massGPerM / 1000) * ((2 * scaleMm * frequencyHz) / 1000) ** 2

/** Pull over section, MPa. */
export const stressMPa = (pullN: number, diameterMm: number): number =>
  (4 * pullN) / (Math.PI * diameterMm * diameterMm)

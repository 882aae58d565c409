import type { StringPlan } from '../../core/neckPlan.ts'

/**
 * Usual sets to start from, bass to treble. Plain strings weigh by their diameter; the masses of wound ones are EXAMPLES of common practice, to be
 * replaced by what the maker of the strings states.
 */
const plain = (material: 'steel' | 'nylon', diameterMm: number, note: number): StringPlan => ({
  material,
  diameterMm,
  coreMm: null,
  massGPerM: null,
  note,
  pairedWithNext: false,
})
const wound = (
  material: 'woundOnSteel' | 'woundOnNylon',
  diameterMm: number,
  coreMm: number,
  massGPerM: number,
  note: number,
): StringPlan => ({ material, diameterMm, coreMm, massGPerM, note, pairedWithNext: false })

const STEEL_LIGHT: readonly StringPlan[] = [
  wound('woundOnSteel', 1.35, 0.41, 9.98, 40),
  wound('woundOnSteel', 1.07, 0.39, 6.28, 45),
  wound('woundOnSteel', 0.81, 0.36, 3.66, 50),
  wound('woundOnSteel', 0.61, 0.33, 2.07, 55),
  plain('steel', 0.4064, 59),
  plain('steel', 0.3048, 64),
]
const OCTAVES: readonly StringPlan[] = [
  wound('woundOnSteel', 0.69, 0.34, 2.6, 52),
  plain('steel', 0.4572, 57),
  plain('steel', 0.3556, 62),
  plain('steel', 0.2286, 67),
]
const TWELVE_BASS = [
  wound('woundOnSteel', 1.19, 0.4, 7.75, 40),
  wound('woundOnSteel', 0.94, 0.38, 4.85, 45),
  wound('woundOnSteel', 0.71, 0.35, 2.78, 50),
  wound('woundOnSteel', 0.56, 0.33, 1.72, 55),
]
const TWELVE_UNISON = [plain('steel', 0.3556, 59), plain('steel', 0.254, 64)]

const NYLON: readonly StringPlan[] = [
  wound('woundOnNylon', 1.09, 0.75, 5.9, 40),
  wound('woundOnNylon', 0.89, 0.65, 3.5, 45),
  wound('woundOnNylon', 0.74, 0.55, 1.95, 50),
  plain('nylon', 1.02, 55),
  plain('nylon', 0.82, 59),
  plain('nylon', 0.72, 64),
]
const NYLON_LOW_B = wound('woundOnNylon', 1.44, 0.97, 10.3, 35)

const SETS = {
  steelLight: STEEL_LIGHT,
  steelMedium: [
    wound('woundOnSteel', 1.42, 0.42, 11.1, 40),
    wound('woundOnSteel', 1.14, 0.4, 7.15, 45),
    wound('woundOnSteel', 0.89, 0.37, 4.36, 50),
    wound('woundOnSteel', 0.66, 0.34, 2.42, 55),
    plain('steel', 0.4318, 59),
    plain('steel', 0.3302, 64),
  ],
  /** Each course with its octave or its double before it. */
  twelveString: [
    ...TWELVE_BASS.flatMap((string, i) => [{ ...OCTAVES[i]!, pairedWithNext: true }, string]),
    ...TWELVE_UNISON.flatMap((string) => [{ ...string, pairedWithNext: true }, string]),
  ],
  baritone: [
    wound('woundOnSteel', 1.73, 0.46, 16.3, 35),
    wound('woundOnSteel', 1.37, 0.42, 10.3, 40),
    wound('woundOnSteel', 1.07, 0.39, 6.28, 45),
    wound('woundOnSteel', 0.81, 0.36, 3.66, 50),
    wound('woundOnSteel', 0.56, 0.33, 1.72, 54),
    plain('steel', 0.4064, 59),
  ],
  /** A low B before the six, as heavy for its note as they are. */
  steelSeven: [wound('woundOnSteel', 1.63, 0.45, 14.6, 35), ...STEEL_LIGHT],
  nylon: NYLON,
  /** Basses a fourth apart before the six. */
  nylonSeven: [NYLON_LOW_B, ...NYLON],
  nylonEight: [wound('woundOnNylon', 1.83, 1.2, 16.6, 30), NYLON_LOW_B, ...NYLON],
  ukuleleTenor: [
    plain('nylon', 0.62, 67),
    plain('nylon', 0.92, 60),
    plain('nylon', 0.72, 64),
    plain('nylon', 0.58, 69),
  ],
  /** The fourth string an octave under the high G, and wound. */
  ukuleleLowG: [
    wound('woundOnNylon', 0.69, 0.5, 1.6, 55),
    plain('nylon', 0.92, 60),
    plain('nylon', 0.72, 64),
    plain('nylon', 0.58, 69),
  ],
} as const satisfies Record<string, readonly StringPlan[]>

export type StringSetKey = keyof typeof SETS
export const STRING_SETS: Readonly<Record<StringSetKey, readonly StringPlan[]>> = SETS
export const STRING_SET_KEYS = Object.keys(SETS) as StringSetKey[]

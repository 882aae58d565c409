import type { StringPlan } from '../../core/neckPlan.ts'

/** Other tunings to compare with: how many semitones each course of six goes up or down, bass to treble. Common practice. */
const SIX = {
  dropD: [-2, 0, 0, 0, 0, 0],
  openG: [-2, -2, 0, 0, 0, -2],
  openD: [-2, 0, 0, -1, -2, -2],
  dadgad: [-2, 0, 0, 0, -2, -2],
} as const
/** The same for every string. */
const ALL = { halfStepDown: -1, wholeStepDown: -2, halfStepUp: 1, fourthDown: -5 } as const

export type TuningKey = keyof typeof SIX | keyof typeof ALL
export const TUNING_KEYS = [...Object.keys(ALL), ...Object.keys(SIX)] as TuningKey[]

const isOfSix = (key: TuningKey): key is keyof typeof SIX => key in SIX

/** The notes of a set in another tuning; null where that tuning is for another count of courses. */
export function retuned(set: readonly StringPlan[], key: TuningKey): readonly number[] | null {
  if (!isOfSix(key)) return set.map(({ note }) => note + ALL[key])
  const courses = set.filter(({ pairedWithNext }) => !pairedWithNext).length
  if (courses !== SIX[key].length) return null
  let course = 0
  return set.map(({ note, pairedWithNext }) => {
    const moved = note + (SIX[key][course] ?? 0)
    if (!pairedWithNext) course += 1
    return moved
  })
}

import { isPlainObject } from '../path.ts'

/** The board of version 2: what lies over the body, mm. */
export interface OldBoard {
  readonly overBodyMm: number
  readonly widthAtJointMm: number
  readonly widthAtEndMm: number
}
interface OldScale {
  readonly lengthMm: number
  readonly jointFret: number
}

/** What takes its place. */
export interface BoardThrough {
  readonly nutWidthMm: number
  readonly widthAtTwelfthMm: number
  readonly endBeyondLastFretMm: number
  readonly fretCount: number
}

/** What version 2 let stand, and version 3 does. */
const OLD = { overBodyMm: [0, 300], widthAtJointMm: [25, 120], widthAtEndMm: [25, 130] } as const
const NUT_WIDTH = [20, 120] as const
const WIDTH_AT_TWELFTH = [25, 140] as const
const FRETS = [8, 36] as const
/** A fret that stands no further than this beyond a board's end is still on it. */
const ON_BOARD_MM = 1e-9

type Ends = readonly [least: number, most: number]
const within = (value: number, [least, most]: Ends) => value >= least && value <= most
const clamp = (value: number, [least, most]: Ends) => Math.min(Math.max(value, least), most)

/** A board of version 2; null where it is none. */
export function readOldBoard(value: unknown): OldBoard | null {
  if (!isPlainObject(value)) return null
  const read = (field: keyof OldBoard): number => {
    const found = value[field]
    return typeof found === 'number' && within(found, OLD[field]) ? found : Number.NaN
  }
  const board = {
    overBodyMm: read('overBodyMm'),
    widthAtJointMm: read('widthAtJointMm'),
    widthAtEndMm: read('widthAtEndMm'),
  }
  return Object.values(board).some((mm) => Number.isNaN(mm)) ? null : board
}

/**
 * The board that reaches as far over the body and is as wide at joint and end. Its edges run straight through both widths:
 *
 *   nut = joint width - t x (nut to joint),   at fret 12 = nut + t S / 2      t = (end width - joint width) / overhang
 *
 * with as many frets as fit on it. Where that is no board (nothing over the body, or a nut beyond all measure) it keeps its width at the end, and
 * its nut is as near as can be.
 */
export function boardThrough(old: OldBoard, { lengthMm: scaleMm, jointFret }: OldScale): BoardThrough {
  const { overBodyMm, widthAtJointMm, widthAtEndMm } = old
  const beyondJointMm = (fret: number) => scaleMm * (2 ** (-jointFret / 12) - 2 ** (-fret / 12))
  let fretCount: number = FRETS[0]
  while (fretCount < FRETS[1] && beyondJointMm(fretCount + 1) <= overBodyMm + ON_BOARD_MM) fretCount += 1

  const nutToJointMm = scaleMm * (1 - 2 ** (-jointFret / 12))
  const taper = overBodyMm > 0 ? (widthAtEndMm - widthAtJointMm) / overBodyMm : 0
  const straightMm = widthAtEndMm - taper * (nutToJointMm + overBodyMm)
  const nutWidthMm = clamp(straightMm, NUT_WIDTH)
  const toEndMm = Math.max(nutToJointMm + overBodyMm, 1)
  const twelfthMm = nutWidthMm + ((widthAtEndMm - nutWidthMm) * scaleMm) / 2 / toEndMm
  return {
    nutWidthMm,
    widthAtTwelfthMm: clamp(twelfthMm, WIDTH_AT_TWELFTH),
    endBeyondLastFretMm: Math.max(overBodyMm - beyondJointMm(fretCount), 0),
    fretCount,
  }
}

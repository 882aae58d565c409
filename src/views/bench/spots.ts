import type { Reading } from '../../core/asBuilt/reading.ts'
import { aboutNumber } from '../../core/catalogue.ts'
import type { Figure } from '../../core/figure.ts'
import { type NumberKey, type Numbers, readNumbers } from '../../core/numbers.ts'
import { typedUnits } from '../../format/typedReading.ts'
import { groupNumbers } from '../../papers/stageGroups.ts'
import type { StageInHand } from './stageInHand.ts'

export type Side = Reading['side']

/** One number at one place: what is in hand at a time. */
export interface Spot {
  readonly key: NumberKey
  /** Row of its list, from 0; null where it stands once. */
  readonly row: number | null
  /** The halves it is read on. */
  readonly sides: readonly [Side, ...Side[]]
  readonly isRead: boolean
}

/** Columns that tell where a row stands; they are said with the row, and not stepped through beside others. */
export const ALONG_COLUMN =
  /^(?:rim|trebleRim)\[\]\.(?:alongOuterMm|alongBlankMm)$|^(?:sideBraces|trebleBraces)\[\]\.alongOuterMm$|\.contour\[\]\.acrossMm$|\.flank\[\]\.fromFaceMm$|^braceArch\[\]\.alongMm$/u

/** Every number of a stage in its order, lists row by row; what this instrument has none of is left out. */
export function spotsOf(stage: StageInHand, numbers: Numbers): readonly Spot[] {
  return groupNumbers(stage.numbers).flatMap(({ list, keys }): Spot[] => {
    if (list === 'single') return keys.flatMap((key) => spotAt(stage, numbers, key, null))
    const told = keys.filter((key) => !ALONG_COLUMN.test(key))
    const columns = told.length > 0 ? told : keys
    return rowsOf(stage, list, numbers, keys).flatMap((row) =>
      columns.flatMap((key) => spotAt(stage, numbers, key, row)),
    )
  })
}

function spotAt(stage: StageInHand, numbers: Numbers, key: NumberKey, row: number | null): Spot[] {
  if ((readNumbers(numbers, key)[row ?? 0] ?? 'none') === 'none') return []
  const isRead = stage.isRead(key) && typedUnits(aboutNumber(key).quantity).length > 0
  return [{ key, row, sides: sidesOf(key, numbers), isRead }]
}

/** The rows of a list that belong to the stage: braces of its plate alone, and their eighths where no one radius fits. */
function rowsOf(stage: StageInHand, list: string, numbers: Numbers, keys: readonly NumberKey[]): readonly number[] {
  const [first] = keys
  const all = first === undefined ? [] : readNumbers(numbers, first).map((_, row) => row)
  if (list !== 'braces' && list !== 'braceArch' && list !== 'braceCrossings') return all
  return all.filter((row) => {
    const brace = numbers.braces[(numbers[list][row]?.number ?? 0) - 1]
    return brace !== undefined && stage.isAbout(brace) && (list !== 'braceArch' || brace.undersideRadiusMm === 'none')
  })
}

/** Lists that stand for both halves while the treble half mirrors the bass half. */
const OF_HALVES = /^(?:rim|places|sideBraces|edgePlaces)\[\]/u
const OF_TREBLE = /^treble/u
/** Stands once, and is planed on either side for itself. */
const TWO_SIDED: NumberKey = 'sides.thicknessMm'

/** A length round the rim is read on both halves, an angle on one; where the halves differ, each has its own list. */
function sidesOf(key: NumberKey, numbers: Numbers): Spot['sides'] {
  if (key === TWO_SIDED) return ['bass', 'treble']
  if (OF_TREBLE.test(key)) return ['treble']
  if (!OF_HALVES.test(key)) return ['whole']
  if (numbers.trebleRim.length > 0) return ['bass']
  return aboutNumber(key).quantity === 'angle' ? ['whole'] : ['bass', 'treble']
}

/** The side a spot is read on: the one in hand, where it has that. */
export const sideAt = ({ sides }: Spot, inHand: Side): Side => (sides.includes(inHand) ? inHand : sides[0])

/** The value of a spot. */
export const valueAt = (numbers: Numbers, { key, row }: Pick<Spot, 'key' | 'row'>): Figure =>
  readNumbers(numbers, key)[row ?? 0] ?? 'none'

/**
 * Where the hand goes on after a reading. Round the rim: the same number at the next place; else the next box that waits for a reading, the first
 * ones again when the end is reached. `isOpen`: not read yet. The place itself where nothing waits.
 */
export function nextBox(spots: readonly Spot[], at: number, isOpen: (spot: Spot) => boolean): number {
  const here = spots[at]
  if (here === undefined) return at
  const isRound = aboutNumber(here.key).measured?.where === 'roundTheRim'
  const further = isRound ? spots.findIndex(({ key, row }, i) => i > at && key === here.key && row !== here.row) : -1
  if (further >= 0) return further
  const waits = (spot: Spot): boolean => spot.isRead && isOpen(spot)
  const later = spots.findIndex((spot, i) => i > at && waits(spot))
  if (later >= 0) return later
  const earlier = spots.findIndex((spot, i) => i !== at && waits(spot))
  return earlier >= 0 ? earlier : at
}

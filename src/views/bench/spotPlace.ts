import type { ReadingPlace } from '../../core/asBuilt/reading.ts'
import { aboutNumber } from '../../core/catalogue.ts'
import type { NumberKey, Numbers } from '../../core/numbers.ts'
import type { Plan } from '../../core/plan.ts'
import type { ShopUnits } from '../../core/quantity.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { placeOfBox } from '../../record/bench/readingOf.ts'
import { ALONG_COLUMN_WORDS, AT_HAND_WORDS } from '../../words/atHand.ts'
import { LIST_WORDS, type NumberListName } from '../../words/names/lists.ts'
import { PAPER_WORDS } from '../../words/paper.ts'
import { rowNames } from '../sheets/rowNames.ts'
import { ALONG_COLUMN, type Side, type Spot, valueAt } from './spots.ts'

/** Where a reading of this spot is taken, as it is kept. */
export const readingPlace = (spot: Spot, side: Side, numbers: Numbers, plan: Plan): ReadingPlace =>
  placeOfBox({ plan, numbers }, { number: spot.key, row: spot.row ?? 0, side })

/** Rows with names that say what they are; all others are counted under the head of their list. */
const NAMED_ALONE: ReadonlySet<string> = new Set([
  'places',
  'treblePlaces',
  'edgePlaces',
  'trebleEdgePlaces',
  'edgeStrips',
  'braces',
  'braceCrossings',
  'neckSet.gaps',
  'neckSet.changes',
])

/** The row a spot stands in, as it is called; '' where it stands once. */
export function rowWord({ key, row }: Spot, numbers: Numbers, plan: Plan): string {
  const at = key.indexOf('[]')
  if (row === null || at < 0) return ''
  const list = key.slice(0, at) as NumberListName
  if (list === 'blanks') return row === 0 ? PAPER_WORDS.sides.bass : PAPER_WORDS.sides.treble
  const name = rowNames(list, row + 1, numbers, plan)[row] ?? String(row + 1)
  return NAMED_ALONE.has(list) ? name : `${LIST_WORDS[list].head} ${name}`
}

/** How far along its row stands; '' where its list has no such column. */
export function alongWord({ key, row }: Spot, keys: readonly NumberKey[], numbers: Numbers, units: ShopUnits): string {
  const at = key.indexOf('[]')
  if (row === null || at < 0) return ''
  const column = keys.find((one) => one.startsWith(key.slice(0, at + 2)) && one !== key && ALONG_COLUMN.test(one))
  if (column === undefined) return ''
  const value = valueAt(numbers, { key: column, row })
  if (typeof value !== 'number') return ''
  const say = ALONG_COLUMN_WORDS[column.slice(column.lastIndexOf('.') + 1) as keyof typeof ALONG_COLUMN_WORDS]
  return say(figureText(formatQuantity(value, aboutNumber(column).quantity, units)))
}

/** A number with its place and side on one line, for a sentence or a button. */
export const fullName = (name: string, row: string, side: Side): string =>
  [name, row, AT_HAND_WORDS.sideOf[side]].filter((part) => part !== '').join(', ')

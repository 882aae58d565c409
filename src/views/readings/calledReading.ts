import type { Reading } from '../../core/asBuilt/reading.ts'
import { ringsInOrder } from '../../core/instrument/rosette.ts'
import type { Numbers } from '../../core/numbers.ts'
import type { Plan } from '../../core/plan.ts'
import type { ShopUnits } from '../../core/quantity.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { READINGS_PAGE_WORDS } from '../../words/measured.ts'
import { LIST_WORDS, type NumberListName } from '../../words/names/lists.ts'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { rowNames } from '../sheets/rowNames.ts'

/** Rows that are called by what they are; the others are counted under the head of their list. */
const NAMED: ReadonlySet<NumberListName> = new Set([
  'places',
  'treblePlaces',
  'edgePlaces',
  'trebleEdgePlaces',
  'edgeStrips',
  'braces',
  'braceCrossings',
  'neckSet.gaps',
])

/** Where a reading was taken, in words: its row and its half; '' for a number that stands once. */
export function placeOfReading(reading: Reading, numbers: Numbers, plan: Plan, units: ShopUnits): string {
  const words = READINGS_PAGE_WORDS
  return [rowOf(reading, numbers, plan, units), words.sides[reading.side]].filter((part) => part !== '').join(', ')
}

function rowOf({ number, row, alongMm, entry }: Reading, numbers: Numbers, plan: Plan, units: ShopUnits): string {
  const at = number.lastIndexOf('[]')
  if (at < 0) return ''
  const list = number.slice(0, at) as NumberListName
  if (list === 'rosette.rings' && entry !== null) {
    const place = ringsInOrder(plan.rosette).findIndex(({ id }) => id === entry)
    return place < 0 ? READINGS_PAGE_WORDS.goneRing : READINGS_PAGE_WORDS.ring(place + 1)
  }
  // Stations move with their step; a reading stays where it was taken.
  if ((list === 'rim' || list === 'trebleRim') && alongMm !== null)
    return READINGS_PAGE_WORDS.alongRim(figureText(formatQuantity(alongMm, 'bodyLength', units)))
  const name = rowNames(list, row + 1, numbers, plan)[row] ?? String(row + 1)
  return NAMED.has(list) ? name : `${LIST_WORDS[list].head} ${name}`
}

/** A reading by its number and its place, for a sentence or a button. */
export const calledReading = (reading: Reading, place: string): string =>
  [NUMBER_NAMES[reading.number], place].filter((part) => part !== '').join(', ')

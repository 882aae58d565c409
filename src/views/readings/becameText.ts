import type { PlanField } from '../../core/planFields.ts'
import type { ShopUnits } from '../../core/quantity.ts'
import type { ReadingStanding } from '../../record/bench/readingStanding.ts'
import { FIELDS, RING_RANGES } from '../../record/fields.ts'
import { FIELD_WORDS } from '../../words/fields.ts'
import { INVERSE_WORDS, NOT_RULING_WORDS } from '../../words/measured.ts'
import { rangeText } from '../valueText.ts'

/** What a reading does to the numbers, or why it does nothing, in one sentence. */
export function becameText(standing: ReadingStanding, units: ShopUnits): string {
  switch (standing.kind) {
    case 'rules':
      return INVERSE_WORDS[standing.inverse](fieldNames(standing.fields))
    case 'asPlanned':
    case 'overruled':
    case 'off':
      return NOT_RULING_WORDS[standing.kind](fieldNames(standing.fields))
    case 'outside':
      return NOT_RULING_WORDS.outside(fieldNames(standing.fields), allowedText(standing.fields[0], units))
    case 'again':
    case 'record':
      return NOT_RULING_WORDS[standing.kind]
  }
}

/** Fields by their names, as they stand inside a sentence. */
const fieldNames = (fields: readonly PlanField[]): string =>
  fields
    .map((field) => FIELD_WORDS[field].name)
    .map((name) => `${name.charAt(0).toLowerCase()}${name.slice(1)}`)
    .join(' and ')

function allowedText(field: PlanField | undefined, units: ShopUnits): string {
  if (field === undefined) return ''
  return rangeText(field === 'rosette.rings' ? RING_RANGES.innerRadiusMm : FIELDS[field], units)
}

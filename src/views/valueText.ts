import type { ShopUnits } from '../core/quantity.ts'
import { aboutNumber, type NumberKey } from '../core/catalogue.ts'
import { figureText } from '../format/figure.ts'
import { formatAllowedRange } from '../format/formatAllowedRange.ts'
import { formatDate } from '../format/formatDate.ts'
import { formatDecimal } from '../format/formatDecimal.ts'
import { formatLength } from '../format/formatLength.ts'
import { formatAngle, formatQuantity } from '../format/formatQuantity.ts'
import type { FieldRange } from '../record/fieldRange.ts'
import { rangeOf } from '../record/problem.ts'
import { choiceWord } from '../words/fields/choices.ts'
import { REVISION_WORDS } from '../words/instrument.ts'

const LONGEST = 40

/** A value of the record as a maker reads it, by the place it stands at: in the shop's units, short. */
export function valueText(field: string, value: unknown, units: ShopUnits): string {
  if (value === undefined || value === '') return REVISION_WORDS.nothing
  if (value === null) return field.startsWith('plan.') ? REVISION_WORDS.open : REVISION_WORDS.nothing
  if (typeof value === 'object') return REVISION_WORDS.changedWhole
  const range = rangeOf(field)
  if (typeof value === 'number') {
    if (range?.type === 'length') return figureText(formatLength(value, range.quantity, units))
    if (range?.type === 'plain') return figureText(formatDecimal(value, range.unit))
    if (range?.type === 'angle') return figureText(formatAngle(value, 3))
    if (field.startsWith('tolerances.')) {
      const about = aboutNumber(field.slice('tolerances.'.length) as NumberKey)
      return about === undefined ? String(value) : figureText(formatQuantity(value, about.quantity, units))
    }
  }
  const choice = typeof value === 'string' ? choiceWord(field.replace(/^plan\./u, ''), value) : null
  const text = choice ?? (typeof value === 'string' ? formatDate(value) : JSON.stringify(value))
  return text.length > LONGEST ? `${text.slice(0, LONGEST)}…` : text
}

/** What a field of the record allows, in the shop's units. */
export function rangeText(range: FieldRange, units: ShopUnits): string {
  switch (range.type) {
    case 'length':
      return formatAllowedRange(range.minMm, range.maxMm, range.quantity, units).text
    case 'angle':
      return `${figureText(formatAngle(range.minDeg))} – ${figureText(formatAngle(range.maxDeg))}`
    case 'plain':
      return `${figureText(formatDecimal(range.min, range.unit))} – ${figureText(formatDecimal(range.max, range.unit))}`
    case 'count':
      return `${range.min} – ${range.max}`
    default:
      return ''
  }
}

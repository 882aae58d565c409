import { type Figure, figureText } from '../format/figure.ts'
import { formatDecimal } from '../format/formatDecimal.ts'
import { parseDecimal } from '../format/parseDecimal.ts'
import type { FieldRange } from '../record/fieldRange.ts'
import { FIELD_WORDS, fieldProblem, outsideRange } from '../words/fieldProblem.ts'
import type { FieldBinding } from './fieldBinding.ts'
import { TypedField } from './TypedField.tsx'
import { type Reading, useTypedText } from './useTypedText.ts'

export type DecimalRange = Extract<FieldRange, { type: 'plain' }>

interface Props {
  readonly label: string
  /** In the unit of the range; null where it may be open. */
  readonly binding: FieldBinding<number | null>
  readonly range: DecimalRange
  /** What an empty field means. */
  readonly emptyMeans?: string
  /** Another way to write it, read before figures are: the amount in the unit of the range, or null. */
  readonly alsoReads?: (text: string) => number | null
  /** An entry that would be taken, where the middle of the range is none that is met. */
  readonly example?: string
}

/** A decimal number in the one unit its field has: percent, newtons, grams a metre. */
export function DecimalField({ label, binding, range, emptyMeans, alsoReads, example: given }: Props) {
  const figure = (amount: number): Figure => formatDecimal(amount, range.unit)
  const allowed = `${figureText(figure(range.min))} – ${figureText(figure(range.max))}`
  const read = (text: string): Reading<number | null> => {
    if (range.open && text.trim() === '') return { ok: true, value: null }
    const other = alsoReads?.(text) ?? null
    const parsed = other === null ? parseDecimal(text, range.unit) : ({ ok: true, amount: other } as const)
    if (!parsed.ok) {
      const spellings = parsed.problem.code === 'ambiguous' ? parsed.problem.readings : null
      const example = given ?? figureText(figure((range.min + range.max) / 2))
      return { ok: false, sentence: fieldProblem(label, parsed.problem, allowed, example), spellings }
    }
    const side = parsed.amount < range.min ? 'below' : parsed.amount > range.max ? 'above' : null
    if (side === null) return { ok: true, value: parsed.amount }
    return {
      ok: false,
      sentence: outsideRange(label, figureText(figure(parsed.amount)), side, allowed),
      spellings: null,
    }
  }
  const typed = useTypedText<number | null>(binding, read, (amount) =>
    amount === null ? '' : figureText({ ...figure(amount), unit: '' }),
  )
  return (
    <TypedField
      label={label}
      name={binding.name}
      typed={typed}
      unit={figure(binding.value ?? range.min).unit}
      understood={typed.reading?.ok && typed.reading.value !== null ? figure(typed.reading.value) : null}
      range={allowed}
      width={7}
      inputMode="decimal"
      placeholder={binding.value === null ? (emptyMeans ?? FIELD_WORDS.isOpen) : undefined}
    />
  )
}

import { parseCount } from '../format/parseCount.ts'
import type { FieldRange } from '../record/fieldRange.ts'
import { FIELD_WORDS, fieldProblem, outsideRange } from '../words/fieldProblem.ts'
import type { FieldBinding } from './fieldBinding.ts'
import { TypedField } from './TypedField.tsx'
import { type Reading, useTypedText } from './useTypedText.ts'

export type CountRange = Extract<FieldRange, { type: 'count' }>

interface Props {
  readonly label: string
  /** A whole number; null where the range may be open. */
  readonly binding: FieldBinding<number | null>
  readonly range: CountRange
  /** What an empty field means. */
  readonly emptyMeans?: string
}

/** A whole number as a maker types it. */
export function CountField({ label, binding, range, emptyMeans }: Props) {
  const allowed = `${range.min} – ${range.max}`
  const read = (text: string): Reading<number | null> => {
    if (range.open && text.trim() === '') return { ok: true, value: null }
    const parsed = parseCount(text)
    if (!parsed.ok) {
      const spellings = parsed.problem.code === 'ambiguous' ? parsed.problem.readings : null
      return { ok: false, sentence: fieldProblem(label, parsed.problem, allowed, String(range.min)), spellings }
    }
    const side = parsed.count < range.min ? 'below' : parsed.count > range.max ? 'above' : null
    if (side === null) return { ok: true, value: parsed.count }
    return { ok: false, sentence: outsideRange(label, String(parsed.count), side, allowed), spellings: null }
  }
  const typed = useTypedText<number | null>(binding, read, (count) => (count === null ? '' : String(count)))
  return (
    <TypedField
      label={label}
      name={binding.name}
      typed={typed}
      unit=""
      understood={null}
      range={allowed}
      width={5}
      inputMode="numeric"
      placeholder={binding.value === null ? (emptyMeans ?? FIELD_WORDS.isOpen) : undefined}
    />
  )
}

import { formatTypedHours } from '../format/formatTypedHours.ts'
import { parseDuration } from '../format/parseDuration.ts'
import { fieldProblem, outsideRange } from '../words/fieldProblem.ts'
import type { FieldBinding } from './fieldBinding.ts'
import { TypedField } from './TypedField.tsx'
import { type Reading, useTypedText } from './useTypedText.ts'

interface Props {
  readonly label: string
  /** Hours. */
  readonly binding: FieldBinding<number>
  readonly most: number
}

const HOUR_S = 3600

/** A length of time, told in hours: 1.5, 90 min, 2 d. */
export function HoursField({ label, binding, most }: Props) {
  const allowed = `0 – ${most}\u2009h`
  const read = (text: string): Reading<number> => {
    const parsed = parseDuration(text, 'hours')
    if (!parsed.ok) {
      const spellings = parsed.problem.code === 'ambiguous' ? parsed.problem.readings : null
      return { ok: false, sentence: fieldProblem(label, parsed.problem, allowed, '1.5'), spellings }
    }
    const hours = parsed.seconds / HOUR_S
    const side = hours < 0 ? 'below' : hours > most ? 'above' : null
    if (side === null) return { ok: true, value: hours }
    return { ok: false, sentence: outsideRange(label, `${formatTypedHours(hours)} h`, side, allowed), spellings: null }
  }
  const typed = useTypedText<number>(binding, read, formatTypedHours)
  return (
    <TypedField
      label={label}
      name={binding.name}
      typed={typed}
      unit="h"
      understood={null}
      range={allowed}
      width={5}
      inputMode="decimal"
    />
  )
}

import { useId } from 'react'
import { formatDate } from '../format/formatDate.ts'
import { noSuchDay } from '../words/fieldProblem.ts'
import type { FieldBinding } from './fieldBinding.ts'
import { type Reading, useTypedText } from './useTypedText.ts'
import './field.css'

interface Props {
  readonly label: string
  /** ISO day, or null for none. */
  readonly binding: FieldBinding<string | null>
}

/** A day of the calendar, picked or typed as the device writes days. */
export function DateField({ label, binding }: Props) {
  const hintId = useId()
  const read = (text: string): Reading<string | null> => {
    if (text === '') return { ok: true, value: null }
    return formatDate(text) === text
      ? { ok: false, sentence: noSuchDay(label), spellings: null }
      : { ok: true, value: text }
  }
  const typed = useTypedText<string | null>(binding, read, (value) => value ?? '')
  const problem = typed.reading !== null && !typed.reading.ok ? typed.reading.sentence : null
  return (
    <div className="field" data-field={binding.name}>
      <label className="field-label" htmlFor={typed.id}>
        {label}
      </label>
      <div className="field-line">
        <input
          className="field-input field-date"
          type="date"
          aria-invalid={problem !== null}
          aria-describedby={hintId}
          {...typed.inputProps}
        />
      </div>
      <p className="field-hint" id={hintId}>
        {problem !== null && <span className="field-problem">{problem}</span>}
      </p>
    </div>
  )
}

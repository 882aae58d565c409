import { useId } from 'react'
import { tooLongText } from '../words/fieldProblem.ts'
import type { FieldBinding } from './fieldBinding.ts'
import { type Reading, useTypedText } from './useTypedText.ts'
import './field.css'

interface Props {
  readonly label: string
  readonly binding: FieldBinding<string>
  readonly most: number
  /** What is said where it is left empty; without it, it may be. */
  readonly missing?: string
  /** More than one line to write on. */
  readonly lines?: number
  readonly autoComplete?: string
}

/** Words, as they are typed. */
export function TextField({ label, binding, most, missing, lines, autoComplete = 'off' }: Props) {
  const hintId = useId()
  const read = (text: string): Reading<string> => {
    if (text.length > most) return { ok: false, sentence: tooLongText(label, most), spellings: null }
    if (missing !== undefined && text.trim() === '') return { ok: false, sentence: missing, spellings: null }
    return { ok: true, value: text }
  }
  const typed = useTypedText<string>(binding, read, (value) => value, lines !== undefined)
  const problem = typed.reading !== null && !typed.reading.ok ? typed.reading.sentence : null
  const shared = {
    ...typed.inputProps,
    'aria-invalid': problem !== null,
    'aria-describedby': problem === null ? undefined : hintId,
    autoComplete,
  }
  return (
    <div className="field field-text" data-field={binding.name}>
      <label className="field-label" htmlFor={typed.id}>
        {label}
      </label>
      {lines === undefined ? (
        <input className="field-input" type="text" {...shared} />
      ) : (
        <textarea className="field-input" rows={lines} {...shared} />
      )}
      {problem !== null && (
        <p className="field-hint" id={hintId}>
          <span className="field-problem">{problem}</span>
        </p>
      )}
    </div>
  )
}

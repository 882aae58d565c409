import { type ReactNode, useEffect, useId, useRef } from 'react'
import type { Figure } from '../format/figure.ts'
import { FIELD_WORDS } from '../words/fieldProblem.ts'
import { FigureText } from './FigureText.tsx'
import type { TypedText } from './useTypedText.ts'
import './field.css'

interface Props<Value> {
  readonly label: string
  /** Dotted name of the place in the record: what findings lead to. */
  readonly name: string
  readonly typed: TypedText<Value>
  /** Unit that stands behind the stored value; '' where the text carries its own. */
  readonly unit: string
  /** What was understood of the text being typed. */
  readonly understood: Figure | null
  readonly range: string
  /** How many signs the usual value is long. */
  readonly width?: number
  readonly inputMode?: 'text' | 'decimal' | 'numeric'
  readonly placeholder?: string | undefined
  readonly children?: ReactNode
}

/** The form every field of a typed number has: a line to write on, the unit behind it, what was understood, and why not. */
export function TypedField<Value>(props: Props<Value>) {
  const { label, name, typed, unit, understood, range, width = 9, inputMode = 'text', placeholder, children } = props
  const hintId = useId()
  const problem = typed.reading !== null && !typed.reading.ok ? typed.reading : null
  const input = typed.inputProps
  const hint = useRef<HTMLParagraphElement>(null)
  const sentence = typed.isFocused ? (problem?.sentence ?? null) : null
  // What cannot be taken is said where it can be read: the last field of a column stands at the edge of what shows.
  useEffect(() => {
    if (sentence !== null) hint.current?.scrollIntoView?.({ block: 'nearest' })
  }, [sentence])
  return (
    <div className="field" data-field={name}>
      <label className="field-label" htmlFor={input.id}>
        {label}
      </label>
      <div className="field-line">
        <input
          className="field-input"
          size={width}
          type="text"
          inputMode={inputMode}
          autoComplete="off"
          autoCorrect="off"
          autoCapitalize="off"
          spellCheck={false}
          placeholder={placeholder}
          aria-invalid={problem !== null}
          aria-describedby={hintId}
          {...input}
        />
        {!typed.isTyped && unit !== '' && <span className="field-unit">{`\u2009${unit}`}</span>}
        {typed.isTyped && understood !== null && (
          <output className="field-understood" htmlFor={input.id}>
            {'= '}
            <FigureText figure={understood} />
          </output>
        )}
        {children}
      </div>
      <p className="field-hint" id={hintId} ref={hint}>
        {problem !== null ? (
          <span className="field-problem">{problem.sentence}</span>
        ) : (
          <span className="field-range" data-shown={typed.isFocused}>
            {FIELD_WORDS.allowed} {range}
          </span>
        )}
      </p>
      {problem !== null && problem.spellings !== null && !input.readOnly && (
        <fieldset className="field-asked" aria-label={`${FIELD_WORDS.asked}: ${label}`}>
          {problem.spellings.map((spelling) => (
            <button className="button" type="button" key={spelling} onClick={() => typed.type(spelling)}>
              {spelling}
            </button>
          ))}
        </fieldset>
      )}
    </div>
  )
}

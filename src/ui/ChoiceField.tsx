import { useId } from 'react'
import type { FieldBinding } from './fieldBinding.ts'
import './field.css'

interface Props<Choice extends string> {
  readonly label: string
  readonly binding: FieldBinding<Choice>
  readonly choices: readonly { readonly value: Choice; readonly label: string; readonly about?: string }[]
}

/** One of a few, all of them in sight. */
export function ChoiceField<Choice extends string>({ label, binding, choices }: Props<Choice>) {
  const name = useId()
  const about = choices.find(({ value }) => value === binding.value)?.about
  const choose = (value: Choice): void => {
    binding.begin()
    binding.take(value)
    binding.end()
  }
  return (
    <fieldset className="field field-choice" data-field={binding.name} disabled={binding.readOnly}>
      <legend className="field-label">{label}</legend>
      <div className="field-choices">
        {choices.map((choice) => (
          <label className="choice" key={choice.value}>
            <input
              type="radio"
              name={name}
              value={choice.value}
              checked={choice.value === binding.value}
              onChange={() => choose(choice.value)}
            />
            <span>{choice.label}</span>
          </label>
        ))}
      </div>
      {about !== undefined && <p className="field-hint">{about}</p>}
    </fieldset>
  )
}

import { useId } from 'react'
import './field.css'

interface Props<Choice extends string> {
  readonly label: string
  readonly value: Choice
  readonly choices: readonly { readonly value: Choice; readonly label: string }[]
  readonly onChoose: (value: Choice) => void
}

/** How a sheet is looked at, one of a few: no part of the record. */
export function Switch<Choice extends string>({ label, value, choices, onChoose }: Props<Choice>) {
  const name = useId()
  return (
    <fieldset className="switch">
      <legend className="field-label">{label}</legend>
      <div className="field-choices">
        {choices.map((choice) => (
          <label className="choice" key={choice.value}>
            <input
              type="radio"
              name={name}
              value={choice.value}
              checked={choice.value === value}
              onChange={() => onChoose(choice.value)}
            />
            <span>{choice.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}

import type { FieldBinding } from './fieldBinding.ts'
import './field.css'

interface Props<Choice extends string> {
  readonly label: string
  readonly binding: FieldBinding<Choice>
  readonly choices: readonly { readonly value: Choice; readonly label: string }[]
}

/** One of many, of which only the chosen is in sight. */
export function SelectField<Choice extends string>({ label, binding, choices }: Props<Choice>) {
  const choose = (value: string): void => {
    const choice = choices.find((one) => one.value === value)
    if (choice === undefined) return
    binding.begin()
    binding.take(choice.value)
    binding.end()
  }
  return (
    <label className="field field-wide" data-field={binding.name}>
      <span className="field-label">{label}</span>
      <select
        className="field-input"
        value={binding.value}
        disabled={binding.readOnly}
        onChange={(event) => choose(event.target.value)}
      >
        {choices.map(({ value, label: text }) => (
          <option key={value} value={value}>
            {text}
          </option>
        ))}
      </select>
    </label>
  )
}

import { type FormEvent, useId, useState } from 'react'
import type { Tool } from '../../core/catalogue/about.ts'
import { todayHere } from '../../device/today.ts'
import { gaugeToday, MOST_GAUGE_NAME } from '../../state/gaugeStore.ts'
import { AT_HAND_WORDS as words } from '../../words/atHand.ts'
import { TOOL_WORDS } from '../../words/bodySheets.ts'
import { useGauges, useWorkshop } from '../workshop.ts'

/** The gauges of this bench: the one taken stays in hand for the day. */
export function GaugePanel({ tool, onDone }: { readonly tool: Tool; readonly onDone: () => void }) {
  const { gauges } = useWorkshop()
  const known = useGauges((state) => state.known)
  const chosen = useGauges((state) => gaugeToday(state, tool, todayHere()))
  const [name, setName] = useState('')
  const id = useId()
  const take = (gauge: string): void => {
    gauges.choose(tool, gauge, todayHere())
    onDone()
  }
  const submit = (event: FormEvent): void => {
    event.preventDefault()
    take(name)
  }
  return (
    <section className="bench-panel" aria-labelledby={id}>
      <h2 id={id}>{words.whichGauge}</h2>
      <ul className="bench-choices">
        {['', ...known].map((gauge) => (
          <li key={gauge}>
            <button
              className="bench-choice"
              type="button"
              aria-pressed={gauge === (chosen ?? '')}
              onClick={() => take(gauge)}
            >
              {gauge === '' ? TOOL_WORDS[tool] : gauge}
            </button>
          </li>
        ))}
      </ul>
      <form className="gauge-form" onSubmit={submit}>
        <label htmlFor={`${id}-name`}>{words.otherGauge}</label>
        <input
          id={`${id}-name`}
          value={name}
          maxLength={MOST_GAUGE_NAME}
          autoComplete="off"
          onChange={(event) => setName(event.target.value)}
        />
        <button className="button" type="submit" disabled={name.trim() === ''}>
          {words.takeGauge}
        </button>
      </form>
    </section>
  )
}

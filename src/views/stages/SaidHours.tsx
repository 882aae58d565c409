import { useId } from 'react'
import { formatDate } from '../../format/formatDate.ts'
import { parseDuration } from '../../format/parseDuration.ts'
import { MOST_HOURS } from '../../record/bench/factSchemas.ts'
import { STAGES_PLACE_WORDS } from '../../words/stagesPlace.ts'
import '../../ui/field.css'

const words = STAGES_PLACE_WORDS
const HOUR_S = 3600

/** Hours and the day they were worked on, as typed. */
export interface SaidText {
  readonly hours: string
  readonly on: string
}

export type SaidHours =
  | { readonly ok: true; readonly hours: number; readonly on: string }
  | { readonly ok: false; readonly sentence: string }

/** What was typed as hours of a day; a sentence where it is none. */
export function readSaid({ hours: text, on }: SaidText): SaidHours {
  const parsed = parseDuration(text, 'hours')
  const hours = parsed.ok ? parsed.seconds / HOUR_S : 0
  if (hours <= 0 || hours > MOST_HOURS) return { ok: false, sentence: words.hoursWrong }
  // What is no day of the calendar comes back as it was.
  if (formatDate(on) === on) return { ok: false, sentence: words.dayWrong }
  return { ok: true, hours, on }
}

interface Props {
  readonly said: SaidText
  readonly onSay: (said: SaidText) => void
}

/** Asks for hours and their day. */
export function SaidHoursFields({ said, onSay }: Props) {
  const ids = { hours: useId(), on: useId() }
  return (
    <>
      <div className="field">
        <label className="field-label" htmlFor={ids.hours}>
          {words.hoursSaid}
        </label>
        <input
          className="field-input"
          id={ids.hours}
          size={8}
          inputMode="decimal"
          autoComplete="off"
          value={said.hours}
          onChange={({ target }) => onSay({ ...said, hours: target.value })}
        />
      </div>
      <div className="field">
        <label className="field-label" htmlFor={ids.on}>
          {words.onDay}
        </label>
        <input
          className="field-input field-date"
          id={ids.on}
          type="date"
          value={said.on}
          onChange={({ target }) => onSay({ ...said, on: target.value })}
        />
      </div>
    </>
  )
}

import { useEffect, useId, useRef } from 'react'
import { correctionOf } from '../../record/bench/readingOf.ts'
import type { Measured } from '../../record/bench/measured.ts'
import { shopTypedUnit, withTypedUnit } from '../../format/typedReading.ts'
import { aboutNumber } from '../../core/catalogue.ts'
import { READINGS_PAGE_WORDS } from '../../words/measured.ts'
import { useDraft, useShop, useWorkshop } from '../workshop.ts'
import { readText } from './readText.ts'

interface Props {
  readonly reading: Measured
  readonly called: string
  readonly onDone: () => void
}

/** What a reading is mended to: the first one stays on record under it. */
export function CorrectReading({ reading, called, onDone }: Props) {
  const { commission, drafts } = useWorkshop()
  const units = useShop((state) => state.shop.units)
  const field = `reading.correct.${reading.id}`
  const text = useDraft(reading.docId, field) ?? ''
  const hintId = useId()
  const input = useRef<HTMLInputElement>(null)
  useEffect(() => input.current?.focus(), [])
  const read = text.trim() === '' ? null : readText(text, called, reading.number, reading.planned, units)
  const unit = shopTypedUnit(aboutNumber(reading.number).quantity, units)
  const leave = (): void => {
    drafts.clear(reading.docId, field)
    onDone()
  }
  const store = (): void => {
    if (read === null || !read.ok) return input.current?.focus()
    const mended = correctionOf(reading, { value: read.value, typed: withTypedUnit(text, unit) })
    if (commission.addReading(mended).ok) leave()
  }
  return (
    <form
      className="measured-mend"
      onSubmit={(event) => {
        event.preventDefault()
        store()
      }}
    >
      <label className="field">
        <span className="field-label">{READINGS_PAGE_WORDS.field(called)}</span>
        <input
          className="field-input"
          ref={input}
          type="text"
          autoComplete="off"
          value={text}
          aria-invalid={read !== null && !read.ok}
          aria-describedby={hintId}
          onChange={(event) => drafts.keep(reading.docId, field, event.target.value)}
          onKeyDown={(event) => {
            if (event.key === 'Escape') leave()
          }}
        />
      </label>
      <button className="button button-next" type="submit" disabled={read === null || !read.ok}>
        {READINGS_PAGE_WORDS.store}
      </button>
      <button className="button" type="button" onClick={leave}>
        {READINGS_PAGE_WORDS.cancel}
      </button>
      <p className="field-hint" id={hintId}>
        {read !== null && !read.ok && <span className="field-problem">{read.sentence}</span>}
      </p>
    </form>
  )
}

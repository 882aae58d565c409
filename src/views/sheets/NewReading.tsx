import { type RefObject, useId, useRef, useState } from 'react'
import { figureText } from '../../format/figure.ts'
import { formatLength } from '../../format/formatLength.ts'
import { readLength } from '../../ui/LengthField.tsx'
import type { Reading } from '../../ui/useTypedText.ts'
import { READINGS_WORDS } from '../../words/readings.ts'
import type { Column, Pair } from './pastedReadings.ts'
import { useSheetBench } from './sheetBench.ts'

interface Props {
  readonly columns: readonly [Column, Column]
  /** Where the next reading is likely taken. */
  readonly nextMm: number
  readonly add: (pair: Pair) => void
}

/** The next reading, one step on: written down nowhere until both lengths are there. Enter adds it and goes on to the next. */
export function NewReading({ columns, nextMm, add }: Props) {
  const { units, readOnly } = useSheetBench()
  const [firstText, setFirstText] = useState<string | null>(null)
  const [secondText, setSecondText] = useState('')
  const second = useRef<HTMLInputElement>(null)
  const canSuggest = nextMm <= columns[0].range.maxMm
  const suggested = canSuggest ? figureText(formatLength(nextMm, 'bodyLength', units)) : ''
  const read = (text: string, { label, range }: Column) => readLength(text, label, range, units)
  const a =
    firstText === null && canSuggest ? ({ ok: true, value: nextMm } as const) : read(firstText ?? '', columns[0])
  const b = read(secondText, columns[1])
  const pair: Pair | null =
    a.ok && b.ok && typeof a.value === 'number' && typeof b.value === 'number' ? [a.value, b.value] : null
  return (
    <form
      className="reading reading-next"
      aria-label={READINGS_WORDS.next}
      onSubmit={(event) => {
        event.preventDefault()
        if (pair === null || readOnly) return
        add(pair)
        setFirstText(null)
        setSecondText('')
        second.current?.focus()
      }}
    >
      <NextInput
        label={`${READINGS_WORDS.next}: ${columns[0].label.toLowerCase()}`}
        text={firstText ?? suggested}
        problem={firstText === null || firstText === '' ? null : problemOf(a)}
        type={setFirstText}
      />
      <NextInput
        label={`${READINGS_WORDS.next}: ${columns[1].label.toLowerCase()}`}
        text={secondText}
        problem={secondText === '' ? null : problemOf(b)}
        type={setSecondText}
        inputRef={second}
      />
      <button className="button" type="submit" disabled={readOnly || pair === null}>
        {READINGS_WORDS.add}
      </button>
    </form>
  )
}

const problemOf = (reading: Reading<unknown>): string | null => (reading.ok ? null : reading.sentence)

interface InputProps {
  readonly label: string
  readonly text: string
  readonly problem: string | null
  readonly type: (text: string) => void
  readonly inputRef?: RefObject<HTMLInputElement | null>
}

function NextInput({ label, text, problem, type, inputRef }: InputProps) {
  const { readOnly } = useSheetBench()
  const id = useId()
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <div className="field-line">
        <input
          className="field-input"
          id={id}
          ref={inputRef}
          size={9}
          type="text"
          autoComplete="off"
          spellCheck={false}
          readOnly={readOnly}
          aria-invalid={problem !== null}
          aria-describedby={`${id}-hint`}
          value={text}
          onFocus={(event) => event.currentTarget.select()}
          onChange={(event) => type(event.target.value)}
        />
      </div>
      <p className="field-hint" id={`${id}-hint`}>
        {problem !== null && <span className="field-problem">{problem}</span>}
      </p>
    </div>
  )
}

import { type FormEvent, type ReactNode, useId, useState } from 'react'
import { formatTypedHours } from '../../format/formatTypedHours.ts'
import { parseDuration } from '../../format/parseDuration.ts'
import { MOST_TIMER_SECONDS } from '../../record/timer.ts'
import { Dialog } from '../../ui/Dialog.tsx'
import '../../ui/field.css'
import { fieldProblem } from '../../words/fieldProblem.ts'
import { TIMER_WORDS } from '../../words/timers.ts'
import { useWorkshop } from '../workshop.ts'
import './timerPanel.css'

/** How long it takes by the practice of the trade, hours. */
export interface HoursProposed {
  readonly low: number
  readonly likely: number
  readonly high: number
}

interface Props {
  readonly docId: string
  readonly stageId: string | null
  /** The instrument's number as it is shown. */
  readonly number: string
  /** What sets; the maker may say it in other words. */
  readonly label: string
  readonly proposed: HoursProposed | null
  readonly onClose: () => void
}

/** Asks what sets and for how long, and starts the timer. */
export function StartTimer({ docId, stageId, number, label: given, proposed, onClose }: Props) {
  const { timers } = useWorkshop()
  const [label, setLabel] = useState(given)
  const [hours, setHours] = useState(proposed === null ? '' : formatTypedHours(proposed.likely))
  const [minutes, setMinutes] = useState('')
  const [trouble, setTrouble] = useState<string | null>(null)
  const words = TIMER_WORDS

  const start = async (event: FormEvent): Promise<void> => {
    event.preventDefault()
    const said = label.trim()
    if (said === '') return setTrouble(words.whatMissing)
    const length = readLength(hours, minutes)
    if (!length.ok) return setTrouble(length.sentence)
    try {
      const opened = await timers.open()
      await opened.start({ docId, stageId, number, label: said, seconds: length.seconds })
      onClose()
    } catch {
      setTrouble(words.notFetched)
    }
  }

  return (
    <Dialog title={words.startTitle} onClose={onClose}>
      <form className="dialog-body" onSubmit={(event) => void start(event)}>
        <Line label={words.what(number)} value={label} most={200} onType={setLabel} />
        {proposed !== null && (
          <div className="commands start-timer-proposals">
            {(['low', 'likely', 'high'] as const).map((one) => {
              const text = formatTypedHours(proposed[one])
              return (
                <button
                  className="button"
                  type="button"
                  key={one}
                  aria-pressed={hours === text && minutes === ''}
                  onClick={() => {
                    setHours(text)
                    setMinutes('')
                  }}
                >
                  <strong>{`${text}\u2009h`}</strong>
                  <span className="small">{words[one]}</span>
                </button>
              )
            })}
          </div>
        )}
        <div className="start-timer-fields">
          <Line label={words.hours} value={hours} most={40} inputMode="decimal" onType={setHours} />
          <Line label={words.minutes} value={minutes} most={40} inputMode="decimal" onType={setMinutes} />
        </div>
        <p className="second">{words.checkLabel}</p>
        {trouble !== null && (
          <p className="field-problem" role="alert">
            {trouble}
          </p>
        )}
        <div className="commands">
          <button className="button button-next" type="submit">
            {words.go}
          </button>
        </div>
      </form>
    </Dialog>
  )
}

type Length = { readonly ok: true; readonly seconds: number } | { readonly ok: false; readonly sentence: string }

/** Hours and minutes together; one of them may stay empty. */
function readLength(hours: string, minutes: string): Length {
  let seconds = 0
  for (const [text, bare] of [
    [hours, 'hours'],
    [minutes, 'minutes'],
  ] as const) {
    const read = parseDuration(text, bare)
    if (read.ok) seconds += read.seconds
    else if (read.problem.code !== 'empty')
      return {
        ok: false,
        sentence: fieldProblem(TIMER_WORDS[bare], read.problem, TIMER_WORDS.range, bare === 'hours' ? '12' : '30'),
      }
  }
  const isLength = seconds >= 1 && seconds <= MOST_TIMER_SECONDS
  return isLength ? { ok: true, seconds } : { ok: false, sentence: TIMER_WORDS.notSoLong }
}

interface LineProps {
  readonly label: string
  readonly value: string
  readonly most: number
  readonly inputMode?: 'text' | 'decimal'
  readonly onType: (text: string) => void
}

function Line({ label, value, most, inputMode = 'text', onType }: LineProps): ReactNode {
  const id = useId()
  return (
    <div className="field field-text">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <input
        className="field-input"
        id={id}
        type="text"
        inputMode={inputMode}
        autoComplete="off"
        maxLength={most}
        value={value}
        onChange={(event) => onType(event.target.value)}
      />
    </div>
  )
}

import { lazy, Suspense, useState } from 'react'
import { useStore } from 'zustand'
import { formatTimeLeft, formatTimePast } from '../format/formatTimeLeft.ts'
import { type Timer, timeLeftMs } from '../record/timer.ts'
import type { TimerStore } from '../state/timerStore.ts'
import '../ui/field.css'
import { TIMER_WORDS } from '../words/timers.ts'
import './timers.css'

const TimerPanel = lazy(async () => ({ default: (await import('../views/timers/TimerPanel.tsx')).TimerPanel }))

/** As many as a tablet has room for; the panel shows all. */
const MOST_SHOWN = 3

/** What sets just now, on every sheet: a touch opens the panel. Nothing while there is no timer. */
export function TimerStrip({ timers: owner }: { readonly timers: TimerStore }) {
  const { timers, now, problem, sound, lastReady } = useStore(owner.store)
  const [isOpen, setOpen] = useState(false)
  const open = (): void => setOpen(true)
  const more = timers.length - MOST_SHOWN
  const words = TIMER_WORDS
  return (
    <>
      {(timers.length > 0 || problem !== null) && (
        <section className="timer-strip" aria-label={words.strip}>
          {timers.slice(0, MOST_SHOWN).map((timer) => (
            <TimerButton key={timer.id} timer={timer} now={now} onPress={open} />
          ))}
          {more > 0 && (
            <button className="timer-strip-more" type="button" onClick={open}>
              {words.more(more)}
            </button>
          )}
          {problem !== null && (
            <button className="timer-strip-more timer-strip-trouble" type="button" onClick={open}>
              {words.notStored}
            </button>
          )}
          <button
            className="field-toggle timer-strip-sound"
            type="button"
            aria-pressed={sound}
            onClick={() => owner.allowSound(!sound)}
          >
            {words.sound}
          </button>
        </section>
      )}
      <output className="out-of-sight">
        {lastReady !== null && words.readyNow(lastReady.number, lastReady.label)}
      </output>
      {isOpen && (
        <Suspense fallback={null}>
          <TimerPanel timers={owner} onClose={() => setOpen(false)} />
        </Suspense>
      )}
    </>
  )
}

interface ButtonProps {
  readonly timer: Timer
  readonly now: string
  readonly onPress: () => void
}

function TimerButton({ timer, now, onPress }: ButtonProps) {
  const { number, label } = timer
  const leftMs = timeLeftMs(timer, now)
  const isReady = leftMs <= 0
  const past = formatTimePast(-leftMs)
  const left = formatTimeLeft(leftMs)
  const name = isReady ? TIMER_WORDS.ranOut(number, label, past) : TIMER_WORDS.running(number, label, left)
  return (
    <button className="timer-button" type="button" data-ready={isReady} aria-label={name} onClick={onPress}>
      <span className="timer-mark" />
      <span className="timer-what">
        <span>
          <strong>{number}</strong>
          {isReady && past !== null && <span className="second">{` ${TIMER_WORDS.since(past)}`}</span>}
        </span>
        <span className="timer-label">{label}</span>
      </span>
      <span className="timer-left">{isReady ? TIMER_WORDS.ready : left}</span>
    </button>
  )
}

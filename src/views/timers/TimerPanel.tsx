import { Link } from 'wouter'
import { useStore } from 'zustand'
import { formatMoment } from '../../format/formatMoment.ts'
import { formatTimeLeft, formatTimePast } from '../../format/formatTimeLeft.ts'
import { type Timer, timeLeftMs } from '../../record/timer.ts'
import type { TimerStore } from '../../state/timerStore.ts'
import { Dialog } from '../../ui/Dialog.tsx'
import { problemSentence } from '../../words/problems.ts'
import { TIMER_WORDS } from '../../words/timers.ts'
import { useList } from '../workshop.ts'
import './timerPanel.css'

interface Props {
  readonly timers: TimerStore
  readonly onClose: () => void
}

/** Everything that sets, with what can be done about it, and how it makes itself known. */
export function TimerPanel({ timers: owner, onClose }: Props) {
  const { timers, now, problem, notices, lastEnded } = useStore(owner.store)
  const words = TIMER_WORDS
  return (
    <Dialog title={words.panel} onClose={onClose}>
      <div className="dialog-body">
        {problem !== null && (
          <div className="commands">
            <p role="alert">{problemSentence(problem)}</p>
            <button className="button" type="button" onClick={() => void owner.flush()}>
              {words.retry}
            </button>
          </div>
        )}
        {timers.length === 0 && <p>{words.none}</p>}
        <ul className="timer-rows">
          {timers.map((timer) => (
            <TimerRow key={timer.id} timer={timer} now={now} owner={owner} onGo={onClose} />
          ))}
        </ul>
        {lastEnded !== null && (
          <div className="commands">
            <output>{words.wasEnded(`${lastEnded.number} ${lastEnded.label}`)}</output>
            <button className="button" type="button" onClick={() => void owner.bringBack()}>
              {words.undo}
            </button>
          </div>
        )}
        <div className="timer-notices">
          <p className="second">{words.notices[notices]}</p>
          {notices === 'off' && (
            <button className="button" type="button" onClick={() => void owner.allowNotices(true)}>
              {words.tellMe}
            </button>
          )}
          {notices === 'on' && (
            <button className="button" type="button" onClick={() => void owner.allowNotices(false)}>
              {words.tellNoMore}
            </button>
          )}
        </div>
      </div>
    </Dialog>
  )
}

interface RowProps {
  readonly timer: Timer
  readonly now: string
  readonly owner: TimerStore
  readonly onGo: () => void
}

function TimerRow({ timer, now, owner, onGo }: RowProps) {
  const { id, docId, number, label } = timer
  const isHere = useList((state) => state.heads.some((head) => head.id === docId && head.deletedAt === null))
  const leftMs = timeLeftMs(timer, now)
  const isReady = leftMs <= 0
  const past = formatTimePast(-leftMs)
  const moment = formatMoment(timer.endsAt)
  const name = `${number} ${label}`
  const words = TIMER_WORDS
  return (
    <li className="timer-row" data-ready={isReady}>
      <span className="timer-mark" />
      <h3>
        {number} <span className="timer-row-label">{label}</span>
      </h3>
      <p className="timer-row-left">
        {isReady ? words.ready : formatTimeLeft(leftMs)}
        <span className="second small">{isReady ? words.ended(moment, past) : words.ends(moment)}</span>
      </p>
      <div className="commands">
        <button
          className={isReady ? 'button button-next' : 'button'}
          type="button"
          aria-label={isReady ? words.doneWith(name) : words.stopIt(name)}
          onClick={() => void owner.end(id)}
        >
          {isReady ? words.done : words.stop}
        </button>
        <button
          className="button"
          type="button"
          aria-label={words.addTenTo(name)}
          onClick={() => void owner.addMinutes(id, 10)}
        >
          {words.addTen}
        </button>
        <button
          className="button"
          type="button"
          aria-label={words.addHourTo(name)}
          onClick={() => void owner.addMinutes(id, 60)}
        >
          {words.addHour}
        </button>
        {isHere && (
          <Link className="button button-plain" href={`/i/${docId}`} onClick={onGo}>
            {words.goTo(number)}
          </Link>
        )}
      </div>
    </li>
  )
}

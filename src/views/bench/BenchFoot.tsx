import { useEffect, useState } from 'react'
import { systemClock } from '../../device/clock.ts'
import { formatRunningTime } from '../../format/formatRunningTime.ts'
import { hoursSoFar } from '../../record/bench/hoursSoFar.ts'
import { pressClock, workOf } from '../../record/bench/work.ts'
import type { StageDone } from '../../record/facts.ts'
import type { StageKey } from '../../record/patterns/stages.ts'
import { AT_HAND_WORDS as words } from '../../words/atHand.ts'
import { numbersBuiltTo } from '../builtTo.ts'
import { useCommission, useWorkshop } from '../workshop.ts'
import { CautionSign } from './StageLines.tsx'
import type { StageInHand } from './stageInHand.ts'

/** A running clock is looked at this often. */
const TICK_MS = 10_000

interface Props {
  readonly stage: StageInHand
  /** The stages of the instrument. */
  readonly present: readonly StageKey[]
  readonly done: StageDone | null
  readonly onPrevious: (() => void) | null
  readonly onNext: (() => void) | null
  /** Shows what there is to do; null: it stands there already. */
  readonly lines: { readonly isShown: boolean; readonly onToggle: () => void } | null
}

/** What the thumbs reach: the stages before and after in the corners, between them what is done once a stage. */
export function BenchFoot({ stage, present, done, onPrevious, onNext, lines }: Props) {
  const { commission } = useWorkshop()
  const isLocked = useCommission((state) => state.readOnly !== null)
  const signOff = (): void => {
    const numbers = commission.store.getState().computed?.numbers
    if (numbers !== undefined)
      commission.markStageDone(stage.id, numbersBuiltTo(stage.key, present, numbers, stage.own))
  }
  return (
    <footer className="bench-foot">
      <button className="bench-turn" type="button" disabled={onPrevious === null} onClick={() => onPrevious?.()}>
        <Arrow d="M13 4 L6 10 L13 16" />
        <span>{words.previousStage}</span>
      </button>
      <div className="bench-work">
        {lines !== null && (
          <button className="button" type="button" aria-expanded={lines.isShown} onClick={lines.onToggle}>
            {words.whatToDo}
            {stage.cautions.length > 0 && (
              <>
                <CautionSign />
                <span className="out-of-sight">{words.cautions}</span>
              </>
            )}
          </button>
        )}
        <StageClock stageId={stage.id} isLocked={isLocked} isDone={done !== null} />
        {done === null ? (
          <button
            className="button"
            type="button"
            disabled={isLocked}
            aria-label={words.doneNamed(stage.title)}
            onClick={signOff}
          >
            {words.done}
          </button>
        ) : (
          <button
            className="button button-plain"
            type="button"
            disabled={isLocked}
            aria-label={words.undoDoneNamed(stage.title)}
            onClick={() => commission.withdrawStage(stage.id)}
          >
            {words.undoDone}
          </button>
        )}
      </div>
      <button
        className="bench-turn bench-turn-next"
        type="button"
        data-due={done !== null}
        disabled={onNext === null}
        onClick={() => onNext?.()}
      >
        <span>{words.nextStage}</span>
        <Arrow d="M7 4 L14 10 L7 16" />
      </button>
    </footer>
  )
}

const Arrow = ({ d }: { readonly d: string }) => (
  <svg viewBox="0 0 20 20" aria-hidden="true">
    <path d={d} />
  </svg>
)

interface ClockProps {
  readonly stageId: string
  readonly isLocked: boolean
  readonly isDone: boolean
}

/** The stage's clock: started and paused by one key, its time shown beside it. */
function StageClock({ stageId, isLocked, isDone }: ClockProps) {
  const { commission } = useWorkshop()
  const facts = useCommission((state) => state.facts)
  const work = workOf(facts).get(stageId)
  const isRunning = work !== undefined && work.running !== null
  const [now, setNow] = useState(() => systemClock.now())
  useEffect(() => {
    if (!isRunning) return undefined
    const ticking = setInterval(() => setNow(systemClock.now()), TICK_MS)
    return () => clearInterval(ticking)
  }, [isRunning])
  const press = (): void => {
    const act = isRunning ? 'stop' : 'start'
    commission.addFacts((row, meta) => [pressClock(row, { stageId, act, sharedBy: 1 }, meta)])
    setNow(systemClock.now())
  }
  const time = formatRunningTime(hoursSoFar(work, now))
  if (isDone && work === undefined) return null
  return (
    <span className="bench-clock">
      {!isDone && (
        <button className="button" type="button" disabled={isLocked} aria-pressed={isRunning} onClick={press}>
          {isRunning ? words.clockPause : words.clockStart}
        </button>
      )}
      {work !== undefined && <span className="bench-time">{words.worked(time)}</span>}
    </span>
  )
}

import { lazy, Suspense, useEffect, useId, useRef } from 'react'
import { formatDate } from '../../format/formatDate.ts'
import { formatHours } from '../../format/formatHours.ts'
import { formatMoment } from '../../format/formatMoment.ts'
import { formatWorkHours } from '../../format/formatWorkHours.ts'
import type { FixtureKey } from '../../record/patterns/fixtureKeys.ts'
import type { Span } from '../../record/patterns/stages/stagePattern.ts'
import { isSigned, type StageState } from '../../record/bench/stageStates.ts'
import type { StageInHand } from '../../record/stageInHand.ts'
import { type DurationSpan, STAGES_PLACE_WORDS } from '../../words/stagesPlace.ts'
import { STAGE_FIXTURE_WORDS, waitAdvice } from '../../words/stageWork.ts'
import { useOrderBench } from './orderBench.ts'

const StageDetail = lazy(async () => ({ default: (await import('./StageDetail.tsx')).StageDetail }))

const words = STAGES_PLACE_WORDS

interface Props {
  readonly stage: StageInHand
  readonly isNext: boolean
  readonly isOpen: boolean
  readonly onToggle: () => void
  /** Opens another stage: one that has just come in. */
  readonly onShow: (id: string) => void
  readonly trouble: string | null
}

/** A line of the schedule; a tap opens what belongs to the stage under it. */
export function StageRow({ stage, isNext, isOpen, onToggle, onShow, trouble }: Props) {
  const { stateOf, titleOf, signOff, isLocked } = useOrderBench()
  const panelId = useId()
  const row = useRef<HTMLLIElement>(null)
  const scrolls = useRef(isNext)
  useEffect(() => {
    if (scrolls.current) row.current?.scrollIntoView?.({ block: 'center' })
  }, [])
  const state = stateOf(stage.id)
  const title = titleOf(stage.id)
  const isDone = isSigned(state)
  return (
    <li className="order-stage" ref={row} data-next={isNext} data-done={isDone} data-open={isOpen}>
      <div className="order-row">
        <button
          className="order-open"
          type="button"
          aria-expanded={isOpen}
          aria-controls={isOpen ? panelId : undefined}
          onClick={onToggle}
        >
          <span className="order-place">
            {stage.place}
            <StageMark kind={isDone ? 'done' : state.word === 'again' ? 'again' : isNext ? 'next' : 'toDo'} />
          </span>
          <span className="order-title">
            <span className="order-name">{title}</span>
            <FixturesHeld stage={stage} />
          </span>
          <span className="order-hands">
            {stage.handsH.high > 0 ? words.hands(durations(stage.handsH, formatWorkHours), stage.times) : words.noHands}
            {state.spentH > 0 && <span className="order-spent">{words.spentOn(formatWorkHours(state.spentH))}</span>}
          </span>
          <span className="order-wait">
            {stage.waitH.high > 0 &&
              words.wait(durations(stage.waitH, formatHours), stage.times, waitAdvice(stage.key))}
          </span>
          <span className="order-word">{stateWord(state, isNext)}</span>
        </button>
        {isNext && !isOpen && (
          <button
            className="button button-next"
            type="button"
            disabled={isLocked}
            aria-label={`${words.signOff}: ${title}`}
            onClick={() => signOff(stage.id)}
          >
            {words.signOff}
          </button>
        )}
      </div>
      {stage.standsBefore.length > 0 && (
        <p className="order-finding">{words.standsBefore(stage.standsBefore.map(titleOf))}</p>
      )}
      {isOpen && (
        <section className="order-detail" id={panelId} aria-label={title}>
          {trouble !== null && (
            <p className="field-problem" role="alert">
              {trouble}
            </p>
          )}
          <Suspense fallback={null}>
            <StageDetail stage={stage} onShow={onShow} />
          </Suspense>
        </section>
      )}
    </li>
  )
}

/** What stays on the work after hands have left it. */
function FixturesHeld({ stage }: { readonly stage: StageInHand }) {
  const { stages, titleOf } = useOrderBench()
  const held = stage.fixtures.flatMap(({ fixture, held: how, until }) => {
    const called = STAGE_FIXTURE_WORDS[fixture as FixtureKey] ?? fixture
    const last = stages.find(({ id }) => id === until)
    if (how === 'working') return []
    if (last === undefined || last.place <= stage.place) return [words.heldSetting(called)]
    return [words.heldUntil(called, titleOf(last.id), last.place)]
  })
  return held.length === 0 ? null : <span className="order-held">{held.join('; ')}</span>
}

function stateWord(state: StageState, isNext: boolean): string {
  const day = state.since === null ? '' : formatDate(state.since.slice(0, 10))
  switch (state.word) {
    case 'running':
      return words.runningSince(formatMoment(state.since ?? '')) + words.sharedBy(state.sharedBy)
    case 'done':
      return words.doneOn(day)
    case 'again':
      return words.again
    case 'toDo':
      return isNext ? words.next : words.toDo
  }
}

const durations = ({ low, likely, high }: Span, say: typeof formatHours): DurationSpan => ({
  low: say(low),
  likely: say(likely),
  high: say(high),
})

function StageMark({ kind }: { readonly kind: 'done' | 'next' | 'toDo' | 'again' }) {
  return (
    <svg className="stage-mark" viewBox="0 0 20 20" data-kind={kind} aria-hidden="true">
      {kind === 'done' && <path d="M3 11 L8 16 L17 4" />}
      {kind === 'next' && <circle cx="10" cy="10" r="6" />}
      {kind === 'toDo' && <path d="M10 5 V15" />}
      {kind === 'again' && <path d="M15 6 A6 6 0 1 0 16 11 M15 2 V6 H11" />}
    </svg>
  )
}

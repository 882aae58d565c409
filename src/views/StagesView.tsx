import { useEffect, useRef } from 'react'
import { formatDate } from '../format/formatDate.ts'
import { addStage, moveStage, skipStage } from '../record/changes/stages.ts'
import { type StageDone, stagesDone } from '../record/facts.ts'
import { inOrder } from '../record/order.ts'
import { type StageKey, startingStages } from '../record/patterns/stages.ts'
import { STAGES_WORDS } from '../words/instrument.ts'
import { STAGE_TITLES } from '../words/stageTitles.ts'
import { numbersBuiltTo } from './builtTo.ts'
import { useCommission, useWorkshop } from './workshop.ts'
import './stages.css'

/** The building order of this instrument: what is done, what is next, what is left out. */
export function StagesView() {
  const { commission, newGesture } = useWorkshop()
  const doc = useCommission((state) => state.record?.doc ?? null)
  const facts = useCommission((state) => state.facts)
  const isLocked = useCommission((state) => state.readOnly !== null)
  if (doc === null) return null
  const stages = inOrder(doc.stages)
  const done = stagesDone(facts)
  const nextId = stages.find(([id]) => !done.has(id))?.[0] ?? null
  const present = new Set(stages.map(([, stage]) => stage.key))
  const skipped = startingStages(doc.family).filter((key) => !present.has(key))

  const move = (at: number, by: -1 | 1): void => {
    const [id] = stages[at] ?? []
    const before = stages[by === -1 ? at - 1 : at + 2]?.[0] ?? null
    if (id !== undefined) commission.edit(moveStage(id, before))
  }
  const bringIn = (key: StageKey): void => {
    const order = startingStages(doc.family)
    const later = new Set(order.slice(order.indexOf(key) + 1))
    const before = stages.find(([, stage]) => later.has(stage.key))?.[0] ?? null
    commission.edit(addStage(newGesture(), key, before))
  }

  return (
    <>
      <header className="view-head">
        <h1>{STAGES_WORDS.title}</h1>
        <p className="second">{STAGES_WORDS.lead}</p>
      </header>
      <ol className="stages">
        {stages.map(([id, { key }], at) => (
          <StageRow
            key={id}
            place={at + 1}
            stageKey={key}
            done={done.get(id) ?? null}
            isNext={id === nextId}
            isLocked={isLocked}
            onDone={() => {
              const numbers = commission.store.getState().computed?.numbers
              if (numbers !== undefined) commission.markStageDone(id, numbersBuiltTo(key, [...present], numbers))
            }}
            onWithdraw={() => commission.withdrawStage(id)}
            onSkip={() => commission.edit(skipStage(id))}
            onEarlier={at === 0 ? null : () => move(at, -1)}
            onLater={at === stages.length - 1 ? null : () => move(at, 1)}
          />
        ))}
      </ol>
      {skipped.length > 0 && (
        <section className="stages-skipped">
          <h2>{STAGES_WORDS.skipped}</h2>
          <ul className="stages">
            {skipped.map((key) => (
              <li className="stage-row" key={key}>
                <span />
                <span>{STAGE_TITLES[key]}</span>
                <span />
                <button
                  className="button button-plain"
                  type="button"
                  disabled={isLocked}
                  aria-label={STAGES_WORDS.addBack(STAGE_TITLES[key])}
                  onClick={() => bringIn(key)}
                >
                  {STAGES_WORDS.addBackShort}
                </button>
              </li>
            ))}
          </ul>
        </section>
      )}
    </>
  )
}

interface RowProps {
  readonly place: number
  readonly stageKey: StageKey
  readonly done: StageDone | null
  readonly isNext: boolean
  readonly isLocked: boolean
  readonly onDone: () => void
  readonly onWithdraw: () => void
  readonly onSkip: () => void
  readonly onEarlier: (() => void) | null
  readonly onLater: (() => void) | null
}

function StageRow(props: RowProps) {
  const { place, stageKey, done, isNext, isLocked, onDone, onWithdraw, onSkip, onEarlier, onLater } = props
  const title = STAGE_TITLES[stageKey]
  const words = STAGES_WORDS
  const row = useRef<HTMLLIElement>(null)
  const startsNext = useRef(isNext)
  useEffect(() => {
    if (startsNext.current) row.current?.scrollIntoView({ block: 'center' })
  }, [])
  return (
    <li className="stage-row" ref={row} data-next={isNext} data-done={done !== null}>
      <span className="stage-place">
        {place}
        <StageMark kind={done !== null ? 'done' : isNext ? 'next' : 'toDo'} />
      </span>
      <span className="stage-title">{title}</span>
      <span className="stage-word">
        {done !== null ? words.doneOn(formatDate(done.at.slice(0, 10))) : isNext ? words.next : words.notDone}
      </span>
      <span className="commands stage-commands">
        {done !== null ? (
          <button
            className="button button-plain"
            type="button"
            disabled={isLocked}
            aria-label={words.withdraw(title)}
            onClick={onWithdraw}
          >
            {words.withdrawShort}
          </button>
        ) : (
          <>
            <button
              className="button button-plain"
              type="button"
              disabled={isLocked || onEarlier === null}
              aria-label={words.earlier(title)}
              onClick={() => onEarlier?.()}
            >
              {words.earlierShort}
            </button>
            <button
              className="button button-plain"
              type="button"
              disabled={isLocked || onLater === null}
              aria-label={words.later(title)}
              onClick={() => onLater?.()}
            >
              {words.laterShort}
            </button>
            <button
              className="button button-plain"
              type="button"
              disabled={isLocked}
              aria-label={words.skip(title)}
              onClick={onSkip}
            >
              {words.skipShort}
            </button>
            <button
              className={isNext ? 'button button-next' : 'button button-plain'}
              type="button"
              disabled={isLocked}
              aria-label={words.markDone(title)}
              onClick={onDone}
            >
              {words.markDoneShort}
            </button>
          </>
        )}
      </span>
    </li>
  )
}

function StageMark({ kind }: { readonly kind: 'done' | 'next' | 'toDo' }) {
  return (
    <svg className="stage-mark" viewBox="0 0 20 20" data-kind={kind} aria-hidden="true">
      {kind === 'done' && <path d="M3 11 L8 16 L17 4" />}
      {kind === 'next' && <circle cx="10" cy="10" r="6" />}
      {kind === 'toDo' && <path d="M10 5 V15" />}
    </svg>
  )
}

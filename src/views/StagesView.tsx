import { lazy, Suspense, useMemo, useState } from 'react'
import { NOTHING_DONE, isSigned, stageStates } from '../record/bench/stageStates.ts'
import { addStage, refusalOf, type StageChange, type StageRefusal } from '../record/changes/stages.ts'
import { formerStage } from '../record/formerStage.ts'
import { keysOf } from '../record/stageLinks.ts'
import { stagesInHand } from '../record/stageInHand.ts'
import { type StageKey, startingStages } from '../record/patterns/stages.ts'
import { STAGES_PLACE_WORDS } from '../words/stagesPlace.ts'
import { STAGE_TITLES } from '../words/stageTitles.ts'
import { numbersBuiltTo } from './builtTo.ts'
import { type OrderBench, OrderBenchContext, useOrderBench } from './stages/orderBench.ts'
import { OrderHours } from './stages/OrderHours.tsx'
import { StageRow } from './stages/StageRow.tsx'
import { useCommission, useWorkshop } from './workshop.ts'
import './stages/stages.css'

const KeepOrder = lazy(async () => ({ default: (await import('./stages/KeepOrder.tsx')).KeepOrder }))
const UseOrder = lazy(async () => ({ default: (await import('./stages/UseOrder.tsx')).UseOrder }))

const words = STAGES_PLACE_WORDS

/** The building order of this instrument: what is done and next, how long it takes, and all that its maker has otherwise. */
export function StagesView() {
  const bench = useBench()
  const [openId, setOpenId] = useState<string | null>(null)
  const [asked, setAsked] = useState<'keep' | 'use' | null>(null)
  const [kept, setKept] = useState<string | null>(null)
  if (bench === null) return null
  const { stages, stateOf, isLocked } = bench
  const nextId = stages.find(({ id }) => !isSigned(stateOf(id)))?.id ?? null

  return (
    <OrderBenchContext value={bench}>
      <header className="view-head">
        <h1>{words.title}</h1>
        <p className="second">{words.lead}</p>
      </header>
      <OrderHours />
      <div className="commands order-commands">
        <button className="button" type="button" onClick={() => setAsked('keep')}>
          {words.keepOrder}
        </button>
        <button className="button" type="button" disabled={isLocked} onClick={() => setAsked('use')}>
          {words.otherOrder}
        </button>
        <output>{kept !== null && words.kept(kept)}</output>
      </div>
      <div className="order-columns" aria-hidden="true">
        <span>{words.columns.stage}</span>
        <span>{words.columns.hands}</span>
        <span>{words.columns.wait}</span>
        <span>{words.columns.stands}</span>
      </div>
      <ol className="order">
        {stages.map((stage) => (
          <StageRow
            key={stage.id}
            stage={stage}
            isNext={stage.id === nextId}
            isOpen={stage.id === openId}
            onToggle={() => setOpenId(stage.id === openId ? null : stage.id)}
            onShow={setOpenId}
            trouble={bench.trouble !== null && stage.id === openId ? bench.trouble : null}
          />
        ))}
      </ol>
      {bench.trouble !== null && openId === null && (
        <p className="field-problem" role="alert">
          {bench.trouble}
        </p>
      )}
      <LeftOut />
      <Suspense fallback={null}>
        {asked === 'keep' && <KeepOrder onClose={() => setAsked(null)} onKept={setKept} />}
        {asked === 'use' && <UseOrder onClose={() => setAsked(null)} />}
      </Suspense>
    </OrderBenchContext>
  )
}

/** Stages this family usually has, and this instrument has not. */
function LeftOut() {
  const bench = useOrderBench()
  const { newGesture } = useWorkshop()
  const changes = useCommission((state) => state.changes)
  const { doc, stages, isLocked, change } = bench
  const present = new Set(keysOf(doc.stages))
  const order = startingStages(doc.family)
  const skipped = order.filter((key) => !present.has(key))
  if (skipped.length === 0) return null
  const bringIn = (key: StageKey): void => {
    const later = new Set(order.slice(order.indexOf(key) + 1))
    const before = stages.find((stage) => later.has(stage.key))?.id ?? null
    const former = formerStage(changes, doc.stages, key)
    change(addStage(former?.id ?? newGesture(), key, before, former?.own))
  }
  return (
    <section className="order-left-out">
      <h2>{words.skipped}</h2>
      <ul>
        {skipped.map((key) => (
          <li key={key}>
            <span>{STAGE_TITLES[key]}</span>
            <button
              className="button button-plain"
              type="button"
              disabled={isLocked}
              aria-label={words.bringInOf(STAGE_TITLES[key])}
              onClick={() => bringIn(key)}
            >
              {words.bringIn}
            </button>
          </li>
        ))}
      </ul>
    </section>
  )
}

function useBench(): (OrderBench & { readonly trouble: string | null }) | null {
  const { commission } = useWorkshop()
  const docId = useCommission((state) => state.id)
  const doc = useCommission((state) => state.record?.doc ?? null)
  const facts = useCommission((state) => state.facts)
  const isLocked = useCommission((state) => state.readOnly !== null)
  const [refused, setRefused] = useState<{ readonly refusal: StageRefusal; readonly of: unknown } | null>(null)
  const orderOf = doc?.stages
  const family = doc?.family
  const stages = useMemo(
    () => (orderOf === undefined || family === undefined ? [] : stagesInHand({ stages: orderOf, family })),
    [orderOf, family],
  )
  const states = useMemo(() => stageStates(facts), [facts])
  if (doc === null || docId === null) return null

  const titleOf = (id: string): string => {
    const stage = doc.stages[id]
    return stage === undefined ? '' : (stage.own?.title ?? STAGE_TITLES[stage.key])
  }
  const change = (made: StageChange, gesture?: string): void => {
    const refusal = refusalOf(doc, made)
    setRefused(refusal === null ? null : { refusal, of: doc })
    if (refusal === null) commission.edit(made, gesture)
  }
  // What was refused is said until something else is done.
  const refusal = refused?.of === doc ? refused.refusal : null
  return {
    docId,
    doc,
    stages,
    stateOf: (id) => states.get(id) ?? NOTHING_DONE,
    titleOf,
    isLocked,
    change,
    signOff: (id) => {
      const numbers = commission.store.getState().computed?.numbers
      const stage = doc.stages[id]
      if (numbers === undefined || stage === undefined) return
      commission.markStageDone(id, numbersBuiltTo(stage.key, keysOf(doc.stages), numbers, stage.own))
    },
    trouble:
      refusal === null
        ? null
        : refusal.code === 'tooMany'
          ? words.tooMany(refusal.most)
          : words.circular(refusal.ring.map(titleOf)),
  }
}

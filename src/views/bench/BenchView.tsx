import { useEffect, useMemo, useState } from 'react'
import { Link } from 'wouter'
import { keepAwake } from '../../device/wakeLock.ts'
import type { CommissionDoc, Fact } from '../../record/commission.ts'
import { stagesDone } from '../../record/facts.ts'
import { inOrder } from '../../record/order.ts'
import { AT_HAND_WORDS as words } from '../../words/atHand.ts'
import { useCommission } from '../workshop.ts'
import { BenchHead } from './BenchHead.tsx'
import { layInHand, stageLaidInHand } from './benchMemory.ts'
import { StageAtHand } from './StageAtHand.tsx'
import { stageInHand } from './stageInHand.ts'
import './bench.css'
import './benchFoot.css'
import './hand.css'

/** The bench: one stage a screen, for thumbs at arm's length. The screen stays awake while it is open. */
export function BenchView({ id }: { readonly id: string }) {
  const doc = useCommission((state) => state.record?.doc ?? null)
  const computed = useCommission((state) => state.computed)
  const facts = useCommission((state) => state.facts)
  // Chosen once: a stage that is signed off stays in hand until the maker turns to the next.
  const [chosen, choose] = useState(() => stageLaidInHand(id) ?? firstOpen(doc, facts))
  useEffect(() => keepAwake(() => undefined), [])
  const entries = useMemo(() => (doc === null ? [] : inOrder(doc.stages)), [doc])
  const done = useMemo(() => stagesDone(facts), [facts])
  const laid = entries.findIndex(([stageId]) => stageId === chosen)
  const at = laid >= 0 ? laid : entries.length - 1
  const entry = entries[at]
  const numbers = computed?.numbers ?? null
  const method = doc?.plan.rim.method
  const family = doc?.family
  const present = useMemo(() => entries.map(([, { key }]) => key), [entries])
  const stage = useMemo(
    () =>
      entry === undefined || numbers === null || method === undefined || family === undefined
        ? null
        : stageInHand(entry[0], entry[1], { family, present, method, numbers }),
    [entry, family, present, numbers, method],
  )
  const stageId = stage?.id ?? null
  useEffect(() => {
    if (stageId !== null) layInHand(id, stageId)
  }, [id, stageId])
  if (doc === null) return null
  if (stage === null) {
    return (
      <div className="bench">
        <div className="bench-body" data-numbers="none">
          <h1>{words.noStages}</h1>
          <Link className="button" href={`/i/${id}/stages`}>
            {words.toStages}
          </Link>
        </div>
      </div>
    )
  }
  const signed = done.get(stage.id) ?? null
  const goTo = (place: number) => {
    const [to] = entries[place] ?? []
    return to === undefined ? null : (): void => choose(to)
  }
  return (
    <div className="bench">
      <BenchHead id={id} number={doc.number} place={at + 1} count={entries.length} title={stage.title} done={signed} />
      <StageAtHand
        key={stage.id}
        doc={doc}
        stage={stage}
        present={present}
        done={signed}
        onPrevious={goTo(at - 1)}
        onNext={goTo(at + 1)}
      />
    </div>
  )
}

/** The stage that is next; null where all are done. */
function firstOpen(doc: CommissionDoc | null, facts: readonly Fact[]): string | null {
  const done = stagesDone(facts)
  return (doc === null ? [] : inOrder(doc.stages)).find(([stageId]) => !done.has(stageId))?.[0] ?? null
}

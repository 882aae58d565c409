import { useMemo } from 'react'
import { Link } from 'wouter'
import { type Measured, measured } from '../../record/bench/measured.ts'
import { chainsOf, type ReadingChain } from '../../record/bench/readingStanding.ts'
import type { CommissionDoc } from '../../record/commission.ts'
import { READINGS_PAGE_WORDS } from '../../words/measured.ts'
import { STAGE_WORDS } from '../../words/stages.ts'
import { useCommission } from '../workshop.ts'
import { EmptyReadings } from './EmptyReadings.tsx'
import { ReadingChainRow } from './ReadingChainRow.tsx'
import './measured.css'

const words = READINGS_PAGE_WORDS

/** Everything that was measured on this instrument, what each reading does, and the ways to turn it off, mend it or take it back. */
export function ReadingsView() {
  const doc = useCommission((state) => state.record?.doc ?? null)
  const id = useCommission((state) => state.id) ?? ''
  const facts = useCommission((state) => state.facts)
  const taken = useCommission((state) => state.taken)
  const all = useMemo(() => measured(facts), [facts])
  const groups = useMemo(() => byStage(chainsOf(all)), [all])
  if (doc === null) return null
  return (
    <>
      <header className="view-head measured-head">
        <div>
          <h1>{words.title}</h1>
          <p className="second">{words.lead}</p>
        </div>
        <div className="commands">
          {all.length > 0 && (
            <>
              <output className="second">
                {words.count(all.length)}, {words.taking(taken.length)}
              </output>
              <Link className="button" href={`/i/${id}/typeIn`}>
                {words.toTypeIn}
              </Link>
            </>
          )}
        </div>
      </header>
      {groups.length === 0 && <EmptyReadings />}
      {groups.map(([stageId, chains]) => (
        <section className="measured-group" key={stageId} aria-label={stageTitle(doc, stageId)}>
          <h2>{stageTitle(doc, stageId)}</h2>
          <ol className="measured-list">
            {chains.map((chain) => (
              <ReadingChainRow key={chain.first.id} chain={chain} />
            ))}
          </ol>
        </section>
      ))}
    </>
  )
}

/** The chains of each stage; the stage that was read at last comes first. */
function byStage(chains: readonly ReadingChain[]): readonly (readonly [string, readonly ReadingChain[]])[] {
  const groups = new Map<string, ReadingChain[]>()
  for (const chain of chains) {
    const stage = stageOf(chain.first)
    groups.set(stage, [...(groups.get(stage) ?? []), chain])
  }
  return [...groups]
}

const stageOf = ({ stageId }: Measured): string => stageId ?? ''

function stageTitle(doc: CommissionDoc, stageId: string): string {
  const stage = doc.stages[stageId]
  return stage === undefined ? words.noStage : (stage.own?.title ?? STAGE_WORDS[stage.key].title)
}

import { useMemo, useState } from 'react'
import type { Computed } from '../../core/compute.ts'
import { stageBoxes } from '../../papers/stageBoxes.ts'
import { measured } from '../../record/bench/measured.ts'
import type { ReadingSite } from '../../record/bench/readingOf.ts'
import type { CommissionDoc } from '../../record/commission.ts'
import { stagesDone } from '../../record/facts.ts'
import { inOrder } from '../../record/order.ts'
import { TYPE_IN_WORDS } from '../../words/measured.ts'
import { PAPER_LETTERING } from '../../words/paperLettering.ts'
import { STAGE_WORDS } from '../../words/stages.ts'
import { useCommission, useShop } from '../workshop.ts'
import { StoreSheet } from './StoreSheet.tsx'
import { SheetTables } from './SheetTables.tsx'
import './typeIn.css'

const words = TYPE_IN_WORDS

/** The boxes of a printed stage sheet, to be filled with what is pencilled on it. */
export function TypeInView() {
  const doc = useCommission((state) => state.builtDoc)
  const computed = useCommission((state) => state.computed)
  return doc === null || computed === null ? null : <TypeIn doc={doc} computed={computed} />
}

function TypeIn({ doc, computed }: { readonly doc: CommissionDoc; readonly computed: Computed }) {
  const facts = useCommission((state) => state.facts)
  const taken = useCommission((state) => state.taken)
  const stages = useMemo(() => inOrder(doc.stages), [doc.stages])
  const done = useMemo(() => stagesDone(facts), [facts])
  const [chosen, choose] = useState(() => stages.find(([id]) => !done.has(id))?.[0] ?? stages[0]?.[0] ?? '')
  const stageId = doc.stages[chosen] === undefined ? (stages[0]?.[0] ?? '') : chosen
  const site = useMemo<ReadingSite>(
    () => ({ plan: doc.plan, numbers: computed.numbers, all: measured(facts), taken }),
    [doc.plan, computed, facts, taken],
  )
  const tables = useTables(doc, computed, stageId)
  if (stages.length === 0) return <Head stageId="" choices={[]} onChoose={choose} />
  return (
    <>
      <Head
        stageId={stageId}
        choices={stages.map(([id, { key, own }], i) => ({
          id,
          text: words.stageChoice(i + 1, own?.title ?? STAGE_WORDS[key].title, done.has(id)),
        }))}
        onChoose={choose}
      />
      {tables.length === 0 ? (
        <p>{words.noBoxes}</p>
      ) : (
        // Another stage is another sheet: nothing of the last one's fields lives on.
        <div className="type-in" key={stageId}>
          <SheetTables tables={tables} stageId={stageId} site={site} tolerances={doc.tolerances} />
          <StoreSheet tables={tables} stageId={stageId} site={site} />
        </div>
      )}
    </>
  )
}

interface HeadProps {
  readonly stageId: string
  readonly choices: readonly { readonly id: string; readonly text: string }[]
  readonly onChoose: (id: string) => void
}

function Head({ stageId, choices, onChoose }: HeadProps) {
  return (
    <header className="view-head type-in-head">
      <div>
        <h1>{words.title}</h1>
        <p className="second">{choices.length === 0 ? words.noStages : words.lead}</p>
      </div>
      {choices.length > 0 && (
        <label className="field">
          <span className="field-label">{words.stage}</span>
          <select className="field-input" value={stageId} onChange={(event) => onChoose(event.target.value)}>
            {choices.map(({ id, text }) => (
              <option key={id} value={id}>
                {text}
              </option>
            ))}
          </select>
        </label>
      )}
    </header>
  )
}

/** The tables of a stage as they are printed on this shop's paper. */
function useTables(doc: CommissionDoc, computed: Computed, stageId: string) {
  const shop = useShop((state) => state.shop)
  return useMemo(() => {
    const stage = doc.stages[stageId]
    if (stage === undefined) return []
    return stageBoxes(
      {
        doc,
        computed,
        shop,
        stages: [],
        stagesTotal: 0,
        paperSize: shop.paperSize,
        revisionCode: '',
        dateIso: '',
        drawingOf: () => null,
        words: PAPER_LETTERING,
      },
      { id: stageId, key: stage.key, place: 1, done: false },
    )
  }, [doc, computed, shop, stageId])
}

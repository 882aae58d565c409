import { useMemo, useState } from 'react'
import { listTemplates } from '../../drawing/templateDrawingOf.ts'
import { type PaperId, stagePaper, templatePaper, WHOLE_PAPERS } from '../../papers/paperId.ts'
import { inOrder } from '../../record/order.ts'
import { FULL_SIZE_VIEW_WORDS, PACK_WORDS } from '../../words/press.ts'
import { SHOP_WORDS } from '../../words/shop.ts'
import { PressStatus } from '../fullSize/PressStatus.tsx'
import { TEMPLATE_PARTS, templatesOfPart } from '../fullSize/TemplateList.tsx'
import { templateName } from '../fullSize/templateName.ts'
import { usePressRun } from '../fullSize/usePressRun.ts'
import { useCommission, useShop } from '../workshop.ts'
import { PaperTicks, type PaperTick } from './PaperTicks.tsx'
import { paperName } from './paperName.ts'
import { WhatLeft } from './WhatLeft.tsx'
import { usePaperStandings } from './usePaperStandings.ts'
import '../sheets/sheets.css'
import '../sheets/tables.css'
import '../fullSize/fullSize.css'
import './pack.css'

const words = PACK_WORDS

/** What leaves the shop on paper? */
export function PackView() {
  const doc = useCommission((state) => state.builtDoc)
  const computed = useCommission((state) => state.computed)
  const shop = useShop((state) => state.shop)
  const control = usePressRun()
  const standings = usePaperStandings()
  const [chosen, setChosen] = useState<ReadonlySet<PaperId>>(() => new Set(['specification', 'drawings']))
  const refs = useMemo(
    () => (computed === null || doc === null ? [] : listTemplates(computed, doc.plan)),
    [computed, doc],
  )
  if (doc === null || computed === null) return null

  const stages = inOrder(doc.stages).map(([id]) => stagePaper(id))
  const whole: readonly PaperTick[] = [
    ...WHOLE_PAPERS.map((paper) => ({ name: words.whole[paper], papers: [paper] })),
    ...(stages.length === 0 ? [] : [{ name: words.stages(stages.length), papers: stages }]),
  ]
  const ticksOf = (part: (typeof TEMPLATE_PARTS)[number]): readonly PaperTick[] =>
    templatesOfPart(refs, part).map((ref) => ({ name: templateName(ref, computed), papers: [templatePaper(ref)] }))
  const all = [...whole, ...TEMPLATE_PARTS.flatMap(ticksOf)].flatMap(({ papers }) => papers)
  // In the order they stand in, whatever the order they were ticked in; what is gone from the instrument is gone from here.
  const papers = all.filter((paper) => chosen.has(paper))
  const changed = all.filter((paper) => standings.standings.get(paper)?.holds === 'no')
  const isRunning = control.standing.kind === 'running'
  const choose = (next: readonly PaperId[]) => () => setChosen(new Set(next))
  const nameOf = (paper: string) => paperName(paper, doc.stages, computed)

  return (
    <div className="question">
      <header className="question-head">
        <div>
          <h1>{words.title}</h1>
          <p className="second">{words.lead}</p>
        </div>
      </header>
      <div className="pack">
        <div className="pack-choice">
          <div className="commands">
            <button className="button" type="button" onClick={choose(all)}>
              {words.all}
            </button>
            <button className="button" type="button" onClick={choose([])}>
              {words.none}
            </button>
            {changed.length > 0 && (
              <button className="button" type="button" onClick={choose(changed)}>
                {words.onlyChanged}
              </button>
            )}
          </div>
          <div className="pack-lists">
            <PaperTicks
              heading={words.papers}
              ticks={whole}
              chosen={chosen}
              standings={standings.standings}
              onChoose={setChosen}
            />
            {TEMPLATE_PARTS.map((part) => (
              <PaperTicks
                key={part}
                heading={`${words.templates}: ${FULL_SIZE_VIEW_WORDS.parts[part].toLowerCase()}`}
                ticks={ticksOf(part)}
                chosen={chosen}
                standings={standings.standings}
                onChoose={setChosen}
              />
            ))}
          </div>
        </div>
        <section className="full-size-leaves" aria-label={words.title}>
          <p className="full-size-count">{papers.length === 0 ? words.nothing : words.chosen(papers.length)}</p>
          <div className="full-size-forms">
            <button
              className="button button-next"
              type="button"
              disabled={papers.length === 0 || isRunning}
              onClick={() => control.make(papers, 'pdf')}
            >
              {words.pdf}
            </button>
            <button
              className="button"
              type="button"
              disabled={papers.length === 0 || isRunning}
              onClick={() => control.make(papers, 'zip')}
            >
              {words.zip}
            </button>
          </div>
          <PressStatus control={control} nameOf={nameOf} />
          <p className="second small">
            {words.sheetNote(
              SHOP_WORDS.paperSizes[shop.paperSize],
              FULL_SIZE_VIEW_WORDS.sheetSizes[shop.printing.sheet],
            )}
          </p>
          <p className="second small">{FULL_SIZE_VIEW_WORDS.measure}</p>
        </section>
      </div>
      <WhatLeft standings={standings} nameOf={nameOf} />
    </div>
  )
}

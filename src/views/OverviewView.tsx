import { lazy, Suspense, useState } from 'react'
import { Link, useLocation } from 'wouter'
import type { Computed } from '../core/compute.ts'
import type { PlanField } from '../core/planFields.ts'
import type { CommissionDoc } from '../record/commission.ts'
import { stagesDone } from '../record/facts.ts'
import { inOrder } from '../record/order.ts'
import { BENCH_WORDS } from '../words/bench.ts'
import { OVERVIEW_WORDS, STAGES_WORDS } from '../words/instrument.ts'
import { SHEET_TITLES, SHEETS } from '../words/sheets.ts'
import { STAGE_TITLES } from '../words/stageTitles.ts'
import { layInHand } from './bench/benchMemory.ts'
import { numbersBuiltTo } from './builtTo.ts'
import { OverviewDrawing } from './overview/OverviewDrawing.tsx'
import { OverviewFindings } from './overview/OverviewFindings.tsx'
import { StageFigures } from './overview/StageFigures.tsx'
import { StageLines } from './overview/StageLines.tsx'
import { askForStage } from './paperChoice.ts'
import { awaitField } from './sheets/goToField.ts'
import { sheetOfField } from './sheets/sheetOfField.ts'
import { useCommission, useWorkshop } from './workshop.ts'
import './overview.css'

const StartTimer = lazy(async () => ({ default: (await import('./timers/StartTimer.tsx')).StartTimer }))

/** The instrument, and what its maker does next. */
export function OverviewView({ id }: { readonly id: string }) {
  const doc = useCommission((state) => state.record?.doc ?? null)
  const computed = useCommission((state) => state.computed)
  const built = useCommission((state) => state.builtDoc)
  const [, go] = useLocation()
  if (doc === null || built === null || computed === null) return null
  const goTo = (field: PlanField, inside: string | null = null): void => {
    awaitField(field, inside)
    go(`/i/${id}/${sheetOfField(field)}`)
  }
  return (
    <div className="overview">
      <p className="overview-instrument">
        <strong>{doc.number}</strong>
        <span>{doc.title}</span>
        <span className="second">{doc.brief.client === '' ? BENCH_WORDS.forStock : doc.brief.client}</span>
      </p>
      <NextStage id={id} doc={doc} computed={computed} />
      <div className="overview-drawing">
        <OverviewDrawing computed={computed} plan={built.plan} />
      </div>
      <div className="overview-below">
        <OverviewFindings findings={computed.findings} onGo={goTo} />
        <nav className="overview-questions" aria-labelledby="overview-questions">
          <h2 id="overview-questions">{OVERVIEW_WORDS.questions}</h2>
          <ul>
            {SHEETS.map((sheet) => (
              <li key={sheet}>
                <Link href={`/i/${id}/${sheet}`}>{SHEET_TITLES[sheet]}</Link>
              </li>
            ))}
          </ul>
        </nav>
      </div>
    </div>
  )
}

interface NextProps {
  readonly id: string
  readonly doc: CommissionDoc
  readonly computed: Computed
}

function NextStage({ id, doc, computed }: NextProps) {
  const { commission } = useWorkshop()
  const facts = useCommission((state) => state.facts)
  const isLocked = useCommission((state) => state.readOnly !== null)
  const [isTiming, setTiming] = useState(false)
  const done = stagesDone(facts)
  const stages = inOrder(doc.stages)
  const at = stages.findIndex(([stageId]) => !done.has(stageId))
  const next = stages[at]
  if (next === undefined) {
    return (
      <section className="overview-next">
        <h1>{OVERVIEW_WORDS.allDone}</h1>
        <Link className="button" href={`/i/${id}/stages`}>
          {OVERVIEW_WORDS.allStages}
        </Link>
      </section>
    )
  }
  const [stageId, { key, own }] = next
  const present = stages.map(([, stage]) => stage.key)
  const title = own?.title ?? STAGE_TITLES[key]
  return (
    <section className="overview-next">
      <p className="overview-place">
        {OVERVIEW_WORDS.next}
        <span className="second">
          {at + 1} / {stages.length}
        </span>
      </p>
      <h1>{title}</h1>
      <StageFigures stage={key} own={own} present={present} doc={doc} computed={computed} />
      <div className="commands">
        <Link className="button button-next" href={`/i/${id}/bench`} onClick={() => layInHand(id, stageId)}>
          {OVERVIEW_WORDS.atTheBench}
        </Link>
        <button
          className="button"
          type="button"
          disabled={isLocked}
          aria-label={STAGES_WORDS.markDone(title)}
          onClick={() => commission.markStageDone(stageId, numbersBuiltTo(key, present, computed.numbers, own))}
        >
          {OVERVIEW_WORDS.markDone}
        </button>
        <Link className="button" href={`/i/${id}/paper`} onClick={() => askForStage(stageId)}>
          {OVERVIEW_WORDS.printStage}
        </Link>
        <button className="button" type="button" onClick={() => setTiming(true)}>
          {OVERVIEW_WORDS.startTimer}
        </button>
        <Link className="button button-plain" href={`/i/${id}/stages`}>
          {OVERVIEW_WORDS.allStages}
        </Link>
      </div>
      {isTiming && (
        <Suspense fallback={null}>
          <StartTimer
            docId={id}
            stageId={stageId}
            number={doc.number}
            label={title}
            proposed={null}
            onClose={() => setTiming(false)}
          />
        </Suspense>
      )}
      <StageLines stage={key} note={own?.note} present={present} family={doc.family} />
    </section>
  )
}

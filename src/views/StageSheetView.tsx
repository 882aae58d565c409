import { useDeferredValue, useId, useMemo, useState } from 'react'
import type { Computed } from '../core/compute.ts'
import { PAPER_SIZES, type PaperSize } from '../papers/page.ts'
import type { StageOnSheet } from '../papers/stageSheetOrder.ts'
import type { StageThen } from '../papers/stageThen.ts'
import { stageDrawing } from '../papers/stageDrawing.ts'
import { layStageSheet } from '../papers/stageSheet.ts'
import type { PlannedNumbers } from '../record/bench/follows.ts'
import type { CommissionDoc, ShopDoc } from '../record/commission.ts'
import { STAGE_DRAWINGS, type StageDrawing, type StageKey } from '../record/patterns/stages.ts'
import type { Drawing } from '../drawing/drawing.ts'
import { PaperPages } from '../ui/PaperPages.tsx'
import { PAPER_LETTERING } from '../words/paperLettering.ts'
import { STAGE_SHEET_VIEW_WORDS } from '../words/stageSheetView.ts'
import { STAGE_TITLES } from '../words/stageTitles.ts'
import './stageSheet.css'

export interface StageSheetViewProps {
  readonly doc: CommissionDoc
  readonly computed: Computed
  /** The numbers as planned, where something was measured that others follow. */
  readonly planned?: PlannedNumbers | null
  readonly shop: ShopDoc
  readonly revisionCode: string
  /** Today, ISO: what the sheet is dated. */
  readonly dateIso: string
  /** The instrument's stages in building order. */
  readonly stages: readonly { readonly id: string; readonly key: StageKey }[]
  readonly doneStages: ReadonlySet<string>
  /** What a signed stage was built to. */
  readonly thenOf?: (stageId: string) => StageThen | undefined
  /** Opens the browser's print dialog; told which stages go to paper. */
  readonly onPrint: (stageIds: readonly string[]) => void
  /** The stages ticked at first; all where it is not said. */
  readonly firstChosen?: readonly string[]
}

const words = STAGE_SHEET_VIEW_WORDS

/** Which stages go on paper, on which paper, and the pages as they will come out. */
export function StageSheetView(props: StageSheetViewProps) {
  const {
    doc,
    computed,
    planned = null,
    shop,
    revisionCode,
    dateIso,
    stages,
    doneStages,
    thenOf,
    onPrint,
    firstChosen,
  } = props
  const [chosen, setChosen] = useState<ReadonlySet<string>>(() => new Set(firstChosen ?? stages.map(({ id }) => id)))
  const [paperSize, setPaperSize] = useState<PaperSize>(shop.paperSize)
  const { plan } = doc
  const drawings = useMemo(
    () => new Map<StageDrawing, Drawing>(STAGE_DRAWINGS.map((name) => [name, stageDrawing(computed, plan, name)])),
    [computed, plan],
  )
  // A page takes longer to lay than a tick to set: the tick is painted first.
  const printed = useDeferredValue(chosen)
  const pages = useMemo(
    () =>
      layStageSheet({
        doc,
        computed,
        ...(planned === null ? {} : { planned }),
        shop,
        stages: stages.flatMap(({ id, key }, i) =>
          printed.has(id) ? [onSheet({ id, key, place: i + 1, done: doneStages.has(id) }, thenOf?.(id))] : [],
        ),
        stagesTotal: stages.length,
        paperSize,
        revisionCode,
        dateIso,
        drawingOf: (name) => drawings.get(name) ?? null,
        words: PAPER_LETTERING,
      }),
    [doc, computed, planned, shop, stages, printed, doneStages, thenOf, paperSize, revisionCode, dateIso, drawings],
  )
  const chosenCount = stages.filter(({ id }) => chosen.has(id)).length
  const toggle = (id: string): void => {
    const next = new Set(chosen)
    if (!next.delete(id)) next.add(id)
    setChosen(next)
  }
  const choose = (ids: readonly string[]) => () => setChosen(new Set(ids))
  const allIds = stages.map(({ id }) => id)

  return (
    <div className="stage-sheet">
      <section className="stage-sheet-choice" aria-label={words.stages}>
        <header className="stage-sheet-head">
          <h1>{words.title}</h1>
          <p className="second">{words.lead}</p>
        </header>
        <PaperChoice value={paperSize} onChoose={setPaperSize} />
        <div className="commands">
          <button
            className="button button-next"
            type="button"
            disabled={pages.length === 0}
            onClick={() => onPrint(stages.flatMap(({ id }) => (chosen.has(id) ? [id] : [])))}
          >
            {words.print}
          </button>
          <output>{words.count(chosenCount, pages.length)}</output>
        </div>
        <p className="second small">{words.printHint}</p>
        <div className="commands">
          <button className="button" type="button" onClick={choose(allIds)}>
            {words.all}
          </button>
          <button className="button" type="button" onClick={choose(allIds.filter((id) => !doneStages.has(id)))}>
            {words.notDone}
          </button>
          <button className="button" type="button" onClick={choose([])}>
            {words.none}
          </button>
        </div>
        <ol className="stage-sheet-list">
          {stages.map(({ id, key }, i) => (
            <li key={id}>
              <label className="stage-sheet-tick">
                <input type="checkbox" checked={chosen.has(id)} onChange={() => toggle(id)} />
                <span className="stage-sheet-place">{i + 1}</span>
                <span>{doc.stages[id]?.own?.title ?? STAGE_TITLES[key]}</span>
                {doneStages.has(id) && <span className="second small">{words.done}</span>}
              </label>
            </li>
          ))}
        </ol>
      </section>
      <section className="stage-sheet-preview" aria-label={words.pages}>
        {pages.length === 0 ? (
          <p className="stage-sheet-empty">{words.empty}</p>
        ) : (
          <PaperPages pages={pages} label={(page) => words.page(page.number, page.count)} />
        )}
      </section>
    </div>
  )
}

const onSheet = (stage: StageOnSheet, built: StageThen | undefined): StageOnSheet =>
  built === undefined ? stage : { ...stage, built }

function PaperChoice({ value, onChoose }: { readonly value: PaperSize; readonly onChoose: (size: PaperSize) => void }) {
  const name = useId()
  return (
    <fieldset className="stage-sheet-paper">
      <legend>{words.paper}</legend>
      {(Object.keys(PAPER_SIZES) as PaperSize[]).map((size) => (
        <label className="stage-sheet-tick" key={size}>
          <input type="radio" name={name} checked={size === value} onChange={() => onChoose(size)} />
          <span>{words.sizes[size]}</span>
        </label>
      ))}
    </fieldset>
  )
}

import { compute } from '../../core/compute.ts'
import type { Drawing } from '../../drawing/drawing.ts'
import type { Plot } from '../../drawing/plot.ts'
import type { TemplateRef } from '../../drawing/template/template.ts'
import { listTemplates, templateDrawingOf } from '../../drawing/templateDrawingOf.ts'
import { layBuyingList } from '../../papers/buyingList.ts'
import { layDrawingSet } from '../../papers/drawingSet.ts'
import type { TemplateOrder } from '../../papers/fullSize/fullSizeOrder.ts'
import { layPlotPages } from '../../papers/fullSize/layTemplatePages.ts'
import { sheetChoice } from '../../papers/fullSize/sheetChoice.ts'
import { templatePlot } from '../../papers/fullSize/templatePlot.ts'
import { layLabel } from '../../papers/label.ts'
import type { Page } from '../../papers/page.ts'
import { type PaperId, parsePaperId, templatePaper, type WholePaper } from '../../papers/paperId.ts'
import type { PaperOrder } from '../../papers/paperOrder.ts'
import { laySpecification } from '../../papers/specification.ts'
import { stageDrawing } from '../../papers/stageDrawing.ts'
import type { StageSheetOrder } from '../../papers/stageSheetOrder.ts'
import { layStageSheet } from '../../papers/stageSheet.ts'
import { inOrder } from '../../record/order.ts'
import type { StageDrawing } from '../../record/patterns/stages.ts'
import { paperName } from '../../views/pack/paperName.ts'
import { templateName, templatePurpose } from '../../views/fullSize/templateName.ts'
import type { PressOrder } from '../../views/press.ts'
import { PAPER_LETTERING } from '../../words/paperLettering.ts'
import { openSignedStages } from './signedStages.ts'

/** Papers of one instrument, each laid when it is asked for; the numbers are worked out once. */
export interface PaperMaker {
  readonly nameOf: (paper: PaperId) => string
  /** The pages of papers that go together, stage sheets as one run; none where a paper is no longer part of the instrument. */
  readonly pagesOf: (papers: readonly PaperId[]) => readonly Page[]
  /** A template as ink at full size; null for other papers, and for one that is gone. */
  readonly plotOf: (paper: PaperId) => Plot | null
  /** What a template draws, before it is laid on a sheet. */
  readonly drawingOf: (ref: TemplateRef) => Drawing | null
}

interface LaidTemplate {
  readonly order: TemplateOrder
  readonly plot: Plot
}

/** The maker of papers of an order. `stated` is the revision and the day they carry. */
export function openPaperMaker(
  { doc, revision, shop, doneStages, signed = [], dateIso, planned }: PressOrder,
  stated: { readonly revisionCode: string; readonly dateIso: string } = { revisionCode: revision, dateIso },
): PaperMaker {
  const { plan } = doc
  const computed = compute(plan)
  const isThere = new Set(listTemplates(computed, plan).map(templatePaper))
  const done = new Set(doneStages)
  const stages = inOrder(doc.stages).map(([id, { key }], i) => ({ id, key, place: i + 1, done: done.has(id) }))
  const thenOf = openSignedStages(signed)
  const drawings = new Map<StageDrawing, Drawing>()
  const drawingOfStage = (name: StageDrawing): Drawing => {
    const drawn = drawings.get(name) ?? stageDrawing(computed, plan, name)
    drawings.set(name, drawn)
    return drawn
  }
  const order: PaperOrder = {
    doc,
    computed,
    shop,
    ...stated,
    paperSize: shop.paperSize,
    drawingOf: drawingOfStage,
    words: PAPER_LETTERING,
  }
  const drawingOf = (ref: TemplateRef): Drawing | null =>
    isThere.has(templatePaper(ref)) ? templateDrawingOf(ref, computed, plan, shop.jigs) : null
  const templateOrder = (ref: TemplateRef): TemplateOrder | null => {
    const drawing = drawingOf(ref)
    if (drawing === null) return null
    return { drawing, title: templateName(ref, computed), use: templatePurpose(ref, computed, shop), ...order }
  }

  /** The template asked for last, laid once for its sheets and its drawings. */
  let last: { readonly paper: PaperId; readonly laid: LaidTemplate | null } | null = null
  function laidTemplate(ref: TemplateRef): LaidTemplate | null {
    const paper = templatePaper(ref)
    if (last?.paper !== paper) {
      const own = templateOrder(ref)
      last = { paper, laid: own === null ? null : { order: own, plot: templatePlot(own) } }
    }
    return last.laid
  }

  const plannedNumbers = (): Pick<StageSheetOrder, 'planned'> =>
    planned === undefined ? {} : { planned: { numbers: compute(planned.plan).numbers, taken: planned.taken } }

  function pagesOf(papers: readonly PaperId[]): readonly Page[] {
    const asked = new Set(papers)
    const sheet = stages.flatMap((stage) => (asked.has(`stage:${stage.id}`) ? [{ ...stage, ...thenOf(stage.id) }] : []))
    if (sheet.length > 0)
      return layStageSheet({ ...order, ...plannedNumbers(), stages: sheet, stagesTotal: stages.length })
    const paper = papers[0] === undefined ? null : parsePaperId(papers[0])
    if (paper === null || paper.kind === 'stage') return []
    if (paper.kind === 'whole') return LAY[paper.paper](order)
    const laid = laidTemplate(paper.ref)
    return laid === null ? [] : layPlotPages(laid.order, laid.plot, sheetChoice(shop.printing))
  }

  return {
    nameOf: (paper) => paperName(paper, doc.stages, computed),
    pagesOf,
    plotOf: (id) => {
      const paper = parsePaperId(id)
      return paper?.kind === 'template' ? (laidTemplate(paper.ref)?.plot ?? null) : null
    },
    drawingOf,
  }
}

const LAY: Readonly<Record<WholePaper, (order: PaperOrder) => readonly Page[]>> = {
  specification: laySpecification,
  drawings: layDrawingSet,
  buyingList: layBuyingList,
  label: layLabel,
}

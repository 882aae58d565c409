import { parsePaperId, type PaperId } from '../../papers/paperId.ts'
import type { PaperPrint } from '../../record/printed.ts'
import { shortCode } from '../../record/revisionCode.ts'
import type { PressOrder } from '../../views/press.ts'
import { openPaperMaker } from './paperMaker.ts'

/** A day and a revision that no paper shows: what is compared must not change with them. */
const NEUTRAL = { revisionCode: '', dateIso: '2000-01-01' }

/**
 * What papers show, each as a short mark: the same while nothing they show has changed, whatever else of the instrument did. Templates are
 * marked by what they draw, so that another sheet in the printer changes none; what was signed off changes no stage sheet.
 */
export function marksOf(order: PressOrder, papers: readonly string[]): readonly PaperPrint[] {
  // Signs beside what follows a reading say no more than the figures do.
  const { planned: _, ...shown } = order
  const maker = openPaperMaker({ ...shown, doneStages: [] }, NEUTRAL)
  return papers.flatMap((id) => {
    const paper = parsePaperId(id)
    if (paper === null) return []
    if (paper.kind === 'template') {
      const drawing = maker.drawingOf(paper.ref)
      return drawing === null ? [] : [{ paper: id, print: shortCode({ drawing, units: order.shop.units }) }]
    }
    const pages = maker.pagesOf([id as PaperId])
    return pages.length === 0 ? [] : [{ paper: id, print: shortCode(pages) }]
  })
}

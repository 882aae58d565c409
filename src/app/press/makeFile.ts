import { writePlotDxf } from '../../files/dxf/writePlotDxf.ts'
import { fileStem } from '../../files/fileStem.ts'
import { type PdfFonts, writePdf } from '../../files/pdf/writePdf.ts'
import { writePlotSvg } from '../../files/svg/writePlotSvg.ts'
import { writeZip, type ZipEntry } from '../../files/zip.ts'
import type { Plot } from '../../drawing/plot.ts'
import { POLYLINE_TOLERANCE_MM } from '../../papers/fullSize/fullSizeOrder.ts'
import { type PaperId, parsePaperId } from '../../papers/paperId.ts'
import type { PressedFile, PressForm, PressOrder, PressProgress } from '../../views/press.ts'
import { FILE_LAYER_WORDS, PACK_WORDS } from '../../words/press.ts'
import { openPaperMaker, type PaperMaker } from './paperMaker.ts'

interface Asked {
  readonly order: PressOrder
  readonly papers: readonly PaperId[]
  readonly form: PressForm
}

const MIMES: Readonly<Record<PressForm, { readonly mime: string; readonly ending: string }>> = {
  pdf: { mime: 'application/pdf', ending: 'pdf' },
  zip: { mime: 'application/zip', ending: 'zip' },
  svg: { mime: 'image/svg+xml', ending: 'svg' },
  dxfSplines: { mime: 'image/vnd.dxf', ending: 'dxf' },
  dxfPolylines: { mime: 'image/vnd.dxf', ending: 'dxf' },
}

/** Papers in one file, in the form asked for. Progress is told before each paper. */
export async function makeFile(
  { order, papers, form }: Asked,
  fonts: PdfFonts,
  onProgress: (progress: PressProgress) => void,
): Promise<PressedFile> {
  const maker = openPaperMaker(order)
  const { mime, ending } = MIMES[form]
  const what = papers.length === 1 ? maker.nameOf(papers[0]!) : ''
  return {
    name: `${stemOf([order.doc.number, order.doc.title, what])}.${ending}`,
    mime,
    bytes: await bytesOf(maker, { order, papers, form }, fonts, onProgress),
  }
}

async function bytesOf(
  maker: PaperMaker,
  { order, papers, form }: Asked,
  fonts: PdfFonts,
  onProgress: (progress: PressProgress) => void,
): Promise<Uint8Array<ArrayBuffer>> {
  const runs = runsOf(papers)
  const tell = (done: number) => onProgress({ done, of: runs.length, paper: runs[done]![0]! })
  const { doc, dateIso } = order
  const pdfOf = (pages: ReturnType<PaperMaker['pagesOf']>, title: string) => writePdf(pages, { fonts, title, dateIso })
  switch (form) {
    case 'pdf': {
      const pages = runs.flatMap((run, i) => {
        tell(i)
        return maker.pagesOf(run)
      })
      return pdfOf(pages, `${doc.number} ${doc.title}`)
    }
    case 'zip': {
      const entries: ZipEntry[] = []
      for (const [i, run] of runs.entries()) {
        tell(i)
        const name = run.length > 1 ? PACK_WORDS.stages(run.length) : maker.nameOf(run[0]!)
        const stem = `${String(i + 1).padStart(2, '0')}-${stemOf([name])}`
        entries.push({ path: `${stem}.pdf`, bytes: await pdfOf(maker.pagesOf(run), name), isText: false })
        const plot = maker.plotOf(run[0]!)
        if (plot === null) continue
        for (const cutting of ['svg', 'dxfSplines'] as const)
          entries.push({
            path: `${cutting === 'svg' ? 'svg' : 'dxf'}/${stem}.${MIMES[cutting].ending}`,
            bytes: UTF_8.encode(cuttingText(plot, cutting, name)),
            isText: true,
          })
      }
      return writeZip(entries, dateIso)
    }
    default: {
      tell(0)
      const plot = maker.plotOf(papers[0]!)
      if (plot === null) throw new Error('only templates leave as drawings')
      return UTF_8.encode(cuttingText(plot, form, maker.nameOf(papers[0]!)))
    }
  }
}

const UTF_8 = new TextEncoder()
const stemOf = (parts: readonly string[]): string => fileStem(parts, 'papers', 90)

/** Papers that are laid together: stage sheets as one run in their place, every other paper by itself. */
function runsOf(papers: readonly PaperId[]): readonly (readonly PaperId[])[] {
  const isStage = (paper: PaperId) => parsePaperId(paper)?.kind === 'stage'
  const stages = papers.filter(isStage)
  return papers.flatMap((paper) => (!isStage(paper) ? [[paper]] : paper === stages[0] ? [stages] : []))
}

/** A template as a drawing that a saw, a laser or a router reads. */
function cuttingText(plot: Plot, form: Exclude<PressForm, 'pdf' | 'zip'>, title: string): string {
  if (form === 'svg') return writePlotSvg(plot, { title, layerNames: FILE_LAYER_WORDS })
  return writePlotDxf(plot, {
    curves: form === 'dxfSplines' ? 'splines' : 'polylines',
    toleranceMm: POLYLINE_TOLERANCE_MM,
  })
}

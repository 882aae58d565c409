import { SMALL_PENS } from '../../drawing/pens.ts'
import { type Lettering, type Plot, plotDrawing, type Stroke } from '../../drawing/plot.ts'
import type { Area, DrawingMark, PlotMark } from '../../papers/page.ts'
import { pdfNumbers, pdfPath } from './pdfPath.ts'
import type { PdfSheet } from './pdfSheet.ts'

/** White round a lettering, in parts of its size, as on the screen. */
const HALO = 0.28

const clipped = ({ xMm, yMm, widthMm, heightMm }: Area): string => `${pdfNumbers(xMm, yMm, widthMm, heightMm)} re W n`

/** A part of a plot, cut off at the edges of its area. */
export function addPlot(sheet: PdfSheet, mark: PlotMark): void {
  const { xMm, yMm, fromXMm, fromYMm, timesAcross, timesAlong } = mark
  const move = pdfNumbers(xMm - fromXMm * timesAcross, yMm - fromYMm * timesAlong)
  sheet.add(`q\n${clipped(mark)}\n${pdfNumbers(timesAcross)} 0 0 ${pdfNumbers(timesAlong)} ${move} cm`)
  addInk(sheet, mark.plot)
  sheet.add('Q')
}

/** A small drawing in the middle of its area, as large as it goes there. */
export function addDrawing(sheet: PdfSheet, mark: DrawingMark): void {
  const plot = plotDrawing(mark.drawing, mark.laid, SMALL_PENS)
  const { minX, minY, maxX, maxY } = plot.box
  const times = Math.min(mark.widthMm / (maxX - minX), mark.heightMm / (maxY - minY))
  const x = mark.xMm + mark.widthMm / 2 - (times * (minX + maxX)) / 2
  const y = mark.yMm + mark.heightMm / 2 - (times * (minY + maxY)) / 2
  sheet.add(`q\n${clipped(mark)}\n${pdfNumbers(times)} 0 0 ${pdfNumbers(times, x, y)} cm`)
  addInk(sheet, plot)
  sheet.add('Q')
}

function addInk(sheet: PdfSheet, { strokes, letterings }: Plot): void {
  sheet.add(`1 j\n${strokes.map(strokeOperators).join('\n')}\n[] 0 d`)
  for (const lettering of letterings) addLettering(sheet, lettering)
}

function strokeOperators({ commands, penMm, dashesMm, covers }: Stroke): string {
  const pen = `${pdfNumbers(penMm)} w [${pdfNumbers(...dashesMm)}] 0 d`
  // Filled white and drawn round, so that what lies under it is hidden.
  return covers ? `q 1 g ${pen}\n${pdfPath(commands)} B Q` : `${pen}\n${pdfPath(commands)} S`
}

function addLettering(sheet: PdfSheet, { text, at, sizeMm, heightMm, turnDeg }: Lettering): void {
  const runs = sheet.runsOf(text, 'plain')
  const widthMm = runs.reduce((sum, { advance }) => sum + advance, 0) * sizeMm
  let along = -widthMm / 2
  const placed = runs.map((run) => {
    const [x, y] = turnDeg === 0 ? [at.x + along, at.y + heightMm / 2] : [at.x + heightMm / 2, at.y - along]
    along += run.advance * sizeMm
    const turn = turnDeg === 0 ? '1 0 0 -1' : '0 -1 -1 0'
    return `/${run.font} ${pdfNumbers(sizeMm)} Tf ${turn} ${pdfNumbers(x, y)} Tm ${run.shown}`
  })
  const shown = placed.join('\n')
  sheet.add(`q 1 G ${pdfNumbers(sizeMm * HALO)} w BT 1 Tr\n${shown}\nET Q\nBT\n${shown}\nET`)
}

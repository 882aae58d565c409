import {
  type Anchor,
  type BoxMark,
  type FigureMark,
  type Mark,
  MM_PER_PT,
  type RuleMark,
  type SignMark,
  type TextMark,
  type Weight,
} from '../../papers/page.ts'
import { figureParts } from '../../papers/textWidth.ts'
import { WARNING_SIGN } from '../../papers/warningSign.ts'
import { circle, closed, through } from '../../drawing/line.ts'
import { pdfNumbers, pdfPath } from './pdfPath.ts'
import { addDrawing, addPlot } from './pdfPlot.ts'
import type { PdfSheet } from './pdfSheet.ts'

/** One thing of a page as content of a PDF. */
export function addMark(sheet: PdfSheet, mark: Mark): void {
  switch (mark.kind) {
    case 'text':
      return addText(sheet, mark)
    case 'figure':
      return addFigure(sheet, mark)
    case 'rule':
      return addRule(sheet, mark)
    case 'box':
      return addBox(sheet, mark)
    case 'sign':
      return addSign(sheet, mark)
    case 'drawing':
      return addDrawing(sheet, mark)
    case 'plot':
      return addPlot(sheet, mark)
  }
}

const addText = (sheet: PdfSheet, mark: TextMark): void =>
  addParts(sheet, [{ text: mark.text, sizeMm: mark.sizePt * MM_PER_PT, raiseMm: 0 }], mark)

function addFigure(sheet: PdfSheet, mark: FigureMark): void {
  const sizeMm = mark.sizePt * MM_PER_PT
  const parts = figureParts(mark.figure, mark.word, mark.sizePt).map(({ text, scale, raise }) => ({
    text,
    sizeMm: scale * sizeMm,
    raiseMm: raise * sizeMm,
  }))
  addParts(sheet, parts, mark)
}

/** Stretches of text in different sizes one after another, as a whole at its anchor. */
function addParts(
  sheet: PdfSheet,
  parts: readonly { readonly text: string; readonly sizeMm: number; readonly raiseMm: number }[],
  {
    xMm,
    yMm,
    anchor,
    weight,
  }: { readonly xMm: number; readonly yMm: number; readonly anchor: Anchor; readonly weight: Weight },
): void {
  const runs = parts.flatMap((part) => sheet.runsOf(part.text, weight).map((run) => ({ ...part, ...run })))
  const widthMm = runs.reduce((sum, { advance, sizeMm }) => sum + advance * sizeMm, 0)
  let x = xMm - (anchor === 'start' ? 0 : anchor === 'middle' ? widthMm / 2 : widthMm)
  const shown = runs.map((run) => {
    const place = pdfNumbers(x, yMm - run.raiseMm)
    x += run.advance * run.sizeMm
    return `/${run.font} ${pdfNumbers(run.sizeMm)} Tf 1 0 0 -1 ${place} Tm ${run.shown}`
  })
  if (shown.length > 0) sheet.add(`BT\n${shown.join('\n')}\nET`)
}

const addRule = (sheet: PdfSheet, { fromXMm, fromYMm, toXMm, toYMm, penMm }: RuleMark): void =>
  sheet.add(`${pdfNumbers(penMm)} w ${pdfNumbers(fromXMm, fromYMm)} m ${pdfNumbers(toXMm, toYMm)} l S`)

const addBox = (sheet: PdfSheet, { xMm, yMm, widthMm, heightMm, penMm }: BoxMark): void =>
  sheet.add(`0 j ${pdfNumbers(penMm)} w ${pdfNumbers(xMm, yMm, widthMm, heightMm)} re S`)

function addSign(sheet: PdfSheet, { xMm, yMm, sizeMm }: SignMark): void {
  const { triangle, penMm, bar, dot } = WARNING_SIGN
  const at = ({ x, y }: { readonly x: number; readonly y: number }) => ({ x: xMm + x * sizeMm, y: yMm + y * sizeMm })
  const ends = [at({ x: bar.x, y: bar.fromY }), at({ x: bar.x, y: bar.toY })]
  sheet.add(`1 j ${pdfNumbers(penMm)} w\n${pdfPath(closed(through(triangle.map(at))))} S`)
  sheet.add(`${pdfNumbers(bar.pen * sizeMm)} w\n${pdfPath(through(ends))} S`)
  sheet.add(`${pdfPath(circle(at(dot), dot.radius * sizeMm))} f`)
}

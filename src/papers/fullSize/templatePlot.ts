import type { Figure as Value } from '../../core/figure.ts'
import type { Quantity } from '../../core/quantity.ts'
import { around } from '../../drawing/bounds.ts'
import { layAtScale } from '../../drawing/layDrawing.ts'
import { TEMPLATE_PENS } from '../../drawing/pens.ts'
import { type Plot, plotDrawing } from '../../drawing/plot.ts'
import { formatDate } from '../../format/formatDate.ts'
import { valueText } from '../blocks/smallDrawing.ts'
import type { TemplateOrder } from './fullSizeOrder.ts'
import { grown, inkOf } from './ink.ts'
import { type TitleLines, titleInRoom, titleUnder } from './titleLettering.ts'

/** Size of figures and words, mm. */
const LETTERING_MM = 3
/** A title under a narrow piece is no narrower than this. */
const LEAST_TITLE_MM = 90
/** What half a pen's width and a curve's handles may stand out. */
const EDGE_MM = 1

/**
 * A template as ink at 1 : 1, in the drawing's own coordinates, its title with instrument, revision, date, unit and use inside the piece where
 * there is room, else under it. Screen, PDF, SVG and DXF are all written from this.
 */
export function templatePlot(order: TemplateOrder): Plot {
  const { drawing, words } = order
  const laid = layAtScale(
    drawing,
    {
      widthUnits: drawing.bounds.maxX - drawing.bounds.minX,
      heightUnits: null,
      figureUnits: LETTERING_MM,
      formatValue: (value: Value, quantity: Quantity) => valueText(order, value, quantity),
      wordOf: (word) => words.drawing.shapes[word],
    },
    1,
  )
  const plot = plotDrawing(drawing, laid, TEMPLATE_PENS)
  const ink = inkOf(plot)
  const inked = [...ink.strokes, ...ink.letterings].reduce(
    (box, { bounds }) => around(box, bounds),
    grown(drawing.bounds, EDGE_MM),
  )
  const box = around(plot.box, grown(inked, EDGE_MM))
  const title = titleLines(order)
  const inside = drawing.titleRoom === undefined ? null : titleInRoom(title, drawing.titleRoom, ink)
  if (inside !== null) return { ...plot, box, letterings: [...plot.letterings, ...inside] }
  const under = titleUnder(title, box, LEAST_TITLE_MM)
  return { ...plot, box: under.box, letterings: [...plot.letterings, ...under.letterings] }
}

function titleLines({ drawing, title, use, doc, shop, revisionCode, dateIso, words }: TemplateOrder): TitleLines {
  const { instrument, revision, scale, units } = words.fullSize
  const enlarged = drawing.heightsTimes === 1 ? [] : [words.drawing.enlarged(drawing.name, drawing.heightsTimes)]
  return {
    title,
    others: [
      instrument(doc.number, doc.title),
      revision(revisionCode, formatDate(dateIso)),
      scale(units[shop.units.bodyLength], words.drawing.seenFrom[drawing.seenFrom]),
      ...enlarged,
      use,
    ].filter((line) => line !== ''),
  }
}

import type { Figure as Value } from '../../core/figure.ts'
import type { Quantity, ShopUnits } from '../../core/quantity.ts'
import { heightOf } from '../../drawing/bounds.ts'
import type { Drawing } from '../../drawing/drawing.ts'
import { layDrawing } from '../../drawing/layDrawing.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import type { Mark } from '../page.ts'
import { textMark, TYPE } from '../pen.ts'
import type { SheetWords, StageSheetOrder } from '../stageSheetOrder.ts'

const LETTERING_MM = 2.6
const CAPTION_MM = 4.4

/** A drawing no wider and no higher than asked, with a line under it; its top left corner at x, y. */
export function smallDrawing(
  order: Pick<StageSheetOrder, 'shop' | 'words'>,
  drawing: Drawing,
  place: { readonly xMm: number; readonly yMm: number; readonly widthMm: number; readonly mostMm: number },
): { readonly marks: readonly Mark[]; readonly heightMm: number } {
  const { xMm, yMm, widthMm, mostMm } = place
  const sheet = {
    widthUnits: widthMm,
    figureUnits: LETTERING_MM,
    formatValue: (value: Value, quantity: Quantity) => valueText(order, value, quantity),
    wordOf: (word: keyof SheetWords['drawing']['shapes']) => order.words.drawing.shapes[word],
  }
  const high = layDrawing(drawing, { ...sheet, heightUnits: null })
  const naturalMm = heightOf(high.box) / high.mmPerUnit
  const laid = naturalMm <= mostMm ? high : layDrawing(drawing, { ...sheet, heightUnits: mostMm })
  const heightMm = Math.min(naturalMm, mostMm)
  const caption = textMark(
    captionOf(drawing, order.words),
    xMm + widthMm / 2,
    yMm + heightMm + 3.2,
    { sizePt: TYPE.caption, anchor: 'middle' },
    widthMm,
  )
  return {
    marks: [{ kind: 'drawing', drawing, laid, xMm, yMm, widthMm, heightMm }, caption],
    heightMm: heightMm + CAPTION_MM,
  }
}

/** From where it is seen, and how much larger heights are drawn. */
function captionOf(drawing: Drawing, { drawing: words }: SheetWords): string {
  const seen = words.seenFrom[drawing.seenFrom]
  return drawing.heightsTimes === 1 ? seen : `${seen}, ${words.enlarged(drawing.name, drawing.heightsTimes)}`
}

/**
 * A figure as it stands on a drawing. Millimetres go without their unit; the title block names it. A fraction with what it leaves over is
 * too long beside a dimension line: it stands in decimals of an inch, as exact.
 */
export function valueText(
  { shop }: { readonly shop: { readonly units: ShopUnits } },
  value: Value,
  quantity: Quantity,
): string {
  const { units } = shop
  const short: ShopUnits = units.bodyLength === 'fractionalInch' ? { ...units, bodyLength: 'decimalInch' } : units
  const figure = formatQuantity(value, quantity, short)
  return figureText({ ...figure, unit: figure.unit === 'mm' ? '' : figure.unit === 'in' ? '"' : figure.unit })
}

import type { Figure as Value } from '../core/figure.ts'
import type { Quantity } from '../core/quantity.ts'
import type { Drawing, EdgeMark, LabelWord } from '../drawing/drawing.ts'
import { valueText } from './blocks/smallDrawing.ts'
import type { Block, Mark, Page } from './page.ts'
import type { PaperOrder } from './paperOrder.ts'
import { capitalMm, textMark, TYPE } from './pen.ts'
import { type SetDrawing, setDrawings } from './setDrawings.ts'
import { columnOf, framePage, type Lie, roomOnPage } from './sheetPages.ts'
import { layAtStandardScale, type Room, type ScaledDrawing } from './standardScale.ts'

const LETTERING_MM = 2.6
const CAPTION_MM = 8
const BETWEEN_MM = 6

/** A drawing at its scale, on a page that lies so. */
interface Scaled extends SetDrawing {
  readonly scaled: ScaledDrawing
  readonly lie: Lie
}

/** And with its number in the set. */
interface Placed extends Scaled {
  readonly place: number
}

/**
 * The shop drawings, each at the largest standard scale that its figures leave room for, on a page that stands or lies as suits it; a few small
 * ones of one lie share a page. Always at least one page.
 */
export function layDrawingSet(order: PaperOrder): readonly Page[] {
  const drawings = setDrawings(order).map((set) => scaleFor(order, set))
  const pages = share(order, drawings)
  const { sheet, places } = order.words.drawingSet
  return pages.map((page, i) =>
    framePage(order, layPage(order, page), {
      number: i + 1,
      count: pages.length,
      lie: page[0]?.lie ?? 'upright',
      sheet,
      showsOf: () => places(page[0]?.place ?? 1, page.at(-1)?.place ?? 1, drawings.length),
      scale: scaleOf(order, page),
    }),
  )
}

/** The room of a page of this lie for one drawing under its caption. */
function roomFor(order: PaperOrder, lie: Lie): Room {
  const { topMm, bottomMm } = roomOnPage(order, lie)
  return { widthMm: columnOf(order.paperSize, lie).widthMm, heightMm: bottomMm - topMm - CAPTION_MM }
}

/** On the lie that gives the larger scale; upright where both give the same. */
function scaleFor(order: PaperOrder, set: SetDrawing): Scaled {
  const lettering = {
    figureUnits: LETTERING_MM,
    formatValue: (value: Value, quantity: Quantity) => valueText(order, value, quantity),
    wordOf: (word: LabelWord | EdgeMark) => order.words.drawing.shapes[word],
  }
  const [upright, across] = (['upright', 'across'] as const).map((lie) => ({
    ...set,
    lie,
    scaled: layAtStandardScale(set.drawing, lettering, roomFor(order, lie)),
  }))
  return across!.scaled.mmPerUnit < upright!.scaled.mmPerUnit ? across! : upright!
}

const takesMm = ({ scaled }: Scaled): number => CAPTION_MM + scaled.heightMm

/** Drawings by pages: each on the first that lies as it does and has room for it, so that small ones share; numbered as they come then. */
function share(order: PaperOrder, drawings: readonly Scaled[]): readonly (readonly Placed[])[] {
  const pages: Scaled[][] = []
  for (const one of drawings) {
    const { topMm, bottomMm } = roomOnPage(order, one.lie)
    const page = pages.find((others) => {
      const takenMm = others.reduce((sum, other) => sum + takesMm(other) + BETWEEN_MM, 0)
      return others[0]?.lie === one.lie && takenMm + takesMm(one) <= bottomMm - topMm
    })
    if (page === undefined) pages.push([one])
    else page.push(one)
  }
  let place = 0
  return pages.map((page) => page.map((one) => ({ ...one, place: ++place })))
}

/** Drawings of one page under each other, what room is left shared between them. */
function layPage(order: PaperOrder, drawings: readonly Placed[]): Block[] {
  const lie = drawings[0]?.lie ?? 'upright'
  const { topMm, bottomMm } = roomOnPage(order, lie)
  const taken = drawings.reduce((sum, drawing) => sum + takesMm(drawing), 0)
  const airMm = drawings.length < 2 ? 0 : Math.min((bottomMm - topMm - taken) / (drawings.length - 1), 3 * BETWEEN_MM)
  let yMm = topMm
  return drawings.map((drawing) => {
    const block = layDrawingBlock(order, drawing, yMm)
    yMm += takesMm(drawing) + airMm
    return block
  })
}

function layDrawingBlock(order: PaperOrder, { drawing, title, place, scaled, lie }: Placed, topMm: number): Block {
  const { leftMm, widthMm } = columnOf(order.paperSize, lie)
  const base = topMm + 1 + capitalMm(TYPE.stageTitle)
  const half = widthMm / 2
  const marks: Mark[] = [
    textMark(
      order.words.drawingSet.numbered(place, title),
      leftMm,
      base,
      { sizePt: TYPE.name, weight: 'strong' },
      half - 2,
    ),
    textMark(toldOf(order, drawing, scaled), leftMm + widthMm, base, { sizePt: TYPE.small, anchor: 'end' }, half - 2),
    {
      kind: 'drawing',
      drawing,
      laid: scaled.laid,
      xMm: leftMm + (widthMm - scaled.widthMm) / 2,
      yMm: topMm + CAPTION_MM,
      widthMm: scaled.widthMm,
      heightMm: scaled.heightMm,
    },
  ]
  return {
    kind: 'sheetDrawing',
    area: { xMm: leftMm, yMm: topMm, widthMm, heightMm: CAPTION_MM + scaled.heightMm },
    stage: null,
    marks,
  }
}

/** From where it is seen, how much larger heights are drawn, and its scale. */
function toldOf({ words }: PaperOrder, drawing: Drawing, { ratio }: ScaledDrawing): string {
  const { seenFrom, enlarged } = words.drawing
  return [
    seenFrom[drawing.seenFrom],
    ...(drawing.heightsTimes === 1 ? [] : [enlarged(drawing.name, drawing.heightsTimes)]),
    ratio === null ? words.drawingSet.toFit : words.drawingSet.scale(ratio),
  ].join(', ')
}

/** The scale of a page where all of it has one. */
function scaleOf({ words }: PaperOrder, drawings: readonly Placed[]): string {
  const { scale, scalesBeside, toFit } = words.drawingSet
  const ratios = new Set(drawings.map(({ scaled }) => scaled.ratio))
  const [ratio] = ratios
  if (ratios.size !== 1 || ratio === undefined) return scalesBeside
  return ratio === null ? toFit : scale(ratio)
}

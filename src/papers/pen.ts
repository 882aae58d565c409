import type { Figure } from '../format/figure.ts'
import {
  type Anchor,
  type Area,
  type Block,
  type BlockKind,
  type BoxMark,
  type FigureMark,
  type Mark,
  MM_PER_PT,
  type RuleMark,
  type TextMark,
  type Weight,
} from './page.ts'
import { cutText, figureWidthMm, textWidthMm } from './textWidth.ts'

/** Type on paper, in points: what is read at arm's length is large, what is read once is small. */
export const TYPE = {
  stageNumber: 20,
  stageTitle: 14,
  target: 16,
  cellTarget: 14,
  name: 11,
  text: 10.5,
  caution: 9.5,
  small: 9,
  caption: 8,
} as const

/** Lines, after ISO 128: two widths in the ratio 2:1, and a hair that only parts rows. */
export const LINE = { wideMm: 0.5, narrowMm: 0.25, hairMm: 0.12 } as const

/** From one baseline to the next, as a multiple of the type size. */
const LEADING = 1.32
export const leadingMm = (sizePt: number): number => sizePt * LEADING * MM_PER_PT
/** From the top of a line to its baseline. */
export const ascentMm = (sizePt: number): number => sizePt * 0.98 * MM_PER_PT
/** Height of a capital, by which a line is centred beside a box. */
export const capitalMm = (sizePt: number): number => sizePt * 0.7 * MM_PER_PT

interface Style {
  readonly sizePt: number
  readonly weight?: Weight
  readonly anchor?: Anchor
}

/** One line of text; `yMm` is its baseline. Longer than `widthMm`, it is set smaller, and below 8 points cut with an ellipsis. */
export function textMark(
  text: string,
  xMm: number,
  yMm: number,
  style: Style,
  widthMm = Number.POSITIVE_INFINITY,
): TextMark {
  const { weight = 'plain', anchor = 'start' } = style
  const sizePt = fittingSize(textWidthMm(text, 1, weight), style.sizePt, widthMm)
  const kept = Number.isFinite(widthMm) ? cutText(text, widthMm, sizePt, weight) : text
  return { kind: 'text', text: kept, xMm, yMm, sizePt, weight, anchor }
}

/** Lines of text one under another, the first line's top at `topMm`. */
export function linesMarks(lines: readonly string[], xMm: number, topMm: number, style: Style): TextMark[] {
  return lines.map((line, i) =>
    textMark(line, xMm, topMm + ascentMm(style.sizePt) + i * leadingMm(style.sizePt), style),
  )
}
export const linesHeightMm = (count: number, sizePt: number): number => count * leadingMm(sizePt)

/** A figure no wider than `widthMm`: set smaller where it would be. */
export function figureMark(
  { figure, word }: { readonly figure: Figure; readonly word: string },
  xMm: number,
  yMm: number,
  style: Style,
  widthMm: number,
): FigureMark {
  const { weight = 'plain', anchor = 'start' } = style
  // A unit keeps its least size, so a figure set smaller is not narrower in proportion: a second look at the size found settles it.
  let { sizePt } = style
  for (let look = 0; look < 4; look++)
    sizePt = fittingSize(figureWidthMm(figure, word, sizePt, weight) / sizePt, sizePt, widthMm, 5)
  return { kind: 'figure', figure, word, xMm, yMm, sizePt, weight, anchor }
}

/** A figure in a narrow cell, about the middle `middleMm`: what the nearest 64th leaves over goes under it. */
export function cellFigureMarks(
  set: { readonly figure: Figure; readonly word: string },
  xMm: number,
  middleMm: number,
  style: Style,
  widthMm: number,
): Mark[] {
  const { anchor = 'start' } = style
  const { remainder } = set.figure
  if (remainder === null) return [figureMark(set, xMm, middleMm + capitalMm(style.sizePt) / 2, style, widthMm)]
  const figure = { ...set.figure, remainder: null }
  const under = { sizePt: TYPE.caption, anchor }
  return [
    figureMark({ figure, word: set.word }, xMm, middleMm + 0.4, style, widthMm),
    textMark(remainder.replace('-', '−'), xMm, middleMm + 3.6, under, widthMm),
  ]
}

function fittingSize(widthAtOnePtMm: number, sizePt: number, widthMm: number, leastPt = 8): number {
  if (widthAtOnePtMm * sizePt <= widthMm) return sizePt
  return Math.max(leastPt, Math.floor((widthMm / widthAtOnePtMm) * 20) / 20)
}

export const level = (fromXMm: number, toXMm: number, yMm: number, penMm: number): RuleMark => ({
  kind: 'rule',
  fromXMm,
  fromYMm: yMm,
  toXMm,
  toYMm: yMm,
  penMm,
})
export const upright = (xMm: number, fromYMm: number, toYMm: number, penMm: number): RuleMark => ({
  kind: 'rule',
  fromXMm: xMm,
  fromYMm,
  toXMm: xMm,
  toYMm,
  penMm,
})
export const boxMark = (area: Area, purpose: BoxMark['purpose'], penMm: number = LINE.narrowMm): BoxMark => ({
  kind: 'box',
  ...area,
  purpose,
  penMm,
})

/** A block across the whole column, its top at 0. */
export function blockOf(
  kind: BlockKind,
  column: Column,
  heightMm: number,
  marks: readonly Mark[],
  stage: Block['stage'] = null,
): Block {
  return { kind, area: { xMm: column.leftMm, yMm: 0, widthMm: column.widthMm, heightMm }, stage, marks }
}

/** Where blocks stand between the margins. */
export interface Column {
  readonly leftMm: number
  readonly widthMm: number
}
export const rightMm = (column: Column): number => column.leftMm + column.widthMm

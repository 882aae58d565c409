import type { Drawing } from '../drawing/drawing.ts'
import type { Plot } from '../drawing/plot.ts'
import type { Laid } from '../drawing/sheet.ts'
import type { Figure } from '../format/figure.ts'
import type { StageKey } from '../record/patterns/stages.ts'

/** A paper as data: laid out once, in mm from the upper left corner of the page; screen, print and files are writers of it. */
export interface Page {
  readonly size: SheetSize
  readonly widthMm: number
  readonly heightMm: number
  readonly number: number
  readonly count: number
  readonly blocks: readonly Block[]
}

export interface Area {
  readonly xMm: number
  readonly yMm: number
  readonly widthMm: number
  readonly heightMm: number
}

export const BLOCK_KINDS = [
  'note',
  'heading',
  'work',
  'instructions',
  'numbers',
  'rows',
  'stations',
  'contour',
  'caution',
  'cautionInFull',
  'titleBlock',
  'facts',
  'signatures',
  'sheetDrawing',
  'buying',
  'parts',
  'label',
  'tile',
  'cropMarks',
  'uprightScale',
  'measuringBox',
  'tileTitle',
  'tileMap',
] as const
export type BlockKind = (typeof BLOCK_KINDS)[number]

/** One thing on a page. Everything it draws lies inside its area; areas never overlap. */
export interface Block {
  readonly kind: BlockKind
  readonly area: Area
  /** The stage it belongs to; null for what belongs to the paper. */
  readonly stage: { readonly id: string; readonly key: StageKey } | null
  readonly marks: readonly Mark[]
}

export type Mark = TextMark | FigureMark | RuleMark | BoxMark | SignMark | DrawingMark | PlotMark
export type Anchor = 'start' | 'middle' | 'end'
export type Weight = 'plain' | 'strong'

interface Lettering {
  /** Where the baseline stands, and which part of the text stands at x. */
  readonly xMm: number
  readonly yMm: number
  readonly sizePt: number
  readonly weight: Weight
  readonly anchor: Anchor
}
export interface TextMark extends Lettering {
  readonly kind: 'text'
  readonly text: string
}
/** A value with its unit, set with a true fraction and a small unit. */
export interface FigureMark extends Lettering {
  readonly kind: 'figure'
  readonly figure: Figure
  /** What stands in place of a number where there is none: flat, none. */
  readonly word: string
}
export interface RuleMark {
  readonly kind: 'rule'
  readonly fromXMm: number
  readonly fromYMm: number
  readonly toXMm: number
  readonly toYMm: number
  readonly penMm: number
}
/** A box for the pencil (measured, done), or a frame round something. */
export interface BoxMark extends Area {
  readonly kind: 'box'
  readonly purpose: 'measured' | 'done' | 'frame'
  readonly penMm: number
}
/** A triangle with its bang, as on safety signs (ISO 7010 W001); always beside words. */
export interface SignMark {
  readonly kind: 'sign'
  readonly xMm: number
  readonly yMm: number
  readonly sizeMm: number
}
export interface DrawingMark extends Area {
  readonly kind: 'drawing'
  readonly drawing: Drawing
  /** The same laid in this area, a unit being a millimetre of the page. */
  readonly laid: Laid
}

/** A part of a plot at full size, cut off at the edges of its area. */
export interface PlotMark extends Area {
  readonly kind: 'plot'
  readonly plot: Plot
  /** The place of the plot that lies at the upper left of the area. */
  readonly fromXMm: number
  readonly fromYMm: number
  /** How much longer than true it is set across and along the page, for a printer that is known to be off; 1 = true. */
  readonly timesAcross: number
  readonly timesAlong: number
}

/** A box a pencil can write a reading in: common practice of the bench, in mm. */
export const LEAST_BOX = { widthMm: 22, heightMm: 9 } as const

export const PAPER_SIZES = {
  A4: { widthMm: 210, heightMm: 297 },
  Letter: { widthMm: 215.9, heightMm: 279.4 },
} as const
export type PaperSize = keyof typeof PAPER_SIZES

/** Sheets a template can be tiled on, upright (ISO 216; ANSI Y14.1 for Letter and Tabloid). A roll is as wide as it is and as long as it takes. */
export const SHEET_SIZES = {
  ...PAPER_SIZES,
  A3: { widthMm: 297, heightMm: 420 },
  Tabloid: { widthMm: 279.4, heightMm: 431.8 },
  A1: { widthMm: 594, heightMm: 841 },
  A0: { widthMm: 841, heightMm: 1189 },
} as const
export type SheetSize = keyof typeof SHEET_SIZES | 'roll'
export const MARGIN_MM = 12

export const MM_PER_PT = 25.4 / 72

/** A block moved down (or up) the page with everything in it. */
export function shiftBlock(block: Block, byMm: number): Block {
  return {
    ...block,
    area: { ...block.area, yMm: block.area.yMm + byMm },
    marks: block.marks.map((mark) => shiftMark(mark, byMm)),
  }
}

function shiftMark(mark: Mark, byMm: number): Mark {
  return mark.kind === 'rule'
    ? { ...mark, fromYMm: mark.fromYMm + byMm, toYMm: mark.toYMm + byMm }
    : { ...mark, yMm: mark.yMm + byMm }
}

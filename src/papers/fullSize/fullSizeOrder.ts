import type { Drawing } from '../../drawing/drawing.ts'
import type { CommissionDoc, ShopDoc } from '../../record/commission.ts'
import type { FullSizeWords } from '../../words/fullSize.ts'
import type { SheetSize } from '../page.ts'
import type { SheetWords } from '../stageSheetOrder.ts'

/** What a template is cut from: the drawing, and what is lettered beside it. */
export interface TemplateOrder {
  readonly drawing: Drawing
  /** What it is, as its title says: "Arch of brace 3, top". */
  readonly title: string
  /** One line on what it is for and how it is held. */
  readonly use: string
  readonly doc: Pick<CommissionDoc, 'number' | 'title'>
  readonly shop: Pick<ShopDoc, 'units' | 'name'>
  readonly revisionCode: string
  /** The day it was made, ISO. */
  readonly dateIso: string
  readonly words: Pick<SheetWords, 'drawing' | 'paper'> & { readonly fullSize: FullSizeWords }
}

/** How far the short straights of a DXF may depart from the curve, mm. */
export const POLYLINE_TOLERANCE_MM = 0.05

/** On what it is printed. */
export interface SheetChoice {
  readonly size: SheetSize
  /** Of a roll; of no account else. */
  readonly rollWidthMm: number
  /** How much of a tile is repeated on the next one. */
  readonly overlapMm: number
  /** What a box of 100 mm measured as printed, across and along the page; 100 where the printer is true. */
  readonly boxMeasuredMm: { readonly across: number; readonly along: number }
}

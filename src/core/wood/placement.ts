import type { Grain, Size } from './part.ts'
import type { Rect } from './sawing.ts'

/** A board that lies in the rack, its grain along its length. Mm. */
export interface StockBoard extends Size {
  readonly id: string
}

/** What is laid out: pieces of one rough size. */
export interface LayoutPart {
  readonly id: string
  readonly size: Size
  readonly grain: Grain
  readonly quantity: number
  /** Two and two out of one place: a board has to give two slices. */
  readonly isBookmatched: boolean
}

export interface LayoutRules {
  /** Between two pieces. */
  readonly kerfMm: number
  /** Taken off all round the board before anything is laid on it. */
  readonly trimMm: number
}

/** One place on a board: sawn out through its whole thickness, then resawn into as many slices as are wanted. */
export interface Placement extends Rect {
  readonly partId: string
  readonly thicknessMm: number
  readonly copies: number
  /** Its length lies across the board. */
  readonly isTurned: boolean
}

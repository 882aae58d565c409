import type { WoodRole } from './wood/part.ts'

/** What is left on every piece when it is sawn out, the woods, and the planks in hand. Lengths in mm. */
export interface CuttingPlan {
  /** Round a plate, outside its outline. */
  readonly plateMarginMm: number
  /** Over the finished size in all: both ends, edges or faces together. */
  readonly lengthMm: number
  readonly widthMm: number
  readonly thicknessMm: number
  /** What one cut turns to dust. */
  readonly kerfMm: number
  /** Taken off all round a plank before anything is laid on it. */
  readonly trimMm: number
  /** What each part of the instrument is made of, in the maker's words; empty: not chosen. */
  readonly woods: { readonly [role in WoodRole]: string }
  readonly planks: { readonly [id: string]: PlankPlan }
}

/** A board in the rack that parts of one wood may be sawn from, its grain along its length. */
export interface PlankPlan {
  readonly order: string
  readonly role: WoodRole
  readonly lengthMm: number
  readonly widthMm: number
  readonly thicknessMm: number
}

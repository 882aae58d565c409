import type { Figure } from '../figure.ts'
import type { Numbers } from '../numbers.ts'

/** What the cut list needs of a brace: finished, and as its blank is sawn. Mm. */
export interface BraceBlank {
  readonly number: number
  readonly plate: 'top' | 'back'
  readonly finishedLengthMm: number
  readonly widthMm: number
  readonly heightMm: number
  readonly blankLengthMm: number
  readonly blankWidthMm: number
  readonly blankHeightMm: number
}

/** And of what else is glued to the plates; none where there is no such thing. */
export interface PlateBlanks {
  readonly braces: readonly BraceBlank[]
  readonly patches: { readonly cross: { readonly count: number } }
  /** Stretches of the strip over the back's joint, inside. */
  readonly jointStrip: readonly { readonly lengthMm: number }[]
}

/** A length, or 0 where there is none: a part of no length is no part. */
export const lengthOrNone = (figure: Figure): number => (typeof figure === 'number' ? figure : 0)

/** What the cut list needs of an instrument's numbers. */
export type WoodNumbers = Pick<
  Numbers,
  | 'body'
  | 'cutaway'
  | 'sides'
  | 'blanks'
  | 'rim'
  | 'trebleRim'
  | 'places'
  | 'treblePlaces'
  | 'linings'
  | 'sideBraces'
  | 'trebleBraces'
  | 'blocks'
  | 'edgeStrips'
  | 'endWedge'
  | 'backStrip'
  | 'board'
  | 'strings'
  | 'setup'
  | 'bridge'
  | 'neck'
  | 'head'
  | 'tuners'
  | 'soundhole'
  | 'rosette'
> &
  PlateBlanks

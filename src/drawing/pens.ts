import type { LineRole } from './drawing.ts'

/** Two line widths and the length of one dash in units of the sheet, after ISO 128: wide and narrow stand 2 : 1. */
export interface Pens {
  readonly wide: number
  readonly narrow: number
  /** Length of one dash of a hidden line. */
  readonly dash: number
  /** A line to cut along is drawn through: nothing beside it could be taken for it. */
  readonly cutsThrough?: true
}
export const PAPER_PENS: Pens = { wide: 0.5, narrow: 0.25, dash: 2 }
export const SCREEN_PENS: Pens = { wide: 2, narrow: 1, dash: 7 }

/** A small drawing beside the work takes lines thinner than a drawing that fills its sheet. */
export const SMALL_PENS: Pens = { wide: PAPER_PENS.wide * 0.7, narrow: PAPER_PENS.narrow * 0.6, dash: PAPER_PENS.dash }

/** What is sawn or cut to by hand is drawn fine: a line half a millimetre wide leaves open which of its edges is meant. Yet it is told at a glance from what is only marked. */
export const TEMPLATE_PENS: Pens = { wide: 0.35, narrow: 0.13, dash: 2, cutsThrough: true }

const WIDE: ReadonlySet<LineRole> = new Set(['edge', 'cut'])

/** The width of a line, in units of the sheet. */
export const penOf = (role: LineRole, pens: Pens): number => (WIDE.has(role) ? pens.wide : pens.narrow)

const DASHES: Partial<Record<LineRole, readonly number[]>> = {
  hidden: [1, 0.5],
  centre: [3, 0.5, 0.25, 0.5],
  ghost: [0.2, 0.6],
  cut: [2.2, 0.5],
}

/** Dashes and gaps of a line in turn, in units of the sheet; none for one drawn through. */
export const dashesOf = (role: LineRole, pens: Pens): readonly number[] =>
  role === 'cut' && pens.cutsThrough === true ? [] : (DASHES[role] ?? []).map((part) => part * pens.dash)

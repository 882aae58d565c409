import type { Figure } from '../core/figure.ts'
import type { Point } from '../core/geometry/point.ts'
import type { Quantity } from '../core/quantity.ts'
import type { Bounds, EdgeMark, Figured, LabelWord, PathCommand, StationList } from './drawing.ts'

/** The sheet a drawing is laid on. A unit is a CSS pixel on a screen, a millimetre on paper. */
export interface Sheet {
  readonly widthUnits: number
  /** null: as high as it comes. */
  readonly heightUnits: number | null
  /** Size of the lettering. */
  readonly figureUnits: number
  readonly formatValue: (value: Figure, quantity: Quantity) => string
  readonly wordOf: (word: LabelWord | EdgeMark) => string
}

/** A drawing laid on a sheet: everything in millimetres of the instrument, at the scale that just fits. */
export interface Laid {
  /** Millimetres of the instrument to one unit of the sheet: 2 on paper is a scale of 1 : 2. */
  readonly mmPerUnit: number
  /** What the sheet shows. */
  readonly box: Bounds
  readonly figureMm: number
  readonly dimensions: readonly LaidDimension[]
  readonly stations: readonly LaidStation[]
  readonly labels: readonly LaidText[]
  /** What lies at each edge; beside the drawing while it is seen whole, at the edges of the sheet while it is moved under them. */
  readonly marks: readonly LaidText[]
  readonly marksWhileMoved: readonly LaidText[]
}

/** A text centred at `pivot + offset`. When the drawing is enlarged the pivot stays with the drawing and the offset keeps its size on the sheet. */
export interface LaidText {
  readonly text: string
  readonly pivot: Point
  readonly offset: Point
  /** 0, or -90 to be read from the right. */
  readonly turnDeg: 0 | -90
  readonly widthMm: number
  readonly heightMm: number
}

/**
 * An oblique stroke ends a length between two points. Lengths that run from one origin share a line, so they begin in a circle there and
 * each ends in an arrow away from it (ISO 129-1, running dimensions): else they read as links of a chain.
 */
export interface Tick {
  readonly at: Point
  readonly alongDeg: number
  readonly mark: 'stroke' | 'origin' | 'arrow'
}

export interface LaidDimension {
  readonly figured: Figured
  readonly lines: readonly PathCommand[]
  /** What ends its line: where, and the direction of the line there. */
  readonly ticks: readonly Tick[]
  readonly figure: LaidText
}

export interface LaidStation {
  readonly list: StationList
  readonly row: number
  readonly lines: readonly PathCommand[]
  readonly number: LaidText | null
}

/** A figure's mean width and the height of its digits, in parts of its size; wide enough for the lettering and what stands in for it. */
const WIDTH = 0.56
const HEIGHT = 0.74

export function textAt(text: string, figureMm: number, pivot: Point, offset: Point, turnDeg: 0 | -90 = 0): LaidText {
  return {
    text,
    pivot,
    offset,
    turnDeg,
    widthMm: Math.max(text.length, 1) * WIDTH * figureMm,
    heightMm: HEIGHT * figureMm,
  }
}

/** A text that stands off from a place in a direction; centred on it where there is none. A longer direction stands further off. */
export function textAway(text: string, figureMm: number, at: Point, away: Point, turnDeg: 0 | -90 = 0): LaidText {
  const laid = textAt(text, figureMm, at, { x: 0, y: 0 }, turnDeg)
  const most = Math.max(Math.abs(away.x), Math.abs(away.y))
  if (most === 0) return laid
  const [w, h] = turnDeg === 0 ? [laid.widthMm, laid.heightMm] : [laid.heightMm, laid.widthMm]
  const gap = 0.45 * figureMm
  return {
    ...laid,
    offset: { x: (away.x / most) * (w / 2) + away.x * gap, y: (away.y / most) * (h / 2) + away.y * gap },
  }
}

/** The room a text takes. */
export function boxOf(text: LaidText, marginMm = 0): Bounds {
  const [w, h] = text.turnDeg === 0 ? [text.widthMm, text.heightMm] : [text.heightMm, text.widthMm]
  const x = text.pivot.x + text.offset.x
  const y = text.pivot.y + text.offset.y
  return {
    minX: x - w / 2 - marginMm,
    minY: y - h / 2 - marginMm,
    maxX: x + w / 2 + marginMm,
    maxY: y + h / 2 + marginMm,
  }
}

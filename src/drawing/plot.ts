import type { Point } from '../core/geometry/point.ts'
import { changeCommand } from './changeShape.ts'
import type { Bounds, Drawing, LineRole, PathCommand } from './drawing.ts'
import { dashesOf, type Pens, penOf } from './pens.ts'
import type { Laid, LaidText, Tick } from './sheet.ts'
import { TICK_LINES, tickTurnDeg } from './tick.ts'

/** What a line is for, as a laser or a router sorts its work: cut through, scored into the face, or only there to be read. */
export const PLOT_LAYERS = ['cut', 'score', 'mark'] as const
export type PlotLayer = (typeof PLOT_LAYERS)[number]

/** One line of a plot: mm of the sheet, x to the right, y down. */
export interface Stroke {
  readonly layer: PlotLayer
  readonly commands: readonly PathCommand[]
  readonly penMm: number
  /** Dashes and gaps in turn; none for a line drawn through. */
  readonly dashesMm: readonly number[]
  /** Hides what was drawn before it. */
  readonly covers: boolean
}

/** One line of text, its middle at `at`. */
export interface Lettering {
  readonly text: string
  readonly at: Point
  /** Type size. */
  readonly sizeMm: number
  /** Height of its digits. */
  readonly heightMm: number
  /** 0, or -90 to be read from the right. */
  readonly turnDeg: 0 | -90
}

/**
 * A drawing as plain ink: what writers of files need to know, and nothing they have to decide. At a scale of 1 : 1 its coordinates are those
 * of the drawing.
 */
export interface Plot {
  readonly box: Bounds
  readonly strokes: readonly Stroke[]
  readonly letterings: readonly Lettering[]
}

const LAYER_OF: Readonly<Record<LineRole, PlotLayer>> = {
  cut: 'cut',
  edge: 'cut',
  hidden: 'score',
  centre: 'score',
  thin: 'score',
  slot: 'score',
  dimension: 'mark',
  ghost: 'mark',
}

/** A laid drawing as ink, in mm of the sheet it was laid on. */
export function plotDrawing(drawing: Drawing, laid: Laid, pens: Pens): Plot {
  const { mmPerUnit, figureMm, box } = laid
  const toSheet = (commands: readonly PathCommand[]) => commands.map((command) => scaleCommand(command, 1 / mmPerUnit))
  const fine = (commands: readonly PathCommand[]): Stroke => ({
    layer: 'mark',
    commands: toSheet(commands),
    penMm: pens.narrow,
    dashesMm: [],
    covers: false,
  })
  const lines = drawing.shapes.flatMap((shape): Stroke[] =>
    shape.kind === 'path'
      ? [
          {
            layer: LAYER_OF[shape.role],
            commands: toSheet(shape.commands),
            penMm: shape.solidMm === undefined ? penOf(shape.role, pens) : shape.solidMm / mmPerUnit,
            dashesMm: dashesOf(shape.role, pens),
            covers: shape.covers === true,
          },
        ]
      : [],
  )
  const stations = laid.stations.map(({ lines: ticks }): Stroke => ({ ...fine(ticks), layer: 'score' }))
  const dimensions = laid.dimensions.flatMap(({ lines: own, ticks }) => [
    ...(own.length > 0 ? [fine(own)] : []),
    ...ticks.map((tick): Stroke => ({ ...fine(tickLines(tick, figureMm)), penMm: pens.wide * 0.8 })),
  ])
  const toLettering = (text: LaidText, size = figureMm): Lettering => ({
    text: text.text,
    at: { x: (text.pivot.x + text.offset.x) / mmPerUnit, y: (text.pivot.y + text.offset.y) / mmPerUnit },
    sizeMm: size / mmPerUnit,
    heightMm: text.heightMm / mmPerUnit,
    turnDeg: text.turnDeg,
  })
  return {
    box: {
      minX: box.minX / mmPerUnit,
      minY: box.minY / mmPerUnit,
      maxX: box.maxX / mmPerUnit,
      maxY: box.maxY / mmPerUnit,
    },
    strokes: [...lines, ...stations, ...dimensions],
    letterings: [
      ...laid.stations.flatMap(({ number }) => (number === null ? [] : [toLettering(number)])),
      ...laid.labels.map((text) => toLettering(text)),
      ...laid.dimensions.map(({ figure }) => toLettering(figure)),
      ...laid.marks.map((text) => toLettering(text, figureMm * 0.9)),
    ],
  }
}

/** The strokes of a tick where it stands. */
function tickLines(tick: Tick, figureMm: number): PathCommand[] {
  const turnRad = (tickTurnDeg(tick) * Math.PI) / 180
  const [cos, sin] = [Math.cos(turnRad), Math.sin(turnRad)]
  return TICK_LINES[tick.mark].map((command) =>
    turned(scaleCommand(command, figureMm), ({ x, y }) => ({
      x: tick.at.x + x * cos - y * sin,
      y: tick.at.y + x * sin + y * cos,
    })),
  )
}

const scaleCommand = (command: PathCommand, factor: number): PathCommand =>
  command[0] === 'A'
    ? ['A', command[1] * factor, command[2], command[3], command[4] * factor, command[5] * factor]
    : turned(command, ({ x, y }) => ({ x: x * factor, y: y * factor }))

/** A step of a path with its points elsewhere, in no mirror. */
const turned = (command: PathCommand, point: (at: Point) => Point): PathCommand =>
  changeCommand(command, { point, isMirror: false })

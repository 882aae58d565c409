import type { Point } from '../core/geometry/point.ts'
import type { Linear, PathCommand, Side } from './drawing.ts'
import { type LaidDimension, type Tick, textAt } from './sheet.ts'

/** Distances in parts of the figures' size. */
const LANE = 2
const FIRST_LANE_FIGURES_OUTSIDE = 1.3
const FIRST_LANE_FIGURES_INSIDE = 2.1
const EXTENSION_GAP = 0.4
const EXTENSION_OVER = 0.45
const ROOM_BESIDE = 0.5
const OFF_LINE = 0.3

type TextOf = (dimension: Linear) => string

/** One way of looking at both directions: `along` the dimension line, `across` from the drawing to it. */
interface Way {
  readonly level: boolean
  readonly out: 1 | -1
}
const WAYS: Record<Side, Way> = {
  above: { level: true, out: -1 },
  below: { level: true, out: 1 },
  left: { level: false, out: -1 },
  right: { level: false, out: 1 },
}
const alongOf = (way: Way, point: Point) => (way.level ? point.x : point.y)
const acrossOf = (way: Way, point: Point) => (way.level ? point.y : point.x)
const pointOf = (way: Way, along: number, across: number): Point =>
  way.level ? { x: along, y: across } : { x: across, y: along }

interface Placed {
  readonly dimension: Linear
  readonly lane: number
  /** Middle of the figure along the line, and how far the line runs for it beyond the two points. */
  readonly figureAt: number
  readonly lineFrom: number
  readonly lineTo: number
}

/** Dimensions whose lines run clear of the drawing: lanes are given out so that no figure meets another line or figure of its side. */
export function layLanes(dimensions: readonly Linear[], figureMm: number, textOf: TextOf): LaidDimension[] {
  const groups = new Map<string, Linear[]>()
  for (const dimension of dimensions) {
    if (dimension.line.way === 'inPlace') continue
    const key = `${dimension.side} ${dimension.line.baseMm}`
    groups.set(key, [...(groups.get(key) ?? []), dimension])
  }
  return [...groups.values()].flatMap((group) => laySide(group, figureMm, textOf))
}

function laySide(group: readonly Linear[], figureMm: number, textOf: TextOf): LaidDimension[] {
  const way = WAYS[group[0]!.side]
  const widthOf = (dimension: Linear) => textAt(textOf(dimension), figureMm, ORIGIN, ORIGIN).widthMm
  const runs = placeRunning(group, way, figureMm, widthOf)
  const spans = placeOutside(group, runs, way, figureMm, widthOf)
  // Figures stand above a level line and left of an upright one: outside the drawing on two sides, toward it on the others.
  const first = way.out === -1 ? FIRST_LANE_FIGURES_OUTSIDE : FIRST_LANE_FIGURES_INSIDE
  return [...runs, ...spans].map((placed) => {
    const { line } = placed.dimension
    const base = line.way === 'inPlace' ? 0 : line.baseMm
    const free = line.way === 'inPlace' ? 0 : (line.lanesFree ?? 0)
    const clear = free === 0 ? null : base + way.out * LANE * free * figureMm
    return drawPlaced(
      placed,
      way,
      base + way.out * (first + LANE * (placed.lane + free)) * figureMm,
      clear,
      figureMm,
      textOf,
    )
  })
}

const ORIGIN = { x: 0, y: 0 }

function placeRunning(
  group: readonly Linear[],
  way: Way,
  figureMm: number,
  widthOf: (dimension: Linear) => number,
): Placed[] {
  const taken: [number, number][][] = []
  const marks: { readonly lane: number; readonly at: number }[] = []
  const reach = (d: Linear) => Math.abs(alongOf(way, d.to) - alongOf(way, d.from))
  return group
    .filter((d) => d.line.way === 'running')
    .toSorted((a, b) => reach(a) - reach(b))
    .map((dimension) => {
      const from = alongOf(way, dimension.from)
      const to = alongOf(way, dimension.to)
      const sign = to < from ? -1 : 1
      const width = widthOf(dimension)
      const before = Math.abs(to - from) > width + 2 * ROOM_BESIDE * figureMm
      // Where it does not fit before its mark it stands on the other side of the origin, where no line crosses it.
      const beside = width / 2 + ROOM_BESIDE * figureMm
      const figureAt = before ? to - sign * beside : from - sign * beside
      const room: [number, number] = [
        Math.min(figureAt - width / 2, to) - 0.3 * figureMm,
        Math.max(figureAt + width / 2, to) + 0.3 * figureMm,
      ]
      let lane = 0
      // Neither a figure of the same lane nor a line on its way to a lane further out.
      const meets = () =>
        (taken[lane] ?? []).some(([a, b]) => a < room[1] && room[0] < b) ||
        marks.some((mark) => mark.lane > lane && room[0] < mark.at && mark.at < room[1])
      while (meets()) lane++
      taken[lane] = [...(taken[lane] ?? []), room]
      marks.push({ lane, at: to })
      return { dimension, lane, figureAt, lineFrom: before ? from : figureAt - (sign * width) / 2, lineTo: to }
    })
}

function placeOutside(
  group: readonly Linear[],
  runs: readonly Placed[],
  way: Way,
  figureMm: number,
  widthOf: (dimension: Linear) => number,
): Placed[] {
  const firstFree = 1 + Math.max(-1, ...runs.map((run) => run.lane))
  const taken: [number, number][][] = []
  const span = (d: Linear) => Math.abs(alongOf(way, d.to) - alongOf(way, d.from))
  return group
    .filter((d) => d.line.way === 'outside')
    .toSorted((a, b) => span(a) - span(b))
    .map((dimension) => {
      const low = Math.min(alongOf(way, dimension.from), alongOf(way, dimension.to))
      const high = Math.max(alongOf(way, dimension.from), alongOf(way, dimension.to))
      const width = widthOf(dimension)
      const fits = high - low >= width + 2 * ROOM_BESIDE * figureMm
      // Where it does not fit the figure stands past the end it is read from.
      const past = width + 1.2 * figureMm
      const figureAt = fits ? (low + high) / 2 : way.level ? high + past / 2 : low - past / 2
      const lineFrom = fits || way.level ? low : low - past
      const lineTo = fits || !way.level ? high : high + past
      let lane = 0
      while ((taken[lane] ?? []).some(([a, b]) => a < lineTo - 1e-6 && lineFrom + 1e-6 < b)) lane++
      taken[lane] = [...(taken[lane] ?? []), [lineFrom, lineTo]]
      return { dimension, lane: lane + firstFree, figureAt, lineFrom, lineTo }
    })
}

function drawPlaced(
  placed: Placed,
  way: Way,
  lineAcross: number,
  clearAcross: number | null,
  figureMm: number,
  textOf: TextOf,
): LaidDimension {
  const { dimension } = placed
  const ends = [dimension.from, dimension.to].map((point) => ({
    along: alongOf(way, point),
    across: acrossOf(way, point),
  }))
  const lines: PathCommand[] = []
  const draw = (a: Point, b: Point) => lines.push(['M', a.x, a.y], ['L', b.x, b.y])
  for (const { along, across } of ends) {
    const starts = clearAcross ?? across + way.out * EXTENSION_GAP * figureMm
    draw(pointOf(way, along, starts), pointOf(way, along, lineAcross + way.out * EXTENSION_OVER * figureMm))
  }
  draw(pointOf(way, placed.lineFrom, lineAcross), pointOf(way, placed.lineTo, lineAcross))
  const pivot = pointOf(way, placed.figureAt, lineAcross)
  return {
    figured: dimension.figured,
    lines,
    ticks: ends.map(({ along }, i): Tick => {
      const at = pointOf(way, along, lineAcross)
      if (dimension.line.way !== 'running') return { at, alongDeg: way.level ? 0 : 90, mark: 'stroke' }
      const origin = pointOf(way, ends[0]?.along ?? along, lineAcross)
      const alongDeg = (Math.atan2(at.y - origin.y, at.x - origin.x) * 180) / Math.PI
      return { at, alongDeg, mark: i === 0 ? 'origin' : 'arrow' }
    }),
    figure: overLine(textOf(dimension), figureMm, pivot, way.level),
  }
}

/** A figure over a level line, or left of an upright one, read from below or from the right. */
function overLine(text: string, figureMm: number, pivot: Point, level: boolean) {
  const laid = textAt(text, figureMm, pivot, ORIGIN, level ? 0 : -90)
  const off = -(laid.heightMm / 2 + OFF_LINE * figureMm)
  return { ...laid, offset: level ? { x: 0, y: off } : { x: off, y: 0 } }
}

/** A length drawn where it is: its line between the two points, the figure over it, or past the first point where there is no room. */
export function layInPlace(dimension: Linear, figureMm: number, text: string): LaidDimension {
  const way = WAYS[dimension.side]
  const { from, to } = dimension
  const part = dimension.line.way === 'inPlace' ? dimension.line.figureAt : 0.5
  const span = Math.abs(alongOf(way, to) - alongOf(way, from))
  const sign = alongOf(way, from) < alongOf(way, to) ? -1 : 1
  const width = textAt(text, figureMm, ORIGIN, ORIGIN).widthMm
  const fits = span >= width + figureMm
  const lines: PathCommand[] = [
    ['M', from.x, from.y],
    ['L', to.x, to.y],
  ]
  const ticks = [from, to].map((at): Tick => ({ at, alongDeg: way.level ? 0 : 90, mark: 'stroke' }))
  if (fits) {
    // The figure keeps clear of both ends.
    const room = (width / 2 + 0.5 * figureMm) / span
    const at = Math.min(Math.max(part, room), 1 - room)
    const pivot = { x: from.x + (to.x - from.x) * at, y: from.y + (to.y - from.y) * at }
    return { figured: dimension.figured, lines, ticks, figure: overLine(text, figureMm, pivot, way.level) }
  }
  const tip = pointOf(way, alongOf(way, from) + sign * figureMm, acrossOf(way, from))
  const laid = textAt(text, figureMm, from, ORIGIN)
  const off = way.level ? width / 2 + 1.3 * figureMm : laid.heightMm / 2 + 1.3 * figureMm
  return {
    figured: dimension.figured,
    lines: [...lines, ['M', from.x, from.y], ['L', tip.x, tip.y]],
    ticks,
    figure: { ...laid, offset: way.level ? { x: sign * off, y: 0 } : { x: 0, y: sign * off } },
  }
}

import { compute } from '../../src/core/compute.ts'
import { curveAt } from '../../src/core/geometry/curve.ts'
import type { Point } from '../../src/core/geometry/point.ts'
import type { Plan } from '../../src/core/plan.ts'
import { boundsOf } from '../../src/drawing/bounds.ts'
import { boxDrawingOf } from '../../src/drawing/boxDrawingOf.ts'
import { curveCommands } from '../../src/drawing/curvePath.ts'
import type { Drawing, PathCommand } from '../../src/drawing/drawing.ts'
import { drawingOf } from '../../src/drawing/drawingOf.ts'
import { layAtScale } from '../../src/drawing/layDrawing.ts'
import { TEMPLATE_PENS } from '../../src/drawing/pens.ts'
import { type Plot, plotDrawing, type Stroke } from '../../src/drawing/plot.ts'
import { traceChain } from '../core/trace.ts'
import { withCutaway } from '../drawing/cutModels.ts'
import { sheetOf } from '../drawing/everyDrawing.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'

/** A drawing at full size, as it goes into a file. */
export const plotOf = (drawing: Drawing): Plot =>
  plotDrawing(drawing, layAtScale(drawing, sheetOf(1000, null, 3), 1), TEMPLATE_PENS)

export const strokeOf = (commands: readonly PathCommand[], changes: Partial<Stroke> = {}): Stroke => ({
  layer: 'cut',
  commands,
  penMm: 0.35,
  dashesMm: [],
  covers: false,
  ...changes,
})
export const plotWith = (strokes: readonly Stroke[], letterings: Plot['letterings'] = []): Plot => ({
  box: { minX: -20, minY: -30, maxX: 180, maxY: 70 },
  strokes,
  letterings,
})

type Hand = Plan['handed']

const KEY_WIDTHS: Plan = { ...STEEL_STRING.plan, outline: { ...STEEL_STRING.plan.outline, kind: 'keyWidths' } }

/** Both halves of two outlines alone, treble below, with dense points to measure by; those of the arcs are traced by their centres. */
export const OUTLINES = (
  [
    ['compass arcs', STEEL_STRING.plan],
    ['clothoids', KEY_WIDTHS],
  ] as const
).map(([name, plan]) => {
  const half = compute(plan).geometry.outline.treble
  const treble: readonly Point[] =
    name === 'compass arcs'
      ? traceChain(STEEL_STRING.plan.outline.pieces, 0.25)
      : Array.from({ length: 3001 }, (_, i) => curveAt(half, (half.lengthMm * i) / 3000).point)
  const points = [...treble, ...treble.map(({ x, y }) => ({ x, y: -y }))]
  const strokes = [false, true].map((mirrored) => strokeOf(curveCommands(half, { mirrored })))
  const plot: Plot = { box: boundsOf(points), strokes, letterings: [] }
  return { name, plot, points }
})

/** A body with a rounded cutaway, seen from the front. */
export function cutBody(handed: Hand): Plot {
  const plan = { ...withCutaway(STEEL_STRING.plan, 'rounded'), handed }
  return plotOf(drawingOf('plan', compute(plan), plan))
}

/** A plate with a single brace, on the bass side, between x 90 and 170: seen from inside. */
export function oneBrace(plate: 'top' | 'back', handed: Hand): Plot {
  const { bracing } = STEEL_STRING.plan
  const [model] = Object.values(bracing.braces)
  const end = { ...model!.from, stops: 'here' as const, side: 'bass' as const, braceId: null }
  const brace = {
    ...model!,
    plate,
    twin: false,
    from: { ...end, xMm: 100, yMm: -40 },
    to: { ...end, xMm: 160, yMm: -110 },
  }
  const plan: Plan = { ...STEEL_STRING.plan, handed, bracing: { ...bracing, braces: { one: brace } } }
  return plotOf(boxDrawingOf(plate === 'top' ? 'bracingTop' : 'bracingBack', compute(plan), plan))
}

/** How far a point lies from a broken line. */
export function distanceMm(point: Point, line: readonly Point[]): number {
  let least = Number.POSITIVE_INFINITY
  for (let i = 1; i < line.length; i++) {
    const a = line[i - 1]!
    const b = line[i]!
    const [dx, dy] = [b.x - a.x, b.y - a.y]
    const along = ((point.x - a.x) * dx + (point.y - a.y) * dy) / (dx * dx + dy * dy || 1)
    const t = Math.min(Math.max(along, 0), 1)
    least = Math.min(least, Math.hypot(point.x - a.x - t * dx, point.y - a.y - t * dy))
  }
  return least
}

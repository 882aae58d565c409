import type { PlateSide } from '../../core/boxPlan.ts'
import type { Computed } from '../../core/compute.ts'
import { innerRimOf } from '../../core/instrument/brace/innerRim.ts'
import type { Plan } from '../../core/plan.ts'
import { blockPoints } from '../blockFace.ts'
import { shapesBounds } from '../bounds.ts'
import { curveCommands } from '../curvePath.ts'
import { inPlace, outside, running } from '../dimension.ts'
import type { Drawing, Shape, Station } from '../drawing.ts'
import { figured } from '../figured.ts'
import { flipped } from '../flipped.ts'
import { innerStretches } from '../innerFace.ts'
import { fittedCorners } from './bracingFrame.ts'
import { circle, closed, drawn, rectangle, through } from '../line.ts'

const BEYOND_MM = 10

/** What the plan says of the wood glued to the plates. */
export type BracingDrawn = Pick<Plan, 'bracing' | 'bridge'>

/**
 * One plate seen from inside, neck to the right: the inner face of the sides, blocks, braces with their numbers, and what else is glued to it.
 * The back is seen as one looks into the open body, treble below; the top as it lies on the bench, treble above. `chosen`: the place among all
 * braces of the one whose lengths are drawn.
 */
export function bracingDrawing(
  computed: Computed,
  plan: BracingDrawn,
  plate: PlateSide,
  chosen: number | null = null,
): Drawing {
  const { geometry, numbers } = computed
  const faces = (['treble', 'bass'] as const).flatMap((side) =>
    innerStretches(geometry, side).map(({ site, fromMm, toMm }) =>
      drawn(
        'edge',
        curveCommands(site.half, { mirrored: side === 'bass', insetMm: site.sideThicknessMm, fromMm, toMm }),
      ),
    ),
  )
  const body = shapesBounds(faces)
  const rim = innerRimOf(geometry.outline, geometry.rimSite.sideThicknessMm)
  const shapes: Shape[] = [
    ...faces,
    ...(['tail', 'neck'] as const).map((end) => drawn('thin', closed(through(blockPoints(computed, end))))),
    drawn(
      'centre',
      through([
        { x: body.minX - BEYOND_MM, y: 0 },
        { x: body.maxX + BEYOND_MM, y: 0 },
      ]),
    ),
    ...(plate === 'top' ? topPatches(computed, plan) : backStrip(computed, plan)),
    ...geometry.bracing.placed.flatMap((brace): Shape[] =>
      brace.plan.plate === plate && brace.lengthMm > 0
        ? [{ ...drawn('edge', closed(through(fittedCorners(brace, rim)))), covers: true }]
        : [],
    ),
    ...(plate === 'top' ? crossPatches(computed, plan) : []),
  ]
  const drawing: Drawing = {
    name: plate === 'top' ? 'bracingTop' : 'bracingBack',
    seenFrom: 'inside',
    bounds: shapesBounds(shapes),
    heightsTimes: 1,
    marks: { top: 'bass', bottom: 'treble', left: 'tail', right: 'neck', inCorners: true },
    shapes: [
      ...shapes,
      ...braceNumbers(computed, plate),
      ...(chosen !== null && numbers.braces[chosen]?.plate === plate ? lengthsOf(computed, chosen, body) : []),
    ],
  }
  return plate === 'top' ? flipped(drawing, 'y') : drawing
}

/** Hole, the ring round it, and the plate under the bridge with the bridge over it. */
function topPatches({ geometry, numbers }: Computed, { bridge }: BracingDrawn): Shape[] {
  const { centreMm, radiusMm } = numbers.soundhole
  const { innerRadiusMm, outerRadiusMm } = numbers.patches.holeRing
  const centre = { x: centreMm, y: 0 }
  const { backEdgeAtMm, frontEdgeAtMm } = numbers.bridge
  const corners = geometry.bracing.bridgePlate
  return [
    ...[innerRadiusMm, outerRadiusMm].flatMap((radius) =>
      typeof radius === 'number' ? [drawn('thin', circle(centre, radius))] : [],
    ),
    drawn('edge', circle(centre, radiusMm)),
    drawn('hidden', rectangle(backEdgeAtMm, -bridge.lengthMm / 2, frontEdgeAtMm, bridge.lengthMm / 2)),
    ...(corners === null ? [] : [drawn('thin', closed(through(corners)))]),
    // Tie holes run along the bridge's block: none goes through the top.
    ...(bridge.holds === 'pins'
      ? numbers.pins.map(({ atMm, acrossMm }) => drawn('hidden', circle({ x: atMm, y: acrossMm }, 2.5)))
      : []),
  ]
}

/** The strip over the back's joint, piece by piece. */
function backStrip({ numbers }: Computed, { bracing }: BracingDrawn): Shape[] {
  const half = bracing.stripWidthMm / 2
  return numbers.jointStrip.map(({ fromMm, toMm }) => drawn('thin', rectangle(fromMm, -half, toMm, half)))
}

/** A square over every lapped crossing, turned half-way between the two braces. */
function crossPatches({ geometry, numbers }: Computed, { bracing }: BracingDrawn): Shape[] {
  const half = bracing.crossPatchMm / 2
  if (half <= 0) return []
  return numbers.braceCrossings.flatMap(({ number, xMm, acrossMm, lapMm }) => {
    if (lapMm === 'none' || geometry.bracing.placed[number - 1]?.plan.plate !== 'top') return []
    return [drawn('hidden', rectangle(xMm - half, acrossMm - half, xMm + half, acrossMm + half))]
  })
}

/** The number of every brace, beside its middle. */
function braceNumbers({ geometry }: Computed, plate: PlateSide): Station[] {
  return geometry.bracing.placed.flatMap((brace, row): Station[] => {
    if (brace.plan.plate !== plate || brace.lengthMm <= 0) return []
    // Twins are read on their own halves, single ones a little off the centreline.
    const part = brace.half === 'single' ? 0.4 : 0.3
    const at = {
      x: brace.from.point.x + part * brace.lengthMm * brace.way.x,
      y: brace.from.point.y + part * brace.lengthMm * brace.way.y,
    }
    return [
      {
        kind: 'station',
        list: 'braces',
        row,
        number: row + 1,
        ticks: [],
        numberAt: at,
        away: { x: 0, y: 0 },
        urgency: 0,
      },
    ]
  })
}

/** Length of the chosen brace, and how far its ends stand from the tail. */
function lengthsOf(
  { geometry, numbers }: Computed,
  row: number,
  body: { readonly minY: number; readonly maxY: number },
): Shape[] {
  const brace = geometry.bracing.placed[row]
  if (brace === undefined || brace.lengthMm <= 0) return []
  const { from, to, way, lengthMm } = brace
  const tip = (alongMm: number) => ({ x: from.point.x + alongMm * way.x, y: from.point.y + alongMm * way.y })
  const tips = [tip(from.shortMm), tip(lengthMm - to.shortMm)] as const
  const isAcross = Math.abs(brace.way.y) > Math.abs(brace.way.x)
  const end = (key: 'braces[].fromXMm' | 'braces[].toXMm', { x, y }: { readonly x: number; readonly y: number }) =>
    running(
      figured(numbers, key, row),
      y < 0 ? 'above' : 'below',
      y < 0 ? body.minY : body.maxY,
      { x: 0, y: 0 },
      { x, y },
    )
  return [
    isAcross
      ? inPlace(figured(numbers, 'braces[].finishedLengthMm', row), 'right', ...tips, 0.7)
      : outside(
          figured(numbers, 'braces[].finishedLengthMm', row),
          from.point.y + to.point.y < 0 ? 'above' : 'below',
          from.point.y + to.point.y < 0 ? body.minY : body.maxY,
          ...tips,
          1,
        ),
    end('braces[].fromXMm', from.point),
    end('braces[].toXMm', to.point),
  ]
}

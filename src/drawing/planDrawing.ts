import type { Computed, Geometry } from '../core/compute.ts'
import { curveAt, insetPoint } from '../core/geometry/curve.ts'
import type { Point } from '../core/geometry/point.ts'
import { halfWidthAtMm } from '../core/instrument/body.ts'
import type { Bounds, Drawing, Figured, Shape } from './drawing.ts'
import { blockPoints } from './blockFace.ts'
import { shapesBounds } from './bounds.ts'
import { curveCommands } from './curvePath.ts'
import { inPlace, label, ordinate, outside, running } from './dimension.ts'
import { figured } from './figured.ts'
import { hornShapes } from './hornShapes.ts'
import { innerStretches } from './innerFace.ts'
import { circle, closed, drawn, rectangle, through } from './line.ts'
import { planStations } from './planStations.ts'

const BOARD_ON_MM = 14

/**
 * The body seen from the front, neck to the right, so treble below: outer and inner face, blocks, hole, rings, the board over the body,
 * saddle line, stations; widths and places as found; horn and hollow of a cutaway.
 */
export function planDrawing(computed: Computed): Drawing {
  const { numbers, geometry } = computed
  const faces = halfFaces(geometry)
  const blocks = (['tail', 'neck'] as const).map((end) => drawn('hidden', closed(through(blockPoints(computed, end)))))
  const hole = { x: numbers.soundhole.centreMm, y: 0 }
  const rings = numbers.rosette.rings.flatMap((ring) => [
    drawn('thin', circle(hole, ring.innerRadiusMm)),
    drawn('thin', circle(hole, ring.outerRadiusMm)),
  ])
  const body = shapesBounds(faces)
  const shapes: Shape[] = [
    ...blocks,
    ...faces,
    ...flatLine(computed),
    ...rings,
    drawn('edge', circle(hole, numbers.soundhole.radiusMm)),
    drawn(
      'centre',
      through([
        { x: body.minX - 10, y: 0 },
        { x: body.maxX + BOARD_ON_MM + 6, y: 0 },
      ]),
    ),
    ...board(computed),
    ...saddle(computed),
    ...bridge(computed),
    ...planStations(computed),
  ]
  return {
    name: 'plan',
    seenFrom: 'front',
    bounds: shapesBounds(shapes),
    heightsTimes: 1,
    marks: { top: 'bass', bottom: 'treble', left: 'tail', right: 'neck', inCorners: true },
    shapes: [...shapes, ...dimensions(computed, body), ...hornShapes(computed, body, BOARD_ON_MM)],
  }
}

/** Where the bridge stands, with its saddle's crown. */
function bridge({ numbers, geometry }: Computed): Shape[] {
  const { backEdgeAtMm, frontEdgeAtMm, lengthMm, slotLengthMm, saddleMiddleAtMm, slantRad } = numbers.bridge
  if (frontEdgeAtMm > geometry.lengthMm || backEdgeAtMm < 0) return []
  const half = slotLengthMm / 2
  return [
    drawn('thin', rectangle(backEdgeAtMm, -lengthMm / 2, frontEdgeAtMm, lengthMm / 2)),
    drawn(
      'thin',
      through([
        { x: saddleMiddleAtMm - half * Math.sin(slantRad), y: -half * Math.cos(slantRad) },
        { x: saddleMiddleAtMm + half * Math.sin(slantRad), y: half * Math.cos(slantRad) },
      ]),
    ),
  ]
}

/** Inner and outer face of both sides, treble first. Where a cutaway meets the neck, the bass side's wood runs on to it along the joint. */
function halfFaces(geometry: Geometry): Shape[] {
  const { bass, treble, cut } = geometry.outline
  const inner = (side: 'bass' | 'treble', mirrored: boolean) =>
    innerStretches(geometry, side).map(({ site, fromMm, toMm }) =>
      drawn('thin', curveCommands(site.half, { mirrored, insetMm: site.sideThicknessMm, fromMm, toMm })),
    )
  return [
    ...inner('treble', false),
    ...(cut === null ? [] : [drawn('thin', runningOn(geometry))]),
    drawn('edge', curveCommands(treble, { mirrored: false })),
    ...inner('bass', true),
    drawn('edge', curveCommands(bass, { mirrored: true })),
  ]
}

/** Inner face of what the bass side runs on past the centreline, and the end of the treble side's wood on it. */
function runningOn({ outline, rimSite, trebleSites }: Geometry) {
  const wood = trebleSites.at(-1)!
  const outer = curveAt(outline.treble, outline.trebleWoodEndMm).point
  const inner = insetPoint(wood.half, wood.half.lengthMm, wood.sideThicknessMm)
  const x = outer.x - rimSite.sideThicknessMm
  return through([{ x, y: 0 }, { x, y: inner.y }, inner, outer])
}

function board({ geometry, numbers }: Computed): Shape[] {
  const { halfWidthMm, taper } = geometry.boardEnd
  const endMm = numbers.scale.boardEndMm
  if (endMm >= geometry.lengthMm) return []
  const jointHalfMm = halfWidthMm - taper * (geometry.lengthMm - endMm)
  const onMm = geometry.lengthMm + BOARD_ON_MM
  const onHalfMm = jointHalfMm - taper * BOARD_ON_MM
  return [
    {
      kind: 'path',
      role: 'edge',
      covers: true,
      commands: through([
        { x: onMm, y: -onHalfMm },
        { x: endMm, y: -halfWidthMm },
        { x: endMm, y: halfWidthMm },
        { x: onMm, y: onHalfMm },
      ]),
    },
    drawn(
      'thin',
      through([
        { x: geometry.lengthMm, y: -jointHalfMm },
        { x: geometry.lengthMm, y: jointHalfMm },
      ]),
    ),
  ]
}

const SADDLE_HALF_MM = 40
function saddle({ numbers }: Computed): Shape[] {
  const x = numbers.scale.saddleLineMm
  return [
    drawn(
      'thin',
      through([
        { x, y: -SADDLE_HALF_MM },
        { x, y: SADDLE_HALF_MM },
      ]),
    ),
    label('saddleLine', { x, y: SADDLE_HALF_MM }, { x: 0, y: 1 }),
  ]
}

function flatLine({ numbers, geometry }: Computed): Shape[] {
  const x = numbers.top.flatFromMm
  if (typeof x !== 'number') return []
  const { bass, treble, isMirrored } = geometry.outline
  const bassY = halfWidthAtMm(bass, x)
  const y = isMirrored ? bassY : halfWidthAtMm(treble, x)
  return [
    drawn(
      'hidden',
      through([
        { x, y: -bassY },
        { x, y },
      ]),
    ),
    label('flatFrom', { x, y: y * 0.7 }, { x: -1, y: -0.9 }),
    ordinate(figured(numbers, 'top.flatFromMm'), { x, y: y * 0.7 }, { x: -1, y: 0.9 }, 0),
  ]
}

function dimensions({ numbers: n, geometry }: Computed, body: Bounds): Shape[] {
  const { lengthMm, outline } = geometry
  const { lowerBoutMm, waistMm, upperBoutMm } = geometry.bouts
  const across = (s: number | null): { bass: Point; treble: Point } | null => {
    if (s === null) return null
    const { x, y } = curveAt(outline.bass, s).point
    return { bass: { x, y: -y }, treble: { x, y: outline.isMirrored ? y : halfWidthAtMm(outline.treble, x) } }
  }
  const lower = across(lowerBoutMm)!
  const waist = across(waistMm)
  const upper = across(upperBoutMm)
  const tail = { x: 0, y: 0 }
  const above = Math.min(lower.bass.y, upper?.bass.y ?? 0)
  const below = outline.isMirrored ? -above : Math.max(body.maxY, 0)
  const up = (figure: Figured, x: number, y: number): Shape => running(figure, 'above', above, tail, { x, y })
  const down = (figure: Figured, to: Point): Shape => running(figure, 'below', below, tail, to)
  const outermost = Math.max(n.soundhole.radiusMm, ...n.rosette.rings.map((ring) => ring.outerRadiusMm))
  return [
    outside(figured(n, 'body.lowerBoutMm'), 'left', Math.min(0, lower.bass.x), lower.bass, lower.treble),
    ...(waist === null
      ? []
      : [
          inPlace(figured(n, 'body.waistMm'), 'left', waist.bass, waist.treble, 0.2),
          down(figured(n, 'body.waistAtMm'), waist.treble),
        ]),
    ...(upper === null
      ? []
      : [
          outside(figured(n, 'body.upperBoutMm'), 'right', lengthMm + BOARD_ON_MM, upper.bass, upper.treble),
          down(figured(n, 'body.upperBoutAtMm'), upper.treble),
        ]),
    down(figured(n, 'body.lowerBoutAtMm'), lower.treble),
    outside(figured(n, 'body.lengthMm'), 'below', below, tail, { x: lengthMm, y: 0 }),
    up(figured(n, 'scale.saddleLineMm'), n.scale.saddleLineMm, -SADDLE_HALF_MM),
    up(figured(n, 'soundhole.centreMm'), n.soundhole.centreMm, -outermost),
  ]
}

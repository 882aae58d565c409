import type { Computed, Geometry } from '../core/compute.ts'
import { type Curve, crossingsOfXMm, curveAt } from '../core/geometry/curve.ts'
import type { NumberKey } from '../core/numbers.ts'
import type { RimPlace } from '../core/instrument/rim.ts'
import { shapesBounds } from './bounds.ts'
import { inPlace, label, outside, running } from './dimension.ts'
import type { Drawing, LabelWord, EdgeMark, LineRole, Shape } from './drawing.ts'
import { figured } from './figured.ts'
import { flipped } from './flipped.ts'
import type { HalfName } from './innerFace.ts'
import { drawn, through } from './line.ts'
import { edgeFromSide, edgeStops, LEVEL, onSheetMm, profileCommands } from './profile.ts'
import { baseLines, taperOf } from './taper.ts'

const STEP_MM = 20

/**
 * The rim seen from one side: from the treble side the tail lies left, from the bass side right. Departures of the top edge from the rim
 * plane and of the back edge from the straight taper are drawn `heightsTimes` larger than they are; depths are figured true. What a
 * cutaway's horn hides is dashed.
 */
export function sideDrawing(computed: Computed, heightsTimes = 1, side: HalfName = 'treble'): Drawing {
  const { numbers, geometry } = computed
  const { lengthMm, outline } = geometry
  const ownTreble = side === 'treble' && !outline.isMirrored
  const half = ownTreble ? outline.treble : outline.bass
  const places = ownTreble ? numbers.treblePlaces : numbers.places
  const list = ownTreble ? 'treblePlaces' : 'places'
  const key = (name: 'depthMm' | 'xMm'): NumberKey => `${list}[].${name}`
  const taper = taperOf(computed)
  const topY = (x: number, z: number) => onSheetMm(LEVEL, heightsTimes, x, z)
  const backY = (x: number, z: number) => onSheetMm(taper, heightsTimes, x, z)
  const upright = ({ xMm, topEdgeMm, backEdgeMm }: (typeof places)[number]): Shape =>
    drawn(
      'edge',
      through([
        { x: xMm, y: topY(xMm, topEdgeMm) },
        { x: xMm, y: backY(xMm, backEdgeMm) },
      ]),
    )
  const bends = typeof numbers.top.flatFromMm === 'number' ? [numbers.top.flatFromMm] : []
  const stretches = ownTreble ? seenStretches(geometry) : [{ role: 'edge' as const, fromMm: 0, toMm: half.lengthMm }]
  const edges = stretches.flatMap(({ role, fromMm, toMm }): Shape[] => {
    const stops = stopsBetween(half, bends, fromMm, toMm)
    return [
      drawn(role, profileCommands(edgeFromSide(half, geometry.top.rim), stops, STEP_MM, LEVEL, heightsTimes)),
      drawn(role, profileCommands(edgeFromSide(half, geometry.back.surface), stops, STEP_MM, taper, heightsTimes)),
    ]
  })
  const uprights = places.filter(({ place }) => place === 'tail' || place === 'neck' || place === 'horn')
  const shapes: Shape[] = [...baseLines(lengthMm, taper), ...edges, ...uprights.map(upright)]
  const bounds = shapesBounds(shapes)
  const tail = { x: 0, y: -taper.atZeroMm }
  const depths = places.flatMap((at, row): Shape[] => {
    const from = { x: at.xMm, y: topY(at.xMm, at.topEdgeMm) }
    const to = { x: at.xMm, y: backY(at.xMm, at.backEdgeMm) }
    const depth = figured(numbers, key('depthMm'), row)
    if (at.place === 'tail') return [outside(depth, 'left', bounds.minX, from, to)]
    if (at.place === 'neck') return [outside(depth, 'right', bounds.maxX, from, to)]
    return [
      inPlace(depth, 'left', from, to),
      label(PLACE_LABELS[at.place], { x: at.xMm, y: bounds.minY }, { x: 0, y: -1 }),
      running(figured(numbers, key('xMm'), row), 'below', bounds.maxY, tail, to),
    ]
  })
  const neck = places.at(-1)!
  const drawing: Drawing = {
    name: 'side',
    seenFrom: side === 'treble' ? 'trebleSide' : 'bassSide',
    bounds,
    heightsTimes,
    marks: { left: 'tail', right: 'neck' },
    shapes: [
      ...shapes,
      ...depths,
      outside(figured(numbers, 'body.lengthMm'), 'below', bounds.maxY, tail, {
        x: lengthMm,
        y: backY(lengthMm, neck.backEdgeMm),
      }),
      label('rimPlane', { x: lengthMm * 0.437, y: 0 }, { x: 0, y: 1 }),
      label(
        'straightTaper',
        { x: lengthMm * 0.437, y: -(taper.atZeroMm + taper.rise * lengthMm * 0.437) },
        { x: 0, y: -1 },
      ),
    ],
  }
  return side === 'treble' ? drawing : flipped(drawing, 'x')
}

interface SeenStretch {
  readonly role: LineRole
  readonly fromMm: number
  readonly toMm: number
}

/** The treble side as it is seen square to the centreline: the hollow of a cutaway is hidden as far as it lies behind the horn. */
function seenStretches({ outline }: Geometry): SeenStretch[] {
  const { treble, trebleWoodEndMm, cut } = outline
  const hornMm = cut?.hornMm ?? null
  if (hornMm === null) return [{ role: 'edge', fromMm: 0, toMm: trebleWoodEndMm }]
  const hornX = curveAt(treble, hornMm).point.x
  const pastMm =
    crossingsOfXMm(treble, hornX).findLast((s) => s > hornMm + 1e-3 && s <= trebleWoodEndMm) ??
    (curveAt(treble, trebleWoodEndMm).point.x < hornX ? trebleWoodEndMm : hornMm)
  const stretches: SeenStretch[] = [
    { role: 'edge', fromMm: 0, toMm: hornMm },
    { role: 'hidden', fromMm: hornMm, toMm: pastMm },
    { role: 'edge', fromMm: pastMm, toMm: trebleWoodEndMm },
  ]
  return stretches.filter(({ fromMm, toMm }) => toMm - fromMm > 1e-6)
}

function stopsBetween(half: Curve, bends: readonly number[], fromMm: number, toMm: number): number[] {
  const stops = edgeStops(half, bends)
  return fromMm <= 0 && toMm >= half.lengthMm ? stops : [fromMm, ...stops.filter((s) => s > fromMm && s < toMm), toMm]
}

const PLACE_LABELS = {
  tail: 'tail',
  lowerBout: 'lowerBout',
  waist: 'waist',
  upperBout: 'upperBout',
  horn: 'hornTip',
  neck: 'neck',
} as const satisfies Record<RimPlace, LabelWord | EdgeMark>

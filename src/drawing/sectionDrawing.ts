import type { Computed } from '../core/compute.ts'
import type { Surface } from '../core/geometry/surface.ts'
import { shapesBounds } from './bounds.ts'
import { inPlace, label, outside, running } from './dimension.ts'
import type { Drawing, PathShape, Shape } from './drawing.ts'
import { figured } from './figured.ts'
import { hatch } from './hatch.ts'
import { closed, drawn, through } from './line.ts'
import { alongBody, type Base, LEVEL, onSheetMm, profileCommands } from './profile.ts'
import { baseLines, taperOf } from './taper.ts'

const STEP_MM = 40

/** A body cut open along the centreline, seen from the treble side: both plates, blocks, the hole's gap. Plates and sides stand at their true thickness. */
export function sectionDrawing(
  computed: Computed,
  plates: { readonly topMm: number; readonly backMm: number },
  heightsTimes = 1,
): Drawing {
  const { numbers, geometry } = computed
  const { lengthMm, top, back } = geometry
  const taper = taperOf(computed)
  const hole = [
    within(numbers.soundhole.centreMm - numbers.soundhole.radiusMm, lengthMm),
    within(numbers.soundhole.centreMm + numbers.soundhole.radiusMm, lengthMm),
  ] as const
  const bends = plateBendsMm(computed, 0)
  const stopsBetween = (a: number, b: number) => [a, ...bends.filter((x) => x > a && x < b), b]
  const plate = (surface: Surface, from: number, to: number, base: Base, thickMm: number, out: 1 | -1): PathShape => ({
    kind: 'path',
    role: 'edge',
    solidMm: thickMm,
    commands: profileCommands(
      alongBody(lifted(surface, (out * thickMm) / 2), 0),
      stopsBetween(from, to),
      STEP_MM,
      { ...base, atZeroMm: base.atZeroMm + (out * thickMm) / 2 },
      heightsTimes,
    ),
  })
  const topY = (x: number) => onSheetMm(LEVEL, heightsTimes, x, top.plate.heightMm(x, 0))
  const backY = (x: number) => onSheetMm(taper, heightsTimes, x, back.surface.heightMm(x, 0))
  const side = numbers.sides.thicknessMm
  const wall = (x: number, inward: 1 | -1): PathShape => ({
    kind: 'path',
    role: 'edge',
    solidMm: side,
    commands: through([
      { x: x + (inward * side) / 2, y: topY(x) },
      { x: x + (inward * side) / 2, y: backY(x) },
    ]),
  })
  const block = (faceX: number, thickMm: number): Shape[] => {
    const insideX = within(faceX + thickMm, lengthMm)
    const corners = [faceX, insideX].map((x) => ({ x, top: topY(x), back: backY(x) }))
    const [face, inside] = [corners[0]!, corners[1]!]
    const outline = [
      { x: face.x, y: face.top },
      { x: inside.x, y: inside.top },
      { x: inside.x, y: inside.back },
      { x: face.x, y: face.back },
    ]
    return [drawn('thin', hatch(outline, 6)), drawn('edge', closed(through(outline)))]
  }
  const shapes: Shape[] = [
    ...baseLines(lengthMm, taper),
    ...block(side, numbers.blocks.tail.thicknessMm),
    ...block(lengthMm - side, -numbers.blocks.neck.thicknessMm),
    wall(0, 1),
    wall(lengthMm, -1),
    plate(top.plate, 0, hole[0], LEVEL, plates.topMm, 1),
    plate(top.plate, hole[1], lengthMm, LEVEL, plates.topMm, 1),
    plate(back.surface, 0, lengthMm, taper, plates.backMm, -1),
  ]
  const bounds = shapesBounds(shapes)
  const middle = lengthMm / 2
  const n = numbers
  const saddleX = n.scale.saddleLineMm
  const deepX = n.sides.deepestInsideAtMm
  const chordY = (x: number) => -(taper.atZeroMm + taper.rise * x)
  const withPlates = (x: number) =>
    [
      { x, y: topY(x) - plates.topMm },
      { x, y: backY(x) + plates.backMm },
    ] as const
  const tail = { x: 0, y: backY(0) + plates.backMm }
  const tailTop = { x: 0, y: topY(0) - plates.topMm }
  return {
    name: 'section',
    seenFrom: 'section',
    bounds,
    heightsTimes,
    marks: { left: 'tail', right: 'neck' },
    shapes: [
      ...shapes,
      outside(figured(n, 'sides.bodyDepthAtTailMm'), 'left', bounds.minX, ...withPlates(0)),
      outside(figured(n, 'sides.bodyDepthAtNeckMm'), 'right', bounds.maxX, ...withPlates(lengthMm)),
      inPlace(
        figured(n, 'sides.deepestInsideMm'),
        'left',
        { x: deepX, y: topY(deepX) },
        { x: deepX, y: backY(deepX) },
        0.6,
      ),
      running(figured(n, 'sides.deepestInsideAtMm'), 'below', bounds.maxY, tail, {
        x: deepX,
        y: backY(deepX) + plates.backMm,
      }),
      inPlace(figured(n, 'top.heightAtSaddleMm'), 'left', { x: saddleX, y: 0 }, { x: saddleX, y: topY(saddleX) }),
      running(figured(n, 'scale.saddleLineMm'), 'above', bounds.minY, tailTop, {
        x: saddleX,
        y: topY(saddleX) - plates.topMm,
      }),
      running(figured(n, 'soundhole.centreMm'), 'above', bounds.minY, tailTop, {
        x: n.soundhole.centreMm,
        y: topY(n.soundhole.centreMm),
      }),
      inPlace(figured(n, 'back.gapAlongMm'), 'left', { x: middle, y: chordY(middle) }, { x: middle, y: backY(middle) }),
      label('saddleLine', { x: saddleX, y: 0 }, { x: 1, y: 1 }),
      label('rimPlane', { x: lengthMm * 0.68, y: 0 }, { x: 0, y: 1 }),
      label('straightTaper', { x: lengthMm * 0.68, y: chordY(lengthMm * 0.68) }, { x: 0, y: -1 }),
    ],
  }
}

const within = (x: number, lengthMm: number) => Math.min(Math.max(x, 0), lengthMm)

const lifted = (surface: Surface, byMm: number): Surface => ({
  heightMm: (x, y) => surface.heightMm(x, y) + byMm,
  slope: surface.slope,
})

/** Where, at a distance from the centreline, the top plate bends: start of the flat, edge of a cap on a flat rim. */
export function plateBendsMm({ numbers, geometry }: Computed, atYMm: number): number[] {
  const { form, radiusMm } = geometry.top
  if (form === 'flatUpperBout') return typeof numbers.top.flatFromMm === 'number' ? [numbers.top.flatFromMm] : []
  const reach = capReachMm(computedRise(numbers.top.riseAtSaddleMm), radiusMm)
  if (form !== 'flatRim' || reach <= Math.abs(atYMm)) return []
  const along = Math.sqrt(reach * reach - atYMm * atYMm)
  return [numbers.scale.saddleLineMm - along, numbers.scale.saddleLineMm + along]
}

const computedRise = (rise: number | 'flat' | 'none'): number => (typeof rise === 'number' ? rise : 0)

/** How far from its crown a cap of this rise meets the rim plane. */
export const capReachMm = (riseMm: number, radiusMm: number | 'flat'): number =>
  radiusMm === 'flat' ? 0 : Math.sqrt(Math.max(riseMm * (2 * radiusMm - riseMm), 0))

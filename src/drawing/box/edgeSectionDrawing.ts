import type { PlateSide } from '../../core/boxPlan.ts'
import type { Computed } from '../../core/compute.ts'
import type { Point } from '../../core/geometry/point.ts'
import type { Plan } from '../../core/plan.ts'
import { shapesBounds } from '../bounds.ts'
import { inPlace, label, outside } from '../dimension.ts'
import type { Drawing, Shape } from '../drawing.ts'
import { figured } from '../figured.ts'
import { closed, drawn, through } from '../line.ts'

const PLATE_SHOWN_MM = 24
const BELOW_LINING_MM = 8
const APART_MM = 14

/** What the plan says of the wood that meets at an edge. */
export type EdgeDrawn = Pick<Plan, 'binding' | 'edges' | 'linings' | 'plates' | 'rim'>

/**
 * The edge of the box cut across at one place, outside to the left: the top's edge above the back's, each with side, lining, plate, binding
 * and purfling at their true sizes and the plate at its bevel there.
 */
export function edgeSectionDrawing(computed: Computed, plan: EdgeDrawn, place: number): Drawing {
  const row = computed.numbers.edgePlaces[place] ?? computed.numbers.edgePlaces[0]
  const top = corner(plan, 'top', row?.topBevelRad ?? 0)
  const back = corner(plan, 'back', row?.backBevelRad ?? 0)
  // The back hangs under the top, mirrored, clear of it.
  const shiftMm = shapesBounds(top).maxY - shapesBounds(back.map(upsideDown)).minY + APART_MM
  const under = back.map(upsideDown).map((shape) => lowered(shape, shiftMm))
  const shapes = [...top, ...under]
  const bounds = shapesBounds(shapes)
  const n = computed.numbers
  const isBound = plan.binding.thicknessMm > 0
  const { heightMm, thicknessMm } = plan.binding
  return {
    name: 'edgeSection',
    seenFrom: 'section',
    bounds,
    heightsTimes: 1,
    marks: {},
    shapes: [
      ...shapes,
      ...(isBound
        ? [
            outside(figured(n, 'edges.ledgeMm'), 'left', bounds.minX, { x: 0, y: 0 }, { x: 0, y: heightMm }),
            inPlace(
              figured(n, 'edges.sideLeftMm'),
              'below',
              { x: thicknessMm, y: heightMm + 2 },
              { x: plan.rim.sideThicknessMm, y: heightMm + 2 },
              2.4,
            ),
          ]
        : []),
      label('topPlate', { x: PLATE_SHOWN_MM, y: 0 }, { x: 1, y: 0 }),
      label('backPlate', { x: PLATE_SHOWN_MM, y: shiftMm }, { x: 1, y: 0 }),
    ],
  }
}

/** One corner, the plate's outer corner at (0, 0), the box to the right and below. */
function corner(plan: EdgeDrawn, plate: PlateSide, bevelRad: number) {
  const { binding, edges, rim } = plan
  const thickMm = plate === 'top' ? plan.plates.topMm : plan.plates.backMm
  const purflingMm = plate === 'top' ? binding.topPurflingMm : binding.backPurflingMm
  const lining = plan.linings[plate]
  const climb = Math.tan(bevelRad)
  const outer = (x: number): number => -x * climb
  const shape = (role: 'edge' | 'thin', points: readonly Point[]) => drawn(role, closed(through(points)))
  const strip = (fromX: number, toX: number, fromY: (x: number) => number, toY: number): Point[] => [
    { x: fromX, y: fromY(fromX) },
    { x: toX, y: fromY(toX) },
    { x: toX, y: toY },
    { x: fromX, y: toY },
  ]
  const under = (x: number): number => outer(x) + thickMm
  const inside = rim.sideThicknessMm + lining.widthMm
  const footMm = under(rim.sideThicknessMm) + lining.heightMm
  const bound = binding.thicknessMm
  const floorMm = outer(bound + purflingMm / 2) + edges.purflingDepthMm
  return [
    shape('thin', strip(rim.sideThicknessMm, inside, under, footMm)),
    shape('edge', strip(0, rim.sideThicknessMm, under, footMm + BELOW_LINING_MM)),
    shape('edge', [
      { x: 0, y: 0 },
      { x: PLATE_SHOWN_MM, y: outer(PLATE_SHOWN_MM) },
      { x: PLATE_SHOWN_MM, y: under(PLATE_SHOWN_MM) },
      { x: 0, y: under(0) },
    ]),
    ...(purflingMm > 0
      ? [{ ...shape('edge', strip(bound, bound + purflingMm, outer, floorMm)), covers: true as const }]
      : []),
    ...(bound > 0 ? [{ ...shape('edge', strip(0, bound, outer, binding.heightMm)), covers: true as const }] : []),
  ]
}

type Lines = ReturnType<typeof corner>[number]

const moved = (shape: Lines, place: (y: number) => number): Lines => ({
  ...shape,
  commands: shape.commands.map((command) =>
    command[0] === 'M' || command[0] === 'L' ? ([command[0], command[1], place(command[2])] as const) : command,
  ),
})
const upsideDown = (shape: Lines): Lines => moved(shape, (y) => -y)
const lowered = (shape: Lines, byMm: number): Lines & Shape => moved(shape, (y) => y + byMm)

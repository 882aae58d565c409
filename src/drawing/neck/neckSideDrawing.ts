import type { Computed } from '../../core/compute.ts'
import type { BoardPlan, HeadPlan, NeckPlan } from '../../core/neckPlan.ts'
import type { Point } from '../../core/geometry/point.ts'
import { shapesBounds } from '../bounds.ts'
import { inPlace, label, outside } from '../dimension.ts'
import type { Drawing, Shape } from '../drawing.ts'
import { figured } from '../figured.ts'
import { closed, drawn, rectangle, through } from '../line.ts'

export interface NeckDrawn {
  readonly neck: NeckPlan
  readonly board: BoardPlan
  readonly head: HeadPlan
}

/** Where the shaft begins to run into the heel, before the joint; common practice, only drawn. */
const HEEL_RUN_MM = 70
const CAP_RUN_MM = 22

/**
 * The neck in elevation, its face level, nut to the right: shaft at its two thicknesses, heel with its cheek at the neck angle, what enters the
 * block, bolts, the rod's channel and the head. The curves from shaft to heel and to the head are only drawn: they are carved by eye.
 */
export function neckSideDrawing({ numbers, geometry }: Computed, { neck, board, head }: NeckDrawn): Drawing {
  const { shape } = geometry.neck
  const n = numbers
  const nut = n.board.nutToJointMm
  const atFret = (fret: number) => nut - (shape.nutMm - shape.fretLine(fret).xMm)
  const [first, tenth] = [atFret(1), atFret(10)]
  const wood = (x: number) => {
    const run = first - tenth
    return n.neck.woodAtFirstMm + ((n.neck.woodAtTenthMm - n.neck.woodAtFirstMm) * (first - x)) / Math.max(run, 1)
  }
  const heel = n.neck.heelDepthMm
  const cheekX = heel * Math.tan(n.neck.cheekRad)
  const angle = n.head.angleRad
  // Head: along its face, and square to it.
  const onHead = (along: number, under: number): Point => ({
    x: nut + along * Math.cos(angle) - under * Math.sin(angle),
    y: along * Math.sin(angle) + under * Math.cos(angle),
  })
  const headUnder = Math.max(head.thicknessMm - head.faceVeneerMm, 1)
  const runX = Math.max(Math.min(HEEL_RUN_MM, tenth), CAP_RUN_MM + cheekX + 2)
  const behind = onHead(12 + headUnder * Math.tan(angle / 2), headUnder)
  const outline = [
    ['M', 0, 0] as const,
    ['L', nut, 0] as const,
    ['L', onHead(head.lengthMm, 0).x, onHead(head.lengthMm, 0).y] as const,
    ['L', onHead(head.lengthMm, headUnder).x, onHead(head.lengthMm, headUnder).y] as const,
    ['L', behind.x, behind.y] as const,
    ['C', behind.x - 14, behind.y - 4, nut - 4, wood(nut), nut - 14, wood(nut - 14)] as const,
    ['L', runX, wood(runX)] as const,
    ['C', runX * 0.55, wood(runX) + 2, CAP_RUN_MM + cheekX + 4, heel * 0.72, CAP_RUN_MM + cheekX, heel] as const,
    ['L', cheekX, heel] as const,
    ['Z'] as const,
  ]
  const inBlock = typeof n.neck.blockBehindTenonMm === 'number'
  const tenonDown = heel * 0.85
  const tenon = inBlock ? [drawn('hidden', rectangle(-neck.tenonDepthMm, 0, 0, tenonDown))] : []
  const depth = inBlock ? neck.tenonDepthMm : 10
  const bolts =
    neck.joint === 'boltedTenon' || neck.joint === 'butt'
      ? neck.boltsAtMm.map((at) =>
          drawn(
            'centre',
            through([
              { x: -depth - 8, y: at },
              { x: 34, y: at },
            ]),
          ),
        )
      : []
  const rod =
    neck.rod === 'fitted'
      ? [
          drawn(
            'hidden',
            rectangle(nut - neck.rodFromNutMm - neck.rodLengthMm, 0, nut - neck.rodFromNutMm, neck.rodDepthMm),
          ),
        ]
      : []
  const scarf =
    typeof n.neck.scarfMm === 'number'
      ? [
          drawn(
            'ghost',
            through([
              { x: nut, y: 0 },
              { x: nut - n.neck.scarfMm * Math.cos(angle), y: wood(first) },
            ]),
          ),
        ]
      : []
  const boardEnd = -n.board.overBodyMm
  const shapes: Shape[] = [
    drawn(
      'edge',
      closed(
        through([
          { x: boardEnd, y: 0 },
          { x: boardEnd, y: -board.thicknessMm },
          { x: nut, y: -board.thicknessMm },
          { x: nut, y: 0 },
        ]),
      ),
    ),
    drawn('edge', outline),
    ...tenon,
    ...bolts,
    ...rod,
    ...scarf,
  ]
  const bounds = shapesBounds(shapes)
  return {
    name: 'neckSide',
    seenFrom: 'trebleSide',
    bounds,
    heightsTimes: 1,
    marks: { left: 'tail', right: 'neck' },
    shapes: [
      ...shapes,
      outside(figured(n, 'board.nutToJointMm'), 'above', bounds.minY, { x: 0, y: 0 }, { x: nut, y: 0 }),
      outside(figured(n, 'neck.heelDepthMm'), 'left', bounds.minX, { x: 0, y: 0 }, { x: cheekX, y: heel }),
      inPlace(figured(n, 'neck.woodAtFirstMm'), 'left', { x: first, y: wood(first) }, { x: first, y: 0 }, 1.9),
      inPlace(figured(n, 'neck.woodAtTenthMm'), 'left', { x: tenth, y: wood(tenth) }, { x: tenth, y: 0 }, 1.9),
      ...(angle > 0.02
        ? [
            {
              kind: 'angle' as const,
              figured: figured(n, 'head.angleRad'),
              vertex: { x: nut, y: 0 },
              fromRad: 0,
              toRad: angle,
              radiusMm: Math.max(head.lengthMm * 0.8, 20),
              figureAt: 0.5,
            },
          ]
        : []),
      label('joint', { x: 0, y: bounds.maxY }, { x: 0, y: 1 }),
    ],
  }
}

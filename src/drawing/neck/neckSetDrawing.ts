import type { Computed } from '../../core/compute.ts'
import { shapesBounds } from '../bounds.ts'
import { inPlace, label, ordinate, outside } from '../dimension.ts'
import type { Drawing, Shape } from '../drawing.ts'
import { figured } from '../figured.ts'
import { closed, drawn, through } from '../line.ts'
import { alongBody, LEVEL, profileCommands } from '../profile.ts'
import { plateBendsMm } from '../sectionDrawing.ts'

const STEP_MM = 40

export interface NeckSetDrawn {
  readonly board: { readonly thicknessMm: number }
  readonly frets: { readonly crownMm: number }
  readonly bridge: { readonly thicknessMm: number; readonly saddleShowingMm: number; readonly saddleWidthMm: number }
}

/**
 * The set of the neck in the plane of the centreline, as built before stringing: the top with the hole's gap, the bridge, the board on the neck's
 * line, and the plane of the frets carried on to the saddle. Heights over the rim plane are drawn `heightsTimes` larger.
 */
export function neckSetDrawing({ numbers, geometry }: Computed, plan: NeckSetDrawn, heightsTimes = 1): Drawing {
  const { top, lengthMm, neck } = geometry
  const { shape, built } = neck
  const { nutMm, jointMm, endMm } = shape
  const times = heightsTimes
  const y = (heightMm: number) => -heightMm * times
  const n = numbers
  const saddleX = n.bridge.saddleMiddleAtMm
  const startX = Math.max(Math.min(n.bridge.backEdgeAtMm - 30, lengthMm - 20), 0)
  const hole = [n.soundhole.centreMm - n.soundhole.radiusMm, n.soundhole.centreMm + n.soundhole.radiusMm] as const
  const faceMm = (x: number) => built.edgeMm + (jointMm - x) * built.slope
  const crestMm = (x: number) => faceMm(x) + plan.board.thicknessMm
  const planeMm = (x: number) => crestMm(x) + plan.frets.crownMm
  const topMm = (x: number) => top.plate.heightMm(x, 0)
  const bends = plateBendsMm({ numbers, geometry } as Computed, 0)
  const along = (from: number, to: number): Shape[] =>
    to - from < 1
      ? []
      : [
          drawn(
            'edge',
            profileCommands(
              alongBody(top.plate, 0),
              [from, ...bends.filter((x) => x > from && x < to), to],
              STEP_MM,
              LEVEL,
              times,
            ),
          ),
        ]
  const bridgeX = [n.bridge.backEdgeAtMm, n.bridge.frontEdgeAtMm] as const
  const bridgeTopMm = topMm(saddleX) + plan.bridge.thicknessMm
  const half = plan.bridge.saddleWidthMm / 2
  const atNutMm = planeMm(nutMm)
  const gapX = Math.max(endMm, hole[1])
  const shapes: Shape[] = [
    ...along(startX, Math.min(Math.max(hole[0], startX), lengthMm)),
    ...along(Math.max(Math.min(hole[1], lengthMm), startX), lengthMm),
    drawn(
      'thin',
      through([
        { x: startX, y: 0 },
        { x: nutMm, y: 0 },
      ]),
    ),
    drawn(
      'edge',
      closed(
        through([
          { x: Math.min(endMm, nutMm - 1), y: y(faceMm(endMm)) },
          { x: nutMm, y: y(faceMm(nutMm)) },
          { x: nutMm, y: y(crestMm(nutMm)) },
          { x: Math.min(endMm, nutMm - 1), y: y(crestMm(endMm)) },
        ]),
      ),
    ),
    drawn(
      'edge',
      closed(
        through([
          { x: bridgeX[0], y: y(topMm(bridgeX[0])) },
          { x: bridgeX[1], y: y(topMm(bridgeX[1])) },
          { x: bridgeX[1], y: y(bridgeTopMm) },
          { x: bridgeX[0], y: y(bridgeTopMm) },
        ]),
      ),
    ),
    drawn(
      'thin',
      through([
        { x: saddleX - half, y: y(bridgeTopMm) },
        { x: saddleX - half, y: y(bridgeTopMm + plan.bridge.saddleShowingMm) },
        { x: saddleX + half, y: y(bridgeTopMm + plan.bridge.saddleShowingMm) },
        { x: saddleX + half, y: y(bridgeTopMm) },
      ]),
    ),
    drawn(
      'hidden',
      through([
        { x: saddleX, y: y(planeMm(saddleX)) },
        { x: nutMm, y: y(atNutMm) },
      ]),
    ),
    drawn(
      'ghost',
      through([
        { x: saddleX, y: y(bridgeTopMm + plan.bridge.saddleShowingMm) },
        { x: nutMm, y: y(atNutMm + (n.setup.nutBassMm + n.setup.nutTrebleMm) / 2) },
      ]),
    ),
    drawn(
      'centre',
      through([
        { x: jointMm, y: y(planeMm(jointMm)) - 12 },
        { x: jointMm, y: y(Math.min(built.edgeMm, 0)) + 12 },
      ]),
    ),
  ]
  const bounds = shapesBounds(shapes)
  return {
    name: 'neckSet',
    seenFrom: 'section',
    bounds,
    heightsTimes: times,
    marks: { left: 'tail', right: 'neck' },
    shapes: [
      ...shapes,
      inPlace(
        figured(n, 'neckSet.fretPlaneOverTopMm'),
        'left',
        { x: startX + 8, y: y(topMm(saddleX)) },
        { x: startX + 8, y: y(planeMm(saddleX)) },
      ),
      outside(
        figured(n, 'neckSet.faceAtNutMm'),
        'right',
        bounds.maxX,
        { x: nutMm, y: 0 },
        { x: nutMm, y: y(faceMm(nutMm)) },
      ),
      outside(
        figured(n, 'bridge.jointToSaddleMm'),
        'above',
        bounds.minY,
        { x: saddleX, y: y(bridgeTopMm + plan.bridge.saddleShowingMm) },
        { x: jointMm, y: y(planeMm(jointMm)) },
      ),
      outside(
        figured(n, 'board.nutToJointMm'),
        'above',
        bounds.minY,
        { x: jointMm, y: y(planeMm(jointMm)) },
        { x: nutMm, y: y(planeMm(nutMm)) },
      ),
      inPlace(
        figured(n, 'neckSet.gapAtEndMm'),
        'left',
        // Read from the lower of the two: the figure stands under the board, also where the board would lie in the top.
        { x: gapX, y: y(Math.min(topMm(gapX), faceMm(gapX))) },
        { x: gapX, y: y(Math.max(topMm(gapX), faceMm(gapX))) },
        -0.6,
      ),
      ordinate(figured(n, 'top.neckEdgeMm'), { x: jointMm, y: y(Math.min(built.edgeMm, 0)) }, { x: -1, y: 1.5 }, 1),
      label('rimPlane', { x: (saddleX + endMm) / 2, y: 0 }, { x: 0, y: 1 }),
      label('fretPlane', { x: (jointMm + nutMm) / 2, y: y(planeMm((jointMm + nutMm) / 2)) }, { x: 1, y: -2 }),
      label('joint', { x: jointMm, y: bounds.maxY }, { x: 1, y: 0 }),
    ],
  }
}

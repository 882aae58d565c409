import type { Computed } from '../../core/compute.ts'
import type { Point } from '../../core/geometry/point.ts'
import type { Plan } from '../../core/plan.ts'
import { shapesBounds } from '../bounds.ts'
import { inPlace, label, ordinate } from '../dimension.ts'
import type { Drawing, Shape } from '../drawing.ts'
import { figured } from '../figured.ts'
import { circle, closed, drawn, through } from '../line.ts'

const STEM_HALF_MM = 22
/** What the head of the gauge has round the bridge: toward the neck, beside it, behind it. */
const BEFORE_MM = 18
const ASIDE_MM = 12
const BEHIND_MM = 16
/** Width of the slot round the bridge's front and ends: a knife or a fine pencil goes in. */
const SLOT_MM = 2
const CENTRE_MM = 16
/** The saddle line runs past the bridge on either side. */
const SADDLE_OVER_MM = 3
const CROWN_MM = 0.75
const FIGURE_AT_MM = 11
const WORD_HALF_MM = 11

/**
 * A gauge for the place of the bridge, seen from the front, neck to the right: its stem is pushed against the square end of the board on the
 * centreline, and through its slot, which is cut out, the bridge's front edge and both ends are scored into the top, back corners and all; its
 * outer walls are the bridge's own edges. Saddle line and the crowns of the outer strings are marked, the back edge to be scored. Figures run from the joint, which lies under the board.
 */
export function bridgeGauge({ numbers, geometry }: Computed, plan: Pick<Plan, 'bridge'>): Drawing {
  const { bridge } = numbers
  const { lines, shape } = geometry.neck
  const [frontX, backX, endX] = [bridge.frontEdgeAtMm, bridge.backEdgeAtMm, shape.endMm]
  const half = plan.bridge.lengthMm / 2
  const headHalf = half + ASIDE_MM
  // A board that ends close before the bridge leaves the head less; one that ends behind it is a finding of its own.
  const shoulderX = frontX + Math.min(BEFORE_MM, Math.max((endX - frontX) / 2, 1))
  const stemX = Math.max(endX, shoulderX + 1)
  const tailX = backX - BEHIND_MM
  const slotMm = Math.min(SLOT_MM, (frontX - backX) / 2, half / 2)
  const slant = Math.tan(bridge.slantRad)
  const saddleAt = (y: number): Point => ({ x: bridge.saddleMiddleAtMm + slant * y, y })
  const bassY = lines[0]?.saddleAcrossMm ?? -half / 2
  const trebleY = lines.at(-1)?.saddleAcrossMm ?? half / 2
  // A saddle far aslant is drawn as far as the bridge goes, or to the outer strings.
  const roomMm = Math.min(frontX - bridge.saddleMiddleAtMm, bridge.saddleMiddleAtMm - backX)
  const reachMm = Math.max(roomMm / Math.max(Math.abs(slant), 1e-9), -bassY, trebleY)
  const wordX = Math.max(Math.min(saddleAt(half).x, shoulderX - WORD_HALF_MM), tailX + WORD_HALF_MM)
  const level = (fromX: number, toX: number, y = 0) =>
    through([
      { x: fromX, y },
      { x: toX, y },
    ])
  const shapes: Shape[] = [
    drawn(
      'edge',
      closed(
        through([
          { x: stemX, y: -STEM_HALF_MM },
          { x: stemX, y: STEM_HALF_MM },
          { x: shoulderX, y: STEM_HALF_MM },
          { x: shoulderX, y: headHalf },
          { x: tailX, y: headHalf },
          { x: tailX, y: -headHalf },
          { x: shoulderX, y: -headHalf },
          { x: shoulderX, y: -STEM_HALF_MM },
        ]),
      ),
    ),
    drawn(
      'cut',
      closed(
        through([
          { x: backX, y: -half },
          { x: frontX, y: -half },
          { x: frontX, y: half },
          { x: backX, y: half },
          { x: backX, y: half - slotMm },
          { x: frontX - slotMm, y: half - slotMm },
          { x: frontX - slotMm, y: slotMm - half },
          { x: backX, y: slotMm - half },
        ]),
      ),
    ),
    drawn(
      'slot',
      through([
        { x: backX, y: slotMm - half },
        { x: backX, y: half - slotMm },
      ]),
    ),
    drawn(
      'thin',
      through([
        saddleAt(Math.max(-reachMm, -half - SADDLE_OVER_MM)),
        saddleAt(Math.min(reachMm, half + SADDLE_OVER_MM)),
      ]),
    ),
    ...[bassY, trebleY].map((y) => drawn('thin', circle(saddleAt(y), CROWN_MM))),
    // Not the whole way: the title stands on the stem.
    drawn('centre', level(tailX, shoulderX)),
    drawn('centre', level(stemX - CENTRE_MM, stemX)),
  ]
  return {
    name: 'bridgeGauge',
    seenFrom: 'front',
    bounds: shapesBounds(shapes),
    heightsTimes: 1,
    marks: { top: 'bass', bottom: 'treble', left: 'tail', right: 'neck' },
    shapes: [
      ...shapes,
      ordinate(figured(numbers, 'board.overBodyMm'), { x: stemX, y: -FIGURE_AT_MM }, { x: -1, y: 0 }, 0, true),
      ordinate(figured(numbers, 'bridge.jointToFrontMm'), { x: frontX, y: -half / 2 }, { x: 1, y: 0 }, 0, true),
      ordinate(figured(numbers, 'bridge.jointToSaddleMm'), saddleAt(-FIGURE_AT_MM), { x: 1, y: 0 }, 0, true),
      inPlace(
        figured(numbers, 'bridge.lengthMm'),
        'left',
        { x: backX - BEHIND_MM / 3, y: half },
        { x: backX - BEHIND_MM / 3, y: -half },
        0.25,
      ),
      label('referenceEdge', { x: stemX, y: FIGURE_AT_MM }, { x: -1, y: 0 }),
      { ...label('saddleLine', { x: wordX, y: half + SADDLE_OVER_MM }, { x: 0, y: 1 }), isOptional: false },
    ],
    titleRoom: {
      minX: shoulderX + 2,
      maxX: Math.max(stemX - CENTRE_MM, shoulderX + 2),
      minY: 2 - STEM_HALF_MM,
      maxY: STEM_HALF_MM - 2,
    },
  }
}

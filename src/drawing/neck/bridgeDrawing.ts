import type { Computed } from '../../core/compute.ts'
import type { BridgePlan } from '../../core/neckPlan.ts'
import type { Point } from '../../core/geometry/point.ts'
import { shapesBounds } from '../bounds.ts'
import { label, ordinate, outside } from '../dimension.ts'
import type { Drawing, Shape } from '../drawing.ts'
import { figured, figuredAcross } from '../figured.ts'
import { circle, closed, drawn, rectangle, through } from '../line.ts'
import { tieHoleCut, tieHolesAbove } from './tieHoles.ts'

const PIN_MM = 2.5
const OVER_MM = 12
/** More holes than this have their figures in columns by turns, so many steps of air off the drawing. */
const MOST_IN_COLUMN = 8
const COLUMNS = [-1, -7, -13] as const

/** The bridge from above, neck to the right: saddle slot aslant behind its uncompensated line, pins or tie holes, strings, and the plate under it. */
export function bridgeDrawing({ numbers, geometry }: Computed, bridge: BridgePlan): Drawing {
  const n = numbers
  const { lines, shape } = geometry.neck
  const b = n.bridge
  const half = bridge.lengthMm / 2
  const cos = Math.cos(b.slantRad)
  const sin = Math.sin(b.slantRad)
  const slotX = b.saddleMiddleAtMm + b.slotFromCrownMm
  const slotCorner = (along: number, across: number): Point => ({
    x: slotX + along * sin + across * cos,
    y: along * cos - across * sin,
  })
  const [sl, sw] = [bridge.saddleLengthMm / 2, bridge.saddleWidthMm / 2]
  const line = shape.saddleLine
  const lineAt = (y: number): Point => ({ x: line.xMm + line.slant * y, y })
  const bassY = lines[0]?.saddleAcrossMm ?? -half / 2
  const trebleY = lines.at(-1)?.saddleAcrossMm ?? half / 2
  const shapes: Shape[] = [
    drawn('edge', rectangle(b.backEdgeAtMm, -half, b.frontEdgeAtMm, half)),
    ...(geometry.bracing.bridgePlate === null ? [] : [drawn('hidden', closed(through(geometry.bracing.bridgePlate)))]),
    drawn(
      'edge',
      closed(through([slotCorner(-sl, -sw), slotCorner(-sl, sw), slotCorner(sl, sw), slotCorner(sl, -sw)])),
    ),
    drawn('thin', through([lineAt(bassY - 6), lineAt(trebleY + 6)])),
    ...(bridge.holds === 'pins'
      ? n.pins.map(({ atMm, acrossMm }) => drawn('edge', circle({ x: atMm, y: acrossMm }, PIN_MM)))
      : tieHolesAbove(n.pins, b)),
    ...lines.map((one, i) =>
      drawn(
        'ghost',
        through([
          { x: n.pins[i]?.atMm ?? b.holdsAtMm, y: n.pins[i]?.acrossMm ?? 0 },
          { x: one.saddleMm, y: one.saddleAcrossMm },
          { x: b.frontEdgeAtMm + OVER_MM, y: one.saddleAcrossMm },
        ]),
      ),
    ),
    drawn(
      'centre',
      through([
        { x: b.backEdgeAtMm - OVER_MM, y: 0 },
        { x: b.frontEdgeAtMm + OVER_MM, y: 0 },
      ]),
    ),
  ]
  const bounds = shapesBounds(shapes)
  return {
    name: 'bridge',
    seenFrom: 'front',
    bounds,
    heightsTimes: 1,
    marks: { top: 'bass', bottom: 'treble', left: 'tail', right: 'neck' },
    shapes: [
      ...shapes,
      outside(
        figured(n, 'bridge.compensationBassMm'),
        'above',
        bounds.minY,
        { x: b.saddleBassAtMm, y: bassY },
        lineAt(bassY),
      ),
      outside(
        figured(n, 'bridge.compensationTrebleMm'),
        'below',
        bounds.maxY,
        { x: b.saddleTrebleAtMm, y: trebleY },
        lineAt(trebleY),
      ),
      ...n.pins.map((pin, i) =>
        ordinate(
          figuredAcross('pins[].acrossMm', i, pin.acrossMm),
          { x: bounds.minX, y: pin.acrossMm },
          { x: n.pins.length > MOST_IN_COLUMN ? COLUMNS[i % COLUMNS.length]! : -1, y: 0 },
          i === 0 || i === n.pins.length - 1 ? 1 : 2,
        ),
      ),
      label('saddleLine', lineAt(trebleY + 6), { x: 1, y: 1 }),
    ],
  }
}

/** The bridge cut along the centreline, neck to the right: slot and saddle, the string over it, the hole behind it, top and plate under it. */
export function bridgeSectionDrawing({ numbers, geometry }: Computed, bridge: BridgePlan, topPlateMm: number): Drawing {
  const n = numbers
  const b = n.bridge
  const x0 = b.saddleMiddleAtMm
  const backX = b.backEdgeAtMm - x0
  const frontX = b.frontEdgeAtMm - x0
  const tilt = b.crownMovesMm
  const thick = bridge.thicknessMm
  const show = bridge.saddleShowingMm
  const w = bridge.saddleWidthMm / 2
  // The crown at x 0; the saddle leans back from its slot.
  const saddleAt = (heightMm: number): number => (show - heightMm) * tilt
  const foot = -bridge.slotDepthMm
  const y = (overBridge: number) => -overBridge
  const holdsX = b.holdsAtMm - x0
  const front = geometry.neck.strung.slope
  const shapes: Shape[] = [
    drawn('edge', rectangle(backX, y(0), frontX, y(-thick))),
    drawn('thin', rectangle(backX - 30, y(-thick), frontX + 30, y(-thick - topPlateMm))),
    ...(bridge.plateMm > 0
      ? [
          drawn(
            'thin',
            rectangle(
              Math.min(bridge.plateFromMm, bridge.plateToMm - 1) - x0,
              y(-thick - topPlateMm),
              bridge.plateToMm - x0,
              y(-thick - topPlateMm - bridge.plateMm),
            ),
          ),
        ]
      : []),
    drawn(
      'edge',
      closed(
        through([
          { x: saddleAt(foot) - w, y: y(foot) },
          { x: saddleAt(show) - w, y: y(show) },
          { x: saddleAt(show) + w, y: y(show) },
          { x: saddleAt(foot) + w, y: y(foot) },
        ]),
      ),
    ),
    drawn(
      'thin',
      through([
        { x: holdsX, y: y(bridge.holds === 'pins' ? 0 : bridge.tieHoleOverTopMm - thick) },
        { x: 0, y: y(show) },
        { x: frontX + 30, y: y(show - front * (frontX + 30)) },
      ]),
    ),
    ...(bridge.holds === 'pins'
      ? [
          drawn(
            'centre',
            through([
              { x: holdsX, y: y(4) },
              { x: holdsX, y: y(-thick - topPlateMm - bridge.plateMm - 4) },
            ]),
          ),
        ]
      : tieHoleCut(bridge, b)),
  ]
  const bounds = shapesBounds(shapes)
  return {
    name: 'bridgeSection',
    seenFrom: 'section',
    bounds,
    heightsTimes: 1,
    marks: { left: 'tail', right: 'neck' },
    shapes: [
      ...shapes,
      outside(figured(n, 'bridge.thicknessMm'), 'left', bounds.minX, { x: backX, y: y(0) }, { x: backX, y: y(-thick) }),
      outside(
        figured(n, 'neckSet.stringsOverTopMm'),
        'right',
        bounds.maxX,
        { x: 0, y: y(show) },
        { x: frontX, y: y(-thick) },
      ),
      outside(
        figured(n, 'bridge.woodUnderSlotMm'),
        'right',
        bounds.maxX,
        { x: saddleAt(foot) + w, y: y(foot) },
        { x: frontX, y: y(-thick) },
      ),
    ],
  }
}

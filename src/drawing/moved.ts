import type { Point } from '../core/geometry/point.ts'
import { type Change, changeShape } from './changeShape.ts'
import type { Shape } from './drawing.ts'

/** A shape elsewhere on the sheet, the same way round. */
export const moved = (shape: Shape, by: Point): Shape => changeShape(shape, shiftBy(by))

export const shiftBy = (by: Point): Change => ({
  point: ({ x, y }) => ({ x: x + by.x, y: y + by.y }),
  direction: (away) => away,
  isMirror: false,
  angleRad: (rad) => rad,
  side: (side) => side,
  baseMm: (side, baseMm) => baseMm + (side === 'above' || side === 'below' ? by.y : by.x),
})

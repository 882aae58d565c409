import type { Point } from '../core/geometry/point.ts'
import { shapesBounds } from './bounds.ts'
import type { Bounds, Drawing, EdgeMarks, Side } from './drawing.ts'
import { type Change, changeShape } from './changeShape.ts'

/** Along x: left and right change places. Along y: above and below do. */
export type FlipAxis = 'x' | 'y'

/**
 * A drawing in the mirror of the line x = 0 or y = 0: every shape, mark and dimension changes places, none of its letterings is mirrored.
 * Parts that are kept stay. Twice gives the same drawing again.
 */
export function flipped(drawing: Drawing, axis: FlipAxis): Drawing {
  const flip = flipAlong(axis)
  const shapes = drawing.shapes.map((shape) => (shape.isKept === true ? shape : changeShape(shape, flip)))
  const hasKept = drawing.shapes.some(({ isKept }) => isKept === true)
  return {
    ...drawing,
    bounds: hasKept ? shapesBounds(shapes) : flipBounds(drawing.bounds, axis),
    marks: flipMarks(drawing.marks, axis),
    shapes,
    ...(drawing.titleRoom === undefined ? {} : { titleRoom: flipBounds(drawing.titleRoom, axis) }),
  }
}

const OTHER_SIDE: Record<Side, Side> = { above: 'below', below: 'above', left: 'right', right: 'left' }

function flipAlong(axis: FlipAxis): Change {
  const crosses = (side: Side) => (side === 'left' || side === 'right') === (axis === 'x')
  const point = axis === 'x' ? ({ x, y }: Point) => ({ x: -x, y }) : ({ x, y }: Point) => ({ x, y: -y })
  return {
    point,
    direction: point,
    isMirror: true,
    angleRad: axis === 'x' ? (rad) => Math.PI - rad : (rad) => -rad,
    side: (side) => (crosses(side) ? OTHER_SIDE[side] : side),
    baseMm: (side, baseMm) => (crosses(side) ? -baseMm : baseMm),
  }
}

const flipBounds = ({ minX, minY, maxX, maxY }: Bounds, axis: FlipAxis): Bounds =>
  axis === 'x' ? { minX: -maxX, minY, maxX: -minX, maxY } : { minX, minY: -maxY, maxX, maxY: -minY }

function flipMarks({ top, bottom, left, right, inCorners }: EdgeMarks, axis: FlipAxis): EdgeMarks {
  const [newTop, newBottom] = axis === 'y' ? [bottom, top] : [top, bottom]
  const [newLeft, newRight] = axis === 'x' ? [right, left] : [left, right]
  return {
    ...(newTop === undefined ? {} : { top: newTop }),
    ...(newBottom === undefined ? {} : { bottom: newBottom }),
    ...(newLeft === undefined ? {} : { left: newLeft }),
    ...(newRight === undefined ? {} : { right: newRight }),
    ...(inCorners === undefined ? {} : { inCorners }),
  }
}

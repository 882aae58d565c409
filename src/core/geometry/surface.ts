import type { Point } from './point.ts'

/** A surface over the plane: its height and its slope (dz/dx, dz/dy) at any place. */
export interface Surface {
  readonly heightMm: (x: number, y: number) => number
  readonly slope: (x: number, y: number) => Point
}

export const plane = (heightAtZeroMm: number, slopeAlong: number): Surface => ({
  heightMm: (x) => heightAtZeroMm + slopeAlong * x,
  slope: () => ({ x: slopeAlong, y: 0 }),
})

/** A cap is followed no further than to where it stands at this part of its radius: steeper it is no dome, and a finding says so. */
const STEEPEST = 0.999

/**
 * A sphere whose axis stands upright at (axisXMm, 0), through a given point of the plane y = 0.
 *
 *   z = z0 -+ (d^2 - d0^2) / (sqrt(R^2 - d^2) + sqrt(R^2 - d0^2))     d, d0 plan distances from the axis
 *
 * which keeps its digits as the radius grows. `bulges` says which way its middle stands.
 */
export function sphere(
  radiusMm: number,
  axisXMm: number,
  through: { x: number; z: number },
  bulges: 'up' | 'down',
): Surface {
  const sign = bulges === 'up' ? -1 : 1
  const limit = STEEPEST * STEEPEST
  const fallMm = (dd: number) => Math.sqrt(radiusMm * radiusMm * (1 - Math.min(dd / (radiusMm * radiusMm), limit)))
  const from = through.x - axisXMm
  const fallThere = fallMm(from * from)
  return {
    heightMm: (x, y) => {
      const r = x - axisXMm
      return through.z + (sign * ((x - through.x) * (r + from) + y * y)) / (fallMm(r * r + y * y) + fallThere)
    },
    slope: (x, y) => {
      const r = x - axisXMm
      const fall = fallMm(r * r + y * y)
      return { x: (sign * r) / fall, y: (sign * y) / fall }
    },
  }
}

/** The lower of two surfaces at each place. */
export const lowerOf = (a: Surface, b: Surface): Surface => ({
  heightMm: (x, y) => Math.min(a.heightMm(x, y), b.heightMm(x, y)),
  slope: (x, y) => (a.heightMm(x, y) <= b.heightMm(x, y) ? a.slope(x, y) : b.slope(x, y)),
})

/** One surface up to x (not included), another from there. */
export const splitAtX = (xMm: number, below: Surface, above: Surface): Surface => ({
  heightMm: (x, y) => (x < xMm ? below : above).heightMm(x, y),
  slope: (x, y) => (x < xMm ? below : above).slope(x, y),
})

/** Rise of the surface per mm in a direction of the plane. */
export function slopeToward(surface: Surface, at: Point, direction: Point): number {
  const slope = surface.slope(at.x, at.y)
  return slope.x * direction.x + slope.y * direction.y
}

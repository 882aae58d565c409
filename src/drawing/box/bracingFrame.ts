import type { PlateSide } from '../../core/boxPlan.ts'
import type { Point } from '../../core/geometry/point.ts'
import { type InnerRim, meetRim } from '../../core/instrument/brace/innerRim.ts'
import type { PlacedBrace } from '../../core/instrument/brace/placedBrace.ts'
import type { Plan } from '../../core/plan.ts'
import type { PathCommand, PathShape } from '../drawing.ts'
import { closed, drawn, through } from '../line.ts'

/**
 * A place of the body on the drawing of a plate seen from inside, and back again: the same step both ways. The top is seen in the mirror,
 * and a left-handed instrument in the mirror of that.
 */
export const acrossPlate = ({ x, y }: Point, plate: PlateSide, handed: Plan['handed']): Point => ({
  x,
  y: (plate === 'top') === (handed === 'right') ? -y : y,
})

/**
 * The corners of a brace as it lies between the sides: at the rim its flanks run on, or stop short, to the inner face, and from there back by what its
 * tip stays short of the side.
 */
export function fittedCorners({ corners, from, to, way, lengthMm }: PlacedBrace, rim: InnerRim): readonly Point[] {
  const flank = (a: Point, b: Point): readonly [Point, Point] => {
    const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }
    const back = { x: -way.x, y: -way.y }
    const inward = ({ x, y }: Point, mm: number): Point => ({ x: x + mm * way.x, y: y + mm * way.y })
    return [
      from.at === 'rim' ? inward(meetRim(rim, middle, back)?.point ?? a, from.shortMm) : a,
      to.at === 'rim' ? inward(meetRim(rim, middle, way)?.point ?? b, -to.shortMm) : b,
    ]
  }
  const [a, b, c, d] = corners
  if (a === undefined || b === undefined || c === undefined || d === undefined || lengthMm <= 0) return corners
  const [first, second] = flank(a, b)
  const [fourth, third] = flank(d, c)
  return [first, second, third, fourth]
}

/** The outline of a brace on that drawing. */
export const braceCommands = (
  brace: PlacedBrace,
  rim: InnerRim,
  plate: PlateSide,
  handed: Plan['handed'],
): PathCommand[] => closed(through(fittedCorners(brace, rim).map((corner) => acrossPlate(corner, plate, handed))))

/** Braces as they are while one is moved. */
export const movedBraces = (
  braces: readonly PlacedBrace[],
  rim: InnerRim,
  plate: PlateSide,
  handed: Plan['handed'],
): PathShape[] => braces.map((brace) => drawn('edge', braceCommands(brace, rim, plate, handed)))

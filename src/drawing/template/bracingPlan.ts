import type { PlateSide } from '../../core/boxPlan.ts'
import type { Computed } from '../../core/compute.ts'
import { curveAt } from '../../core/geometry/curve.ts'
import { type BracingDrawn, bracingDrawing } from '../box/bracingDrawing.ts'
import type { Bounds, Drawing, Shape } from '../drawing.ts'
import { grainArrow } from './grain.ts'

const ARROW_MM = 50
/** How far the arrow stands off the sides. */
const BESIDE_MM = 22
/** Where a title is looked for between the braces, in parts of the body's length and of its half-width there. */
const ROOM_FROM = 0.1
const ROOM_TO = 0.46
const ROOM_ACROSS = 0.7

/**
 * The bracing of one plate at full size, seen from inside: cut out along the inner face of the sides (and round the hole of a top) it lies in its
 * place on the plate, and the braces are pricked or scored through. Grain beside the waist.
 */
export function bracingPlan(computed: Computed, plan: BracingDrawn, plate: PlateSide): Drawing {
  const drawing = bracingDrawing(computed, plan, plate)
  const { halfWidthAtMm, lengthMm, outline, bouts } = computed.geometry
  const besideMm = bouts.waistMm === null ? lengthMm / 2 : curveAt(outline.bass, bouts.waistMm).point.x
  const upMm = halfWidthAtMm(besideMm) + BESIDE_MM
  return {
    ...drawing,
    shapes: [...drawing.shapes.map(scored), ...grainArrow({ x: besideMm, y: -upMm }, ARROW_MM)],
    titleRoom: roomBetween(halfWidthAtMm, lengthMm),
  }
}

/** A brace is laid down on the plate, not sawn out of the plan. */
const scored = (shape: Shape): Shape =>
  shape.kind === 'path' && shape.covers === true ? { ...shape, role: 'thin' } : shape

function roomBetween(halfWidthAtMm: (xMm: number) => number, lengthMm: number): Bounds {
  const [minX, maxX] = [lengthMm * ROOM_FROM, lengthMm * ROOM_TO]
  const acrossMm = ROOM_ACROSS * Math.min(halfWidthAtMm(minX), halfWidthAtMm(maxX))
  return { minX, maxX, minY: -acrossMm, maxY: acrossMm }
}

import type { Computed } from '../../core/compute.ts'
import type { Drawing, Shape } from '../drawing.ts'
import { rosetteDrawing } from '../rosetteDrawing.ts'
import { grainArrow } from './grain.ts'

/** The arrow lies in the hole, between tail and bass, clear of both centre lines: in parts of the hole's radius. */
const ARROW_AT = 0.42
const ARROW_LENGTH = 0.6
/** Where the board's end lies over that place it stands in the corner beside the board, in parts of the half-height of what is drawn. */
const BOARD_TO = -0.05
const CORNER_AT = 1.08

/**
 * Hole and rosette at full size, seen from the front: what is cut, the circles the cutter's centre runs on, radii, what the board hides, and the
 * grain of the top.
 */
export function rosettePlan(computed: Computed): Drawing {
  const drawing = rosetteDrawing(computed)
  const { radiusMm, centreToBoardEndMm } = computed.numbers.soundhole
  const { minY, maxX } = drawing.bounds
  const half = (ARROW_LENGTH * radiusMm) / 2
  const middle =
    centreToBoardEndMm > BOARD_TO * radiusMm
      ? { x: -ARROW_AT * radiusMm, y: -ARROW_AT * radiusMm }
      : { x: maxX - half, y: CORNER_AT * minY }
  return {
    ...drawing,
    shapes: [...drawing.shapes.map(asCut), ...grainArrow(middle, 2 * half)],
  }
}

/**
 * Heavy is what is cut: the hole's edge and the walls of the channels. The circles the cutter's centre runs on stay dashed, so that nobody saws
 * one; the board's end, all straight, is there to be seen.
 */
function asCut(shape: Shape): Shape {
  if (shape.kind !== 'path') return shape
  if (shape.role === 'thin') return { ...shape, role: 'cut' }
  if (shape.role !== 'edge') return shape
  return { ...shape, role: shape.commands.some(([step]) => step === 'A') ? 'cut' : 'thin' }
}

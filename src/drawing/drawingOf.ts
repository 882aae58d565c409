import type { Computed } from '../core/compute.ts'
import type { Plan } from '../core/plan.ts'
import { asHanded } from './handed.ts'
import { bevelsDrawing } from './bevelsDrawing.ts'
import { blankDrawing } from './blankDrawing.ts'
import { blockDrawing } from './blockDrawing.ts'
import { domesDrawing } from './domesDrawing.ts'
import type { BodyDrawingName, Drawing } from './drawing.ts'
import type { HalfName } from './innerFace.ts'
import { type InsidePlan, insideDrawing } from './insideDrawing.ts'
import { planDrawing } from './planDrawing.ts'
import { rosetteDrawing } from './rosetteDrawing.ts'
import { sectionDrawing } from './sectionDrawing.ts'
import { sideDrawing } from './sideDrawing.ts'

/** What drawings need of a plan beside its numbers. */
export type DrawnPlan = InsidePlan & Pick<Plan, 'handed' | 'plates'>

export interface DrawingOptions {
  /** How many times larger small heights are drawn; 1 = true. */
  readonly heightsTimes?: number
  /** Of the rim, where a drawing shows one side; the treble side where it is not said. */
  readonly side?: HalfName
  /** Which piece of the treble side a blank is for, counted from 0 at the tail; by the name of the drawing where it is not said. */
  readonly piece?: number
}

/** A drawing of the body, for the hand it is played with. All of it that is seen or printed is taken from here; the neck has neckDrawingOf. */
export function drawingOf(
  name: BodyDrawingName,
  computed: Computed,
  plan: DrawnPlan,
  options: DrawingOptions = {},
): Drawing {
  return asHanded(drawRightHanded(name, computed, plan, options), plan.handed)
}

function drawRightHanded(
  name: BodyDrawingName,
  computed: Computed,
  plan: DrawnPlan,
  { heightsTimes = 1, side = 'treble', piece }: DrawingOptions,
): Drawing {
  switch (name) {
    case 'plan':
      return planDrawing(computed)
    case 'side':
      return sideDrawing(computed, heightsTimes, side)
    case 'inside':
      return insideDrawing(computed, plan, side)
    case 'section':
      return sectionDrawing(computed, plan.plates, heightsTimes)
    case 'domes':
      return domesDrawing(computed, heightsTimes)
    case 'blankTreble':
      return blankDrawing(computed, 'treble', piece ?? 0)
    case 'blankHorn':
      return blankDrawing(computed, 'treble', piece ?? 1)
    case 'blankBass':
      return blankDrawing(computed, 'bass')
    case 'bevels':
      return bevelsDrawing(computed)
    case 'blockTail':
      return blockDrawing(computed, 'tail', heightsTimes)
    case 'blockNeck':
      return blockDrawing(computed, 'neck', heightsTimes)
    case 'rosette':
      return rosetteDrawing(computed)
  }
}

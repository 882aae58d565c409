import type { Computed } from '../core/compute.ts'
import type { Plan } from '../core/plan.ts'
import type { Drawing } from '../drawing/drawing.ts'
import type { CommissionDoc } from '../record/commission.ts'
import type { StageDrawing } from '../record/patterns/stages.ts'
import { stageDrawing } from './stageDrawing.ts'
import type { StageOnSheet, StageSheetOrder } from './stageSheetOrder.ts'

/** A signed stage as it was built to. */
export interface StageThen {
  /** The day it was signed off, ISO. */
  readonly on: string
  /** The plan as built then, and what was allowed. */
  readonly plan: Plan
  readonly tolerances: CommissionDoc['tolerances']
  /** With the numbers its sign-off kept. */
  readonly computed: Computed
}

/** What a stage is laid from: the order, or, where the stage was signed off, the same with everything as it stood then. */
export function orderOfStage(order: StageSheetOrder, { built }: StageOnSheet): StageSheetOrder {
  if (built === undefined) return order
  const { plan, tolerances, computed } = built
  // What was measured since, and what is planned now, is no matter of what was signed off.
  const { planned: _planned, ...others } = order
  return {
    ...others,
    doc: { ...order.doc, plan, tolerances },
    computed,
    drawingOf: (name) => drawnOnce(computed, plan, name),
  }
}

const drawings = new WeakMap<Computed, Map<StageDrawing, Drawing>>()

function drawnOnce(computed: Computed, plan: Plan, name: StageDrawing): Drawing {
  const known = drawings.get(computed) ?? new Map<StageDrawing, Drawing>()
  drawings.set(computed, known)
  const drawn = known.get(name) ?? stageDrawing(computed, plan, name)
  known.set(name, drawn)
  return drawn
}

import type { PlanField } from '../../core/planFields.ts'
import { BACK_FORM_WORDS, TOP_FORM_WORDS } from '../fields.ts'
import { LINING_KIND_WORDS, SIDE_BRACE_END_WORDS, SIDE_BRACE_FORM_WORDS } from './inside.ts'
import {
  BOARD_SURFACE_WORDS,
  COMPENSATION_WORDS,
  FLAT_SLOPE_WORDS,
  FRET_FAN_WORDS,
  HOLD_WORDS,
  JOINT_WORDS,
  PIN_RUN_WORDS,
  ROD_WORDS,
  TUNER_SIDE_WORDS,
} from './neck.ts'
import { CUTAWAY_FORM_WORDS, HAND_WORDS, OUTLINE_KIND_WORDS } from './outline.ts'
import { RIM_METHOD_WORDS } from './rim.ts'

const CHOICE_WORDS: Readonly<Partial<Record<PlanField, Readonly<Record<string, string>>>>> = {
  handed: HAND_WORDS,
  'outline.kind': OUTLINE_KIND_WORDS,
  'outline.cutaway.form': CUTAWAY_FORM_WORDS,
  'rim.method': RIM_METHOD_WORDS,
  'back.form': BACK_FORM_WORDS,
  'top.form': TOP_FORM_WORDS,
  'top.flatSlope': FLAT_SLOPE_WORDS,
  'linings.top.kind': LINING_KIND_WORDS,
  'linings.back.kind': LINING_KIND_WORDS,
  'sideBraces.form': SIDE_BRACE_FORM_WORDS,
  'sideBraces.ends': SIDE_BRACE_END_WORDS,
  'scale.fan': FRET_FAN_WORDS,
  'board.surface': BOARD_SURFACE_WORDS,
  'bridge.holds': HOLD_WORDS,
  'bridge.pinRun': PIN_RUN_WORDS,
  'bridge.compensation': COMPENSATION_WORDS,
  'neck.joint': JOINT_WORDS,
  'neck.rod': ROD_WORDS,
  'head.tuners': TUNER_SIDE_WORDS,
}

/** Every choice of a field, in the order it is offered in; none where the field is no choice. */
export const choicesOf = (field: PlanField): readonly { readonly value: string; readonly label: string }[] =>
  Object.entries(CHOICE_WORDS[field] ?? {}).map(([value, label]) => ({ value, label }))

/** What a choice of the plan is called; null where the field is none, or the choice is not known. */
export const choiceWord = (field: string, choice: string): string | null =>
  CHOICE_WORDS[field as PlanField]?.[choice] ?? null

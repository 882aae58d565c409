import {
  BACK_FORMS,
  CUTAWAY_FORMS,
  HANDS,
  LINING_KINDS,
  OUTLINE_KINDS,
  type Plan,
  RIM_METHODS,
  SIDE_BRACE_ENDS,
  SIDE_BRACE_FORMS,
  TOP_FORMS,
} from '../../core/plan.ts'
import type { PlanField } from '../../core/planFields.ts'
import { FIELDS } from '../../record/fields.ts'
import { AngleField } from '../../ui/AngleField.tsx'
import { ChoiceField } from '../../ui/ChoiceField.tsx'
import { CountField } from '../../ui/CountField.tsx'
import { DecimalField } from '../../ui/DecimalField.tsx'
import { LengthField, type LengthValue } from '../../ui/LengthField.tsx'
import { BACK_FORM_WORDS, FIELD_WORDS, TOP_FORM_WORDS } from '../../words/fields.ts'
import { LINING_KIND_WORDS, SIDE_BRACE_END_WORDS, SIDE_BRACE_FORM_WORDS } from '../../words/fields/inside.ts'
import { CUTAWAY_FORM_WORDS, HAND_WORDS, OUTLINE_KIND_WORDS } from '../../words/fields/outline.ts'
import { RIM_METHOD_WORDS } from '../../words/fields/rim.ts'
import { useSheetBench } from './sheetBench.ts'
import { useDocumentField } from './useSheetField.ts'

/** Fields that are one control; what is replaced whole has editors of its own. */
export type SingleField = Exclude<
  PlanField,
  | 'outline.pieces'
  | 'outline.halfWidths.rows'
  | 'outline.halfWidths.tailRows'
  | 'outline.halfWidths.neckRows'
  | 'outline.drawnPath'
  | 'sideBraces.atMm'
  | 'rosette.rings'
>

const choices = <Value extends string>(values: readonly Value[], words: Record<Value, string>) =>
  values.map((value) => ({ value, label: words[value] }))

const CHOICES: Partial<Record<PlanField, readonly { readonly value: string; readonly label: string }[]>> = {
  handed: choices(HANDS, HAND_WORDS),
  'outline.kind': choices(OUTLINE_KINDS, OUTLINE_KIND_WORDS),
  'outline.cutaway.form': choices(CUTAWAY_FORMS, CUTAWAY_FORM_WORDS),
  'rim.method': choices(RIM_METHODS, RIM_METHOD_WORDS),
  'back.form': choices(BACK_FORMS, BACK_FORM_WORDS),
  'top.form': choices(TOP_FORMS, TOP_FORM_WORDS),
  'linings.top.kind': choices(LINING_KINDS, LINING_KIND_WORDS),
  'linings.back.kind': choices(LINING_KINDS, LINING_KIND_WORDS),
  'sideBraces.form': choices(SIDE_BRACE_FORMS, SIDE_BRACE_FORM_WORDS),
  'sideBraces.ends': choices(SIDE_BRACE_ENDS, SIDE_BRACE_END_WORDS),
}

interface Props {
  readonly field: SingleField
  /** What an open length was solved to. */
  readonly solvedMm?: number | 'flat' | null
}

/** The control of one field of the plan, by what its range says it holds. */
export function PlanFieldControl({ field, solvedMm = null }: Props) {
  const { plan, units } = useSheetBench()
  const value = planValue(plan, field)
  const binding = useDocumentField(`plan.${field}`, value)
  const label = FIELD_WORDS[field].name
  const range = FIELDS[field]
  switch (range.type) {
    case 'length':
      return (
        <LengthField label={label} binding={as<LengthValue>(binding)} range={range} units={units} solvedMm={solvedMm} />
      )
    case 'angle':
      return <AngleField label={label} binding={as<number | null>(binding)} range={range} />
    case 'count':
      return <CountField label={label} binding={as<number | null>(binding)} range={range} />
    case 'plain':
      return <DecimalField label={label} binding={as<number>(binding)} range={range} />
    case 'choice':
      return <ChoiceField label={label} binding={as<string>(binding)} choices={CHOICES[field] ?? []} />
  }
}

/** The range of a field says which kind of value lies there; the record's schema holds it to that. */
const as = <Value,>(binding: ReturnType<typeof useDocumentField<unknown>>) =>
  binding as unknown as ReturnType<typeof useDocumentField<Value>>

function planValue(plan: Plan, field: PlanField): unknown {
  let value: unknown = plan
  for (const step of field.split('.')) value = (value as Record<string, unknown>)[step]
  return value
}

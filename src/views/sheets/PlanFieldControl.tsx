import { memo } from 'react'
import type { Plan } from '../../core/plan.ts'
import type { PlanField } from '../../core/planFields.ts'
import type { ShopUnits } from '../../core/quantity.ts'
import { parseFahrenheit } from '../../format/parseFahrenheit.ts'
import { parseSound } from '../../format/parseSound.ts'
import { FIELDS } from '../../record/fields.ts'
import { AngleField } from '../../ui/AngleField.tsx'
import { ChoiceField } from '../../ui/ChoiceField.tsx'
import { CountField } from '../../ui/CountField.tsx'
import { DecimalField } from '../../ui/DecimalField.tsx'
import { LengthField, type LengthValue } from '../../ui/LengthField.tsx'
import { FIELD_WORDS } from '../../words/fields.ts'
import { HEARD_EXAMPLE, OPEN_WORDS } from '../../words/fields/box.ts'
import { choicesOf } from '../../words/fields/choices.ts'
import { BuiltLine } from './BuiltLine.tsx'
import { useSheetBench } from './sheetBench.ts'
import { type FieldHand, useDocumentFieldInHand } from './useSheetField.ts'

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
  | 'bracing.braces'
  | 'cutting.woods'
  | 'cutting.planks'
  | 'board.markersAt'
  | 'strings.set'
  | 'strings.otherNotes'
  | 'neck.boltsAtMm'
>

interface Props {
  readonly field: SingleField
  /** What an open length was solved to. */
  readonly solvedMm?: number | 'flat' | null
  /** What an open length means, where nothing is solved for. */
  readonly openWord?: string
}

/** The control of one field of the plan, by what its range says it holds. */
export function PlanFieldControl(props: Props) {
  const { plan, units, readOnly, newId, edit, draftOf, keepDraft, dropDraft } = useSheetBench()
  const { field } = props
  return (
    <>
      <Control
        {...props}
        value={planValue(plan, field)}
        units={units}
        pitchHz={field === 'air.heardHz' ? plan.strings.pitchHz : null}
        draft={draftOf(`plan.${field}`)}
        readOnly={readOnly}
        newId={newId}
        edit={edit}
        keepDraft={keepDraft}
        dropDraft={dropDraft}
      />
      <BuiltLine field={field} />
    </>
  )
}

interface ControlProps extends Props, FieldHand {
  readonly value: unknown
  readonly units: ShopUnits
  /** What notes are reckoned from, where the field takes one. */
  readonly pitchHz: number | null
}

/** A stroke in one field changes the plan, and of the fields around it none. */
const Control = memo(function Control(props: ControlProps) {
  const { field, solvedMm = null, openWord, value, units, pitchHz } = props
  const binding = useDocumentFieldInHand(props, `plan.${field}`, value)
  const label = FIELD_WORDS[field].name
  const range = FIELDS[field]
  switch (range.type) {
    case 'length':
      return (
        <LengthField
          label={label}
          binding={as<LengthValue>(binding)}
          range={range}
          units={units}
          solvedMm={solvedMm}
          {...(openWord === undefined ? {} : { openWord })}
        />
      )
    case 'angle':
      return <AngleField label={label} binding={as<number | null>(binding)} range={range} />
    case 'count':
      return <CountField label={label} binding={as<number | null>(binding)} range={range} />
    case 'plain':
      return (
        <DecimalField
          label={label}
          binding={as<number | null>(binding)}
          range={range}
          {...(OPEN_WORDS[field] === undefined ? {} : { emptyMeans: OPEN_WORDS[field] })}
          {...alsoRead(field, pitchHz)}
        />
      )
    case 'choice':
      return <ChoiceField label={label} binding={as<string>(binding)} choices={choicesOf(field)} />
  }
})

/** What some fields take besides figures: a note for what was heard, degrees Fahrenheit for a temperature. */
function alsoRead(field: SingleField, pitchHz: number | null) {
  if (pitchHz !== null) return { alsoReads: (text: string) => parseSound(text, pitchHz), example: HEARD_EXAMPLE }
  return field === 'air.temperatureC' ? { alsoReads: parseFahrenheit } : {}
}

/** The range of a field says which kind of value lies there; the record's schema holds it to that. */
const as = <Value,>(binding: ReturnType<typeof useDocumentFieldInHand<unknown>>) =>
  binding as unknown as ReturnType<typeof useDocumentFieldInHand<Value>>

function planValue(plan: Plan, field: PlanField): unknown {
  let value: unknown = plan
  for (const step of field.split('.')) value = (value as Record<string, unknown>)[step]
  return value
}

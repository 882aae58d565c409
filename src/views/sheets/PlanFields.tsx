import { useId } from 'react'
import { FIELD_WORDS } from '../../words/fields.ts'
import { useSheetBench } from './sheetBench.ts'
import { isInUse } from './fieldsInUse.ts'
import { PlanFieldControl, type SingleField } from './PlanFieldControl.tsx'

/** Fields of one part, as far as the chosen forms use them, under its heading. */
export function PlanFields({ heading, fields }: { readonly heading: string; readonly fields: readonly SingleField[] }) {
  const id = useId()
  const { plan, computed } = useSheetBench()
  const { stationStepMm } = computed.numbers.sides
  const inUse = fields.filter((field) => isInUse(plan, field))
  return (
    <section className="sheet-fields" aria-labelledby={id}>
      <h2 id={id}>{heading}</h2>
      {inUse.map((field) => (
        <div className="sheet-field" key={field}>
          <PlanFieldControl field={field} solvedMm={field === 'rim.stationStepMm' ? stationStepMm : null} />
          <p className="second small sheet-field-hint">{FIELD_WORDS[field].hint}</p>
        </div>
      ))}
    </section>
  )
}

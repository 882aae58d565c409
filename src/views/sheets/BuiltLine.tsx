import type { PlanField } from '../../core/planFields.ts'
import { formatDate } from '../../format/formatDate.ts'
import { ReadingMark } from '../../ui/ReadingMark.tsx'
import { FROM_READING_WORDS } from '../../words/fromReading.ts'
import { valueText } from '../valueText.ts'
import { type PlannedBench, useSheetBench } from './sheetBench.ts'
import './builtLine.css'

type Taken = PlannedBench['taken'][number]

/** Under a field of the plan that gave way to what was measured: what stands now, since when, and the way to the readings. */
export function BuiltLine({ field }: { readonly field: PlanField }) {
  const { planned, units } = useSheetBench()
  const taken = planned?.taken.find((one) => one.field === field)
  if (planned === null || taken === undefined) return null
  const text = (value: unknown) => valueText(`plan.${field}`, value, units)
  return <Line planned={planned} taken={taken} built={text(taken.built)} before={text(taken.planned)} />
}

interface LineProps {
  readonly planned: PlannedBench
  readonly taken: Taken
  readonly built: string
  readonly before: string
}

function Line({ planned, taken, built, before }: LineProps) {
  const lastDay = taken.readings.map(planned.dayOf).findLast((day) => day !== null) ?? null
  return (
    <p className="built-line small">
      <span>
        {FROM_READING_WORDS.built(built, lastDay === null ? null : formatDate(lastDay), before)}
        <ReadingMark />
      </span>
      <button className="button button-plain" type="button" onClick={planned.goToReadings}>
        {FROM_READING_WORDS.toReadings}
      </button>
    </p>
  )
}

/** The same under the radii of a ring: rings are replaced whole, and only those that were read differ. */
export function BuiltRingLine({
  id,
  value,
}: {
  readonly id: string
  readonly value: 'innerRadiusMm' | 'outerRadiusMm'
}) {
  const { planned, builtPlan, plan, units } = useSheetBench()
  const taken = planned?.taken.find((one) => one.field === 'rosette.rings')
  const [built, before] = [builtPlan.rosette.rings[id]?.[value], plan.rosette.rings[id]?.[value]]
  if (planned === null || taken === undefined || built === undefined || before === undefined || built === before)
    return null
  const text = (mm: number) => valueText(`plan.rosette.rings.${id}.${value}`, mm, units)
  return <Line planned={planned} taken={taken} built={text(built)} before={text(before)} />
}

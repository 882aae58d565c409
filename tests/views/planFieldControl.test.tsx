import { render, screen } from '@testing-library/react'
import { expect, it } from 'vitest'
import { PLAN_FIELDS } from '../../src/core/planFields.ts'
import { FIELDS } from '../../src/record/fields.ts'
import type { FieldRange } from '../../src/record/fieldRange.ts'
import { PlanFieldControl, type SingleField } from '../../src/views/sheets/PlanFieldControl.tsx'
import { FIELD_WORDS } from '../../src/words/fields.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { FakeBench, watchedBench } from './fakeBench.tsx'

const rangeOf = (field: SingleField): FieldRange => FIELDS[field]
const SINGLE = PLAN_FIELDS.filter((field): field is SingleField => FIELDS[field].type !== 'whole')

it.each(SINGLE)('%s has one control, under its own name', (field) => {
  const { container } = render(
    <FakeBench watched={watchedBench(STEEL_STRING.plan)}>
      <PlanFieldControl field={field} />
    </FakeBench>,
  )
  expect(container.querySelectorAll(`[data-field="plan.${field}"]`)).toHaveLength(1)
  if (rangeOf(field).type === 'choice') {
    const choices = screen.getAllByRole<HTMLInputElement>('radio')
    expect(choices.length).toBeGreaterThan(1)
    expect(choices.filter((choice) => choice.checked)).toHaveLength(1)
  } else expect(screen.getByLabelText<HTMLInputElement>(FIELD_WORDS[field].name).readOnly).toBe(false)
})

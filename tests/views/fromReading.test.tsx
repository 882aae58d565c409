import { render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, it } from 'vitest'
import type { Reading } from '../../src/core/asBuilt/reading.ts'
import { compute } from '../../src/core/compute.ts'
import { ringsInOrder } from '../../src/core/instrument/rosette.ts'
import { readNumbers } from '../../src/core/numbers.ts'
import { STARTING_UNITS } from '../../src/core/quantity.ts'
import { plannedInPlaceOf } from '../../src/record/bench/follows.ts'
import { NumberList } from '../../src/views/sheets/NumberList.tsx'
import { RosetteSheet } from '../../src/views/sheets/RosetteSheet.tsx'
import { SidesSheet } from '../../src/views/sheets/SidesSheet.tsx'
import { tableText } from '../../src/views/sheets/tableText.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { withField } from '../generators/plans.ts'
import { FakeBench, watchedBench } from './fakeBench.tsx'

const { plan } = STEEL_STRING
const reading = (number: Reading['number'], value: number, more: Partial<Reading> = {}): Reading => ({
  id: `0d000000-0000-4000-8000-${String(value * 1000).padStart(12, '0')}`,
  number,
  row: 0,
  side: 'whole',
  value,
  alongMm: null,
  entry: null,
  ...more,
})
const show = (sheet: React.ReactNode, readings: readonly Reading[]) =>
  render(
    <FakeBench watched={watchedBench(plan)} readings={readings}>
      {sheet}
    </FakeBench>,
  )
const MARK = /from your reading/

describe('a sheet about something that was measured', () => {
  const deeper = reading('sides.depthAtTailMm', plan.rim.depthAtTailMm + 1.5)

  it('marks the depth at the waist, with the planned one beside it; thickness of the plates is not marked', () => {
    show(<SidesSheet />, [deeper])
    // Outside of the project: a rim whose back is a sphere is read off a plan that was drawn that deep.
    const drawnSo = compute(withField(plan, 'rim.depthAtTailMm', plan.rim.depthAtTailMm + 1.5)).numbers
    const waist = drawnSo.places.find(({ place }) => place === 'waist')!
    const before = compute(plan).numbers.places.find(({ place }) => place === 'waist')!
    const figure = screen.getByRole('button', { name: new RegExp(`Rim depth here.*${waist.depthMm.toFixed(1)}`) })
    const box = figure.closest<HTMLElement>('.big-figure')!
    expect(within(box).getByText(MARK)).toBeTruthy()
    expect(within(box).getByText(`planned ${before.depthMm.toFixed(1)} mm`)).toBeTruthy()
  })

  it('says under the field what was built, and what the plan has', () => {
    show(<SidesSheet />, [reading('sides.thicknessMm', 2.31)])
    const line = screen.getByText(/^Built: 2\.31 mm, from your reading of 12 Mar 2027\. The plan says 2\.\d+ mm\./)
    expect(line).toBeTruthy()
    expect(screen.getAllByText(/^Built: /)).toHaveLength(1)
  })

  it('marks the heads of columns that moved, and the cells tell what was planned', () => {
    show(<SidesSheet />, [deeper])
    const table = screen.getByRole('table', { name: 'Stations round the rim' })
    const [depth] = within(table).getAllByRole('columnheader', { name: /depth/i })
    expect(within(depth!).getByText(MARK)).toBeTruthy()
    const along = within(table).getByRole('columnheader', { name: /Round the outside/ })
    expect(within(along).queryByText(MARK)).toBeNull()
    expect(table.querySelectorAll('td[title^="planned"]').length).toBeGreaterThan(30)
  })

  it('has no mark at all where nothing was measured, or what was measured is as planned', () => {
    const bare = show(<SidesSheet />, [])
    expect(screen.queryByText(MARK)).toBeNull()
    bare.unmount()
    show(<SidesSheet />, [reading('sides.thicknessMm', plan.rim.sideThicknessMm)])
    expect(screen.queryByText(MARK)).toBeNull()
  })
})

it('a ring that was read is told under its own radius alone', () => {
  const [first, second] = ringsInOrder(plan.rosette)
  show(<RosetteSheet />, [
    reading('rosette.rings[].outerRadiusMm', first!.ring.outerRadiusMm + 0.3, { entry: first!.id }),
  ])
  expect(second).toBeDefined()
  expect(screen.getAllByText(/^Built: /)).toHaveLength(1)
  expect(
    screen
      .getByText(/^Built: /)
      .closest('.piece-values')
      ?.querySelector('input')
      ?.closest('.piece-values'),
  ).toBe(screen.getByRole('textbox', { name: 'Outer radius 1' }).closest('.piece-values'))
})

describe('a list of numbers', () => {
  it('has what was planned beside the value, and in the help row by row', async () => {
    show(<NumberList keys={['sides.thicknessMm', 'plates.topMm']} />, [reading('sides.thicknessMm', 2.31)])
    const name = screen.getByRole('button', { name: 'Side thickness' })
    const row = name.closest('tr')!
    expect(within(row).getByText(MARK)).toBeTruthy()
    expect(row.textContent).toContain(`planned ${String(plan.rim.sideThicknessMm)} mm`)
    await userEvent.click(name)
    const help = screen.getByRole('dialog')
    expect(within(help).getByRole('cell', { name: '2.31 mm' })).toBeTruthy()
  })
})

describe('a table that is taken away', () => {
  const columns = [
    { heading: 'Station', quantity: null },
    { heading: 'Depth', quantity: 'bodyLength' as const, planned: [100, 98] },
    { heading: 'Along', quantity: 'bodyLength' as const, planned: [0, 10] },
  ]
  it('has a column of what was planned only after what moved', () => {
    const rows = [
      ['0', 101.5, 0],
      ['1', 98.01, 10],
    ]
    const text = tableText({ columns, rows }, STARTING_UNITS)
    expect(text.columns.map(({ heading }) => heading)).toEqual(['Station', 'Depth', 'Depth, planned', 'Along'])
    expect(text.rows.map((row) => row.slice(1, 3))).toEqual([
      ['101.5', '100.0'],
      ['98.0', '98.0'],
    ])
  })
  it('has none where all is as planned', () => {
    const text = tableText(
      {
        columns,
        rows: [
          ['0', 100.01, 0],
          ['1', 98, 10],
        ],
      },
      STARTING_UNITS,
    )
    expect(text.columns).toHaveLength(3)
  })
})

describe('what follows a reading', () => {
  const now = compute(withField(plan, 'rim.sideThicknessMm', 2.31)).numbers
  const before = { numbers: compute(plan).numbers, taken: [{ field: 'rim.sideThicknessMm' as const }] }
  it('is what hangs on the field and moved', () => {
    expect(plannedInPlaceOf('sides.thicknessMm', 0, now, before)).toBe(plan.rim.sideThicknessMm)
    expect(plannedInPlaceOf('rim[].alongBlankMm', 9, now, before)).toBe(
      readNumbers(before.numbers, 'rim[].alongBlankMm')[9],
    )
    // A station stands on the outer face, however thick the side is.
    expect(plannedInPlaceOf('rim[].alongOuterMm', 9, now, before)).toBeNull()
    // Along the blank the tail is the tail.
    expect(plannedInPlaceOf('rim[].alongBlankMm', 0, now, before)).toBeNull()
    expect(plannedInPlaceOf('sides.thicknessMm', 0, now, null)).toBeNull()
  })
})

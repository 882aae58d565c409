import { screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { beforeEach, describe, expect, it } from 'vitest'
import { measured } from '../../src/record/bench/measured.ts'
import type { CommissionDoc } from '../../src/record/commission.ts'
import type { StageKey } from '../../src/record/patterns/stages.ts'
import { ReadingsView } from '../../src/views/readings/ReadingsView.tsx'
import { TypeInView } from '../../src/views/typeIn/TypeInView.tsx'
import { type Bench, openDemoBench, showView } from './workbench.tsx'

let bench: Bench
let id = ''
const docOf = (): CommissionDoc => bench.commission.store.getState().record!.doc
const readings = () => measured(bench.commission.store.getState().facts)
const stageId = (key: StageKey): string => Object.entries(docOf().stages).find(([, stage]) => stage.key === key)![0]
beforeEach(async () => {
  bench = await openDemoBench()
  id = bench.list.store.getState().heads.find(({ number }) => number === '26-07')!.id
  await bench.commission.open(id)
})

/** The sheet of the stage at which the sides are thicknessed: one box. */
async function typeIn(user: ReturnType<typeof userEvent.setup>, key: StageKey) {
  const shown = showView(bench, <TypeInView />)
  await user.selectOptions(screen.getByRole('combobox', { name: 'Stage' }), stageId(key))
  return shown
}

describe('typing a sheet in', () => {
  it('keeps what is typed, says how it stands, and stores it with gauge and stage', async () => {
    const user = userEvent.setup()
    const first = await typeIn(user, 'thicknessSides')
    const asked = docOf().plan.rim.sideThicknessMm
    await user.type(screen.getByRole('textbox', { name: 'Side thickness' }), String(asked + 0.3))
    expect(screen.getByText('0.3 mm over')).toBeVisible()
    await user.type(screen.getByRole('textbox', { name: /^Read with/ }), 'thickness caliper')
    first.unmount()
    await typeIn(user, 'thicknessSides')
    expect(screen.getByRole('textbox', { name: 'Side thickness' })).toHaveValue(String(asked + 0.3))
    await user.click(screen.getByRole('button', { name: 'Store 1 reading' }))
    expect(screen.getByRole('textbox', { name: 'Side thickness' })).toHaveValue('')
    expect(readings()).toMatchObject([
      {
        number: 'sides.thicknessMm',
        value: asked + 0.3,
        gauge: 'thickness caliper',
        stageId: stageId('thicknessSides'),
        planned: asked,
      },
    ])
    expect(bench.commission.store.getState().computed!.numbers.sides.thicknessMm).toBeCloseTo(asked + 0.3, 9)
    expect(screen.getByText(/^read /)).toBeVisible()
  })

  it('goes on with Enter from box to box, and leaves what it cannot read where it is', async () => {
    const user = userEvent.setup()
    await typeIn(user, 'closeBox')
    const [tail, neck] = screen.getAllByRole('textbox').slice(0, 2)
    await user.type(tail!, 'deep{Enter}')
    expect(neck).toHaveFocus()
    await user.keyboard('95.5')
    await user.click(screen.getByRole('button', { name: 'Store 1 reading' }))
    expect(screen.getByText(/1 box cannot be read/)).toBeVisible()
    expect(tail).toHaveValue('deep')
    expect(
      screen.getByText(/^Body depth at the tail, with plates: “deep” makes no sense here\. Write it like /),
    ).toBeVisible()
    expect(readings()).toHaveLength(1)
  })
})

describe('the page of readings', () => {
  const read = (number: 'sides.thicknessMm' | 'rim[].topBevelRad', value: number, planned: number) =>
    bench.commission.addReading({
      stageId: null,
      number,
      row: 0,
      side: 'whole',
      value,
      alongMm: null,
      entry: null,
      typed: String(value),
      gauge: '',
      planned,
      replaces: null,
    })

  it('teaches while nothing was measured', () => {
    showView(bench, <ReadingsView />)
    expect(screen.getByText('Nothing has been measured yet.')).toBeVisible()
    expect(screen.getByRole('link', { name: 'Type a sheet in' })).toHaveAttribute('href', `/i/${id}/typeIn`)
  })

  it('turns a reading off and on, mends it under the first, takes it back; undo brings it again', async () => {
    const user = userEvent.setup()
    const planned = docOf().plan.rim.sideThicknessMm
    read('sides.thicknessMm', 2.31, planned)
    showView(bench, <ReadingsView />)
    const thickness = () => bench.commission.store.getState().computed!.numbers.sides.thicknessMm
    expect(screen.getByText('Takes the place of the plan’s side thickness.')).toBeVisible()
    await user.click(screen.getByRole('checkbox', { name: 'Side thickness: counts' }))
    expect(thickness()).toBe(planned)
    expect(screen.getByText('Turned off: side thickness stays as planned.')).toBeVisible()
    await user.click(screen.getByRole('checkbox', { name: 'Side thickness: counts' }))
    expect(thickness()).toBe(2.31)

    await user.click(screen.getByRole('button', { name: 'Correct Side thickness' }))
    await user.keyboard('2.13{Enter}')
    expect(thickness()).toBe(2.13)
    const rows = screen.getAllByRole('article')
    expect(rows).toHaveLength(2)
    expect(within(rows[0]!).getByText('Read again since.')).toBeVisible()
    expect(within(rows[1]!).getByText('Corrected to')).toBeVisible()

    await user.click(within(rows[1]!).getByRole('button', { name: 'Withdraw Side thickness' }))
    expect(thickness()).toBe(2.31)
    bench.commission.undo()
    await waitFor(() => expect(thickness()).toBe(2.13))
  })

  it('says of what no field can hold why it is not used, and has no switch for what is only on record', () => {
    read('sides.thicknessMm', 60, 2.2)
    read('rim[].topBevelRad', 0.02, 0.021)
    showView(bench, <ReadingsView />)
    expect(screen.getByText(/^Not used: side thickness cannot come out like that\. It may be /)).toBeVisible()
    expect(screen.getByText(/^For the record/)).toBeVisible()
    expect(screen.getAllByRole('checkbox')).toHaveLength(1)
  })
})

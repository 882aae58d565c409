import { render, screen, within } from '@testing-library/react'
import { userEvent } from '@testing-library/user-event'
import axe from 'axe-core'
import { expect, test, vi } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import type { CommissionDoc, ShopDoc } from '../../src/record/commission.ts'
import { startingStages } from '../../src/record/patterns/stages.ts'
import { STARTING_SHOP } from '../../src/state/shopStore.ts'
import { StageSheetView } from '../../src/views/StageSheetView.tsx'
import { SMALL } from '../papers/samplePlans.ts'

const keys = startingStages('small')
const stages = keys.map((key, i) => ({ id: `stage-${i}`, key }))
const doc: CommissionDoc = {
  number: '0415',
  title: 'Small body',
  family: 'small',
  archivedOn: null,
  demo: false,
  brief: { client: '', contact: '', wishes: '', orderedOn: null, promisedOn: null, notes: '' },
  plan: SMALL as CommissionDoc['plan'],
  tolerances: {},
  stages: {},
  modelAsTaken: null,
}
const shop: ShopDoc = { ...STARTING_SHOP, name: 'Alder Lane' }

function open(firstChosen: readonly string[] = stages.map(({ id }) => id)) {
  const onPrint = vi.fn<() => void>()
  render(
    <main>
      <StageSheetView
        doc={doc}
        computed={compute(SMALL)}
        shop={shop}
        revisionCode="7QK4ZD"
        dateIso="2027-03-12"
        stages={stages}
        doneStages={new Set(['stage-0', 'stage-1'])}
        onPrint={onPrint}
        firstChosen={firstChosen}
      />
    </main>,
  )
  const pages = () => screen.queryAllByRole('region', { name: /^Page / })
  return { onPrint, pages, user: userEvent.setup() }
}

test('starts with every stage on the shop’s paper, and prints', async () => {
  const { onPrint, pages, user } = open()
  expect(screen.getByRole('status')).toHaveTextContent(`${stages.length} stages on ${pages().length} pages`)
  expect(screen.getByRole('radio', { name: 'A4' })).toBeChecked()
  await user.click(screen.getByRole('button', { name: 'Print' }))
  expect(onPrint).toHaveBeenCalledOnce()
})

test('one stage alone, by keyboard, on the other paper', async () => {
  const { pages, user } = open()
  await user.click(screen.getByRole('button', { name: 'None' }))
  expect(pages()).toHaveLength(0)
  expect(screen.getByRole('button', { name: 'Print' })).toBeDisabled()
  screen.getByRole('checkbox', { name: /Bend both sides/ }).focus()
  await user.keyboard(' ')
  expect(within(pages()[0]!).getByText('Bend both sides')).toBeInTheDocument()
  await user.click(screen.getByRole('radio', { name: 'Letter' }))
  expect(pages()[0]).toHaveAttribute('data-size', 'Letter')
})

test('those not done yet', async () => {
  const { user } = open()
  await user.click(screen.getByRole('button', { name: 'Not done yet' }))
  expect(screen.getByRole('checkbox', { name: /Choose the wood/ })).not.toBeChecked()
  expect(screen.getByRole('status')).toHaveTextContent(`${stages.length - 2} stages`)
})

test('axe finds nothing', async () => {
  open(['stage-3', 'stage-5'])
  const { violations } = await axe.run(document.body, { rules: { 'color-contrast': { enabled: false } } })
  expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([])
})

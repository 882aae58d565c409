import { act, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { stagesDone } from '../../src/record/facts.ts'
import { inOrder } from '../../src/record/order.ts'
import { ShopView } from '../../src/views/ShopView.tsx'
import { StagesView } from '../../src/views/StagesView.tsx'
import { type Bench, openDemoBench, showView } from './workbench.tsx'

let bench: Bench
beforeEach(async () => {
  bench = await openDemoBench()
  const { id } = bench.list.store.getState().heads.find((head) => head.number === '26-07')!
  await bench.commission.open(id)
})
afterEach(() => bench.stop())

const docOf = () => bench.commission.store.getState().record!.doc
const factsOf = () => bench.commission.store.getState().facts
const titles = (): string[] => [...document.querySelectorAll('.order-name')].map((one) => one.textContent ?? '')

async function openStage(title: RegExp) {
  const user = userEvent.setup()
  showView(bench, <StagesView />)
  const head = await screen.findByRole('button', { name: title, expanded: false })
  await user.click(head)
  const panel = within(head.closest('li')!)
  await panel.findByRole('heading', { name: 'What it is' })
  return { user, panel }
}

describe('the place of stages', () => {
  it('lists the order with hours, waits, and what is held; one that stands before what it needs says so', async () => {
    const { user, panel } = await openStage(/^12\s*Glue the linings/u)
    expect(
      screen.getByRole('button', { name: /^7\s*Trim the ends.*mould until 25 Close the box.*done 28 Oct 2026/u }),
    ).toBeVisible()
    const before = titles()
    await user.selectOptions(panel.getByRole('combobox', { name: 'Move before' }), '9 Glue the blocks')
    expect(titles().indexOf('Glue the linings')).toBe(before.indexOf('Glue the blocks'))
    expect(panel.getByText(/^Comes before “.*Bring the bare rim to its depths.*”, which it needs\.$/u)).toBeVisible()
  })

  it('does not let stages wait for each other, and says which', async () => {
    const { user, panel } = await openStage(/Bring the bare rim/u)
    await user.selectOptions(panel.getByRole('combobox', { name: 'Move before' }), 'the end of the order')
    await user.click(panel.getByText('Must come after'))
    const before = docOf()
    await user.click(panel.getByRole('checkbox', { name: /Glue the linings/u }))
    expect(panel.getByRole('alert')).toHaveTextContent(
      /wait for each other: .*“Glue the linings”.*nothing was changed/u,
    )
    expect(docOf()).toBe(before)
  })

  it('takes a title, hours and flags of its own, and gives them back to the pattern', async () => {
    const { user, panel } = await openStage(/Glue the linings/u)
    const id = inOrder(docOf().stages).find(([, { key }]) => key === 'glueLinings')![0]
    await user.clear(panel.getByRole('textbox', { name: 'Called' }))
    await user.type(panel.getByRole('textbox', { name: 'Called' }), 'Linings, both')
    await user.clear(panel.getAllByRole('textbox', { name: 'as a rule' })[0]!)
    await user.type(panel.getAllByRole('textbox', { name: 'as a rule' })[0]!, '90 min')
    await user.click(panel.getByRole('checkbox', { name: /^In one sitting/u }))
    expect(docOf().stages[id]!.own).toMatchObject({ title: 'Linings, both', handsH: { likely: 1.5 } })
    expect(titles()).toContain('Linings, both')
    await user.click(panel.getByRole('button', { name: 'As the pattern' }))
    expect(docOf().stages[id]!.own).toBeUndefined()
    expect(titles()).toContain('Glue the linings')
  })

  it('runs and pauses the clock, is told hours, refuses none, and does a signed stage again with its reason', async () => {
    const { user, panel } = await openStage(/Brace or tape the sides/u)
    await user.click(panel.getByRole('button', { name: 'Start the clock' }))
    expect(screen.getByRole('button', { name: /Brace or tape the sides.*clock runs since/u })).toBeVisible()
    await user.click(panel.getByRole('button', { name: 'Pause the clock' }))
    await user.click(panel.getByRole('button', { name: 'Say hours' }))
    const hours = within(await screen.findByRole('dialog', { name: 'How long did it take?' }))
    await user.click(hours.getByRole('button', { name: 'Write it down' }))
    expect(hours.getByRole('alert')).toHaveTextContent(/^Hours may be/u)
    await user.type(hours.getByRole('textbox', { name: 'Hours' }), '4')
    await user.clear(hours.getByRole('textbox', { name: /^Shared by/u }))
    await user.type(hours.getByRole('textbox', { name: /^Shared by/u }), '2')
    await user.click(hours.getByRole('button', { name: 'Write it down' }))
    expect(panel.getByText(/2\sh as said, its share of 2$/u)).toBeVisible()
    await user.click(panel.getByRole('button', { name: 'Do it again' }))
    const again = within(await screen.findByRole('dialog', { name: 'Why is it done again?' }))
    await user.type(again.getByRole('textbox', { name: 'Reason' }), 'Came loose')
    await user.click(again.getByRole('button', { name: 'Do it again' }))
    expect(panel.getByText(/^signed off on/u)).toBeVisible()
    expect(panel.getByText(/^to be done again since .*: Came loose$/u)).toBeVisible()
    await user.click(panel.getByRole('button', { name: 'Done' }))
    expect(panel.getAllByText(/^signed off on/u)).toHaveLength(2)
  })

  it('takes another order and keeps what is signed off; what is left out comes back as it was', async () => {
    const { user } = await openStage(/Glue the linings/u)
    const signed = [...stagesDone(factsOf()).keys()]
    await user.click(screen.getByRole('button', { name: 'Use another order' }))
    const dialog = within(await screen.findByRole('dialog', { name: 'Which order?' }))
    await user.click(dialog.getByRole('radio', { name: 'The house’s, nylon string' }))
    expect(dialog.getByText(/go out: .*Cut the neck joint/u)).toBeVisible()
    await user.click(dialog.getByRole('button', { name: 'Take this order' }))
    for (const id of signed) expect(docOf().stages[id]).toBeDefined()
    expect(Object.values(docOf().stages).map(({ key }) => key)).toContain('slotSides')
    const left = inOrder(docOf().stages).find(([, { key }]) => key === 'joinBack')!
    const row = screen.getByRole('button', { name: /Join the back/u })
    await user.click(row)
    await user.click(await within(row.closest('li')!).findByRole('button', { name: 'Leave out' }))
    expect(docOf().stages[left[0]]).toBeUndefined()
    await user.click(screen.getByRole('button', { name: 'Bring “Join the back” back in' }))
    expect(docOf().stages[left[0]]?.key).toBe('joinBack')
  })

  it('is signed off for several, each with its own numbers', async () => {
    const { user, panel } = await openStage(/^15\s*Thickness the top/u)
    await user.click(panel.getByRole('button', { name: 'Do this for several' }))
    const dialog = within(await screen.findByRole('dialog', { name: 'For which instruments?' }))
    await user.click(await dialog.findByRole('checkbox', { name: /^26-09/u }))
    await user.click(dialog.getByRole('radio', { name: 'Sign it off' }))
    await user.click(dialog.getByRole('button', { name: 'Do it for 2' }))
    await waitFor(() => expect(screen.queryByRole('dialog')).toBeNull())
    const here = [...stagesDone(factsOf()).values()].at(-1)!
    const { id } = bench.list.store.getState().heads.find((head) => head.number === '26-09')!
    const other = await (await bench.openSharing()).read(id)
    if (!other.ok) throw new Error('not read')
    const there = [...stagesDone(other.value.facts).values()].at(-1)!
    expect(here.builtTo['plates.topMm']).toBe(docOf().plan.plates.topMm)
    expect(there.builtTo['plates.topMm']).toBe(other.value.row.doc.plan.plates.topMm)
  })
})

it('the shop lists the orders it has kept; one that is removed comes back', async () => {
  const { user } = await openStage(/Glue the linings/u)
  await user.click(screen.getByRole('button', { name: 'Keep this order' }))
  const dialog = within(await screen.findByRole('dialog', { name: 'What is this order called?' }))
  await user.click(dialog.getByRole('button', { name: 'Keep it' }))
  expect(dialog.getByRole('alert')).toHaveTextContent(/^Give it a name/u)
  await user.type(dialog.getByRole('textbox', { name: 'Name' }), 'Mine')
  await user.click(dialog.getByRole('button', { name: 'Keep it' }))
  act(() => document.body.replaceChildren())
  showView(bench, <ShopView saveEverything={async () => undefined} />)
  await user.click(screen.getByRole('button', { name: 'Remove the order “Mine”' }))
  expect(bench.shop.store.getState().shop.patterns).toEqual({})
  await user.click(screen.getByRole('button', { name: 'Undo' }))
  expect(screen.getByRole('button', { name: 'Remove the order “Mine”' })).toBeVisible()
  await user.type(screen.getByRole('textbox', { name: 'Name' }), ' own')
  expect(Object.values(bench.shop.store.getState().shop.patterns).map(({ name }) => name)).toEqual(['Mine own'])
})

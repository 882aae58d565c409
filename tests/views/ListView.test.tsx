import { screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, it } from 'vitest'
import { ListView } from '../../src/views/ListView.tsx'
import { openBench, openDemoBench, showView } from './workbench.tsx'

const rows = () => screen.queryAllByRole('listitem').filter((one) => one.classList.contains('ledger-row'))

describe('the list of instruments', () => {
  it('offers the demo once, lays it out, and removes it in one step that can be taken back', async () => {
    const user = userEvent.setup()
    showView(await openBench(), <ListView />)
    await user.click(await screen.findByRole('button', { name: 'Lay out the demo' }))
    await waitFor(() => expect(rows()).toHaveLength(3))
    await user.click(screen.getByRole('button', { name: 'Remove the demo' }))
    await waitFor(() => expect(rows()).toHaveLength(0))
    expect(screen.queryByRole('button', { name: 'Lay out the demo' })).toBeNull()
    await user.click(screen.getByRole('button', { name: 'Undo' }))
    await waitFor(() => expect(rows()).toHaveLength(3))
  })

  it('shows the earliest promise first, with the next stage in words', async () => {
    showView(await openDemoBench(), <ListView />)
    await waitFor(() => expect(rows()).toHaveLength(3))
    const first = within(rows()[0]!)
    expect(first.getByText('Ottoline Farrow')).toBeVisible()
    expect(first.getByText('Bring the bare rim to its depths')).toBeVisible()
    expect(first.getByText('10 of 46 stages done')).toBeVisible()
    expect(within(rows()[1]!).getByText('for stock')).toBeVisible()
  })

  it('finds by number, client or title', async () => {
    const user = userEvent.setup()
    showView(await openDemoBench(), <ListView />)
    await user.type(await screen.findByLabelText(/Find by number/u), 'tessaly')
    await waitFor(() => expect(rows()).toHaveLength(1))
    expect(within(rows()[0]!).getByText('26-10')).toBeVisible()
    await user.type(screen.getByLabelText(/Find by number/u), ' nobody')
    expect(screen.getByText('No instrument answers to that.')).toBeVisible()
  })

  it('deletes with undo, and puts away and takes out again', async () => {
    const user = userEvent.setup()
    showView(await openDemoBench(), <ListView />)
    await waitFor(() => expect(rows()).toHaveLength(3))
    const inRow = (name: string) => within(rows()[0]!).getByRole('button', { name, hidden: true })
    await user.click(inRow('Delete'))
    await waitFor(() => expect(rows()).toHaveLength(2))
    await user.click(screen.getByRole('button', { name: 'Undo' }))
    await waitFor(() => expect(rows()).toHaveLength(3))
    await user.click(inRow('Put away'))
    await waitFor(() => expect(rows()).toHaveLength(2))
    await user.click(screen.getByRole('button', { name: 'Show the one put away' }))
    await waitFor(() => expect(rows()).toHaveLength(3))
    await user.click(inRow('Take out again'))
    await waitFor(() => expect(screen.queryByRole('button', { name: 'Hide what is put away' })).toBeNull())
  })

  it('begins an instrument under the next number, from a model, and goes there', async () => {
    const user = userEvent.setup()
    const bench = await openDemoBench()
    const { history } = showView(bench, <ListView />)
    // The next number counts on from those that stand there.
    await screen.findByRole('link', { name: /^26-10/u })
    await user.click(await screen.findByRole('button', { name: 'New instrument' }))
    const dialog = within(await screen.findByRole('dialog'))
    expect(dialog.getByLabelText('Number')).toHaveValue('26-11')
    await user.click(await dialog.findByRole('radio', { name: /Pipit/u }))
    await user.clear(dialog.getByLabelText('Number'))
    await user.type(dialog.getByLabelText('Number'), '26-07')
    await user.click(dialog.getByRole('button', { name: 'Put it on the bench' }))
    expect(await dialog.findByRole('alert')).toHaveTextContent('26-07 is taken')
    await user.type(dialog.getByLabelText('Number'), 'b')
    await user.click(dialog.getByRole('button', { name: 'Put it on the bench' }))
    await waitFor(() => expect(history.at(-1)).toMatch(/^\/i\//u))
    const made = () => bench.list.store.getState().heads.find((head) => head.number === '26-07b')
    await waitFor(() => expect(made()?.family).toBe('small'))
  })

  it('teaches where there is nothing', async () => {
    const user = userEvent.setup()
    showView(await openBench(), <ListView />)
    await user.click(await screen.findByRole('button', { name: 'Start empty' }))
    expect(screen.getByRole('heading', { name: 'The bench is clear' })).toBeVisible()
    expect(screen.getByRole('button', { name: 'New instrument' })).toBeVisible()
  })
})

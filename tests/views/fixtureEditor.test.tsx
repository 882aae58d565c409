import { screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, it } from 'vitest'
import { addFixture } from '../../src/record/changes/fixtures.ts'
import { inOrder } from '../../src/record/order.ts'
import { FixtureEditor } from '../../src/views/shop/FixtureEditor.tsx'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { type Bench, openBench, showView } from './workbench.tsx'

const kept = (bench: Bench) => inOrder(bench.shop.store.getState().shop.fixtures).map(([, fixture]) => fixture)
const kind = (name: string) => within(screen.getByRole('region', { name }))

describe('the fixtures on the shop’s sheet', () => {
  it('are added, named, measured in the shop’s unit, moved and removed, with undo and redo', async () => {
    const user = userEvent.setup()
    const bench = await openBench()
    showView(bench, <FixtureEditor />)
    const boards = kind('Contour boards')
    expect(boards.getByText('No contour board yet.')).toBeVisible()
    await user.click(boards.getByRole('button', { name: 'Add a contour board' }))
    await user.click(boards.getByRole('button', { name: 'Add a contour board' }))
    await user.type(boards.getByLabelText('Name 2'), 'Oak board')
    await user.clear(boards.getByLabelText('Radius 2'))
    await user.type(boards.getByLabelText('Radius 2'), '16"')
    await user.tab()
    await waitFor(() => expect(kept(bench)[1]).toMatchObject({ name: 'Oak board', radiusMm: 406.4 }))
    await user.click(boards.getByRole('button', { name: 'Radius 1: flat' }))
    expect(kept(bench)[0]).toMatchObject({ radiusMm: 'flat' })

    await user.click(boards.getByRole('button', { name: 'Up: Oak board, Contour board 2' }))
    expect(kept(bench).map(({ name }) => name)).toEqual(['Oak board', ''])
    await user.click(boards.getByRole('button', { name: 'Down: Oak board, Contour board 1' }))
    expect(kept(bench).map(({ name }) => name)).toEqual(['', 'Oak board'])
    await user.click(boards.getByRole('button', { name: 'Remove: Oak board, Contour board 2' }))
    expect(kept(bench)).toHaveLength(1)
    await user.click(screen.getByRole('button', { name: 'Undo the last change of the fixtures' }))
    expect(kept(bench).map(({ name }) => name)).toEqual(['', 'Oak board'])
    await user.click(screen.getByRole('button', { name: 'Redo the last change of the fixtures' }))
    expect(kept(bench)).toHaveLength(1)
    await bench.flush()
  })

  it('take a dish by radius and width, refuse what cannot be, and move past their own kind only', async () => {
    const user = userEvent.setup()
    const bench = await openBench()
    const { outline } = STEEL_STRING.plan
    bench.shop.edit(addFixture(bench.newGesture(), { kind: 'dish', name: 'First', radiusMm: 4600, diameterMm: 610 }))
    bench.shop.edit(addFixture(bench.newGesture(), { kind: 'mould', name: 'Mould', outline }))
    bench.shop.edit(addFixture(bench.newGesture(), { kind: 'dish', name: 'Second', radiusMm: 8500, diameterMm: 610 }))
    showView(bench, <FixtureEditor />)
    const dishes = kind('Dishes')
    await user.clear(dishes.getByLabelText('Radius 1'))
    await user.type(dishes.getByLabelText('Radius 1'), '25 ft')
    expect(kept(bench)[0]).toMatchObject({ radiusMm: 7620 })
    await user.clear(dishes.getByLabelText('Across 1'))
    await user.type(dishes.getByLabelText('Across 1'), '20 mm')
    expect(dishes.getByLabelText('Across 1')).toBeInvalid()
    expect(kept(bench)[0]).toMatchObject({ diameterMm: 610 })
    await user.click(dishes.getByRole('button', { name: 'Up: Second, Dish 2' }))
    expect(kept(bench).map(({ name }) => name)).toEqual(['Second', 'First', 'Mould'])
    expect(kind('Moulds').queryByRole('button', { name: /Add/u })).toBeNull()
    await bench.flush()
  })

  it('leave the undo of other parts of the sheet alone', async () => {
    const bench = await openBench()
    bench.shop.change('name', 'Weir Lane Workshop', bench.newGesture())
    showView(bench, <FixtureEditor />)
    expect(screen.getByRole('button', { name: 'Undo the last change of the fixtures' })).toBeDisabled()
    await bench.flush()
  })
})

import { cleanup, render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, it } from 'vitest'
import type { Plan } from '../../src/core/plan.ts'
import { SidesSheet } from '../../src/views/sheets/SidesSheet.tsx'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { FakeBench, watchedBench } from './fakeBench.tsx'

const POINTED: Plan = {
  ...STEEL_STRING.plan,
  outline: {
    ...STEEL_STRING.plan.outline,
    cutaway: { form: 'pointed', leavesAtMm: 430, hornRadiusMm: 25, hollowRadiusMm: 70, meetsNeckAtMm: 32 },
  },
}
const show = (plan: Plan = STEEL_STRING.plan) => {
  const watched = watchedBench(plan)
  render(
    <FakeBench watched={watched}>
      <SidesSheet />
    </FakeBench>,
  )
  return watched
}
// By text and label: looking for roles through some thousand cells takes seconds.
const depthHere = () => screen.getByText('Rim depth here, without plates').closest('.big-figure')?.textContent
const press = (text: RegExp) => userEvent.click(screen.getByText(text))
const station = (row: number) => screen.getAllByText(String(row), { selector: 'button.row-choice' }).at(-1)!

describe('the sides sheet', () => {
  it('answers at the waist first, and at the place that is tapped in the table', async () => {
    show()
    expect(screen.getByText('Waist', { selector: 'strong' })).toBeInTheDocument()
    await userEvent.click(station(0))
    expect(depthHere()).toContain('106.0')
    expect(screen.getByText('Tail', { selector: 'strong' })).toBeInTheDocument()
    expect(station(0)).toHaveAttribute('aria-pressed', 'true')
  })

  it('answers at a typed distance, from the origin the maker prefers', async () => {
    show()
    await userEvent.click(screen.getAllByLabelText('Neck edge')[0]!)
    await userEvent.click(screen.getByLabelText('Along the centreline', { selector: '[type=radio]' }))
    const distance = screen.getByLabelText('Along the centreline, from the neck edge')
    await userEvent.clear(distance)
    await userEvent.type(distance, '496')
    expect(depthHere()).toContain('106.0')
    await userEvent.clear(distance)
    await userEvent.click(distance)
    await userEvent.paste('900')
    expect(distance).toHaveAttribute('aria-invalid', 'true')
    expect(depthHere()).toContain('106.0')
  })

  it('walks from station to station', async () => {
    show()
    await userEvent.click(station(3))
    await press(/Toward the neck/)
    expect(screen.getByText('Station 4', { selector: 'strong' })).toBeInTheDocument()
    await press(/Toward the tail/)
    await press(/Toward the tail/)
    expect(screen.getByText('Station 2', { selector: 'strong' })).toBeInTheDocument()
  })

  it('follows a typed depth at once', async () => {
    show()
    await userEvent.click(station(0))
    const depth = screen.getByLabelText('Rim depth at the tail')
    await userEvent.clear(depth)
    await userEvent.type(depth, '4 1/4"')
    expect(depthHere()).toContain('108.0')
  })

  it('gives the table away with units in the head and decimals in the cells', async () => {
    show()
    const user = userEvent.setup()
    await user.click(screen.getByText('Copy table'))
    const text = await navigator.clipboard.readText()
    const [head, first] = text.split('\n')
    expect(head).toContain('Rim depth, without plates (mm)')
    expect(head).toContain('Bevel of the back edge (deg)')
    expect(first?.split('\t').slice(0, 4)).toEqual(['Tail', '0.0', '0.0', '106.0'])
  })
})

const switchTo = (side: 'Bass side' | 'Treble side') =>
  userEvent.click(screen.getByLabelText(side, { selector: '[type=radio]' }))
const blanks = () =>
  screen
    .getAllByLabelText(/flat blank\. The/u, { selector: '[role=img]' })
    .map((drawing) => drawing.getAttribute('aria-label')?.split('.')[0])
const tableOf = (caption: string) => screen.getByLabelText(caption, { selector: '.table-scroll' })
const row = (table: HTMLElement, name: string) => within(table).getByText(name, { selector: 'button' }).closest('tr')!
const cells = (tr: HTMLElement) =>
  within(tr)
    .getAllByRole('cell')
    .map(({ textContent }) => textContent)

describe('sides that mirror each other', () => {
  it('are one side with one table; only the blank is turned', async () => {
    show()
    expect(screen.queryByText('Side', { selector: 'legend' })).not.toBeInTheDocument()
    expect(blanks()).toEqual(['Treble side, flat blank'])
    await switchTo('Bass side')
    expect(blanks()).toEqual(['Bass side, flat blank'])
    expect(tableOf('Named places')).toBeInTheDocument()
  })
})

describe('a treble side of its own', () => {
  const PLACES = 'Named places of a treble side of its own'
  const STATIONS = 'Stations of a treble side of its own'

  it('has both its blanks, and its own places with the horn among them', async () => {
    show(POINTED)
    expect(screen.getByText('Side', { selector: 'legend' })).toBeInTheDocument()
    expect(blanks()).toEqual(['Treble side, flat blank', 'Treble side from the horn on, flat blank'])
    await userEvent.click(within(tableOf(PLACES)).getByText('Horn'))
    expect(screen.getByText('Horn', { selector: 'strong' })).toBeInTheDocument()
    // A pointed horn stands where the cutaway leaves the bass half.
    expect(cells(row(tableOf(PLACES), 'Horn'))[1]).toBe('430.0')
    expect(depthHere()).toContain(cells(row(tableOf(PLACES), 'Horn'))[2])
  })

  it('tells the end of the one blank from the beginning of the next, though both stand at the horn', async () => {
    show(POINTED)
    const table = tableOf(STATIONS)
    const rows = within(table).getAllByRole('row').slice(1)
    const second = rows.findIndex((tr, i) => i > 0 && cells(tr)[0] === cells(rows[i - 1]!)[0])
    // Round the outside they are one place; along their blanks the second stands at its very beginning.
    expect(cells(rows[second]!)[5]).toBe('0.0')
    await userEvent.click(within(table).getByText(String(second)))
    expect(screen.getByText(`Station ${second}`, { selector: 'strong' })).toBeInTheDocument()
    expect(rows.filter((tr) => tr.dataset['chosen'] === 'true')).toEqual([rows[second]])
    await userEvent.click(within(table).getByText(String(second - 1)))
    expect(screen.getByText('Horn', { selector: 'strong' })).toBeInTheDocument()
  })

  it('leaves the bass side as it is without a cutaway, one blank and no horn', async () => {
    const plain = show()
    const depths = cells(row(tableOf('Named places'), 'Waist'))
    expect(plain.refused).toBe(0)
    cleanup()
    show(POINTED)
    await switchTo('Bass side')
    expect(blanks()).toEqual(['Bass side, flat blank'])
    expect(within(tableOf('Named places')).queryByText('Horn')).not.toBeInTheDocument()
    expect(cells(row(tableOf('Named places'), 'Waist'))).toEqual(depths)
  })
})

it('says how deep the bare side is first, as much deeper as the first dishing leaves', async () => {
  show()
  const waist = () => cells(row(tableOf('Named places'), 'Waist'))
  const leave = async (edge: 'top' | 'back', text: string) => {
    const field = screen.getByLabelText(`First dishing leaves, ${edge} edge`)
    await userEvent.clear(field)
    await userEvent.click(field)
    await userEvent.paste(text)
  }
  await leave('top', '0')
  await leave('back', '0')
  expect(waist()[4]).toBe(waist()[2])
  await leave('top', '2')
  await leave('back', '1')
  expect(Number(waist()[4]) - Number(waist()[2])).toBeCloseTo(3, 6)
  expect(screen.getByLabelText('On the flat blank, before bending')).toBeChecked()
})

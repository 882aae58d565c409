import { render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import type { Plan } from '../../src/core/plan.ts'
import { saveFile } from '../../src/device/saveFile.ts'
import { CuttingSheet } from '../../src/views/sheets/cutting/CuttingSheet.tsx'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { FakeBench, watchedBench } from './fakeBench.tsx'

vi.mock('../../src/device/saveFile.ts', () => ({ saveFile: vi.fn<typeof saveFile>() }))
beforeEach(() => vi.mocked(saveFile).mockClear())

/** An empty rack; allowances 10, 3 and 1 over, kerf 1.2, trim 10. */
const PLAN: Plan = { ...STEEL_STRING.plan, cutting: { ...STEEL_STRING.plan.cutting, planks: {} } }

/** One plank in it, for the bridge. */
const WITH_PLANK: Plan = {
  ...PLAN,
  cutting: {
    ...PLAN.cutting,
    planks: {
      '0c000000-0000-4000-8000-000000000001': {
        order: 'i',
        role: 'bridge',
        lengthMm: 200,
        widthMm: 60,
        thicknessMm: 14,
      },
    },
  },
}

const show = (plan: Plan = PLAN) => {
  const watched = watchedBench(plan)
  render(
    <FakeBench watched={watched}>
      <CuttingSheet />
    </FakeBench>,
  )
  return watched
}
const field = (name: string) => screen.getByLabelText(name, { selector: 'input' })
const press = (name: string | RegExp) => userEvent.click(screen.getByRole('button', { name }))
const retype = async (name: string, text: string) => {
  await userEvent.clear(field(name))
  await userEvent.type(field(name), text)
  await userEvent.tab()
}
const cellsOf = (row: HTMLElement): (string | null)[] =>
  within(row)
    .getAllByRole('cell')
    .map((cell) => cell.textContent)
/** The cells of one row of a table, by the name of the row. */
const rowIn = (table: string, row: string): (string | null)[] =>
  cellsOf(
    within(screen.getByRole('table', { name: table }))
      .getByRole('rowheader', { name: row })
      .closest('tr')!,
  )

describe('the cut list', () => {
  it('gives every part finished and rough', () => {
    show()
    // Plate under the bridge, 180 by 228 less 168 by 2.4, and the allowances on it.
    expect(rowIn('Bridge plate, 1/4 (6.35 mm)', 'Bridge plate')).toEqual([
      '1',
      '180.0',
      '60.0',
      '2.4',
      '190.0',
      '63.0',
      '3.4',
      'along the length',
    ])
    // A plate gets its margin of 6 at each end, and at its one outer edge beside the 3 that are planed off the joint.
    const half = rowIn('Top: Spruce, 2/4 (12.7 mm)', 'Half of the top')
    expect([half[0], half[3], half[6]]).toEqual(['2', '2.8', '3.8'])
    expect(Number(half[4]) - Number(half[1])).toBeCloseTo(12, 9)
    expect(Number(half[5]) - Number(half[2])).toBeCloseTo(9, 9)
    expect(screen.getByText('Half of the top: opened like a book, from neighbouring slices.')).toBeInTheDocument()
  })

  it('says what to buy at the least, and follows the allowances', async () => {
    show()
    // 1.2 of kerf along and across: 191.2 by 64.2 by 6.35 are 77 947 mm³; over 2 359 737 mm³ a board foot: 0.033, and up.
    const group = screen.getAllByRole('region', { name: 'Bridge plate, 1/4 (6.35 mm)' })[0]!
    expect(within(group).getByText('To buy at the least: 0.08 l, or 0.1 board feet.')).toBeInTheDocument()
    // 180 by 60 by 2.4 is 25 920 mm³; 190 by 63 by 3.4 is 40 698 mm³, with the saw less than a twentieth of a board foot (2 359 737 mm³).
    expect(within(group).getByText(/In the instrument 0\.03 l\. Rough pieces 0\.04 l/)).toBeInTheDocument()
    expect(rowIn('To buy', 'Bridge plate')).toEqual(['–', '1/4', '6.35', '0.08', 'off-cut'])
    await retype('Pieces longer by', '100')
    expect(rowIn('Bridge plate, 1/4 (6.35 mm)', 'Bridge plate')[4]).toBe('280.0')
    // 281.2 by 64.2 by 6.35.
    expect(rowIn('To buy', 'Bridge plate')[3]).toBe('0.11')
  })

  it('names the wood the maker chose', async () => {
    const watched = show()
    await retype('Bridge', 'Plum')
    expect(watched.record.doc.plan.cutting.woods.bridge).toBe('Plum')
    expect(screen.getByRole('heading', { name: 'Bridge: Plum, 2/4 (12.7 mm)' })).toBeInTheDocument()
    expect(rowIn('To buy', 'Bridge').slice(0, 3)).toEqual(['Plum', '2/4', '12.70'])
    await userEvent.click(field('Small parts'))
    await userEvent.paste('x'.repeat(81))
    expect(watched.record.doc.plan.cutting.woods.fittings).toBe('')
    expect(field('Small parts')).toBeInvalid()
  })

  it('goes into a file whole, with the board each part comes from', async () => {
    show()
    const [buying, list] = screen.getAllByRole('button', { name: 'Save as CSV' })
    await userEvent.click(list!)
    const [name, text] = vi.mocked(saveFile).mock.calls[0]!
    expect(name).toBe('27-01-cut-list.csv')
    const lines = String(text).replace('\uFEFF', '').trim().split('\r\n')
    expect(lines[0]).toMatch(/^For,Wood,Board,Board thickness \(?mm\)?,Part,How many,Finished length/)
    expect(lines).toContain('Bridge plate,–,1/4,6.35,Bridge plate,1,180.0,60.0,2.4,190.0,63.0,3.4,along the length')
    expect(lines.some((line) => line.startsWith('Top,Spruce,2/4,12.7,Half of the top,2,'))).toBe(true)
    await userEvent.click(buying!)
    const [buyingName, buyingText] = vi.mocked(saveFile).mock.calls[1]!
    expect(buyingName).toBe('27-01-buying-list.csv')
    expect(buyingText).toContain('Bridge plate,–,1/4,6.35,0.08,off-cut')
  })

  it('is printed by a press, under the name of its instrument', async () => {
    const print = vi.spyOn(window, 'print').mockImplementation(() => {})
    show()
    await press('Print the cut list')
    expect(print).toHaveBeenCalledTimes(1)
    expect(screen.getByText('27-01 · Test').closest('.cut-list')).toContainElement(
      screen.getByRole('table', { name: 'To buy' }),
    )
    print.mockRestore()
  })
})

describe('planks in hand', () => {
  it('are added, each as large as the one before, changed, and taken away', async () => {
    const watched = show()
    const planks = () => Object.values(watched.record.doc.plan.cutting.planks)
    expect(screen.getByText(/No planks yet/)).toBeInTheDocument()
    expect(screen.getByText(/Add a plank under “Planks in hand”/)).toBeInTheDocument()
    await press('Add a plank')
    await userEvent.selectOptions(screen.getByLabelText('Wood for 1'), 'Bridge')
    await retype('Length 1', '200')
    await retype('Width 1', '60')
    await retype('Thickness 1', '14')
    expect(planks()).toMatchObject([{ role: 'bridge', lengthMm: 200, widthMm: 60, thicknessMm: 14 }])
    await press('Add a plank')
    expect(planks()[1]).toMatchObject({ role: 'bridge', lengthMm: 200, widthMm: 60, thicknessMm: 14 })
    await press('Remove: Plank 1')
    expect(planks()).toHaveLength(1)
    expect(screen.getByText(/^No plank for: Top, Back/)).not.toHaveTextContent('Bridge')
    expect(watched.refused).toBe(0)
  })

  it('take the parts of their wood, with the cuts that free them', async () => {
    show(WITH_PLANK)
    expect(screen.queryByRole('table', { name: 'Plank 1: pieces' })).not.toBeInTheDocument()
    await press('Lay it out: Bridge')
    // The bridge, 155 by 32, is sawn out at 165 by 35.
    expect(rowIn('Plank 1: pieces', '1').slice(0, 4)).toEqual(['Bridge', '1', '165.0', '35.0'])
    expect(screen.getByRole('img', { name: /^Plank\./ })).toBeInTheDocument()
    // From the corner inside a trim of 10: 10 + 165 along the plank, 10 + 35 across it.
    const cuts = within(screen.getByRole('table', { name: 'Plank 1: cuts in order' }))
      .getAllByRole('row')
      .slice(1)
      .map((row) => cellsOf(row).slice(0, 2).join(' '))
    expect(cuts.toSorted()).toEqual(['Crosscut 175.0', 'Rip 45.0'])
  })

  it('say why a part is on none of them, once it is laid out again', async () => {
    show(WITH_PLANK)
    await press('Lay it out: Bridge')
    expect(screen.queryByText(/have changed since/)).not.toBeInTheDocument()
    // 54 less a trim of 10 on either edge are 34: one too few.
    await retype('Width 1', '54')
    expect(screen.getByText(/Sizes or planks have changed since/)).toBeInTheDocument()
    expect(screen.queryByRole('table', { name: 'On no plank: Bridge' })).not.toBeInTheDocument()
    await press('Lay it out again: Bridge')
    expect(screen.queryByText(/have changed since/)).not.toBeInTheDocument()
    expect(rowIn('On no plank: Bridge', 'Bridge')).toEqual([
      '1',
      'Too wide: no board that is thick and long enough has that width. It takes a wider board.',
    ])
    expect(screen.getByText('Nothing lies on it.')).toBeInTheDocument()
  })

  it('stay laid out while another sheet of the instrument is looked at', async () => {
    const watched = watchedBench(WITH_PLANK)
    const sheet = (
      <FakeBench watched={watched}>
        <CuttingSheet />
      </FakeBench>
    )
    const { unmount } = render(sheet)
    await press('Lay it out: Bridge')
    const pieces = rowIn('Plank 1: pieces', '1')
    unmount()
    render(sheet)
    expect(rowIn('Plank 1: pieces', '1')).toEqual(pieces)
    // It goes on paper with the cut list: what is laid out is marked.
    expect(screen.getByRole('region', { name: 'Bridge' })).toHaveAttribute('data-laid', 'true')
  })

  it('are an older layout’s once a part changes its size', async () => {
    show(WITH_PLANK)
    await press('Lay it out: Bridge')
    await retype('Pieces wider by', '4')
    expect(screen.getByText(/Sizes or planks have changed since/)).toBeInTheDocument()
    await retype('Pieces wider by', '3')
    expect(screen.queryByText(/have changed since/)).not.toBeInTheDocument()
  })
})

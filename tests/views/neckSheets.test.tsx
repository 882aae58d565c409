import { render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, it } from 'vitest'
import type { ReactNode } from 'react'
import type { Plan } from '../../src/core/plan.ts'
import { BridgeSheet } from '../../src/views/sheets/neck/BridgeSheet.tsx'
import { FretsSheet } from '../../src/views/sheets/neck/FretsSheet.tsx'
import { NeckSetSheet } from '../../src/views/sheets/neck/NeckSetSheet.tsx'
import { NeckSheet } from '../../src/views/sheets/neck/NeckSheet.tsx'
import { StringsSheet } from '../../src/views/sheets/neck/StringsSheet.tsx'
import { SMALL, STEEL_STRING } from '../generators/demoModels.ts'
import { FakeBench, watchedBench } from './fakeBench.tsx'

const show = (sheet: ReactNode, plan: Plan = STEEL_STRING.plan) => {
  const watched = watchedBench(plan)
  render(<FakeBench watched={watched}>{sheet}</FakeBench>)
  return watched
}
const field = (name: string) => screen.getByLabelText(name, { selector: 'input' })
const press = (name: string | RegExp) => userEvent.click(screen.getByRole('button', { name }))
const retype = async (name: string, text: string) => {
  await userEvent.clear(field(name))
  await userEvent.type(field(name), text)
  await userEvent.tab()
}
/** A figure as large as an arm is long. */
const large = (name: string): string =>
  screen
    .getAllByRole('button', { name: new RegExp(`^${name}(?: \\(estimate\\))?$`) })
    .map((button) => button.closest('.big-figure')?.textContent)
    .find((text) => text !== undefined) ?? ''

describe('the frets sheet', () => {
  it('shows one fret at a time, to the hundredth, and steps along the board', async () => {
    show(<FretsSheet />)
    // Half of 645, then 645 (1 - 2^(-13/12)).
    expect(large('From the nut')).toContain('322.50')
    await press('Toward the body')
    expect(large('From the nut')).toContain((645 * (1 - 2 ** (-13 / 12))).toFixed(2))
    await press('Toward the nut')
    expect(screen.getByText('Fret 12', { selector: 'strong' })).toBeInTheDocument()
  })

  it('asks for the places on both edges where the frets are fanned', async () => {
    show(<FretsSheet />)
    expect(screen.queryByLabelText('Square fret')).not.toBeInTheDocument()
    await userEvent.click(screen.getByRole('radio', { name: 'Fanned' }))
    expect(field('Square fret')).toBeInTheDocument()
    expect(screen.getByRole('region', { name: /Fanned/ })).toBeInTheDocument()
    expect(large('Bass edge')).not.toBe(large('Treble edge').replace('Treble', 'Bass'))
  })

  it('marks and unmarks frets by a touch', async () => {
    const watched = show(<FretsSheet />)
    await press('Mark fret 19')
    await press('Mark fret 3')
    expect(watched.record.doc.plan.board.markersAt).toEqual([5, 7, 9, 12, 15, 17, 19])
    expect(watched.refused).toBe(0)
  })

  it('says when a slot would cut the board through', async () => {
    show(<FretsSheet />)
    await retype('Slot depth', '6.4')
    expect(screen.getByRole('article', { name: /slots cut the board through/ })).toBeInTheDocument()
  })
})

describe('the strings sheet', () => {
  it('takes a note as it is written, and what is none it asks for again', async () => {
    const watched = show(<StringsSheet />)
    await retype('Note 1', 'D2')
    expect(watched.record.doc.plan.strings.set[0]?.note).toBe(38)
    await retype('Note 1', 'H9')
    expect(screen.getByText(/Note 1 is no note: write it like E2/)).toBeInTheDocument()
    expect(watched.record.doc.plan.strings.set[0]?.note).toBe(38)
  })

  it('sums what the strings pull, and leaves out one whose mass is not known', async () => {
    const watched = show(<StringsSheet />)
    expect(large('Pull of all strings')).toContain('710')
    await userEvent.clear(field('Mass 1'))
    await userEvent.tab()
    expect(watched.record.doc.plan.strings.set[0]?.massGPerM).toBeNull()
    expect(screen.getByRole('article', { name: /mass of a wound string is not known/ })).toBeInTheDocument()
    expect(large('Pull of all strings')).toContain('597')
  })

  it('takes a usual set of twelve and spaces it in six courses', async () => {
    const watched = show(<StringsSheet />)
    await userEvent.click(screen.getByText('Take a usual set'))
    await press('Steel, twelve strings, light')
    expect(watched.record.doc.plan.strings.set).toHaveLength(12)
    expect(field('Gap in a pair')).toBeInTheDocument()
  })

  it('compares with another tuning and changes nothing that is built', async () => {
    const watched = show(<StringsSheet />)
    await press('One step down')
    // Two semitones down: the pull goes with the square of the frequency.
    expect(large('Other pull of all')).toContain((709.77 * 2 ** (-4 / 12)).toFixed(0))
    expect(large('Pull of all strings')).toContain('710')
    await press('As tuned')
    expect(watched.record.doc.plan.strings.otherNotes).toBeNull()
  })
})

describe('the neck set sheet', () => {
  it('follows what stands on the way, and offers the fall of the flat where it is entered', async () => {
    show(<NeckSetSheet />)
    expect(large('Neck angle, to build to')).toContain('1.31')
    expect(screen.queryByLabelText('Fall of the flat')).not.toBeInTheDocument()
    await retype('Bridge thickness', '9.5')
    expect(large('Frets’ plane over the top')).toContain('9.8')
    await userEvent.click(screen.getByRole('radio', { name: 'As entered' }))
    expect(field('Fall of the flat')).toBeInTheDocument()
  })

  it('says what half a millimetre of each does, and how much room is under the board at each fret', () => {
    show(<NeckSetSheet />)
    const changes = screen.getByRole('region', { name: 'What half a millimetre does' })
    expect(
      within(changes)
        .getAllByRole('rowheader')
        .map((cell) => cell.textContent),
    ).toEqual(['Saddle', 'Bridge', 'Board', 'Rise'])
    const gaps = screen.getByRole('region', { name: 'Room under the board' })
    expect(within(gaps).getByRole('rowheader', { name: 'Fret 14' })).toBeInTheDocument()
  })
})

describe('the bridge sheet', () => {
  it('gives the saddle from the real fret 12, entered or estimated', async () => {
    show(<BridgeSheet />)
    expect(large('Fret 12 to saddle, bass')).toContain((645 / 2 + 4.6).toFixed(2))
    await userEvent.click(screen.getByRole('radio', { name: 'Estimated from the strings' }))
    expect(screen.queryByLabelText('Compensation, bass')).not.toBeInTheDocument()
    expect(large('Fret 12 to saddle, bass')).not.toContain((645 / 2 + 4.6).toFixed(2))
  })
})

describe('the neck sheet', () => {
  it('adds and takes away bolts, and drops what a joint has no use for', async () => {
    const watched = show(<NeckSheet />)
    await press('Add a bolt')
    expect(watched.record.doc.plan.neck.boltsAtMm).toEqual([25, 65, 100])
    expect(screen.getByRole('article', { name: /bolt misses the heel/ })).toBeInTheDocument()
    await press('Take away: Bolt 3')
    await userEvent.click(screen.getByRole('radio', { name: 'Sides let into the heel' }))
    expect(screen.queryByLabelText('Tenon, width')).not.toBeInTheDocument()
    expect(screen.queryByLabelText('Bolt 1')).not.toBeInTheDocument()
  })

  it('shows no rod where there is none', () => {
    show(<NeckSheet />, SMALL.plan)
    expect(screen.queryByLabelText('Rod channel, depth')).not.toBeInTheDocument()
    expect(screen.queryByRole('button', { name: /^Wood behind the rod: / })).not.toBeInTheDocument()
  })
})

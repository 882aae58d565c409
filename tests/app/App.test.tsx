import { act, render, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, beforeAll, describe, expect, it, vi } from 'vitest'
import { App } from '../../src/app/App.tsx'
import { loadEngine } from '../../src/app/engine.ts'
import { FaultBoundary } from '../../src/app/Fault.tsx'
import { addressOf, ROUTES } from '../../src/app/routes.ts'
import { revisionCode } from '../../src/record/revisionCode.ts'
import { WorkshopProvider } from '../../src/views/workshop.ts'
import { type Bench, openDemoBench } from '../views/workbench.tsx'

beforeAll(loadEngine)
afterEach(() => {
  window.location.hash = ''
})

async function openApp(path: string): Promise<{ bench: Bench; id: string }> {
  const bench = await openDemoBench()
  const id = bench.list.store.getState().heads.find((head) => head.number === '26-07')?.id ?? ''
  window.location.hash = path.replace(':id', id)
  render(
    <WorkshopProvider value={bench}>
      <App />
    </WorkshopProvider>,
  )
  return { bench, id }
}

describe('the places of the app', () => {
  it.each(ROUTES)('$path answers “$title”', async (row) => {
    const { id } = await openApp(row.path)
    expect(await screen.findByRole('heading', { level: 1 }, { timeout: 8000 })).toBeInTheDocument()
    expect(document.title).toContain(row.title)
    // The bench has no register: it leads back to the instrument alone.
    if (row.view === 'bench') {
      expect(await screen.findByRole('link', { name: '26-07: overview' })).toHaveAttribute('href', `#/i/${id}`)
      return
    }
    const current = document.querySelector('[aria-current="page"]')
    expect(current?.textContent).toBe(row.name)
    expect(current?.getAttribute('href')).toBe(`#${addressOf(row, id)}`)
  })

  it('says so where there is no such sheet, and leads back', async () => {
    await openApp('/nowhere/at/all')
    expect(screen.getByRole('heading', { name: 'There is no such sheet.' })).toBeVisible()
    expect(screen.getByRole('link', { name: 'To the bench' })).toBeVisible()
  })

  it('says so where there is no such instrument', async () => {
    await openApp('/i/00000000-0000-4000-8000-00000000dead')
    expect(await screen.findByText(/no such instrument/u)).toBeVisible()
  })
})

describe('the register', () => {
  const textsOf = (nav: HTMLElement) =>
    within(nav)
      .getAllByRole('link')
      .map((link) => link.textContent)
  const FIRST_ROW = ['Bench', 'Next', 'Brief', 'Model', 'Body', 'Box', 'Neck', 'Numbers', 'Work', 'Paper']

  it('has one row where no part of the instrument is shown', async () => {
    await openApp('/i/:id/brief')
    expect(textsOf(await screen.findByRole('navigation', { name: 'Sheets of 26-07' }))).toEqual(FIRST_ROW)
    expect(screen.getAllByRole('navigation')).toHaveLength(1)
  })

  it.each([
    ['/i/:id/linings', 'Body', ['Outline', 'Sides', 'Domes', 'Blocks', 'Linings', 'Rosette'], 'Linings'],
    ['/i/:id/edges', 'Box', ['Bracing', 'Edges', 'Air', 'Cutting'], 'Edges'],
    ['/i/:id/strings', 'Neck', ['Frets', 'Strings', 'Neck set', 'Bridge', 'Neck cut'], 'Strings'],
  ])('shows the sheets of a part in a row of their own: %s', async (path, part, names, here) => {
    await openApp(path)
    const first = await screen.findByRole('navigation', { name: 'Sheets of 26-07' })
    const second = screen.getByRole('navigation', { name: `${part} of 26-07` })
    expect(textsOf(first)).toEqual(FIRST_ROW)
    expect(textsOf(second)).toEqual(names)
    expect(within(first).getByRole('link', { current: true })).toHaveTextContent(part)
    expect(within(second).getByRole('link', { current: 'page' })).toHaveTextContent(here)
  })

  it('turns by key to the first sheet of a part', async () => {
    const user = userEvent.setup()
    await openApp('/i/:id/brief')
    const first = await screen.findByRole('navigation', { name: 'Sheets of 26-07' })
    within(first).getByRole('link', { name: 'Neck' }).focus()
    await user.keyboard('{Enter}')
    const title = { level: 1, name: 'Where do the frets go?' }
    expect(await screen.findByRole('heading', title, { timeout: 8000 })).toBeVisible()
    expect(screen.getByRole('main')).toHaveFocus()
    const second = screen.getByRole('navigation', { name: 'Neck of 26-07' })
    expect(within(second).getByRole('link', { name: 'Frets' })).toHaveAttribute('aria-current', 'page')
  })
})

describe('the title block', () => {
  it('stands at the foot of an instrument, alive', async () => {
    const user = userEvent.setup()
    const { bench } = await openApp('/i/:id/brief')
    const block = within(await screen.findByRole('region', { name: 'Title block' }))
    expect(block.getByText('26-07')).toBeVisible()
    expect(block.getByText('saved')).toBeVisible()
    const first = block.getByRole('button', { name: /^Revision/u }).textContent
    act(() => void bench.commission.change('plan.rim.depthAtTailMm', 99, bench.newGesture()))
    const second = block.getByRole('button', { name: /^Revision/u }).textContent
    expect(second).not.toBe(first)
    expect(block.getByText('saving')).toBeVisible()
    await waitFor(() => expect(block.getByText('saved')).toBeVisible())

    const inches = screen.getAllByRole('radio', { name: 'inches, decimal', hidden: true })[0]!
    await user.click(inches)
    expect(block.getByRole('button', { name: /change the units/u })).toHaveTextContent('inches, decimal')
  })

  it('tells what has changed since a sheet was printed', async () => {
    const user = userEvent.setup()
    const { bench } = await openApp('/i/:id/brief')
    await screen.findByRole('region', { name: 'Title block' })
    const doc = () => bench.commission.store.getState().record!.doc
    const printed = revisionCode(doc())
    act(() => void bench.commission.change('plan.rim.depthAtTailMm', 99, bench.newGesture()))
    const panel = document.querySelectorAll<HTMLElement>('[popover]')[1]!
    const opening = Object.assign(new Event('toggle'), { newState: 'open', oldState: 'closed' })
    act(() => void panel.dispatchEvent(opening))
    await user.type(await within(panel).findByLabelText('Revision code on a printed sheet'), printed.toLowerCase())
    expect(within(panel).getByText('106.0 mm → 99.0 mm')).toBeInTheDocument()
    await user.click(within(panel).getByRole('button', { name: /^Undo/u, hidden: true }))
    expect(doc().plan.rim.depthAtTailMm).toBe(106)
    expect(within(panel).getByText(/Nothing has changed/u)).toBeInTheDocument()
  })

  it('undoes and redoes by key, but leaves the keys to a text that is being written', async () => {
    const user = userEvent.setup()
    const { bench } = await openApp('/i/:id/brief')
    await screen.findByRole('region', { name: 'Title block' })
    const depth = () => bench.commission.store.getState().record?.doc.plan.rim.depthAtTailMm
    act(() => void bench.commission.change('plan.rim.depthAtTailMm', 99, bench.newGesture()))
    const contact = () => bench.commission.store.getState().record?.doc.brief.contact
    const before = contact()
    await user.click(screen.getByLabelText('Contact'))
    await user.keyboard('{Control>}z{/Control}')
    expect(depth()).toBe(106)
    await user.keyboard('{Control>}{Shift>}z{/Shift}{/Control}')
    expect(depth()).toBe(99)
    await user.keyboard('{End}, by post')
    expect(contact()).toBe(`${before}, by post`)
    await user.keyboard('{Control>}z{/Control}')
    expect([contact(), depth()]).toEqual([`${before}, by post`, 99])
    await user.click(screen.getByRole('heading', { level: 1 }))
    await user.keyboard('{Control>}z{/Control}')
    expect([contact(), depth()]).toEqual([before, 99])
    await user.keyboard('{Control>}z{/Control}')
    expect(depth()).toBe(106)
    await user.keyboard('{Control>}{Shift>}z{/Shift}{/Control}')
    expect(depth()).toBe(99)
  })
})

describe('an unexpected fault', () => {
  it('shows one sentence and a way to save everything, never a blank page', () => {
    const quiet = vi.spyOn(console, 'error').mockImplementation(() => undefined)
    const Broken = (): never => {
      throw new Error('planted')
    }
    render(
      <FaultBoundary>
        <Broken />
      </FaultBoundary>,
    )
    expect(screen.getByRole('alert')).toHaveTextContent('Something went wrong')
    expect(screen.getByRole('button', { name: 'Save a copy of everything' })).toBeVisible()
    quiet.mockRestore()
  })
})

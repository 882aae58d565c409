import { act, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { beforeEach, describe, expect, it, vi } from 'vitest'
import { saveFile } from '../../src/device/saveFile.ts'
import type { PaperId } from '../../src/papers/paperId.ts'
import type { PaperPrint } from '../../src/record/printed.ts'
import { FullSizeView } from '../../src/views/fullSize/FullSizeView.tsx'
import { PackView } from '../../src/views/pack/PackView.tsx'
import {
  type Press,
  PressContext,
  type PressedFile,
  type PressForm,
  type PressProgress,
} from '../../src/views/press.ts'
import { type Bench, openDemoBench, showView } from './workbench.tsx'

vi.mock('../../src/device/saveFile.ts', () => ({ saveFile: vi.fn<typeof saveFile>() }))
beforeEach(() => vi.mocked(saveFile).mockClear())

/** A press that does nothing of itself: the test says when it is how far. */
function standIn() {
  const asked: { papers: readonly PaperId[]; form: PressForm; tell: (progress: PressProgress) => void }[] = []
  let deliver: (file: PressedFile | null) => void = () => undefined
  let fail: () => void = () => undefined
  let mark: (prints: readonly PaperPrint[]) => void = () => undefined
  const now = new Map<string, string>()
  const cancelled = vi.fn<() => void>()
  const press: Press = {
    make: (_order, papers, form, tell) => {
      asked.push({ papers, form, tell })
      const answer = new Promise<PressedFile | null>((resolve, reject) => {
        deliver = resolve
        fail = () => reject(new Error('none'))
      })
      const prints = new Promise<readonly PaperPrint[] | null>((resolve) => {
        mark = resolve
      })
      return {
        answer,
        prints,
        cancel: () => {
          cancelled()
          deliver(null)
        },
      }
    },
    marks: (_order, papers) => ({
      answer: Promise.resolve(papers.flatMap((paper) => (now.has(paper) ? [{ paper, print: now.get(paper)! }] : []))),
      cancel: () => undefined,
    }),
  }
  return {
    press,
    asked,
    cancelled,
    now,
    deliver: (name: string) => act(async () => deliver({ name, mime: 'application/pdf', bytes: new Uint8Array([1]) })),
    fail: () => act(async () => fail()),
    mark: (prints: readonly PaperPrint[]) => act(async () => mark(prints)),
  }
}

async function open(view: 'fullSize' | 'pack') {
  const bench: Bench = await openDemoBench()
  const id = bench.list.store.getState().heads.find(({ number }) => number === '26-07')!.id
  await bench.commission.open(id)
  const stand = standIn()
  const shown = showView(
    bench,
    <PressContext value={stand.press}>{view === 'pack' ? <PackView /> : <FullSizeView />}</PressContext>,
  )
  return { bench, ...stand, ...shown, user: userEvent.setup() }
}
const button = (name: string | RegExp) => screen.getByRole('button', { name })

describe('the sheet of templates', () => {
  it('draws the one in hand, says on how many sheets it goes, and lets it leave in four forms', async () => {
    const { user, asked, deliver } = await open('fullSize')
    const list = within(screen.getByRole('navigation', { name: 'Templates' }))
    await user.click(list.getByRole('button', { name: 'Bridge place gauge' }))
    expect(await screen.findByRole('heading', { name: 'Bridge place gauge' })).toBeVisible()
    expect(await screen.findByRole('img', { name: /^Bridge place gauge/u })).toBeVisible()
    expect(screen.getByText(/^(?:One sheet|\d+ sheets)$/u)).toBeVisible()
    for (const name of ['PDF at full size', 'SVG in mm', 'DXF, curves as splines', 'DXF, curves as short straights']) {
      await user.click(button(name))
      await deliver('gauge')
      expect(await screen.findByText('gauge is made.')).toBeVisible()
    }
    expect(asked.map(({ form }) => form)).toEqual(['pdf', 'svg', 'dxfSplines', 'dxfPolylines'])
    expect(new Set(asked.flatMap(({ papers }) => papers))).toEqual(new Set(['template:bridgeGauge:']))
    expect(saveFile).toHaveBeenCalledTimes(4)
  })

  it('asks for the gear of the shop where a form is sawn, and moves the line with it', async () => {
    const { user, bench } = await open('fullSize')
    expect(screen.queryByLabelText('Thickness of the slat')).toBeNull()
    await user.click(button('Bending form, bass side'))
    const slat = await screen.findByLabelText('Thickness of the slat')
    await user.clear(slat)
    await user.type(slat, '0.8')
    await user.tab()
    expect(bench.shop.store.getState().shop.jigs.slatMm).toBe(0.8)
    await user.clear(slat)
    await user.type(slat, '-1')
    await user.tab()
    expect(slat).toBeInvalid()
    expect(bench.shop.store.getState().shop.jigs.slatMm).toBe(0.8)
  })

  it('puts it on the sheets in the printer, and shows them', async () => {
    const { user, bench } = await open('fullSize')
    await user.click(button('Its sheets'))
    const pages = () => screen.getAllByRole('region', { name: /^Sheet \d+ of \d+$/u }).length
    const onA4 = pages()
    expect(onA4).toBeGreaterThan(1)
    await user.click(screen.getByRole('radio', { name: 'A0' }))
    expect(bench.shop.store.getState().shop.printing.sheet).toBe('A0')
    await waitFor(() => expect(pages()).toBe(1))
    expect(screen.getByText('One sheet')).toBeVisible()
  })
})

describe('the sheet of packs', () => {
  it('tells how far the papers are, and stops them', async () => {
    const { user, asked, cancelled } = await open('pack')
    await user.click(button('None'))
    expect(button('Make one PDF')).toBeDisabled()
    await user.click(screen.getByRole('checkbox', { name: 'Label' }))
    await user.click(screen.getByRole('checkbox', { name: 'Outline, whole' }))
    await user.click(button('Make one PDF'))
    expect(asked[0]!.papers).toEqual(['label', 'template:outlineWhole:'])
    expect(screen.getByText('Setting up')).toBeVisible()
    act(() => asked[0]!.tell({ done: 1, of: 2, paper: 'template:outlineWhole:' }))
    expect(screen.getByText('2 of 2: Outline, whole')).toBeVisible()
    expect(screen.getByRole('progressbar')).toHaveAttribute('value', '1')
    await user.click(button('Stop'))
    expect(cancelled).toHaveBeenCalledOnce()
    expect(await screen.findByText('Stopped. Nothing left.')).toBeVisible()
    expect(saveFile).not.toHaveBeenCalled()
  })

  it('says so where nothing could be made, and what is written down is untouched', async () => {
    const { user, bench, fail } = await open('pack')
    const facts = bench.commission.store.getState().facts
    await user.click(button('Make a zip'))
    await fail()
    expect(await screen.findByText(/could not be made/u)).toBeVisible()
    expect(bench.commission.store.getState().facts).toBe(facts)
  })

  it('keeps what left, and names what no longer shows what is so', async () => {
    const { user, bench, now, deliver, mark } = await open('pack')
    const { undo } = bench.commission.store.getState()
    expect(screen.getByText('Nothing has left for this instrument yet.')).toBeVisible()
    const [first, second] = Object.keys(bench.commission.store.getState().record!.doc.stages).map(
      (stage) => `stage:${stage}`,
    )
    now.set('specification', 'AAAAAA').set('drawings', 'BBBBBB').set(first!, 'DDDDDD').set(second!, 'EEEEEE')
    await user.click(button('Make one PDF'))
    await deliver('pack.pdf')
    await mark([
      { paper: 'specification', print: 'AAAAAA' },
      { paper: 'drawings', print: 'BBBBBB' },
      { paper: first!, print: 'DDDDDD' },
      { paper: second!, print: 'EEEEEE' },
    ])
    expect(await screen.findByText('Everything that left still holds.')).toBeVisible()
    expect(bench.commission.store.getState().undo).toEqual(undo)
    // Sheets of stages that hold share a row; one that does not has its own.
    expect(screen.getByRole('row', { name: /^Stage sheets, 2 stages/u })).toBeVisible()
    now.set('drawings', 'CCCCCC').set(second!, 'FFFFFF')
    act(() => void bench.commission.change('plan.rim.depthAtTailMm', 104, bench.newGesture()))
    expect(await screen.findByText(/^2 papers show what is no longer so/u)).toBeVisible()
    const row = screen.getByRole('row', { name: /^Shop drawings/u })
    expect(within(row).getByText('changed since')).toBeVisible()
    expect(screen.getByRole('row', { name: /^Stage sheet, 1 stage/u })).toBeVisible()
    expect(screen.getAllByRole('row', { name: /^Stage sheet: .* changed since$/u })).toHaveLength(1)
    await user.click(button('Only what no longer holds'))
    expect(screen.getByText('2 papers chosen')).toBeVisible()
  })
})

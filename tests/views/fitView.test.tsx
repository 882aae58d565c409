import { act, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { beforeEach, describe, expect, it } from 'vitest'
import { stagesDone } from '../../src/record/facts.ts'
import { inOrder } from '../../src/record/order.ts'
import type { StageKey } from '../../src/record/patterns/stages.ts'
import { numbersBuiltTo } from '../../src/views/builtTo.ts'
import { FitNotice } from '../../src/views/fit/FitNotice.tsx'
import { FitView } from '../../src/views/fit/FitView.tsx'
import { STEEL_BEGINNING } from '../record/fixture.ts'
import { type Bench, openBench, showView } from './workbench.tsx'

const KEYS: readonly StageKey[] = ['thicknessSides', 'bendSides', 'trueRim']
let bench: Bench
let id = ''
beforeEach(async () => {
  bench = await openBench()
  const made = await bench.list.create({ ...STEEL_BEGINNING, stages: KEYS })
  if (!made.ok) throw new Error('refused')
  id = made.value
  await bench.commission.open(id)
})

const state = () => bench.commission.store.getState()
const stageOf = (key: StageKey) => inOrder(state().record!.doc.stages).find(([, one]) => one.key === key)![0]
const sign = (key: StageKey) =>
  act(() => void bench.commission.markStageDone(stageOf(key), numbersBuiltTo(key, KEYS, state().computed!.numbers)))
const set = (field: string, value: unknown) =>
  act(() => void bench.commission.change(`plan.${field}`, value, bench.newGesture()))
const undo = () => act(() => void bench.commission.undo())
const text = (node: HTMLElement) => node.textContent?.replaceAll(/[\u2009\u00a0]/gu, ' ')
const rows = (region: HTMLElement) =>
  within(region)
    .getAllByRole('row')
    .slice(1)
    .map((row) => [...row.children].map((cell) => text(cell as HTMLElement)))

describe('what is already built and no longer fits', () => {
  it('says that all fits, or that nothing is built', () => {
    showView(bench, <FitView />)
    expect(screen.getByText(/No stage is signed off yet/u)).toBeVisible()
    sign('thicknessSides')
    expect(screen.getByText(/still fits what is asked/u)).toBeVisible()
  })

  it('is listed with what the wood has, what is asked, by how much it is off, and what is allowed', () => {
    sign('thicknessSides')
    set('rim.sideThicknessMm', 2.6)
    showView(bench, <FitView />)
    expect(screen.getAllByRole('heading', { level: 2 })).toHaveLength(1)
    expect(rows(screen.getByRole('table'))).toEqual([
      ['Side thickness', '2.2 mm kept', '2.6 mm', '−0.4 mm', '± 0.1 mm'],
    ])
    act(
      () =>
        void bench.commission.addReading({
          stageId: stageOf('thicknessSides'),
          number: 'sides.thicknessMm',
          row: 0,
          side: 'whole',
          value: 2.3,
          alongMm: null,
          entry: null,
          typed: '2.3',
          gauge: '',
          planned: 2.6,
          replaces: null,
        }),
    )
    set('rim.sideThicknessMm', 2.1)
    expect(rows(screen.getByRole('table'))[0]?.slice(1, 4)).toEqual(['2.3 mm read', '2.1 mm', '+0.2 mm'])
  })

  it('shows the worst of many rows first, the rest when asked', async () => {
    const user = userEvent.setup()
    sign('trueRim')
    set('rim.depthAtTailMm', 112)
    showView(bench, <FitView />)
    expect(rows(screen.getByRole('table'))).toHaveLength(8)
    await user.click(screen.getByRole('button', { name: /^Show \d+ more$/u }))
    expect(rows(screen.getByRole('table')).length).toBeGreaterThan(20)
    expect(screen.getByRole('rowheader', { name: /^Rim depth, without plates, station 1$/u })).toBeVisible()
  })

  it('is told on every sheet once the hand pauses, with the way there', async () => {
    sign('thicknessSides')
    sign('trueRim')
    showView(bench, <FitNotice id={id} />, `/i/${id}`)
    expect(screen.queryByRole('status')).toBeNull()
    set('rim.sideThicknessMm', 2.6)
    expect(await screen.findByText(/One thing already built no longer fits/u)).toBeVisible()
    expect(screen.getByRole('link', { name: 'See what' })).toHaveAttribute('href', `/i/${id}/fit`)
    undo()
    await waitFor(() => expect(screen.queryByRole('status')).toBeNull())
  })
})

describe('the three offers', () => {
  const offer = (name: string) => screen.getByRole('button', { name })
  beforeEach(() => {
    sign('thicknessSides')
    set('rim.sideThicknessMm', 2.6)
    set('rim.depthAtTailMm', 107)
    showView(bench, <FitView />)
  })
  const isListed = () => screen.queryByRole('table') !== null

  it('take the change back: names the fields with their values, and sets those', async () => {
    const user = userEvent.setup()
    const list = within(screen.getByRole('region', { name: /^What to do about/u })).getAllByRole('listitem')
    expect(list.map(text)).toEqual(['Side thickness from 2.6 mm back to 2.2 mm'])
    await user.click(offer('Take the change back'))
    expect(state().record!.doc.plan.rim).toMatchObject({ sideThicknessMm: 2.2, depthAtTailMm: 107 })
    expect(isListed()).toBe(false)
    undo()
    expect(state().record!.doc.plan.rim.sideThicknessMm).toBe(2.6)
    expect(isListed()).toBe(true)
  })

  it('keep the work as built: later numbers follow the wood', async () => {
    const user = userEvent.setup()
    await user.click(offer('Keep the work as built'))
    expect(isListed()).toBe(false)
    expect(state().record!.doc.plan.rim.sideThicknessMm).toBe(2.6)
    expect(state().computed!.numbers.sides.thicknessMm).toBe(2.2)
    undo()
    expect(state().computed!.numbers.sides.thicknessMm).toBe(2.6)
    expect(isListed()).toBe(true)
  })

  it('redo the stage: it is open again, with the reason on record', async () => {
    const user = userEvent.setup()
    await user.type(screen.getByRole('textbox', { name: /^Reason/u }), 'Client wants them thicker')
    await user.click(offer('Redo the stage'))
    expect(stagesDone(state().facts).size).toBe(0)
    expect(state().facts.at(-1)).toMatchObject({ kind: 'redo', reason: 'Client wants them thicker' })
    expect(isListed()).toBe(false)
    undo()
    expect(stagesDone(state().facts).size).toBe(1)
    expect(isListed()).toBe(true)
  })
})

import { act, fireEvent, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, it } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { type ReadingFact } from '../../src/record/bench/measured.ts'
import { inOrder } from '../../src/record/order.ts'
import type { StageKey } from '../../src/record/patterns/stages.ts'
import { BenchView } from '../../src/views/bench/BenchView.tsx'
import { layInHand } from '../../src/views/bench/benchMemory.ts'
import { type Bench, openDemoBench, showView } from './workbench.tsx'

async function atTheBench(number: string, key: StageKey): Promise<{ bench: Bench; stageId: string }> {
  const bench = await openDemoBench()
  const id = bench.list.store.getState().heads.find((head) => head.number === number)!.id
  await bench.commission.open(id)
  const stages = inOrder(bench.commission.store.getState().record!.doc.stages)
  const [stageId] = stages.find(([, stage]) => stage.key === key)!
  layInHand(id, stageId)
  showView(bench, <BenchView id={id} />)
  return { bench, stageId }
}
const state = (bench: Bench) => bench.commission.store.getState()
const readingsOf = (bench: Bench) => state(bench).facts.filter((one): one is ReadingFact => one.kind === 'reading')
const openPad = async (user: ReturnType<typeof userEvent.setup>) =>
  user.click(screen.getByRole('button', { name: /^Read / }))
const typeOnPad = async (user: ReturnType<typeof userEvent.setup>, keys: string) => {
  const pad = within(screen.getByRole('region', { name: 'Pad' }))
  for (const key of keys) await user.click(pad.getByRole('button', { name: key === '.' ? 'point' : key }))
}
const store = () => screen.getByRole('button', { name: /^Store / })
/** Keys as a caliper sends them: one after the other, to whatever has the focus. */
const caliper = (keys: readonly string[]) => {
  for (const key of keys) fireEvent.keyDown(document.activeElement ?? document.body, { key })
}
const cells = (row: string) => {
  const line = screen.getByRole('rowheader', { name: row }).closest('tr')!
  return within(line)
    .getAllByRole('cell')
    .map((cell) => cell.textContent.replaceAll('\u2009', ' '))
}

describe('reading a number at the bench', () => {
  it('goes from the number to its pad, and says how the reading stands; both sides for themselves', async () => {
    const user = userEvent.setup()
    const { bench, stageId } = await atTheBench('26-10', 'thicknessSides')
    const asked = state(bench).computed!.numbers.sides.thicknessMm
    const shown = (value: number) => `${value.toFixed(2).replace(/0$/u, '')} mm`
    expect(screen.getByRole('heading', { level: 1 })).toHaveTextContent('Thickness the sides')
    await openPad(user)
    await typeOnPad(user, (asked + 0.11).toFixed(2))
    await user.click(store())
    expect(readingsOf(bench)).toMatchObject([
      {
        number: 'sides.thicknessMm',
        side: 'bass',
        row: 0,
        stageId,
        planned: asked,
        replaces: null,
        gauge: 'thickness caliper',
      },
    ])
    expect(readingsOf(bench)[0]!.value).toBeCloseTo(asked + 0.11, 9)
    const strip = within(screen.getByRole('region', { name: 'Last reading' }))
    expect(strip.getByText(/0\.11 mm over/u)).toBeVisible()
    await waitFor(() => expect(strip.getByText('stored')).toBeVisible())
    expect(cells('Asked')).toEqual([shown(asked), shown(asked)])
    expect(cells('Read')).toEqual([`${(asked + 0.11).toFixed(2)} mm`, 'not read'])

    await user.click(screen.getByRole('button', { name: 'Treble' }))
    await typeOnPad(user, asked.toFixed(2))
    await user.click(store())
    expect(readingsOf(bench).at(-1)).toMatchObject({ side: 'treble' })
    expect(cells('Off by')[1]).toMatch(/^within/u)
    // Neither is held against itself, nor against the other half.
    expect(cells('Asked')).toEqual([shown(asked), shown(asked)])
    expect(state(bench).computed!.numbers.sides.thicknessMm).toBeCloseTo(asked + 0.055, 9)
  })

  it('says stored only when it is, and what becomes of a reading that could not be written', async () => {
    const { bench } = await atTheBench('26-10', 'thicknessSides')
    act(() => caliper([...'2.2', 'Enter']))
    const strip = within(screen.getByRole('region', { name: 'Last reading' }))
    expect(state(bench).save).toBe('saving')
    expect(strip.getByText('storing')).toBeVisible()
    await waitFor(() => expect(strip.getByText('stored')).toBeVisible())
    act(() => bench.commission.store.setState({ save: 'unsaved' }))
    expect(strip.queryByText('stored')).toBeNull()
    expect(strip.getByText(/^not stored yet/u)).toBeVisible()
    expect(strip.getByRole('button', { name: 'Try again' })).toBeVisible()
  })

  it('keeps the first reading when it is corrected', async () => {
    const user = userEvent.setup()
    const { bench } = await atTheBench('26-10', 'thicknessSides')
    await user.click(screen.getByRole('button', { name: /^Read / }))
    await user.click(screen.getByRole('button', { name: 'Bass' }))
    await typeOnPad(user, '2.6')
    await user.click(store())
    await typeOnPad(user, '2.2')
    await user.click(store())
    const [first, second] = readingsOf(bench)
    expect(second).toMatchObject({ value: 2.2, replaces: first!.id })
    expect(readingsOf(bench)).toHaveLength(2)
    expect(cells('Read')[0]).toBe('2.2 mm')
    await user.click(screen.getByRole('button', { name: /^Take back / }))
    expect(cells('Read')[0]).toBe('2.6 mm')
  })

  it('takes what a caliper types, with the pad closed, and goes on to the next box', async () => {
    const { bench } = await atTheBench('26-10', 'radiusRim')
    const { rim } = state(bench).computed!.numbers
    const user = userEvent.setup()
    for (;;) {
      if (screen.queryByRole('button', { name: /^Read .*station 0/iu }) !== null) break
      await user.click(screen.getByRole('button', { name: /Next number/u }))
    }
    for (const row of [0, 1, 2]) act(() => caliper([...(rim[row]!.firstDepthMm + 0.3 * row).toFixed(2), 'Enter']))
    expect(readingsOf(bench).map(({ number, row, side, alongMm }) => [number, row, side, alongMm])).toEqual(
      [0, 1, 2].map((row) => ['rim[].firstDepthMm', row, 'bass', rim[row]!.alongOuterMm]),
    )
    expect(screen.getByRole('region', { name: 'Pad' })).toBeVisible()
    expect(screen.getByRole('button', { name: /^Read .*Station 3/u })).toBeVisible()
    act(() => caliper(['9', '9', 'Escape']))
    expect(screen.getByText('Type what you read')).toBeVisible()
  })

  it('says in one sentence why a text is not taken, stores nothing and loses nothing', async () => {
    const { bench } = await atTheBench('26-10', 'thicknessSides')
    act(() => caliper([...'2..3', 'Enter']))
    expect(screen.getByRole('alert')).toHaveTextContent(/^Side thickness, \w+ side: “2\.\.3” makes no sense here/u)
    expect(screen.getByRole('alert')).toHaveTextContent('0.0 mm – 100.0 mm')
    expect(screen.getByRole('status', { name: 'Typed' })).toHaveTextContent('2..3')
    act(() => caliper(['Escape', ...'2310', 'Enter']))
    expect(screen.getByRole('alert')).toHaveTextContent(/2310\.0 mm is more than/u)
    expect(readingsOf(bench)).toEqual([])
    const user = userEvent.setup()
    await user.click(screen.getByRole('button', { name: 'Clear' }))
    await user.click(store())
    expect(screen.getByRole('alert')).toHaveTextContent(/type what you read, such as/u)
  })

  it('reads fractions of an inch with keys of their own, whatever the shop’s unit', async () => {
    const user = userEvent.setup()
    const { bench } = await atTheBench('26-10', 'trueRim')
    for (;;) {
      if (screen.queryByRole('button', { name: /^Read Rim depth at the tail/u }) !== null) break
      await user.click(screen.getByRole('button', { name: /Next number/u }))
    }
    await openPad(user)
    await user.click(screen.getByRole('button', { name: 'inch' }))
    await user.click(screen.getByRole('button', { name: '3' }))
    await user.click(screen.getByRole('button', { name: 'and a fraction' }))
    await user.click(screen.getByRole('button', { name: '7' }))
    await user.click(screen.getByRole('button', { name: 'over 8' }))
    await user.click(store())
    expect(readingsOf(bench)).toMatchObject([{ value: 98.425, typed: '3 7/8 in' }])
  })
})

describe('the stage in hand', () => {
  it('is signed off with the numbers it was built to, shows those from then on, and can be taken back', async () => {
    const user = userEvent.setup()
    const { bench, stageId } = await atTheBench('26-10', 'thicknessSides')
    const done = () => state(bench).facts.findLast((one) => one.kind === 'stageDone' && one.stageId === stageId)
    if (done() !== undefined) await user.click(screen.getByRole('button', { name: /^Take back the sign-off/u }))
    act(() => void bench.commission.change('plan.rim.sideThicknessMm', 2.3, bench.newGesture()))
    await user.click(screen.getByRole('button', { name: /^Sign off/u }))
    expect(done()).toMatchObject({ builtTo: { 'sides.thicknessMm': 2.3 } })
    act(() => void bench.commission.change('plan.rim.sideThicknessMm', 1.9, bench.newGesture()))
    expect(screen.getByRole('button', { name: /^Read Side thickness/u })).toHaveTextContent('2.3')
    await user.click(screen.getByRole('button', { name: /^Take back the sign-off/u }))
    expect(screen.getByRole('button', { name: /^Read Side thickness/u })).toHaveTextContent('1.9')
  })

  it('says where a number follows a reading of another', async () => {
    const user = userEvent.setup()
    const { bench } = await atTheBench('26-10', 'closeBox')
    const planned = state(bench).computed!.numbers.sides.bodyDepthAtTailMm
    const plate = state(bench).record!.doc.plan.plates
    act(
      () =>
        void bench.commission.addReading({
          number: 'plates.topMm',
          row: 0,
          side: 'whole',
          alongMm: null,
          entry: null,
          stageId: null,
          value: plate.topMm + 0.4,
          typed: '',
          gauge: '',
          planned: plate.topMm,
          replaces: null,
        }),
    )
    for (;;) {
      if (screen.queryByRole('heading', { level: 2, name: /at the tail/iu }) !== null) break
      await user.click(screen.getByRole('button', { name: /Next number/u }))
    }
    const withThickerTop = compute({
      ...state(bench).record!.doc.plan,
      plates: { ...plate, topMm: plate.topMm + 0.4 },
    }).numbers.sides.bodyDepthAtTailMm
    expect(cells('Asked')[0]).toBe(`${withThickerTop.toFixed(1)} mm`)
    expect(screen.getByText(new RegExp(`From your reading. Planned: ${planned.toFixed(1)} mm`, 'u'))).toBeVisible()
  })

  it('runs a clock of its own', async () => {
    const user = userEvent.setup()
    const { bench, stageId } = await atTheBench('26-10', 'deliver')
    await user.click(screen.getByRole('button', { name: 'Start the clock' }))
    expect(state(bench).facts.at(-1)).toMatchObject({ kind: 'clock', stageId, act: 'start', sharedBy: 1 })
    expect(screen.getByText('0:00 h')).toBeVisible()
    await user.click(screen.getByRole('button', { name: 'Pause the clock' }))
    expect(state(bench).facts.at(-1)).toMatchObject({ kind: 'clock', act: 'stop' })
  })

  it('asks for the gauge once a day and never waits for an answer', async () => {
    const user = userEvent.setup()
    const { bench } = await atTheBench('26-10', 'thicknessSides')
    await openPad(user)
    expect(screen.getByText('With which gauge?')).toBeVisible()
    await user.click(screen.getByRole('button', { name: 'Read with thickness caliper: change it' }))
    await user.type(screen.getByRole('textbox', { name: 'Another gauge, by name' }), 'Dial 3')
    await user.click(screen.getByRole('button', { name: 'Take it' }))
    expect(screen.queryByText('With which gauge?')).toBeNull()
    await typeOnPad(user, '2.2')
    await user.click(store())
    expect(readingsOf(bench)).toMatchObject([{ gauge: 'Dial 3' }])
    expect(bench.gauges.store.getState().known).toEqual(['Dial 3'])
  })
})

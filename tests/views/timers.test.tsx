import { act, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { SheetFrame } from '../../src/app/SheetFrame.tsx'
import { StartTimer } from '../../src/views/timers/StartTimer.tsx'
import { type Bench, openBench, openDemoBench, showView } from './workbench.tsx'

const benches: Bench[] = []
afterEach(() => {
  for (const bench of benches.splice(0)) bench.stop()
})
const kept = (bench: Bench): Bench => {
  benches.push(bench)
  return bench
}

const DOC = '0b000000-0000-4000-8000-000000000001'
const frame = (
  <SheetFrame windowTitle="Sheet" place="here" foot={null}>
    <h1>Sheet</h1>
  </SheetFrame>
)

/** A timer that has so many seconds left, or ran out so long ago. */
async function timerWith(bench: Bench, label: string, seconds: number, docId = DOC): Promise<void> {
  const timers = await bench.timers.open()
  const id = await timers.start({ docId, stageId: null, number: '26-07', label, seconds: Math.max(seconds, 1) })
  if (seconds > 0) return
  const moved = (moment: string): string => new Date(Date.parse(moment) + (seconds - 1) * 1000).toISOString()
  const { endsAt } = await vi.waitUntil(() => timers.store.getState().timers.find((timer) => timer.id === id))
  const past = moved(endsAt)
  // What is stored is told again a moment later: the row is moved until it stays.
  await vi.waitFor(async () => {
    const rows = timers.store.getState().timers.map((timer) => (timer.id === id ? { ...timer, endsAt: past } : timer))
    timers.store.setState({ timers: rows })
    await new Promise((settled) => setTimeout(settled, 150))
    expect(timers.store.getState().timers.find((timer) => timer.id === id)?.endsAt).toBe(past)
  })
}

describe('the strip of timers', () => {
  it('is not there while nothing is timed, and tells each by number, label and time left', async () => {
    const bench = kept(await openBench())
    showView(bench, frame)
    expect(screen.queryByRole('region', { name: 'Timers' })).toBeNull()
    await act(() => timerWith(bench, 'Finish', 3 * 3600))
    await act(() => timerWith(bench, 'Braces', 299))
    const strip = within(await screen.findByRole('region', { name: 'Timers' }))
    const names = strip.getAllByRole('button').map((one) => one.getAttribute('aria-label') ?? one.textContent)
    expect(names[0]).toMatch(/^26-07 Braces: 04:5\d left$/u)
    expect(names[1]).toMatch(/^26-07 Finish: 3\sh 0\smin left$/u)
    expect(names.at(-1)).toBe('Sound')
  })

  it('says ready in a word and by a filled mark, and since when', async () => {
    const bench = kept(await openBench())
    showView(bench, frame)
    await act(() => timerWith(bench, 'Braces', -40 * 60))
    const button = await screen.findByRole('button', { name: /^26-07 Braces: ready since 40\smin$/u })
    expect(button).toHaveAttribute('data-ready', 'true')
    expect(button).toHaveTextContent('ready')
  })

  it('shows three, and how many more', async () => {
    const bench = kept(await openBench())
    showView(bench, frame)
    for (const seconds of [100, 200, 300, 400, 500]) await act(() => timerWith(bench, `T${seconds}`, seconds))
    const strip = within(await screen.findByRole('region', { name: 'Timers' }))
    expect(await strip.findByRole('button', { name: 'and 2 more' })).toBeVisible()
    expect(strip.getAllByRole('button', { name: /left$/u })).toHaveLength(3)
  })

  it('opens a panel in which time is added, a timer stopped, and one is left for its instrument', async () => {
    const user = userEvent.setup()
    const bench = kept(await openDemoBench())
    const id = bench.list.store.getState().heads.find((head) => head.number === '26-07')!.id
    const { history } = showView(bench, frame)
    await act(() => timerWith(bench, 'Braces', 600, id))
    await act(() => timerWith(bench, 'Gone', 1200))
    await user.click(await screen.findByRole('button', { name: /^26-07 Braces/u }))
    const panel = within(await screen.findByRole('dialog', { name: 'What is setting?' }))
    const endOf = (label: string): number => {
      const row = bench.timers.opened
        .getState()
        .timers!.store.getState()
        .timers.find((one) => one.label === label)
      return row === undefined ? Number.NaN : Date.parse(row.endsAt) - Date.parse(row.startedAt)
    }
    await user.click(panel.getByRole('button', { name: '1 h more for 26-07 Braces' }))
    await user.click(panel.getByRole('button', { name: '10 min more for 26-07 Braces' }))
    await waitFor(() => expect(endOf('Braces') / 60_000).toBeCloseTo(80, 3))
    expect(panel.getAllByRole('link', { name: 'Go to 26-07' })).toHaveLength(1)
    await user.click(panel.getByRole('button', { name: 'Stop the timer of 26-07 Gone' }))
    await waitFor(() => expect(panel.queryByText('Gone')).toBeNull())
    await user.click(panel.getByRole('button', { name: 'Undo' }))
    expect(await panel.findByRole('button', { name: 'Stop the timer of 26-07 Gone' })).toBeVisible()
    expect(panel.queryByRole('button', { name: 'Undo' })).toBeNull()
    await user.click(panel.getByRole('button', { name: 'Tell me on this device' }))
    expect(await panel.findByText(/^This browser shows no messages/u)).toBeVisible()
    await user.click(panel.getByRole('link', { name: 'Go to 26-07' }))
    expect(history.at(-1)).toBe(`/i/${id}`)
    expect(screen.queryByRole('dialog')).toBeNull()
  })
})

describe('starting a timer', () => {
  const show = (bench: Bench, onClose = () => undefined) =>
    showView(
      bench,
      <StartTimer
        docId={DOC}
        stageId={null}
        number="26-07"
        label="Glue the braces"
        proposed={{ low: 4, likely: 12, high: 24 }}
        onClose={onClose}
      />,
    )
  const rows = (bench: Bench) => bench.timers.opened.getState().timers?.store.getState().timers ?? []

  it('proposes what is usual, takes what is pressed, and tells to check the label', async () => {
    const user = userEvent.setup()
    const bench = kept(await openBench())
    let isClosed = false
    show(bench, () => {
      isClosed = true
    })
    expect(screen.getByText('Times vary with label, temperature and wood: check the label.')).toBeVisible()
    expect(screen.getByLabelText('Hours')).toHaveValue('12')
    expect(screen.getByRole('button', { name: /usual/u })).toHaveAttribute('aria-pressed', 'true')
    await user.click(screen.getByRole('button', { name: /at most/u }))
    await user.click(screen.getByRole('button', { name: 'Start' }))
    await waitFor(() => expect(isClosed).toBe(true))
    const [row] = rows(bench)
    expect(row).toMatchObject({ number: '26-07', label: 'Glue the braces' })
    expect(Date.parse(row!.endsAt) - Date.parse(row!.startedAt)).toBe(24 * 3_600_000)
  })

  it.each([
    ['1', '30', 5400],
    ['', '45', 2700],
    ['1 h 15 min', '', 4500],
  ])('takes %s h and %s min', async (hours, minutes, seconds) => {
    const user = userEvent.setup()
    const bench = kept(await openBench())
    show(bench)
    await user.clear(screen.getByLabelText('Hours'))
    if (hours !== '') await user.type(screen.getByLabelText('Hours'), hours)
    if (minutes !== '') await user.type(screen.getByLabelText('Minutes'), minutes)
    await user.click(screen.getByRole('button', { name: 'Start' }))
    await waitFor(() => expect(rows(bench)).toHaveLength(1))
    expect(Date.parse(rows(bench)[0]!.endsAt) - Date.parse(rows(bench)[0]!.startedAt)).toBe(seconds * 1000)
  })

  it.each([
    ['soon', '', /^Hours: “soon” makes no sense here/u],
    ['', '', /^Hours and minutes together may be from 1 s to 90 days/u],
    ['9999', '', /^Hours and minutes together/u],
    ['-2', '', /^Hours and minutes together/u],
    ['1', 'x', /^Minutes: “x” makes no sense here/u],
  ])('refuses %s h and %s min in a sentence', async (hours, minutes, sentence) => {
    const user = userEvent.setup()
    const bench = kept(await openBench())
    show(bench)
    await user.clear(screen.getByLabelText('Hours'))
    if (hours !== '') await user.type(screen.getByLabelText('Hours'), hours)
    if (minutes !== '') await user.type(screen.getByLabelText('Minutes'), minutes)
    await user.click(screen.getByRole('button', { name: 'Start' }))
    expect(await screen.findByRole('alert')).toHaveTextContent(sentence)
    expect(rows(bench)).toEqual([])
  })

  it('asks what sets where that was left empty', async () => {
    const user = userEvent.setup()
    const bench = kept(await openBench())
    show(bench)
    await user.clear(screen.getByLabelText('What sets on 26-07'))
    await user.click(screen.getByRole('button', { name: 'Start' }))
    expect(await screen.findByRole('alert')).toHaveTextContent(/^Say what sets/u)
  })
})

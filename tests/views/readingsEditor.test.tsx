import { render, screen, waitFor, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, it } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import type { HalfWidthsPlan, Plan } from '../../src/core/plan.ts'
import { formatLength } from '../../src/format/formatLength.ts'
import { STARTING_UNITS } from '../../src/core/quantity.ts'
import { OutlineSheet } from '../../src/views/sheets/OutlineSheet.tsx'
import { NYLON_STRING } from '../generators/demoNylon.ts'
import { FakeBench, watchedBench } from './fakeBench.tsx'

const { plan } = NYLON_STRING
const READ = plan.outline.halfWidths
const withReadings = (change: Partial<HalfWidthsPlan>): Plan => ({
  ...plan,
  outline: { ...plan.outline, halfWidths: { ...READ, ...change } },
})
const EMPTY = withReadings({ rows: [], tailRows: [], neckRows: [] })

const show = (start: Plan = plan) => {
  const watched = watchedBench(start)
  render(
    <FakeBench watched={watched}>
      <OutlineSheet />
    </FakeBench>,
  )
  const kept = () => watched.record.doc.plan.outline.halfWidths
  return { watched, kept }
}
const table = (name: string) => within(screen.getByRole('region', { name }))
const along = () => table('Along the body')
const neck = () => table('Neck end, read the other way')

describe('the readings of a body', () => {
  it('teach how a body is read while there are none, and take a table typed with Enter', async () => {
    const user = userEvent.setup()
    const { kept } = show(EMPTY)
    expect(screen.getByRole('img', { name: /rule square across/ })).toBeVisible()
    const from = () => along().getByLabelText('Next reading: from the tail')
    const half = along().getByLabelText('Next reading: half-width')
    expect(from()).toHaveValue('20.0 mm')
    await user.type(half, '117.6{Enter}143.9{Enter}')
    expect(from()).toHaveValue('60.0 mm')
    await user.clear(from())
    await user.type(from(), '50')
    await user.type(half, '15 cm')
    await user.click(along().getByRole('button', { name: 'Add this reading' }))
    expect(half).toHaveFocus()
    expect(kept().rows).toEqual([
      [20, 117.6],
      [40, 143.9],
      [50, 150],
    ])
    expect(from()).toHaveValue('60.0 mm')
    await user.type(half, 'a hand{Enter}')
    expect(along().getByText(/makes no sense here/)).toBeVisible()
    expect(kept().rows).toHaveLength(3)
  })

  it('keep the row being typed in its place, and move it when it is left', async () => {
    const user = userEvent.setup()
    const { watched, kept } = show(withReadings({ rows: READ.rows.slice(0, 5) }))
    const second = along().getByLabelText('From the tail 2')
    await user.clear(second)
    await user.type(second, '150')
    expect(second).toHaveFocus()
    expect(second).toHaveValue('150')
    expect(kept().rows.map(([at]) => at)).toEqual([20, 60, 80, 100, 150])
    expect(new Set(watched.changes.map(({ gesture }) => gesture)).size).toBe(1)
    await user.tab()
    expect(along().getByLabelText('Half-width 2')).toHaveFocus()
    await user.click(along().getByLabelText('Next reading: half-width'))
    expect(along().getByLabelText('From the tail 5')).toHaveValue('150.0')
    expect(along().getByLabelText('Half-width 5')).toHaveValue('143.9')
    expect(along().getByLabelText('From the tail 2')).toHaveValue('60.0')
    await user.click(along().getByRole('button', { name: 'Remove: Along the body, reading 5' }))
    expect(kept().rows).toEqual([READ.rows[0], READ.rows[2], READ.rows[3], READ.rows[4]])
  })

  it('refuse what cannot be, in words, and keep what stood', async () => {
    const user = userEvent.setup()
    const { kept } = show()
    const half = along().getByLabelText('Half-width 3')
    await user.clear(half)
    await user.type(half, '1604')
    expect(half).toBeInvalid()
    expect(along().getByText(/Half-width 3 of 1604.0 mm is more than can be built/)).toBeVisible()
    expect(kept().rows.slice(0, 2)).toEqual(READ.rows.slice(0, 2))
    for (const [, halfMm] of kept().rows) expect(halfMm).toBeLessThanOrEqual(400)
  })

  it('take the neck end from the line of the joint', async () => {
    const user = userEvent.setup()
    const { kept } = show()
    // 486 mm of body: the reading 468.6 mm from the tail lies 17.4 mm short of the joint, and is the furthest from it.
    expect(neck().getByLabelText('From the neck line 4')).toHaveValue('17.4')
    const first = neck().getByLabelText('From the neck line 1')
    expect(first).toHaveValue('0.2')
    await user.clear(first)
    await user.type(first, '0.25')
    expect(first).toHaveValue('0.25')
    expect(kept().neckRows).toEqual([
      [468.6, 100],
      [479.3, 80],
      [484.5, 60],
      [485.75, 40],
    ])
  })

  it('ask for the body length before the neck end', () => {
    show({ ...plan, outline: { ...plan.outline, lengthMm: null } })
    expect(neck().getByText(/Type the body length first.*4 readings are kept/)).toBeVisible()
    expect(neck().queryByRole('textbox')).not.toBeInTheDocument()
  })

  it('show how far each lies off the curve, and mark by a word what is over', async () => {
    const user = userEvent.setup()
    const { watched } = show()
    const rowOf = (at: number) => within(along().getByLabelText(`Half-width ${at}`).closest('li')!)
    expect(along().queryByText('over')).not.toBeInTheDocument()
    const readings = () => compute(watched.record.doc.plan).numbers.readings
    const shown = (mm: number) => formatLength(mm, 'thickness', STARTING_UNITS)
    const third = readings().find(({ fromTailMm }) => fromTailMm === 100)!
    const { sign, whole } = shown(third.departureMm)
    expect(along().getByLabelText('Half-width 5').closest('li')).toHaveTextContent(
      `Off the curve: ${sign === '' ? '' : '−'}${whole}`,
    )
    // Six millimetres too wide at one station: no fair curve stays within 0.3 mm of that.
    const half = along().getByLabelText('Half-width 7')
    await user.clear(half)
    await user.type(half, '187.6')
    expect(rowOf(7).getByText('over')).toBeVisible()
    expect(readings().find(({ fromTailMm }) => fromTailMm === 140)!.departureMm).toBeGreaterThan(0.3)
    expect(screen.getByText('Largest departure', { selector: 'button' })).toBeVisible()
    expect(screen.getByText('Inflections', { selector: 'button' })).toBeVisible()
    expect(screen.getByLabelText('Read to within')).toHaveValue('0.3')
  })

  it('are pasted: a line that cannot be read is named and nothing changes; then all are taken, in one step', async () => {
    const user = userEvent.setup()
    const { watched, kept } = show()
    await user.click(along().getByRole('button', { name: /Paste a table/ }))
    const dialog = within(screen.getByRole('dialog', { name: 'Paste a table: along the body' }))
    const text = dialog.getByLabelText('Lines')
    await user.click(text)
    await user.paste('from tail\thalf\n40\t143,9\n20\t117,6\n60\tone hundred')
    expect(dialog.getByText('Line 4:')).toBeVisible()
    expect(dialog.getByRole('button', { name: 'Put them in place of the table' })).toBeDisabled()
    expect(dialog.getByRole('button', { name: 'Add them to the table' })).toBeDisabled()
    expect(kept().rows).toEqual(READ.rows)
    await user.clear(text)
    await user.paste('from tail\thalf\n40\t143,9\n20\t117,6\n60\t160,4')
    expect(dialog.getByText('3 readings can be taken.')).toBeVisible()
    expect(dialog.getByText(/Line 1 holds no number/)).toBeVisible()
    await user.click(dialog.getByRole('button', { name: 'Put them in place of the table' }))
    expect(screen.queryByRole('dialog')).not.toBeInTheDocument()
    expect(kept().rows).toEqual([
      [20, 117.6],
      [40, 143.9],
      [60, 160.4],
    ])
    expect(watched.changes).toHaveLength(1)
    expect(along().getByLabelText('Half-width 3')).toHaveValue('160.4')
  })

  it('are added to by pasting, half-width first at an end', async () => {
    const user = userEvent.setup()
    const { kept } = show()
    await user.click(neck().getByRole('button', { name: /Paste a table/ }))
    const dialog = within(screen.getByRole('dialog'))
    await user.click(dialog.getByLabelText('Lines'))
    await user.paste('90;11')
    await user.click(dialog.getByRole('button', { name: 'Add them to the table' }))
    expect(kept().neckRows).toContainEqual([475, 90])
    expect(kept().neckRows).toHaveLength(5)
  })
})

describe('the other ways of an outline', () => {
  it('show a drawn path without asking for a length, the hand, and the cutaway with its numbers', async () => {
    const user = userEvent.setup()
    const { watched } = show()
    await user.click(screen.getByRole('radio', { name: 'Left hand' }))
    expect(watched.record.doc.plan.handed).toBe('left')
    expect(screen.queryByText('Horn stands at', { selector: 'button' })).not.toBeInTheDocument()
    await user.click(screen.getByRole('radio', { name: 'Rounded horn' }))
    expect(screen.getByLabelText('Radius of the horn')).toBeVisible()
    expect(screen.getByText('Horn stands at', { selector: 'button' })).toBeVisible()
    expect(screen.getByText('Angle of the hollow at the neck', { selector: 'button' })).toBeVisible()
    expect(screen.queryByText('Angle of a pointed horn', { selector: 'button' })).not.toBeInTheDocument()
    expect(screen.getByRole('heading', { name: 'Do the moulds and forms still fit?' })).toBeVisible()
    expect(screen.getByLabelText('Body length', { selector: 'input' })).toBeVisible()
    await user.click(screen.getByRole('radio', { name: 'A drawn path' }))
    await waitFor(() => expect(screen.queryByLabelText('Body length', { selector: 'input' })).not.toBeInTheDocument())
    expect(screen.queryByRole('region', { name: 'Along the body' })).not.toBeInTheDocument()
  })
})

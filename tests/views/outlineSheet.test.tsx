import { render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, it } from 'vitest'
import { OutlineSheet } from '../../src/views/sheets/OutlineSheet.tsx'
import type { Plan } from '../../src/core/plan.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { FakeBench, watchedBench } from './fakeBench.tsx'

const { plan } = STEEL_STRING
const BY_KEY_WIDTHS: Plan = { ...plan, outline: { ...plan.outline, kind: 'keyWidths' } }

const show = (start = plan) => {
  const watched = watchedBench(start)
  render(
    <FakeBench watched={watched}>
      <OutlineSheet />
    </FakeBench>,
  )
  return watched
}
const field = (name: string) => screen.getByLabelText(name, { selector: 'input' })

describe('the outline sheet', () => {
  it('keeps every stroke in one visit to a field together, and the outline follows', async () => {
    const watched = show()
    const radius = field('Radius 2')
    await userEvent.clear(radius)
    await userEvent.type(radius, '140')
    const piece = watched.record.doc.plan.outline.pieces[1]
    expect(piece).toMatchObject({ kind: 'arc', radiusMm: 140 })
    expect(new Set(watched.changes.map((change) => change.gesture)).size).toBe(1)
    expect(screen.getByText('The outline does not close')).toBeInTheDocument()
  })

  it('solves what is left open and says that it was solved', async () => {
    const watched = show()
    for (const name of ['Sweep 2: open: solve it', 'Sweep 3: open: solve it', 'Length 4: open: solve it'])
      await userEvent.click(screen.getByLabelText(name))
    const { pieces } = watched.record.doc.plan.outline
    expect(pieces[1]).toMatchObject({ sweepDeg: null })
    expect(screen.queryByText('The outline does not close')).not.toBeInTheDocument()
    // The model's own figures close: solving its own values again must give them back.
    expect(field('Sweep 2, solved')).toHaveAttribute('placeholder', '85.708°')
    expect(field('Length 4, solved')).toHaveAttribute('placeholder', '17.9 mm')
  })

  it('says when too many are open, and leads to the pieces', async () => {
    const watched = show()
    for (const name of ['Sweep 2', 'Sweep 3', 'Radius 2', 'Radius 3'])
      await userEvent.click(screen.getByLabelText(`${name}: open: solve it`))
    const finding = screen.getByRole('article', { name: /Too many values left open/ })
    await userEvent.click(within(finding).getByRole('button', { name: 'Go to Compass pieces' }))
    expect(watched.sentTo).toEqual(['outline.pieces'])
  })

  it('adds a piece without moving the outline, moves it, and removes it', async () => {
    const watched = show()
    const before = watched.record.doc.plan.outline.pieces
    await userEvent.click(screen.getByText('Piece 2'))
    await userEvent.click(screen.getAllByText('Add a piece after')[1]!)
    expect(watched.record.doc.plan.outline.pieces).toHaveLength(before.length + 1)
    expect(watched.record.doc.plan.outline.pieces[2]).toMatchObject({ kind: 'arc', radiusMm: 135, sweepDeg: 0 })
    expect(screen.queryByRole('article')).not.toBeInTheDocument()

    await userEvent.click(screen.getAllByText('Move toward the tail')[2]!)
    expect(watched.record.doc.plan.outline.pieces[1]).toMatchObject({ sweepDeg: 0 })
    await userEvent.click(screen.getByText('Remove piece 2'))
    expect(watched.record.doc.plan.outline.pieces).toEqual(before)
    expect(new Set(watched.changes.map((change) => change.gesture)).size).toBe(3)
  })

  it('turns an arc into a straight and bends one the other way', async () => {
    const watched = show()
    const choose = async (group: number, name: string) =>
      userEvent.click(within(screen.getAllByRole('group', { name: 'Piece' })[group]!).getByRole('radio', { name }))
    await choose(0, 'Straight')
    expect(watched.record.doc.plan.outline.pieces[0]?.kind).toBe('straight')
    const bends = screen.getAllByRole('group', { name: 'Bend' })
    await userEvent.click(within(bends[0]!).getByRole('radio', { name: 'Hollow' }))
    expect(watched.record.doc.plan.outline.pieces[1]).toMatchObject({ bend: 'concave' })
  })

  it('leaves the body length open and shows the one the arcs give', async () => {
    const watched = show()
    await userEvent.click(screen.getByLabelText('Body length: open: solve it'))
    expect(watched.record.doc.plan.outline.lengthMm).toBeNull()
    expect(field('Body length')).toHaveAttribute('placeholder', '496.0 mm')
  })

  it('keeps what cannot be read, as it was typed, and what stood before', async () => {
    const watched = show(BY_KEY_WIDTHS)
    const waist = field('Waist')
    await userEvent.clear(waist)
    await userEvent.type(waist, 'about a hand')
    expect(waist).toHaveValue('about a hand')
    expect(watched.drafts.get('plan.outline.keyWidths.waistMm')).toBe('about a hand')
    expect(watched.record.doc.plan.outline.keyWidths.waistMm).toBe(plan.outline.keyWidths.waistMm)
    expect(watched.refused).toBe(0)
  })

  it('edits key widths where the outline is drawn by them', async () => {
    const watched = show(BY_KEY_WIDTHS)
    const waist = field('Waist')
    await userEvent.clear(waist)
    await userEvent.type(waist, '241')
    expect(watched.record.doc.plan.outline.keyWidths.waistMm).toBe(241)
    await userEvent.click(screen.getByRole('radio', { name: 'Compass arcs' }))
    expect(watched.record.doc.plan.outline.kind).toBe('compassArcs')
  })

  it('opens what a number is, and sets its tolerance for this instrument', async () => {
    const watched = show()
    await userEvent.click(screen.getAllByText('Waist', { selector: 'button' })[0]!)
    const help = screen.getByRole('dialog', { name: 'Waist' })
    expect(within(help).getByText(/Least whole width/)).toBeInTheDocument()
    await userEvent.click(within(help).getByRole('button', { name: 'Print none' }))
    expect(watched.record.doc.tolerances['body.waistMm']).toBeNull()
    await userEvent.click(within(help).getByRole('button', { name: /Back to the shop’s/ }))
    expect(watched.record.doc.tolerances).toEqual({})
    const tolerance = within(help).getByRole('textbox', { name: 'Plus or minus' })
    await userEvent.clear(tolerance)
    await userEvent.type(tolerance, '0.8')
    expect(watched.record.doc.tolerances['body.waistMm']).toBe(0.8)
  })
})

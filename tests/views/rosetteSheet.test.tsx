import { render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, it } from 'vitest'
import { ringsInOrder } from '../../src/core/instrument/rosette.ts'
import { RosetteSheet } from '../../src/views/sheets/RosetteSheet.tsx'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { FakeBench, type Watched, watchedBench } from './fakeBench.tsx'

const show = () => {
  const watched = watchedBench(STEEL_STRING.plan)
  render(
    <FakeBench watched={watched}>
      <RosetteSheet />
    </FakeBench>,
  )
  return watched
}
const field = (name: string) => screen.getByLabelText(name, { selector: 'input' })
const press = (name: string) => userEvent.click(screen.getByRole('button', { name }))
const innerRadii = ({ record }: Watched) => ringsInOrder(record.doc.plan.rosette).map(({ ring }) => ring.innerRadiusMm)
const retype = async (name: string, text: string) => {
  await userEvent.clear(field(name))
  await userEvent.type(field(name), text)
}

describe('the rosette sheet', () => {
  it('adds a ring outside the others, clear of them, under an id and an order of its own', async () => {
    const watched = show()
    await press('Add a ring')
    expect(innerRadii(watched)).toEqual([56, 58.5, 63.5, 68])
    expect(Object.keys(watched.record.doc.plan.rosette.rings)).toHaveLength(4)
    expect(watched.refused).toBe(0)
    expect(screen.queryByRole('article')).not.toBeInTheDocument()
  })

  it('moves rings past one another and removes one, a step of undo each', async () => {
    const watched = show()
    await press('Up: Ring 3')
    expect(innerRadii(watched)).toEqual([56, 63.5, 58.5])
    await press('Down: Ring 1')
    expect(innerRadii(watched)).toEqual([63.5, 56, 58.5])
    await press('Remove: Ring 2')
    expect(innerRadii(watched)).toEqual([63.5, 58.5])
    expect(new Set(watched.changes.map((change) => change.gesture)).size).toBe(3)
    await press('Remove: Ring 1')
    await press('Remove: Ring 1')
    expect(screen.getByText(/There is no ring/)).toBeInTheDocument()
  })

  it('says when a gap shows beside the board, and by how much', async () => {
    show()
    await retype('Gap wanted 1', '60')
    const finding = screen.getByRole('article', { name: /The gap of ring 1 shows beside the board/ })
    // The board hides 2 min(asin(w / 2 ro), acos(e / ri)) of the ring; here its end decides: e = 49.85, ri = 56, at mid radius 56.75.
    const hiddenMm = 2 * Math.acos(49.85 / 56) * 56.75
    expect(within(finding).getByText(new RegExp(`hides ${hiddenMm.toFixed(1)} mm`))).toBeInTheDocument()
  })

  it('gives the circles the cutter runs on as they are typed', async () => {
    show()
    await retype('Cutter for the hole', '5')
    // 50 - 5/2
    const answer = screen.getAllByText('Cutter circle, hole')[0]!.closest('.big-figure')
    expect(answer).toHaveTextContent('47.5')
    const row = screen.getAllByRole('row')[1]!
    // Ring 1: 56 + 1.5/2 and 57.5 - 1.5/2 both 56.75.
    expect(within(row).getAllByText(/56\.75/)).toHaveLength(2)
  })

  it('sends a half-typed radius nowhere', async () => {
    const watched = show()
    await retype('Inner radius 1', '58.5 - ')
    expect(innerRadii(watched)[0]).not.toBeNaN()
    expect(field('Inner radius 1')).toHaveValue('58.5 - ')
  })
})

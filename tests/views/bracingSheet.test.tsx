import { fireEvent, render, screen, within } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { describe, expect, it } from 'vitest'
import type { Plan } from '../../src/core/plan.ts'
import { undoable } from '../../src/record/undo.ts'
import { BracingSheet } from '../../src/views/sheets/box/BracingSheet.tsx'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { FakeBench, type Watched, watchedBench } from './fakeBench.tsx'

const onBench = (watched: Watched) => (
  <FakeBench watched={watched}>
    <BracingSheet />
  </FakeBench>
)
const show = (plan: Plan = STEEL_STRING.plan) => {
  const watched = watchedBench(plan)
  return { watched, ...render(onBench(watched)) }
}
/** A key of the list, not the brace in the drawing. */
const list = () => within(document.querySelector<HTMLElement>('.brace-list')!)
const inList = (name: string) => list().getByRole('button', { name })
const choose = (name: string) => userEvent.click(inList(name))
const press = (name: string) => userEvent.click(screen.getByRole('button', { name }))
const braces = (watched: Watched) => watched.record.doc.plan.bracing.braces
const gestures = (watched: Watched) => new Set(watched.changes.map(({ gesture }) => gesture)).size

/** Two fans that cross, neither lapped, and one under the hole. */
const CROWDED: Plan = {
  ...STEEL_STRING.plan,
  bracing: {
    ...STEEL_STRING.plan.bracing,
    braces: Object.fromEntries(
      Object.entries(STEEL_STRING.plan.bracing.braces).map(([id, brace]) => [id, { ...brace, lapped: false }]),
    ),
  },
}

describe('the bracing sheet', () => {
  it('calls twins by both numbers, and says which of them is entered', async () => {
    show()
    await choose('2 and 3 X brace')
    // The one that is entered begins on the bass side: its point is at -49.
    const editor = within(screen.getByRole('heading', { name: 'Braces', level: 2 }).closest('section')!)
    expect(editor.getByRole('heading', { name: '2 and 3 X brace' })).toBeInTheDocument()
    expect(editor.getByText(/^As entered: the bass one/)).toBeInTheDocument()
    expect(inList('6 and 7 Finger brace')).toBeInTheDocument()
  })

  it('says in one sentence which ends came loose, and leaves them where they stood', async () => {
    const { watched } = show()
    const [legId] = Object.entries(braces(watched)).find(([, { kind }]) => kind === 'cross')!
    const at = Object.entries(braces(watched)).flatMap(([id, one]) => (one.from.braceId === legId ? [id] : []))
    expect(at.length).toBe(4)
    await choose('2 and 3 X brace')
    await press('Remove')
    const said = screen.getByText(/^2 and 3 X brace is removed/)
    for (const name of ['2 Tone bar', '3 Tone bar', '4 and 5 Finger brace', '6 and 7 Finger brace'])
      expect(said).toHaveTextContent(`First end of ${name}`)
    for (const id of at) expect(braces(watched)[id]?.from).toMatchObject({ stops: 'here', braceId: null })
    await press('Add a brace')
    expect(screen.queryByText(/is removed/)).not.toBeInTheDocument()
  })

  it('a brace that is added breaks nothing', async () => {
    const { watched } = show()
    await press('Add a brace')
    expect(Object.keys(braces(watched))).toHaveLength(Object.keys(STEEL_STRING.plan.bracing.braces).length + 1)
    expect(screen.queryByText(/Cannot be built/)).not.toBeInTheDocument()
  })

  it('tells what does not fit on one line under the drawing, which opens', async () => {
    show(CROWDED)
    const line = screen.getByRole('heading', { level: 2, name: /Two braces cross without a lap/ })
    const folded = line.closest('details')!
    expect(folded.open).toBe(false)
    const drawing = document.querySelector('.question-lead')!
    expect(drawing.compareDocumentPosition(folded) & Node.DOCUMENT_POSITION_FOLLOWING).toBeTruthy()
    await userEvent.click(line)
    expect(folded.open).toBe(true)
  })

  it('says beside the patterns what they take the place of', async () => {
    show()
    // One across, an X of two, two tone bars, four fingers.
    expect(screen.getByText(/^Takes the place of all 9 braces of the top\./)).toBeInTheDocument()
    await press('No braces')
    expect(screen.getByText('The top is bare: nothing is replaced.')).toBeInTheDocument()
  })

  it('keys that follow each other are one stroke, and one that comes later is another', async () => {
    const { watched } = show()
    await choose('1 Cross brace')
    const before = gestures(watched)
    const handle = screen.getByRole('button', { name: /^First end of 1 Cross brace/ })
    const strike = (atMs: number) => {
      const event = new KeyboardEvent('keydown', { key: 'ArrowLeft', bubbles: true, cancelable: true })
      Object.defineProperty(event, 'timeStamp', { value: atMs })
      fireEvent(screen.getByRole('button', { name: /^First end of 1 Cross brace/ }), event)
    }
    expect(handle).toBeInTheDocument()
    for (const atMs of [5000, 5300, 6200]) strike(atMs)
    expect(gestures(watched)).toBe(before + 1)
    expect(undoable(watched.changes, []).undo?.gesture).toBe(watched.changes.at(-1)?.gesture)
    strike(7300)
    expect(gestures(watched)).toBe(before + 2)
  })

  it('the brace in hand, and its plate, are there again when the sheet is', async () => {
    const { watched, unmount } = show()
    await userEvent.click(screen.getByRole('radio', { name: 'Back' }))
    await choose('11 Ladder brace')
    unmount()
    const again = render(onBench(watched))
    expect(screen.getByRole('radio', { name: 'Back' })).toBeChecked()
    expect(list().getByRole('button', { name: '11 Ladder brace', pressed: true })).toBeInTheDocument()
    again.unmount()
    // Another instrument starts anew.
    show()
    expect(screen.getByRole('radio', { name: 'Top' })).toBeChecked()
  })

  it('has the plate under the bridge and the radii of the ring at hand', async () => {
    const ring: Plan = { ...STEEL_STRING.plan, bracing: { ...STEEL_STRING.plan.bracing, holeRingMm: 15 } }
    show(ring)
    expect(screen.getByLabelText('Bridge plate begins at', { selector: 'input' })).toBeInTheDocument()
    expect(screen.getByRole('rowheader', { name: /Ring inside, outer radius/ })).toBeInTheDocument()
  })
})

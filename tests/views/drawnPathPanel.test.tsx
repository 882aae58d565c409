import { cleanup, render, screen, waitFor } from '@testing-library/react'
import userEvent from '@testing-library/user-event'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { pickFile } from '../../src/device/pickFile.ts'
import { DrawnPathPanel } from '../../src/views/sheets/DrawnPathPanel.tsx'
import { OPEN_PROBLEM } from '../../src/words/drawnPath.ts'
import { EGG, eggDxf, eggSvg } from '../files/eggDrawing.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { FakeBench, watchedBench } from './fakeBench.tsx'

vi.mock('../../src/device/pickFile.ts', () => ({ pickFile: vi.fn<() => Promise<File | null>>() }))
afterEach(cleanup)

const show = () => {
  const watched = watchedBench(STEEL_STRING.plan)
  const { container } = render(
    <FakeBench watched={watched}>
      <DrawnPathPanel />
    </FakeBench>,
  )
  return { watched, container, outline: () => watched.record.doc.plan.outline }
}
const press = (text: string) => userEvent.click(screen.getByText(text))
async function open(text: string | null, name = '') {
  vi.mocked(pickFile).mockResolvedValueOnce(text === null ? null : new File([text], name))
  await press('Open a drawing')
}
const asked = () => screen.findByText('Which line is the outline', {}, { timeout: 20_000 })
const take = () => press('Take this outline')

describe('an outline taken from a drawing', () => {
  it('is one gesture, and is told with its file, its length and how closely it is followed', async () => {
    const { watched, outline, container } = show()
    await open(eggDxf({ gapMm: 0.3 }), 'body.dxf')
    await asked()
    expect(screen.getByLabelText('The file says: millimetres')).toBeChecked()
    expect(screen.getByText(/^Line 1.*, closed$/u)).toBeInTheDocument()
    expect(screen.getByText(/1 gap between loose ends was closed, the largest 0\.3 mm/u)).toBeInTheDocument()
    // The preview follows a moment after what is asked.
    expect(await screen.findByRole('img', { name: /as it would be taken/u })).toHaveTextContent(
      'TailNeckBass sideTreble side',
    )
    expect(watched.changes).toHaveLength(0)

    await userEvent.clear(screen.getByLabelText('Follow traced points to within'))
    await userEvent.type(screen.getByLabelText('Follow traced points to within'), '0.5')
    await take()
    expect(new Set(watched.changes.map(({ gesture }) => gesture)).size).toBe(1)
    expect(outline().kind).toBe('drawnPath')
    expect(outline().drawnPath).toMatchObject({ fileName: 'body.dxf', treble: null, readToMm: 0.5 })
    expect(outline().drawnPath!.bass.strokes.at(-1)!.to.x).toBeCloseTo(EGG.lengthMm, 2)
    expect(outline().keyWidths).toEqual(STEEL_STRING.plan.outline.keyWidths)
    const facts = container.querySelector('.drawn-path-facts')
    expect(facts).toHaveTextContent('Taken frombody.dxf')
    expect(facts).toHaveTextContent(/Body length490\.0.mm/u)
    expect(facts).toHaveTextContent(/Largest departure0\.0.mm/u)
    expect(screen.queryByText('Take this outline')).not.toBeInTheDocument()
    expect(screen.getByText('Open another')).toBeEnabled()
  })

  it('waits for the unit where the file says none', async () => {
    const { outline, watched } = show()
    await open(eggSvg({ perMm: 1 / 25.4 }), 'body.svg')
    await screen.findByText(/does not say its unit/u, {}, { timeout: 20_000 })
    expect(screen.queryByText('Take this outline')).not.toBeInTheDocument()
    await press('Pixels, 96 to the inch')
    expect(screen.getByRole('alert')).toHaveTextContent('smaller than any body')
    expect(screen.queryByText('Take this outline')).not.toBeInTheDocument()
    await press('I know how long the body is')
    await userEvent.clear(screen.getByLabelText('The body is this long'))
    await userEvent.type(screen.getByLabelText('The body is this long'), '245')
    await waitFor(() => expect(document.querySelector('.outline-found')).toHaveTextContent(/Length245\.0.mm/u))
    await press('Inches')
    expect(document.querySelector('.outline-found')).toHaveTextContent(/Length490\.0.mmWidth380\.0.mm/u)
    expect(watched.changes).toHaveLength(0)
    await take()
    expect(outline().drawnPath!.bass.strokes.at(-1)!.to.x).toBeCloseTo(EGG.lengthMm, 2)
  })

  it('says what was not read', async () => {
    show()
    await open(eggDxf({ also: (dxf) => void dxf.addText({ x: 0, y: 0, z: 0 }, 3, 'tail') }), 'body.dxf')
    await asked()
    expect(screen.getByText(/Not read: 1 texts or dimensions/u)).toBeInTheDocument()
  })

  it.each([
    ['<svg xmlns="http://www.w3.org/2000/svg"><path', 'cut.svg', OPEN_PROBLEM.notXml],
    ['<!DOCTYPE svg [<!ENTITY a "b">]><svg/>', 'entity.svg', OPEN_PROBLEM.doctype],
    ['nothing of the kind', 'notes.txt', OPEN_PROBLEM.notDxf],
  ])('that cannot be read changes nothing: %#', async (text, name, sentence) => {
    const { watched } = show()
    await open(text, name)
    expect(await screen.findByRole('alert', {}, { timeout: 20_000 })).toHaveTextContent(sentence)
    expect(watched.record.doc.plan).toEqual(STEEL_STRING.plan)
    expect(watched.changes).toHaveLength(0)
  })

  it('that was not chosen, or is closed again, changes nothing', async () => {
    const { watched } = show()
    await open(null)
    expect(screen.queryByRole('alert')).not.toBeInTheDocument()
    await open(eggDxf(), 'body.dxf')
    await asked()
    await press('Close')
    expect(screen.queryByText('Take this outline')).not.toBeInTheDocument()
    expect(watched.changes).toHaveLength(0)
  })
})

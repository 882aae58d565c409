import { Units } from '@tarikjabiri/dxf'
import { describe, expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { pathEnd, pathLengthMm } from '../../src/core/geometry/path.ts'
import { type OpenedDrawing, openDrawing } from '../../src/files/openDrawing.ts'
import { type DrawingChoice, readLines, takeOutline } from '../../src/files/takeOutline.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { EGG, eggDxf, eggSvg } from './eggDrawing.ts'

const CHOICE: DrawingChoice = {
  unit: 'asFile',
  bodyLengthMm: 490,
  line: null,
  end: 'asFound',
  treble: 'swapped',
  axis: 'found',
  axisAtMm: null,
  symmetry: null,
  readToMm: 0.2,
}
const IN_MM = 'width="800mm" height="800mm" viewBox="-400 -400 800 800"'

async function open(text: string, name: string): Promise<OpenedDrawing> {
  const opened = await openDrawing(new Blob([text]), name)
  if (!opened.ok) expect.fail(opened.problem)
  return opened.value
}
const problemOf = async (text: string, name: string) => {
  const opened = await openDrawing(new Blob([text]), name)
  return opened.ok ? null : opened.problem
}
function readDrawing(drawing: OpenedDrawing, choice: DrawingChoice) {
  const read = readLines(drawing, choice)
  return { ...read, taken: takeOutline(read.line, choice, drawing.fileName) }
}
function take(drawing: OpenedDrawing, choice: Partial<DrawingChoice> = {}) {
  const { taken, ...read } = readDrawing(drawing, { ...CHOICE, ...choice })
  if (!taken.ok) expect.fail(taken.problem)
  const { plan } = STEEL_STRING
  const outline = { ...plan.outline, kind: 'drawnPath', drawnPath: taken.value.plan } as const
  return { ...taken.value, ...read, body: compute({ ...plan, outline }).numbers.body }
}
/** Where the drawing came to: body length, width, and the way round one half, by the closed forms. */
function expectEgg({ body, plan }: ReturnType<typeof take>, scale = 1) {
  expect(Math.abs(body.lengthMm - scale * EGG.lengthMm)).toBeLessThan(0.01)
  expect(Math.abs(pathLengthMm(plan.bass) - scale * EGG.halfMm)).toBeLessThan(0.01)
  expect(plan.bass.start.x).toBeCloseTo(0, 6)
  expect(pathEnd(plan.bass).y).toBeCloseTo(0, 6)
}

describe('a drawing becomes the outline of a plan', () => {
  test('DXF of loose lines and arcs', async () => {
    const taken = take(await open(eggDxf(), 'body.dxf'))
    expectEgg(taken)
    expect(taken.outline.widestMm).toBeCloseTo(EGG.widthMm, 2)
    expect(taken.plan).toMatchObject({ treble: null, readToMm: 0.2, fileName: 'body.dxf' })
    expect(taken.lines).toHaveLength(1)
    expect(taken.healed).toMatchObject({ gapsClosed: 0, duplicatesDropped: 0 })
  })

  test('DXF that says inches', async () => {
    const drawing = await open(eggDxf({ units: Units.Inches, mmPerUnit: 25.4 }), 'body.dxf')
    expect(drawing.file.unit).toBe('inch')
    expectEgg(take(drawing))
  })

  test('SVG in mm, whatever its name', async () => {
    const drawing = await open(`\n ${eggSvg({ attributes: IN_MM })}`, 'body.txt')
    expect(drawing.file.unit).toBe('mm')
    expectEgg(take(drawing))
  })

  test.each([
    ['mm', 1],
    ['cm', 0.1],
    ['inch', 1 / 25.4],
    ['px', 96 / 25.4],
  ] as const)('SVG that says no unit, drawn in %s', async (unit, perMm) => {
    const drawing = await open(eggSvg({ perMm }), 'body.svg')
    expect(drawing.file.unit).toBeNull()
    expectEgg(take(drawing, { unit }))
  })

  test.each([0.001, 0.37, 42])('of which only the length is known, at %d units to a mm', async (perMm) => {
    const drawing = await open(eggSvg({ perMm }), 'body.svg')
    expectEgg(take(drawing, { unit: 'byLength', bodyLengthMm: 490 }))
    expectEgg(take(drawing, { unit: 'byLength', bodyLengthMm: 245 }), 0.5)
  })

  test('gaps are closed in true millimetres, and told', async () => {
    const gap = take(await open(eggDxf({ units: Units.Inches, mmPerUnit: 25.4, gapMm: 0.4 }), 'body.dxf'))
    expect(gap.healed.gapsClosed).toBe(1)
    expect(gap.healed.largestGapMm).toBeCloseTo(0.4, 6)
    expect(Math.abs(gap.body.lengthMm - EGG.lengthMm)).toBeLessThan(0.01)
    const wide = readDrawing(await open(eggDxf({ units: Units.Inches, mmPerUnit: 25.4, gapMm: 3 }), 'body.dxf'), CHOICE)
    expect(wide.healed.gapsClosed).toBe(0)
  })

  test('a line is chosen by its key, the same at any scale', async () => {
    const also = '<circle id="hole" cx="0" cy="-100" r="50"/><path id="stroke" d="M600 0v2000"/>'
    const drawing = await open(eggSvg({ also }), 'body.svg')
    const usual = take(drawing, { unit: 'mm' })
    // The longest is no outline; the longest that is one is taken.
    expect(usual.lines.map(({ name }) => name)).toEqual(['stroke', 'body', 'hole'])
    expectEgg(usual)
    const hole = usual.lines[2]!.key
    expect(take(drawing, { unit: 'mm', line: hole }).outline.lengthMm).toBeCloseTo(100, 3)
    expect(take(drawing, { unit: 'inch', line: hole }).outline.lengthMm).toBeCloseTo(2540, 3)
  })

  test('sides that differ are kept as drawn unless one is to be mirrored', async () => {
    const drawing = await open(eggSvg({ attributes: IN_MM, right: 6 }), 'body.svg')
    // The middle of a page 800 mm wide.
    const straightUp = { axis: 'vertical', axisAtMm: 400 } as const
    const kept = take(drawing, straightUp)
    expect(kept.sidesDiffer).toBe(true)
    expect(kept.symmetry).toBe('asDrawn')
    expect(kept.plan.treble).not.toBeNull()
    const mirrored = take(drawing, { ...straightUp, symmetry: 'mirrorTreble' })
    expect(mirrored.plan.treble).toBeNull()
    expect(mirrored.plan.bass).toEqual(kept.plan.treble)
    // Tail down and turned to the left, the side that lay to the right comes to lie below: the treble side, as seen from the front.
    const wide = (side: Partial<DrawingChoice>) => take(drawing, { ...straightUp, ...side }).outline.widestMm
    expect(wide({ symmetry: 'mirrorTreble' })).toBeGreaterThan(wide({ symmetry: 'mirrorBass' }) + 8)
    expect(wide({ symmetry: 'mirrorBass', treble: 'asDrawn' })).toBeCloseTo(wide({ symmetry: 'mirrorTreble' }), 6)
  })

  test('turned round, the neck is the wide end', async () => {
    const drawing = await open(eggDxf(), 'body.dxf')
    const [as, turned] = [take(drawing), take(drawing, { end: 'turned' })]
    expect(turned.outline.centreline.headingRad - as.outline.centreline.headingRad).not.toBeCloseTo(0, 3)
    expectEgg(turned)
  })
})

describe('what cannot be taken says why', () => {
  test.each([
    ['', 'body.svg', 'notXml'],
    ['no drawing', 'body.txt', 'notDxf'],
    ['<html></html>', 'body.html', 'notSvg'],
    [eggSvg().slice(0, -9), 'body.svg', 'notXml'],
  ])('file %#', async (text, name, problem) => {
    expect(await problemOf(text, name)).toBe(problem)
  })

  test('a file too large to be looked through', async () => {
    expect(await problemOf(' '.repeat(5_000_001), 'body.dxf')).toBe('tooLarge')
  })

  test('a file that was moved away', async () => {
    const file = new Blob(['x'])
    file.text = () => Promise.reject(new Error('gone'))
    expect(await openDrawing(file, 'body.svg')).toEqual({ ok: false, problem: 'unreadable' })
  })

  test('more strokes than a record keeps', async () => {
    const points = Array.from({ length: 18_000 }, (_, i) => {
      const turn = (2 * Math.PI * i) / 18_000
      return `${200 * Math.cos(turn)},${240 * Math.sin(turn)}`
    })
    const text = `<svg xmlns="http://www.w3.org/2000/svg" ${IN_MM}><polygon points="${points.join(' ')}"/></svg>`
    const { taken } = readDrawing(await open(text, 'fine.svg'), CHOICE)
    expect(taken).toEqual({ ok: false, problem: 'tooFine' })
  })

  test('the wrong unit', async () => {
    const drawing = await open(eggSvg({ perMm: 0.1 }), 'body.svg')
    expect(readDrawing(drawing, { ...CHOICE, unit: 'px' }).taken).toEqual({ ok: false, problem: 'tooSmall' })
  })
})

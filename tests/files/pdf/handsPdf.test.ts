import { afterAll, describe, expect, test } from 'vitest'
import { compute } from '../../../src/core/compute.ts'
import type { Point } from '../../../src/core/geometry/point.ts'
import { USUAL_JIGS } from '../../../src/core/jigs.ts'
import type { Plan } from '../../../src/core/plan.ts'
import { templateDrawingOf } from '../../../src/drawing/templateDrawingOf.ts'
import { writePdf } from '../../../src/files/pdf/writePdf.ts'
import { layTemplatePages } from '../../../src/papers/fullSize/layTemplatePages.ts'
import { barlow, sampleTemplate, sheetChoice } from '../../papers/fullSize/sampleTemplate.ts'
import { CUTAWAY } from '../../papers/samplePlans.ts'
import { STEEL_STRING } from '../../generators/demoModels.ts'
import { distanceMm, hasPoppler, type ReadPdf, readPdf } from './poppler.ts'

const opened: ReadPdf[] = []
afterAll(() => opened.forEach(({ close }) => close()))

/** What a template comes out as on one large sheet: its lines in the frame of the plan, and its words by their height on the sheet. */
async function printed(plan: Plan, name: 'outlineWhole' | 'bracingPlan', of: string | null) {
  const drawing = templateDrawingOf({ name, of }, compute(plan), plan, USUAL_JIGS)
  const pages = layTemplatePages(sampleTemplate({ drawing }), sheetChoice('A0'))
  expect(pages.length).toBe(1)
  const mark = pages[0]!.blocks[0]!.marks[0]!
  if (mark.kind !== 'plot') throw new Error('a tile begins with its plot')
  const read = readPdf(await writePdf(pages, { fonts: barlow(), title: name, dateIso: '2027-03-12' }))
  opened.push(read)
  const inPlan = ({ x, y }: Point): Point => ({ x: x - mark.xMm + mark.fromXMm, y: y - mark.yMm + mark.fromYMm })
  const strokes = read.strokes(1).map((stroke) => ({ ...stroke, points: stroke.points.map(inPlan) }))
  return { strokes, words: read.words(1) }
}

const handed = (plan: Plan, hand: Plan['handed']): Plan => ({ ...plan, handed: hand })

describe.runIf(hasPoppler())('on paper', () => {
  test.each([
    ['right', 1],
    ['left', -1],
  ] as const)('a cutaway is on the treble side of a %s-handed body', async (hand, treble) => {
    const { strokes, words } = await printed(handed(CUTAWAY, hand), 'outlineWhole', null)
    const cut = strokes.filter(({ penMm }) => Math.abs(penMm - 0.35) < 0.002).flatMap(({ points }) => points)
    // Near the neck end the wood of a cutaway is gone: bass is wide there, treble narrow. Right-handed the treble side lies below.
    const lengthMm = CUTAWAY.outline.lengthMm!
    const near = cut.filter(({ x }) => Math.abs(x - (lengthMm - 12)) < 6).map(({ y }) => y * treble)
    expect(near.length).toBeGreaterThan(10)
    expect(Math.max(...near)).toBeLessThan(-Math.min(...near) - 40)
    const heightOf = (word: string) => words.find(({ text }) => text === word)!.yMm
    expect(Math.sign(heightOf('TREBLE') - heightOf('BASS'))).toBe(treble)
  })

  test.each([
    ['right', -1],
    ['left', 1],
  ] as const)('a brace on the treble side of a %s-handed top lies there, seen from inside', async (hand, treble) => {
    const [some] = Object.values(STEEL_STRING.plan.bracing.braces)
    const end = { ...some!.from, stops: 'here', side: 'treble', taper: 'none' } as const
    const brace = {
      ...some!,
      plate: 'top',
      twin: false,
      widthMm: 8,
      from: { ...end, xMm: 110, yMm: 50 },
      to: { ...end, xMm: 170, yMm: 130 },
    } as const
    const plan = { ...STEEL_STRING.plan, bracing: { ...STEEL_STRING.plan.bracing, braces: { [BRACE]: brace } } }
    const { strokes, words } = await printed(handed(plan, hand), 'bracingPlan', 'top')
    // From inside all changes sides: right-handed the treble side lies above.
    const heightOf = (word: string) => words.find(({ text }) => text === word)!.yMm
    expect(Math.sign(heightOf('TREBLE') - heightOf('BASS'))).toBe(treble)
    // Its edges run 4 mm either side of the line from 110, 50 to 170, 130: a way of 0.6, 0.8.
    const edges = [-4, 4].map((off) => ({ x: 140 + 0.8 * off, y: treble * (90 - 0.6 * off) }))
    for (const edge of edges) {
      expect(distanceMm(strokes, edge)).toBeLessThan(0.02)
      expect(distanceMm(strokes, { x: edge.x, y: -edge.y })).toBeGreaterThan(5)
    }
  })
})

const BRACE = 'b4ace000-0000-4000-8000-000000000099'

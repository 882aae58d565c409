import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Plan } from '../../src/core/plan.ts'
import { type Area, type Block, LEAST_BOX, PAPER_SIZES } from '../../src/papers/page.ts'
import { layStageSheet } from '../../src/papers/stageSheet.ts'
import type { StageSheetOrder } from '../../src/papers/stageSheetOrder.ts'
import { anyOverlap, expectInOrder, marksOf, textsOf } from './pageChecks.ts'
import { sampleOrder } from './sampleOrder.ts'
import { BY_KEY_WIDTHS, CUTAWAY, SMALL, STEEL } from './samplePlans.ts'

const INCHES = { bodyLength: 'fractionalInch', domeRadius: 'feetInches', thickness: 'thousandths' } as const
const PLANS = [
  ['steel', STEEL, 'steelString'],
  ['small', SMALL, 'small'],
  ['heel first', STEEL, 'nylonString'],
  ['by key widths', BY_KEY_WIDTHS, 'steelString'],
  ['pointed cutaway', CUTAWAY, 'steelString'],
  ['cutaway, heel first', CUTAWAY, 'nylonString'],
  ['cutaway, profile on the rim', { ...CUTAWAY, rim: { ...CUTAWAY.rim, method: 'onTheRim' } }, 'steelString'],
] as const
const CASES = PLANS.flatMap(([name, plan, family]) =>
  (['A4', 'Letter'] as const).flatMap((paperSize) =>
    (['mm', 'inches'] as const).map((units) => ({ name, plan, family, paperSize, units })),
  ),
)
const orderOf = ({ plan, family, paperSize, units }: (typeof CASES)[number]): StageSheetOrder => {
  const order = sampleOrder(plan, family, { paperSize })
  return units === 'mm' ? order : { ...order, shop: { ...order.shop, units: INCHES } }
}

describe.each(CASES)('$name on $paperSize in $units', (which) => {
  const order = orderOf(which)
  const pages = layStageSheet(order)

  test('has the size of its paper, and pages that count themselves', () => {
    for (const [i, page] of pages.entries()) {
      expect(page).toMatchObject({ ...PAPER_SIZES[which.paperSize], number: i + 1, count: pages.length })
      expect(textsOf(page)).toContain(`${i + 1} of ${pages.length}`)
    }
  })

  test('names instrument, client and revision on every page', () => {
    for (const page of pages)
      for (const text of [
        '0412',
        'Steel-string, 14 frets to the body',
        'For Tamsin Oakhollow',
        '7QK4ZD',
        '12 Mar 2027',
      ])
        expect(textsOf(page)).toContain(text)
  })

  test('keeps blocks inside the margins and apart', () => {
    expect(pages.length).toBeGreaterThan(1)
    expectInOrder(pages)
  })

  test('gives every box for the pencil at least 22 by 9 mm, and no two the same place', () => {
    for (const page of pages) {
      const boxes = marksOf(page).filter((mark) => mark.kind === 'box' && mark.purpose !== 'frame') as Area[]
      for (const box of boxes) {
        expect(box.widthMm).toBeGreaterThanOrEqual(LEAST_BOX.widthMm)
        expect(box.heightMm).toBeGreaterThanOrEqual(LEAST_BOX.heightMm)
      }
      expect(anyOverlap(boxes)).toBe(false)
    }
  })

  test('has every stage once, in order, with something after its heading on the same page', () => {
    const headings: string[] = []
    for (const page of pages)
      page.blocks.forEach((block, i) => {
        if (block.kind !== 'heading') return
        if (block.stage !== null && headings.at(-1) !== block.stage.id) headings.push(block.stage.id)
        const next = page.blocks[i + 1]
        expect(next?.kind).not.toBe('heading')
        expect(next?.kind).not.toBe('titleBlock')
      })
    expect(headings).toEqual(order.stages.map(({ id }) => id))
  })

  test('has a box for every station on each side, at each stage that brings it to a number', () => {
    const { rim, trebleRim } = order.computed.numbers
    const places = rim.length + (trebleRim.length === 0 ? rim.length : trebleRim.length)
    const stages = which.plan.rim.method === 'beforeBending' ? 3 : 2
    const stations = pages.flatMap(({ blocks }) => blocks.filter(({ kind }) => kind === 'stations'))
    const boxes = stations.flatMap(({ marks }) => marks.filter((mark) => mark.kind === 'box'))
    expect(boxes).toHaveLength(places * stages)
  })

  test('shows a sign wherever it warns, and every caution in full', () => {
    const blocks = pages.flatMap((page) => page.blocks)
    for (const block of blocks.filter(({ kind }) => kind === 'caution' || kind === 'cautionInFull')) {
      const signs = block.marks.filter(({ kind }) => kind === 'sign').length
      const titles = block.marks.filter((mark) => mark.kind === 'text' && mark.weight === 'strong').length
      expect(signs).toBeGreaterThan(0)
      expect(titles).toBe(signs)
    }
    const all = pages.flatMap(textsOf).join(' ')
    for (const fact of ['26 Nov 2019', 'IARC', '1 mg/m³', 'Appendix I', 'Lacey Act', 'safety data sheet'])
      expect(all).toContain(fact)
  })
})

test('some stages: only those, numbered as in the whole order', () => {
  const order = sampleOrder(STEEL, 'steelString')
  const stages = order.stages.filter(({ key }) => key === 'settleWood' || key === 'joinTop')
  const pages = layStageSheet({ ...order, stages })
  expect(pages.flatMap(textsOf)).toContain('Stage sheet: stages 2, 17 of 66')
  const present = new Set(pages.flatMap(({ blocks }) => blocks.flatMap(({ stage }) => stage?.key ?? [])))
  expect([...present]).toEqual(['settleWood', 'joinTop'])
})

test('no stage chosen: no page', () => {
  expect(layStageSheet({ ...sampleOrder(STEEL, 'steelString'), stages: [] })).toEqual([])
})

test('a number without a tolerance prints none; an own one stands before the shop’s', () => {
  const base = sampleOrder(STEEL, 'steelString')
  const stages = base.stages.filter(({ key }) => key === 'thicknessSides')
  const withinOf = (own: object, shop: object) => {
    const order = { ...base, stages, doc: { ...base.doc, tolerances: own }, shop: { ...base.shop, tolerances: shop } }
    return layStageSheet(order)
      .flatMap(marksOf)
      .flatMap((mark) => (mark.kind === 'figure' && mark.figure.whole.startsWith('±') ? [mark.figure.whole] : []))
  }
  expect(withinOf({}, {})).toEqual(['± 0.1'])
  expect(withinOf({}, { 'sides.thicknessMm': 0.05 })).toEqual(['± 0.05'])
  expect(withinOf({ 'sides.thicknessMm': 0.2 }, { 'sides.thicknessMm': 0.05 })).toEqual(['± 0.2'])
  expect(withinOf({ 'sides.thicknessMm': null }, { 'sides.thicknessMm': 0.05 })).toEqual([])
  expect(withinOf({}, { 'sides.thicknessMm': null })).toEqual([])
})

test('whatever the body and however long its names, pages hold what they show', () => {
  const planOf = fc.record({
    depthAtTailMm: fc.double({ min: 20, max: 180, noNaN: true }),
    depthAtNeckMm: fc.double({ min: 20, max: 180, noNaN: true }),
    radiusMm: fc.double({ min: 300, max: 20000, noNaN: true }),
    widthMm: fc.double({ min: 5, max: 300, noNaN: true }),
    stationStepMm: fc.option(fc.double({ min: 2, max: 50, noNaN: true })),
    rings: fc.integer({ min: 0, max: 7 }),
    hasCutaway: fc.boolean(),
  })
  const title = fc.string({ maxLength: 200 })
  fc.assert(
    fc.property(planOf, title, fc.constantFrom('A4' as const, 'Letter' as const), (odd, text, paperSize) => {
      const ring = STEEL.rosette.rings.b!
      const plan: Plan = {
        ...STEEL,
        outline: odd.hasCutaway ? CUTAWAY.outline : STEEL.outline,
        rim: { ...STEEL.rim, ...odd, sideThicknessMm: 2.2 },
        back: { form: 'sphere', radiusMm: odd.radiusMm },
        blocks: { ...STEEL.blocks, tail: { widthMm: odd.widthMm, thicknessMm: 20 } },
        rosette: {
          ...STEEL.rosette,
          rings: Object.fromEntries(
            Array.from({ length: odd.rings }, (_, i) => [`r${i}`, { ...ring, order: `a${i}` }]),
          ),
        },
      }
      const order = sampleOrder(plan, 'steelString', { paperSize })
      const brief = { ...order.doc.brief, client: text }
      const pages = layStageSheet({ ...order, doc: { ...order.doc, number: text.slice(0, 40), title: text, brief } })
      expectInOrder(pages)
      expect(pages.length).toBeGreaterThan(1)
    }),
    { numRuns: 12 },
  )
}, 60_000)

describe('while something cannot be built', () => {
  // A bout that turns 5 degrees too little leaves the half outline open at the neck.
  const turned = STEEL.outline.pieces.map((piece, i) =>
    i === 1 && piece.kind === 'arc' && piece.sweepDeg !== null ? { ...piece, sweepDeg: piece.sweepDeg - 5 } : piece,
  )
  const order = sampleOrder({ ...STEEL, outline: { ...STEEL.outline, pieces: turned } }, 'steelString')
  const textsOf = (block: Block | undefined) =>
    block?.marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])).join(' ') ?? ''

  test('every page says so before anything else', () => {
    const pages = layStageSheet(order)
    expect(pages.length).toBeGreaterThan(10)
    for (const page of pages) expect(textsOf(page.blocks[0])).toMatch(/Cannot be built as planned.*do not cut/su)
  })

  test('a sound instrument carries no such line', () => {
    for (const page of layStageSheet(sampleOrder(STEEL, 'steelString')))
      expect(textsOf(page.blocks[0])).not.toMatch(/Cannot be built/u)
  })
})

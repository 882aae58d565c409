import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { layBuyingList } from '../../src/papers/buyingList.ts'
import { layDrawingSet } from '../../src/papers/drawingSet.ts'
import { layLabel } from '../../src/papers/label.ts'
import { PAPER_SIZES } from '../../src/papers/page.ts'
import type { PaperOrder } from '../../src/papers/paperOrder.ts'
import { laySpecification } from '../../src/papers/specification.ts'
import { DEMO_MODELS } from '../generators/demoModels.ts'
import { nearModel } from '../generators/plans.ts'
import { expectInOrder, meetingTexts, textsOf } from './pageChecks.ts'
import { samplePaperOrder } from './samplePaperOrder.ts'
import { BY_KEY_WIDTHS, CUTAWAY, SMALL, STEEL } from './samplePlans.ts'

const INCHES = { bodyLength: 'fractionalInch', domeRadius: 'feetInches', thickness: 'thousandths' } as const
const PAPERS = {
  specification: laySpecification,
  drawings: layDrawingSet,
  'buying list': layBuyingList,
  label: layLabel,
} as const
const PLANS = [
  ...DEMO_MODELS.map(({ name, plan }) => [name, plan] as const),
  ['small', SMALL] as const,
  ['by key widths', BY_KEY_WIDTHS] as const,
  ['pointed cutaway, left-handed', { ...CUTAWAY, handed: 'left' as const }] as const,
]
const inInches = (order: PaperOrder): PaperOrder => ({
  ...order,
  paperSize: 'Letter',
  shop: { ...order.shop, units: INCHES },
})
const CASES = PLANS.flatMap(([name, plan]) => {
  const order = samplePaperOrder(plan)
  return [
    { name: `${name}, A4, mm`, order },
    { name: `${name}, Letter, inches`, order: inInches(order) },
  ]
})

describe.each(CASES)('$name', ({ order }) => {
  test.each(Object.entries(PAPERS))(
    '%s: nothing overlaps, nothing leaves its page, every page says what it is',
    (_, lay) => {
      const pages = lay(order)
      expectInOrder(pages)
      expect(pages.length).toBeGreaterThan(0)
      const { widthMm, heightMm } = PAPER_SIZES[order.paperSize]
      for (const [i, page] of pages.entries()) {
        expect([page.widthMm, page.heightMm].toSorted((a, b) => a - b)).toEqual([widthMm, heightMm])
        expect(page).toMatchObject({ size: order.paperSize, number: i + 1, count: pages.length })
        for (const text of ['0412', 'For Tamsin Oakhollow', '7QK4ZD', '12 Mar 2027', `${i + 1} of ${pages.length}`])
          expect(textsOf(page)).toContain(text)
        expect(meetingTexts(page)).toEqual([])
        // Nothing was too long for its place.
        expect(textsOf(page).filter((text) => text.endsWith('…'))).toEqual([])
      }
    },
  )
})

test('whatever the plan and however long its names, pages hold what they show', () => {
  fc.assert(
    fc.property(nearModel, fc.string({ maxLength: 200, unit: 'grapheme' }), fc.boolean(), (plan, text, isInch) => {
      const order = samplePaperOrder(plan)
      const long: PaperOrder = {
        ...order,
        doc: {
          ...order.doc,
          number: text.slice(0, 40),
          title: text,
          brief: { ...order.doc.brief, client: text, wishes: text.repeat(20), orderedOn: null, promisedOn: null },
        },
        shop: { ...order.shop, name: text },
      }
      for (const lay of Object.values(PAPERS)) {
        const pages = lay(isInch ? inInches(long) : long)
        expectInOrder(pages)
        expect(pages.flatMap(meetingTexts)).toEqual([])
      }
    }),
    { numRuns: 12 },
  )
}, 120_000)

describe('while something cannot be built', () => {
  // A bout that turns 5 degrees too little leaves the half outline open at the neck.
  const pieces = STEEL.outline.pieces.map((piece, i) =>
    i === 1 && piece.kind === 'arc' && piece.sweepDeg !== null ? { ...piece, sweepDeg: piece.sweepDeg - 5 } : piece,
  )
  const order = samplePaperOrder({ ...STEEL, outline: { ...STEEL.outline, pieces } })
  test.each(Object.entries(PAPERS))('%s: every page says so before anything else', (_, lay) => {
    for (const page of lay(order)) {
      const [first] = page.blocks
      expect(first?.kind).toBe('caution')
      expect(first?.marks.some((mark) => mark.kind === 'text' && mark.text === 'Cannot be built as planned')).toBe(true)
    }
    for (const page of lay(samplePaperOrder(STEEL))) expect(textsOf(page)).not.toContain('Cannot be built as planned')
  })
})

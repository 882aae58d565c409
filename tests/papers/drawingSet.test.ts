import { describe, expect, test } from 'vitest'
import { boxOf } from '../../src/drawing/sheet.ts'
import { overlap } from '../../src/drawing/bounds.ts'
import { layAtScale } from '../../src/drawing/layDrawing.ts'
import { layDrawingSet } from '../../src/papers/drawingSet.ts'
import type { DrawingMark, Page } from '../../src/papers/page.ts'
import { SMALL, STEEL_STRING } from '../generators/demoModels.ts'
import { sheetOf } from '../drawing/everyDrawing.ts'
import { textsOf } from './pageChecks.ts'
import { samplePaperOrder } from './samplePaperOrder.ts'
import { CUTAWAY } from './samplePlans.ts'

/** Recommended scales of ISO 5455, as mm of the instrument to one of the paper. */
const ISO_5455: Readonly<Record<string, number>> = {
  '50 : 1': 1 / 50,
  '20 : 1': 1 / 20,
  '10 : 1': 1 / 10,
  '5 : 1': 1 / 5,
  '2 : 1': 1 / 2,
  '1 : 1': 1,
  '1 : 2': 2,
  '1 : 5': 5,
  '1 : 10': 10,
  '1 : 20': 20,
  '1 : 50': 50,
}

interface Shown {
  readonly mark: DrawingMark
  readonly title: string
  readonly told: string
  readonly page: Page
}
const shownOf = (pages: readonly Page[]): Shown[] =>
  pages.flatMap((page) =>
    page.blocks.flatMap(({ marks }) => {
      const mark = marks.find((one) => one.kind === 'drawing')
      const [title, told] = marks.flatMap((one) => (one.kind === 'text' ? [one.text] : []))
      return mark === undefined ? [] : [{ mark, title: title!, told: told!, page }]
    }),
  )

describe.each([
  ['steel string', STEEL_STRING.plan],
  ['small', SMALL.plan],
  ['pointed cutaway', CUTAWAY],
])('%s', (_, plan) => {
  const pages = layDrawingSet(samplePaperOrder(plan))
  const shown = shownOf(pages)

  test('every drawing once, numbered through, each page saying which it shows', () => {
    const names = shown.map(({ title }) => /^(\d+) {2}(.+)$/u.exec(title)!)
    expect(names.map(([, number]) => Number(number))).toEqual(shown.map((__, i) => i + 1))
    expect(new Set(names.map(([, , name]) => name)).size).toBe(shown.length)
    for (const name of ['Plan of the body', 'Long section', 'Braces of the top', 'Fingerboard', 'Neck from the side'])
      expect(names.map(([, , one]) => one)).toContain(name)
    let first = 1
    for (const page of pages) {
      const count = page.blocks.filter(({ kind }) => kind === 'sheetDrawing').length
      const last = first + count - 1
      expect(textsOf(page)).toContain(
        `Shop drawings: ${first === last ? first : `${first} to ${last}`} of ${shown.length}`,
      )
      first = last + 1
    }
  })

  test('each at a recommended scale of ISO 5455, which is what it says and what it has', () => {
    for (const { mark, told, page } of shown) {
      const ratio = /scale (\d+ : \d+)$/u.exec(told)?.[1] ?? ''
      const { box, mmPerUnit } = mark.laid
      expect(ISO_5455[ratio]).toBe(mmPerUnit)
      expect(mark.widthMm * mmPerUnit).toBeCloseTo(box.maxX - box.minX, 9)
      expect(mark.heightMm * mmPerUnit).toBeCloseTo(box.maxY - box.minY, 9)
      const scaleLine = textsOf(page).filter((text) => text.startsWith('Units:') || /scale|drawings\./u.test(text))
      expect(scaleLine.join(' ')).toMatch(/scale \d+ : \d+\.|scales at the drawings\./u)
    }
  })

  test('none would fit at the next larger scale, standing or lying', () => {
    const scales = Object.values(ISO_5455).filter((scale) => scale >= 1 / 5)
    for (const { mark } of shown) {
      const larger = scales[scales.indexOf(mark.laid.mmPerUnit) - 1]
      if (larger === undefined) continue
      const { box } = layAtScale(mark.drawing, sheetOf(1000, null, 2.6), larger)
      const [w, h] = [(box.maxX - box.minX) / larger, (box.maxY - box.minY) / larger]
      // A4 less margins of 12 mm, the title block of 20 with 4 over it, and the caption of 8.
      const fits = (pageW: number, pageH: number) => w <= pageW - 24 && h <= pageH - 24 - 24 - 8
      expect(fits(210, 297) || fits(297, 210)).toBe(false)
    }
  })

  test('no figure or word of a drawing stands on another', () => {
    const meeting = shown.flatMap(({ mark: { laid }, title }) => {
      const texts = [
        ...laid.dimensions.map(({ figure }) => figure),
        ...laid.labels,
        ...laid.marks,
        ...laid.stations.flatMap(({ number }) => number ?? []),
      ]
      return texts.flatMap((a, i) =>
        texts.slice(i + 1).flatMap((b) => (overlap(boxOf(a), boxOf(b)) ? [`${title}: ${a.text}, ${b.text}`] : [])),
      )
    })
    expect(meeting).toEqual([])
  })
})

test('a body of 496 mm is 99.2 mm long at 1 : 5', () => {
  const [plan] = shownOf(layDrawingSet(samplePaperOrder(STEEL_STRING.plan)))
  expect(plan!.told).toBe('Seen from the front, scale 1 : 5')
  const length = plan!.mark.laid.dimensions.find(({ figured }) => figured.key === 'body.lengthMm')!
  const ends = length.ticks.map(({ at }) => at.x)
  expect((Math.max(...ends) - Math.min(...ends)) / plan!.mark.laid.mmPerUnit).toBeCloseTo(99.2, 4)
})

test('sides that differ stand each by itself', () => {
  const titles = (plan: Parameters<typeof samplePaperOrder>[0]) =>
    shownOf(layDrawingSet(samplePaperOrder(plan))).map(({ title }) => title.replace(/^\d+ {2}/u, ''))
  expect(titles(STEEL_STRING.plan).filter((title) => /blank|elevation/u.test(title))).toEqual([
    'Side elevation',
    'Treble side, flat blank',
  ])
  expect(
    titles(CUTAWAY)
      .filter((title) => /blank|elevation/u.test(title))
      .toSorted(),
  ).toEqual([
    'Bass side, flat blank',
    'Side elevation, bass side',
    'Side elevation, treble side',
    'Treble side from the horn on, flat blank',
    'Treble side, flat blank',
  ])
})

test('for a left hand treble lies above on the plan, and below on the braces of the top seen from inside', () => {
  const marksOf = (handed: 'right' | 'left') =>
    new Map(
      shownOf(layDrawingSet(samplePaperOrder({ ...STEEL_STRING.plan, handed }))).map(({ mark }) => [
        mark.drawing.name,
        mark.drawing.marks,
      ]),
    )
  const [right, left] = [marksOf('right'), marksOf('left')]
  expect([right.get('plan')?.bottom, left.get('plan')?.bottom]).toEqual(['treble', 'bass'])
  expect([right.get('bracingTop')?.top, left.get('bracingTop')?.top]).toEqual(['treble', 'bass'])
})

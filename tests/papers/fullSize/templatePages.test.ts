import { describe, expect, test } from 'vitest'
import { overlap } from '../../../src/drawing/bounds.ts'
import type { Drawing } from '../../../src/drawing/drawing.ts'
import { rectangle } from '../../../src/drawing/line.ts'
import type { SheetChoice, TemplateOrder } from '../../../src/papers/fullSize/fullSizeOrder.ts'
import { letteringBox } from '../../../src/papers/fullSize/ink.ts'
import { layTemplatePages } from '../../../src/papers/fullSize/layTemplatePages.ts'
import { templatePlot } from '../../../src/papers/fullSize/templatePlot.ts'
import { tileName } from '../../../src/papers/fullSize/tileOnPage.ts'
import type { Area, Block, Page, PlotMark, RuleMark, SheetSize } from '../../../src/papers/page.ts'
import { textWidthMm } from '../../../src/papers/textWidth.ts'
import { sampleTemplate, sheetChoice } from './sampleTemplate.ts'

const boundsOf = ({ xMm, yMm, widthMm, heightMm }: Area) => ({
  minX: xMm,
  minY: yMm,
  maxX: xMm + widthMm,
  maxY: yMm + heightMm,
})
const blockOf = (page: Page, kind: Block['kind']): Block => page.blocks.find((block) => block.kind === kind)!
const plotOf = (page: Page): PlotMark => blockOf(page, 'tile').marks.find((mark) => mark.kind === 'plot')!
const textsOf = (page: Page) => page.blocks.flatMap(({ marks }) => marks.filter((mark) => mark.kind === 'text'))

/** A bare board to cut out. */
const board = (widthMm: number, heightMm: number, changes: Partial<Drawing> = {}): Drawing => ({
  name: 'contourBoard',
  seenFrom: 'face',
  bounds: { minX: 0, minY: 0, maxX: widthMm, maxY: heightMm },
  heightsTimes: 1,
  marks: {},
  shapes: [{ kind: 'path', role: 'cut', commands: rectangle(0, 0, widthMm, heightMm) }],
  ...changes,
})

const LONG_NAMES: Partial<TemplateOrder> = {
  title: 'Inside caul for the body of the instrument, treble half with the cutaway',
  doc: { number: '2027-0412-B', title: 'Steel-string for Tamsin Oakhollow, fourteen frets to the body, deep cutaway' },
}
const CASES: [string, TemplateOrder, SheetChoice][] = (
  ['A4', 'Letter', 'A3', 'Tabloid', 'A1', 'A0', 'roll'] as const satisfies readonly SheetSize[]
).flatMap((size): [string, TemplateOrder, SheetChoice][] => [
  [size, sampleTemplate(), sheetChoice(size)],
  [
    `${size}, long names, a printer far off, a wide overlap`,
    sampleTemplate(LONG_NAMES),
    sheetChoice(size, { overlapMm: 25, boxMeasuredMm: { across: 90, along: 110 } }),
  ],
  [`${size}, a narrow roll`, sampleTemplate(), sheetChoice(size, { rollWidthMm: 200 })],
  [`${size}, a long board`, sampleTemplate({ drawing: board(900, 60) }), sheetChoice(size)],
])

describe.each(CASES)('a template on %s', (_name, order, choice) => {
  const pages = layTemplatePages(order, choice)

  test('has its blocks within the page and apart from each other', () => {
    for (const { widthMm, heightMm, blocks } of pages) {
      blocks.forEach(({ kind, area }, i) => {
        const bounds = boundsOf(area)
        expect(bounds.minX, kind).toBeGreaterThanOrEqual(3)
        expect(bounds.minY, kind).toBeGreaterThanOrEqual(3)
        expect(bounds.maxX, kind).toBeLessThanOrEqual(widthMm - 3)
        expect(bounds.maxY, kind).toBeLessThanOrEqual(heightMm - 3)
        for (const other of blocks.slice(i + 1))
          expect(overlap(bounds, boundsOf(other.area)), `${kind}, ${other.kind}`).toBe(false)
      })
    }
  })

  test('has every mark inside its block, and texts that do not run into each other', () => {
    for (const page of pages)
      for (const { kind, area, marks } of page.blocks) {
        const room = boundsOf(area)
        const holds = (x: number, y: number) =>
          x >= room.minX - 1e-6 && x <= room.maxX + 1e-6 && y >= room.minY - 1e-6 && y <= room.maxY + 1e-6
        const lines = marks.flatMap((mark) => {
          if (mark.kind !== 'text') return []
          const width = textWidthMm(mark.text, mark.sizePt, mark.weight)
          const minX = mark.xMm - (mark.anchor === 'start' ? 0 : mark.anchor === 'end' ? width : width / 2)
          return [{ minX, maxX: minX + width, minY: mark.yMm - mark.sizePt * 0.26, maxY: mark.yMm + 0.3 }]
        })
        for (const [i, line] of lines.entries()) {
          expect(holds(line.minX, line.minY) && holds(line.maxX, line.maxY), `${kind} ${i}`).toBe(true)
          for (const other of lines.slice(i + 1)) expect(overlap(line, other)).toBe(false)
        }
        for (const mark of marks) {
          if (mark.kind === 'rule')
            expect(holds(mark.fromXMm, mark.fromYMm) && holds(mark.toXMm, mark.toYMm), kind).toBe(true)
          if (mark.kind === 'box' || mark.kind === 'plot') {
            const own = boundsOf(mark)
            expect(holds(own.minX, own.minY) && holds(own.maxX, own.maxY), kind).toBe(true)
          }
        }
      }
  })

  test('leaves no word off what it says at the foot', () => {
    for (const page of pages) {
      const said = textsOf(page)
        .map(({ text }) => text)
        .join(' ')
        .replaceAll(/\s+/g, ' ')
      const { title, doc } = order
      for (const text of [title, doc.number, doc.title, order.revisionCode, `Page ${page.number} of ${page.count}`])
        expect(said).toContain(text)
      expect(said).not.toContain('…')
    }
  })

  test('shows every lettering of the plot, whole on some sheet', () => {
    const plot = templatePlot(order)
    const shown = pages.flatMap((page) => {
      const { fromXMm, fromYMm, widthMm, heightMm, timesAcross, timesAlong, plot: own } = plotOf(page)
      const window = {
        minX: fromXMm,
        minY: fromYMm,
        maxX: fromXMm + widthMm / timesAcross,
        maxY: fromYMm + heightMm / timesAlong,
      }
      return own.letterings.map((one) => {
        const box = letteringBox(one)
        const isWhole =
          box.minX >= window.minX && box.maxX <= window.maxX && box.minY >= window.minY && box.maxY <= window.maxY
        return { text: one.text, isWhole }
      })
    })
    for (const { text } of plot.letterings)
      expect(
        shown.some((one) => one.text === text && one.isWhole),
        text,
      ).toBe(true)
    expect(shown.filter(({ isWhole }) => !isWhole)).toEqual([])
  })
})

/** The crosses on a tile, by the middle of their long level arm, in mm of the plot. */
function crossesOf(page: Page): { x: number; y: number }[] {
  const { xMm, yMm, fromXMm, fromYMm, timesAcross, timesAlong } = plotOf(page)
  return blockOf(page, 'tile')
    .marks.filter(
      (mark): mark is RuleMark => mark.kind === 'rule' && mark.fromYMm === mark.toYMm && mark.toXMm - mark.fromXMm > 2,
    )
    .map(({ fromXMm: left, toXMm: right, fromYMm: y }) => ({
      x: fromXMm + ((left + right) / 2 - xMm) / timesAcross,
      y: fromYMm + (y - yMm) / timesAlong,
    }))
}

describe.each(['A4', 'Letter', 'A3'] as const)('sheets of %s laid together', (size) => {
  const measured = { across: 99.2, along: 100.7 }
  const pages = layTemplatePages(sampleTemplate(), sheetChoice(size, { boxMeasuredMm: measured }))
  const windowOf = (page: Page) => {
    const { fromXMm, fromYMm, widthMm, heightMm } = plotOf(page)
    return {
      minX: fromXMm,
      minY: fromYMm,
      maxX: fromXMm + (widthMm * measured.across) / 100,
      maxY: fromYMm + (heightMm * measured.along) / 100,
    }
  }

  test('have their crosses at the same places of the plot, two on every seam', () => {
    let seams = 0
    pages.forEach((page, i) => {
      for (const other of pages.slice(i + 1)) {
        const [a, b] = [windowOf(page), windowOf(other)]
        const shared = {
          minX: Math.max(a.minX, b.minX),
          minY: Math.max(a.minY, b.minY),
          maxX: Math.min(a.maxX, b.maxX),
          maxY: Math.min(a.maxY, b.maxY),
        }
        const [w, h] = [shared.maxX - shared.minX, shared.maxY - shared.minY]
        // Corners that four sheets share are no seams.
        if (Math.min(w, h) < 5 || Math.max(w, h) < 50) continue
        seams += 1
        const there = (of: Page) =>
          crossesOf(of).filter(({ x, y }) => x > shared.minX && x < shared.maxX && y > shared.minY && y < shared.maxY)
        const [mine, its] = [there(page), there(other)]
        expect(mine.length).toBeGreaterThanOrEqual(2)
        for (const cross of mine) expect(its.some(({ x, y }) => Math.hypot(x - cross.x, y - cross.y) < 1e-6)).toBe(true)
        expect(its.length).toBe(mine.length)
      }
    })
    expect(seams).toBeGreaterThanOrEqual(pages.length - 1)
  })

  test('say where they lie, and fill their own place on the map', () => {
    const names = pages.map(
      (page) =>
        textsOf(page)
          .map(({ text }) => text)
          .join(' ')
          .match(/([A-Z]+\d+): row (\d+) of (\d+), column (\d+) of (\d+)/)!,
    )
    expect(new Set(names.map(([, name]) => name)).size).toBe(pages.length)
    pages.forEach((page, i) => {
      const [, name, row, , column] = names[i]!
      expect(name).toBe(`${'ABCDEF'[Number(row) - 1]}${column}`)
      const map = blockOf(page, 'tileMap').marks
      const cells = map.filter((mark) => mark.kind === 'box')
      expect(cells.length).toBe(pages.length)
      const [own, ...others] = cells.toSorted((a, b) => b.penMm - a.penMm)
      const hatches = map.filter((mark) => mark.kind === 'rule')
      for (const { fromXMm, toXMm, fromYMm } of hatches)
        expect(
          fromXMm >= own!.xMm - 1e-6 &&
            toXMm <= own!.xMm + own!.widthMm + 1e-6 &&
            fromYMm > own!.yMm &&
            fromYMm < own!.yMm + own!.heightMm,
        ).toBe(true)
      expect(hatches.length).toBeGreaterThan(3)
      // Its cell lies among the others as the tile does among the tiles.
      const leftOf = others.filter(({ xMm }) => xMm < own!.xMm - 0.5).length
      const expected = names.filter((other) => Number(other[4]) < Number(column)).length
      expect(leftOf).toBe(expected)
    })
  })
})

describe('rows', () => {
  test.each([
    [0, 'A1'],
    [25, 'Z1'],
    [26, 'AA1'],
    [51, 'AZ1'],
    [52, 'BA1'],
  ])('%i is %s', (row, name) => expect(tileName({ row, column: 0 })).toBe(name))
})

describe('the title of a template', () => {
  const linesOf = (drawing: Drawing) => {
    const plot = templatePlot(sampleTemplate({ drawing, title: 'Contour board' }))
    return { plot, title: plot.letterings.map((one) => ({ ...one, box: letteringBox(one) })) }
  }
  const SAID = [
    'Contour board',
    '0412',
    'Steel-string, 14 frets to the body',
    '7QK4ZD',
    '12 Mar 2027',
    'Full size, 1 : 1',
    'mm',
    'Seen on its face',
    'Lay it on the wood',
  ]

  test.each([
    ['in its room', board(200, 120, { titleRoom: { minX: 20, minY: 20, maxX: 180, maxY: 100 } }), 4, 0],
    ['smaller where the room is small', board(90, 40, { titleRoom: { minX: 5, minY: 5, maxX: 85, maxY: 35 } }), 3.9, 0],
    [
      'read from the right where it is narrow',
      board(30, 220, { titleRoom: { minX: 4, minY: 10, maxX: 26, maxY: 210 } }),
      4,
      -90,
    ],
  ] as const)('stands %s', (_how, drawing, mostMm, turnDeg) => {
    const { plot, title } = linesOf(drawing)
    const room = drawing.titleRoom!
    for (const { box, sizeMm, turnDeg: turned } of title) {
      expect(box.minX >= room.minX && box.maxX <= room.maxX && box.minY >= room.minY && box.maxY <= room.maxY).toBe(
        true,
      )
      expect(sizeMm).toBeGreaterThanOrEqual(2.2 - 1e-9)
      expect(turned).toBe(turnDeg)
    }
    expect(Math.min(...title.map(({ sizeMm }) => sizeMm))).toBeLessThanOrEqual(mostMm + 1e-9)
    const said = title.map(({ text }) => text).join(' ')
    for (const text of SAID) expect(said.replaceAll(/\s+/g, ' ')).toContain(text)
    expect(plot.box.maxX).toBeLessThan(drawing.bounds.maxX + 4)
  })

  test('stands under the piece where it has no room in it, and the box holds it', () => {
    const { plot, title } = linesOf(board(30, 25, { titleRoom: { minX: 2, minY: 2, maxX: 28, maxY: 23 } }))
    for (const { box } of title) {
      expect(box.minY).toBeGreaterThan(25)
      expect(box.minX >= plot.box.minX && box.maxX <= plot.box.maxX && box.maxY <= plot.box.maxY).toBe(true)
    }
    expect(title.map(({ text }) => text).join(' ')).toContain('7QK4ZD')
  })

  test('keeps clear of what is drawn in its room', () => {
    const bar = rectangle(0, 55, 200, 57)
    const drawing = board(200, 120, { titleRoom: { minX: 5, minY: 5, maxX: 195, maxY: 115 } })
    const shapes = [...drawing.shapes, { kind: 'path', role: 'edge', commands: bar } as const]
    for (const { box } of linesOf({ ...drawing, shapes }).title)
      expect(overlap(box, { minX: 0, minY: 55, maxX: 200, maxY: 57 })).toBe(false)
  })

  test('is in inches for a shop that measures in inches, without a fraction', () => {
    const units = { bodyLength: 'fractionalInch', domeRadius: 'feetInches', thickness: 'thousandths' } as const
    const { letterings } = templatePlot(sampleTemplate({ shop: { units, name: '' } }))
    const texts = letterings.map(({ text }) => text)
    expect(texts.join(' ')).toContain('Figures in inches')
    expect(texts.filter((text) => /\d\/\d/.test(text))).toEqual([])
  })
})

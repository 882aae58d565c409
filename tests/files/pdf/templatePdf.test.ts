import { afterAll, describe, expect, test } from 'vitest'
import type { Point } from '../../../src/core/geometry/point.ts'
import { USUAL_JIGS } from '../../../src/core/jigs.ts'
import { templateDrawingOf } from '../../../src/drawing/templateDrawingOf.ts'
import { writePdf } from '../../../src/files/pdf/writePdf.ts'
import { layTemplatePages } from '../../../src/papers/fullSize/layTemplatePages.ts'
import { type Page, type PlotMark, SHEET_SIZES } from '../../../src/papers/page.ts'
import { traceChain } from '../../core/trace.ts'
import { barlow, COMPUTED, sampleTemplate, sheetChoice } from '../../papers/fullSize/sampleTemplate.ts'
import { STEEL } from '../../papers/samplePlans.ts'
import { distanceMm, hasPoppler, type ReadPdf, readPdf, type ReadStroke } from './poppler.ts'

const fonts = barlow()
const write = (pages: readonly Page[], dateIso = '2027-03-12') =>
  writePdf(pages, { fonts, title: 'Templates', dateIso })

/** The outline of the plan by centres and spokes, both halves, y down. */
const outline: readonly Point[] = traceChain(STEEL.outline.pieces, 0.5).flatMap(({ x, y }) => [
  { x, y },
  { x, y: -y },
])

/** The steel-string's plan is drawn within the plot; its plot on a page. */
const plotOn = (page: Page): PlotMark =>
  page.blocks.flatMap(({ marks }) => marks.filter((mark) => mark.kind === 'plot'))[0]!

function onPage(mark: PlotMark, { x, y }: Point): Point {
  return {
    x: mark.xMm + (x - mark.fromXMm) * mark.timesAcross,
    y: mark.yMm + (y - mark.fromYMm) * mark.timesAlong,
  }
}

const lengthsOf = (strokes: readonly ReadStroke[], penMm: number) =>
  strokes
    .filter((stroke) => Math.abs(stroke.penMm - penMm) < 0.002)
    .map(({ points }) => ({
      widthMm: Math.max(...points.map(({ x }) => x)) - Math.min(...points.map(({ x }) => x)),
      heightMm: Math.max(...points.map(({ y }) => y)) - Math.min(...points.map(({ y }) => y)),
    }))

const canRead = hasPoppler()
const opened: ReadPdf[] = []
const open = (bytes: Uint8Array) => {
  const read = readPdf(bytes)
  opened.push(read)
  return read
}
afterAll(() => opened.forEach(({ close }) => close()))

function expectOutline(pages: readonly Page[], read: ReadPdf): void {
  const shown = new Set<number>()
  let twice = 0
  pages.forEach((page, i) => {
    const mark = plotOn(page)
    const wide = read.strokes(i + 1).filter(({ penMm }) => Math.abs(penMm - 0.35) < 0.002)
    outline.forEach((point, n) => {
      const at = onPage(mark, point)
      const isShown =
        at.x >= mark.xMm && at.y >= mark.yMm && at.x <= mark.xMm + mark.widthMm && at.y <= mark.yMm + mark.heightMm
      if (!isShown) return
      if (shown.has(n)) twice += 1
      shown.add(n)
      expect(distanceMm(wide, at), `page ${i + 1}, ${point.x} ${point.y}`).toBeLessThan(0.02)
    })
  })
  expect(shown.size).toBe(outline.length)
  // The seams: what two sheets share is on both.
  expect(twice).toBeGreaterThan(50)
}

test('the same pages on the same day give the same bytes, on another day others', async () => {
  const pages = layTemplatePages(sampleTemplate(), sheetChoice('A3'))
  const bytes = await write(pages)
  expect(Buffer.from(await write(pages)).equals(bytes)).toBe(true)
  expect(Buffer.from(await write(pages, '2027-03-13')).equals(bytes)).toBe(false)
})

test('tells after each page', async () => {
  const told: [number, number][] = []
  const pages = layTemplatePages(sampleTemplate(), sheetChoice('A3'))
  await writePdf(pages, { fonts, title: '', dateIso: '2027-03-12', onPage: (done, of) => void told.push([done, of]) })
  expect(told).toEqual([1, 2, 3, 4].map((done) => [done, 4]))
})

describe.runIf(canRead)('a whole outline on Letter, read by others', () => {
  test('has every point of the outline within 0.02 mm on each sheet that shows it', async () => {
    const drawing = templateDrawingOf({ name: 'outlineWhole', of: null }, COMPUTED, STEEL, USUAL_JIGS)
    const pages = layTemplatePages(sampleTemplate({ drawing }), sheetChoice('Letter', { overlapMm: 15 }))
    expectOutline(pages, open(await write(pages)))
  })
})

describe.runIf(canRead)('a body on A4, read by others', async () => {
  const pages = layTemplatePages(sampleTemplate(), sheetChoice('A4'))
  const read = canRead ? open(await write(pages)) : null!

  test('every point of the outline lies on its line within 0.02 mm, on each sheet that shows it', () => {
    expectOutline(pages, read)
  })

  test('the measuring box is 100 by 20 mm on every sheet, the scale under it 4 in, the one at the edge 100 mm', () => {
    pages.forEach((_, i) => {
      const fine = lengthsOf(read.strokes(i + 1), 0.15)
      const has = (widthMm: number, heightMm: number) =>
        fine.some((one) => Math.abs(one.widthMm - widthMm) < 0.005 && Math.abs(one.heightMm - heightMm) < 0.005)
      expect([has(100, 20), has(101.6, 0), has(0, 100)], `page ${i + 1}`).toEqual([true, true, true])
    })
  })

  test('the box measures 100 by 20 mm in dots at 300 to the inch', () => {
    const raster = read.raster(1, 300)
    const dot = 25.4 / 300
    const isDark = (x: number, y: number) => raster.at(x, y) < 160
    // Just under the box's upper line, left of all lettering: from its left line to its right one.
    const y = Math.floor((297 - 12 - 30 + 0.8) / dot)
    const dark = Array.from({ length: raster.width }, (_, x) => x).filter((x) => isDark(x, y))
    const [left, right] = [dark[0]!, dark.filter((x) => x < 130 / dot).at(-1)!]
    expect(Math.abs((right - left) * dot - 100)).toBeLessThan(0.25)
    const x = Math.floor((12 + 99) / dot)
    const rows = Array.from({ length: Math.floor(24 / dot) }, (_, n) => Math.floor((297 - 12 - 30 - 1) / dot) + n)
    const lines = rows.filter((row) => isDark(x, row))
    expect(Math.abs((lines.filter((row) => row < lines[0]! + 21 / dot).at(-1)! - lines[0]!) * dot - 20)).toBeLessThan(
      0.25,
    )
  })

  test('nothing of a tile runs into the margin', () => {
    const raster = read.raster(2, 100)
    const column = (mm: number) => Math.floor((mm / 25.4) * 100)
    const dark = Array.from({ length: raster.height }, (_, y) => y).filter((y) =>
      Array.from({ length: column(3) }, (_, x) => column(206) + x).some(
        (x) => x < raster.width && raster.at(x, y) < 200,
      ),
    )
    expect(dark).toEqual([])
  })

  test('says which sheet of which template of which instrument it is', () => {
    const { number, title } = sampleTemplate().doc
    pages.forEach((page, i) => {
      const text = read.text(i + 1)
      for (const said of ['Measure this box before you cut', '100 mm', '4 in', number, title, '7QK4ZD', '12 Mar 2027'])
        expect(text).toContain(said)
      expect(text).toContain(`Page ${page.number} of ${pages.length}, print at 100 %`)
      expect(text).toMatch(/[AB][1-4]: row [12] of 2, column [1-4] of [34]/)
    })
  })

  test('has its fonts in it, and asks not to be fitted to the sheet', async () => {
    const rows = read.fonts
      .split('\n')
      .slice(2)
      .filter((row) => row !== '')
    expect(rows.length).toBe(2)
    for (const row of rows) expect(row).toMatch(/^[A-Z]{6}\+Barlow-\w+ +CID TrueType +Identity-H +yes yes yes/)
    const raw = Buffer.from(await write(pages)).toString('latin1')
    expect(raw).toContain('/PrintScaling /None')
    expect(raw).toContain('/DisplayDocTitle true')
  })
})

describe.runIf(canRead)('pages', () => {
  test.each(['A4', 'Letter', 'A3', 'Tabloid', 'A1', 'A0'] as const)(
    'of %s are its size, upright or lying',
    async (size) => {
      const { info } = open(await write(layTemplatePages(sampleTemplate(), sheetChoice(size))))
      const points = [SHEET_SIZES[size].widthMm, SHEET_SIZES[size].heightMm].map((mm) => (mm / 25.4) * 72)
      const sizes = [...info.matchAll(/Page +\d+ size: +([\d.]+) x ([\d.]+) pts/g)]
      expect(sizes.length).toBeGreaterThan(0)
      for (const [, width, height] of sizes) {
        const read = [Number(width), Number(height)].toSorted((a, b) => a - b)
        read.forEach((side, i) => expect(Math.abs(side - points[i]!)).toBeLessThan(0.01))
      }
    },
  )

  test('of a roll are as wide as it is', async () => {
    const { info } = open(await write(layTemplatePages(sampleTemplate(), sheetChoice('roll', { rollWidthMm: 610 }))))
    expect(info).toMatch(new RegExp(`Page +1 size: +${((610 / 25.4) * 72).toFixed(2).slice(0, 6)}`))
  })
})

describe.runIf(canRead)('a printer known to be off', () => {
  test('gets box and plot set so much larger as it prints them smaller', async () => {
    const measured = { across: 99.5, along: 100.4 }
    const order = sampleTemplate()
    const pages = layTemplatePages(order, sheetChoice('A1', { boxMeasuredMm: measured }))
    const read = open(await write(pages))
    const strokes = read.strokes(1)
    const isLying = pages[0]!.widthMm > pages[0]!.heightMm
    expect(isLying).toBe(false)
    // As it comes out of that printer.
    const box = lengthsOf(strokes, 0.15).map(({ widthMm, heightMm }) => ({
      widthMm: (widthMm * measured.across) / 100,
      heightMm: (heightMm * measured.along) / 100,
    }))
    expect(box.some((one) => Math.abs(one.widthMm - 100) < 0.005 && Math.abs(one.heightMm - 20) < 0.005)).toBe(true)
    expect(box.some((one) => one.widthMm < 0.005 && Math.abs(one.heightMm - 100) < 0.005)).toBe(true)
    const mark = plotOn(pages[0]!)
    const printed = (point: Point) => ({ x: (point.x * measured.across) / 100, y: (point.y * measured.along) / 100 })
    const lines = strokes
      .filter(({ penMm }) => Math.abs(penMm - 0.35) < 0.005)
      .map((stroke) => ({ ...stroke, points: stroke.points.map(printed) }))
    const corner = printed({ x: mark.xMm, y: mark.yMm })
    for (const point of outline.filter((_, i) => i % 7 === 0)) {
      const at = { x: corner.x + point.x - mark.fromXMm, y: corner.y + point.y - mark.fromYMm }
      expect(distanceMm(lines, at)).toBeLessThan(0.02)
    }
    expect(read.text(1)).toContain('× 1.0050 across, × 0.9960 along')
  })
})

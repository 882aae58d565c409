import { afterAll, describe, expect, test } from 'vitest'
import { SMALL_PENS } from '../../../src/drawing/pens.ts'
import type { Plot } from '../../../src/drawing/plot.ts'
import { formatLength } from '../../../src/format/formatLength.ts'
import { unpackedFont } from '../../../src/files/pdf/unpackedFont.ts'
import { writePdf } from '../../../src/files/pdf/writePdf.ts'
import type { Mark, Page } from '../../../src/papers/page.ts'
import { layStageSheet } from '../../../src/papers/stageSheet.ts'
import { textWidthMm } from '../../../src/papers/textWidth.ts'
import { barlow } from '../../papers/fullSize/sampleTemplate.ts'
import { sampleOrder } from '../../papers/sampleOrder.ts'
import { STEEL } from '../../papers/samplePlans.ts'
import { hasPoppler, type ReadPdf, readPdf } from './poppler.ts'

const fonts = barlow()
const AREA = { xMm: 10, yMm: 10, widthMm: 190, heightMm: 270 }
const pageOf = (marks: readonly Mark[]): Page => ({
  size: 'A4',
  widthMm: 210,
  heightMm: 297,
  number: 1,
  count: 1,
  blocks: [{ kind: 'note', area: AREA, stage: null, marks }],
})
const text = (line: string, yMm: number, weight: 'plain' | 'strong' = 'plain', xMm = 20): Mark => ({
  kind: 'text',
  text: line,
  xMm,
  yMm,
  sizePt: 12,
  weight,
  anchor: 'start',
})
const plotMark = (plot: Partial<Plot>): Mark => ({
  kind: 'plot',
  plot: { box: { minX: 0, minY: 0, maxX: 100, maxY: 100 }, strokes: [], letterings: [], ...plot },
  xMm: 20,
  yMm: 20,
  widthMm: 100,
  heightMm: 100,
  fromXMm: 0,
  fromYMm: 0,
  timesAcross: 1,
  timesAlong: 1,
})
const line = (y: number, more: Partial<Plot['strokes'][number]> = {}): Plot['strokes'][number] => ({
  layer: 'cut',
  commands: [
    ['M', 0, y],
    ['L', 100, y],
  ],
  penMm: 0.5,
  dashesMm: [],
  covers: false,
  ...more,
})

const opened: ReadPdf[] = []
const written = async (pages: readonly Page[], own = fonts) => {
  const read = readPdf(await writePdf(pages, { fonts: own, title: 'Marks', dateIso: '2027-03-12' }))
  opened.push(read)
  return read
}
afterAll(() => opened.forEach(({ close }) => close()))

test('a font that is not packed is taken as it is', () => {
  const plain = unpackedFont(fonts.plain)
  expect(unpackedFont(plain)).toBe(plain)
  // The checksum of a table that is stored right comes out as its directory says (OpenType 1.9, "Calculating checksums").
  const view = new DataView(plain.buffer)
  for (let i = 0; i < view.getUint16(4); i++) {
    const [checksum, at, length] = [16, 20, 24].map((by) => view.getUint32(by + i * 16)) as [number, number, number]
    const isHead = String.fromCharCode(...plain.subarray(12 + i * 16, 16 + i * 16)) === 'head'
    let sum = 0
    for (let word = 0; word < length; word += 4)
      if (!(isHead && word === 8)) sum = (sum + view.getUint32(at + word)) >>> 0
    expect(sum).toBe(checksum)
  }
})

describe.runIf(hasPoppler())('marks of a page, read by others', () => {
  test('every sign the papers use is printed, or a plain one for it', async () => {
    const signs = '° ± × – − ’ “ ” ² ³ ⁄ ″ … ½ · é Ø ø'
    const read = await written([
      pageOf([
        text(signs, 30),
        text(signs, 40, 'strong'),
        text('Zoë Čapková, Łódź', 50),
        text('B♭ F♯ 2\u2009mm', 60),
        text('語', 70),
      ]),
    ])
    // Gaps between signs that stand alone are for the reader to guess.
    const closed = (line: string) => line.replaceAll(/\s/g, '')
    const lines = read
      .text(1)
      .split('\n')
      .map(closed)
      .filter((one) => one !== '')
    expect(lines).toEqual([signs, signs, 'Zoë Čapková, Łódź', 'Bb F# 2 mm', '?'].map(closed))
  })

  test('no text is wider than the room the papers count for it', async () => {
    const lines = [
      'Steel-string,',
      '0123456789',
      '1111111111',
      'WAVERLEY',
      'sagittarius',
      '148.25',
      'flat-sawn',
      '“Within”',
    ]
    const read = await written([
      pageOf(lines.flatMap((one, i) => [text(one, 20 + i * 10), text(one, 25 + i * 10, 'strong')])),
    ])
    const words = read.words(1)
    expect(words.length).toBe(2 * lines.length)
    for (const { text: word, widthMm } of words)
      expect(widthMm, word).toBeLessThanOrEqual(textWidthMm(word, 12, 'strong') + 0.01)
  })

  test('digits are all as wide as each other', async () => {
    const read = await written([pageOf(['0000', '1111', '4444', '7777'].map((one, i) => text(one, 20 + i * 10)))])
    const widths = read.words(1).map(({ widthMm }) => widthMm)
    expect(Math.max(...widths) - Math.min(...widths)).toBeLessThan(0.01)
  })

  test('a text stands at its anchor', async () => {
    const read = await written([
      pageOf(
        (['start', 'middle', 'end'] as const).map(
          (anchor, i) => ({ ...text('HHHH', 50 + i * 20), xMm: 100, anchor }) as Mark,
        ),
      ),
    ])
    const raster = read.raster(1, 200)
    const dot = 25.4 / 200
    const spans = [0, 1, 2].map((i) => {
      const y = Math.floor((50 + i * 20 - 0.6) / dot)
      const dark = Array.from({ length: raster.width }, (_, x) => x).filter((x) => raster.at(x, y) < 128)
      return [dark[0]! * dot, dark.at(-1)! * dot] as const
    })
    expect(spans[0]![0]).toBeCloseTo(100.3, 0)
    expect((spans[1]![0] + spans[1]![1]) / 2).toBeCloseTo(100, 0)
    expect(spans[2]![1]).toBeCloseTo(99.7, 0)
  })

  test('a figure has its fraction, sign and unit', async () => {
    const inches = { bodyLength: 'fractionalInch', domeRadius: 'feetInches', thickness: 'thousandths' } as const
    const figure = formatLength(-3.875 * 25.4, 'bodyLength', inches)
    const read = await written([
      pageOf([{ kind: 'figure', figure, word: '', xMm: 20, yMm: 40, sizePt: 16, weight: 'strong', anchor: 'start' }]),
    ])
    expect(read.text(1).replaceAll(/\s/g, '')).toBe('−37⁄8″')
  })

  test('a plot is cut off at the edges of its area, set at its scale', async () => {
    const read = await written([
      pageOf([{ ...plotMark({ strokes: [line(50)] }), fromXMm: 60, timesAcross: 2 } as Mark]),
    ])
    const raster = read.raster(1, 100)
    const dark = Array.from({ length: raster.width }, (_, x) => x).filter(
      (x) => raster.at(x, Math.round(70 / 0.254)) < 128,
    )
    // From the area's left edge to where the line ends: 40 mm set twice as long.
    expect(dark[0]! * 0.254).toBeCloseTo(20, 0)
    expect(dark.at(-1)! * 0.254).toBeCloseTo(100, 0)
  })

  test('what covers hides what was drawn before it, and a lettering is white all round', async () => {
    const box = { commands: [['M', 40, 20], ['L', 60, 20], ['L', 60, 40], ['L', 40, 40], ['Z']] as const }
    const lettering = { text: 'O', at: { x: 20, y: 60 }, sizeMm: 10, heightMm: 7.4, turnDeg: 0 as const }
    const read = await written([
      pageOf([
        plotMark({
          strokes: [line(30), line(60, { penMm: 6 }), { ...line(0), ...box, covers: true }],
          letterings: [lettering],
        }),
      ]),
    ])
    const raster = read.raster(1, 200)
    const at = (x: number, y: number) => raster.at(Math.round((20 + x) / 0.127), Math.round((20 + y) / 0.127))
    expect([at(30, 30) < 128, at(50, 30) > 200, at(40, 30) < 128, at(70, 30) < 128]).toEqual([true, true, true, true])
    // Black bar, white round the letter, then the letter's own stroke.
    const row = Array.from({ length: 120 }, (_, i) => at(8 + i * 0.1, 60) < 128)
    const changes = row.filter((dark, i) => i > 0 && dark !== row[i - 1]).length
    expect(changes).toBeGreaterThanOrEqual(4)
  })

  test('a turned lettering is read from the right', async () => {
    const lettering = { text: 'LLLLLLLLLL', at: { x: 50, y: 50 }, sizeMm: 6, heightMm: 4.4, turnDeg: -90 as const }
    const read = await written([pageOf([plotMark({ letterings: [lettering] })])])
    const raster = read.raster(1, 100)
    const dots: [number, number][] = []
    for (let y = 0; y < raster.height; y++)
      for (let x = 0; x < raster.width; x++) if (raster.at(x, y) < 128) dots.push([x * 0.254, y * 0.254])
    const [left, right] = [Math.min(...dots.map(([x]) => x)), Math.max(...dots.map(([x]) => x))]
    const [top, bottom] = [Math.min(...dots.map(([, y]) => y)), Math.max(...dots.map(([, y]) => y))]
    expect(bottom - top).toBeGreaterThan(20)
    expect(right - left).toBeLessThan(6)
    expect(Math.abs((top + bottom) / 2 - 70)).toBeLessThan(1)
    // The feet of the letters lie to the right: there the ink is densest.
    const counts = new Map<number, number>()
    for (const [x] of dots) counts.set(x, (counts.get(x) ?? 0) + 1)
    const [densest] = [...counts].toSorted((a, b) => b[1] - a[1])
    expect(right - densest![0]).toBeLessThan(1)
  })

  test('a stage sheet says all it says on screen', async () => {
    const order = sampleOrder(STEEL, 'steelString')
    const chosen = ['chooseWood', 'thicknessSides', 'markBlanks', 'bendSides']
    const pages = layStageSheet({ ...order, stages: order.stages.filter(({ key }) => chosen.includes(key)) })
    const read = await written(pages)
    let drawn = 0
    pages.forEach((page, i) => {
      const said = read.text(i + 1).replaceAll(/\s+/g, '')
      for (const mark of page.blocks.flatMap(({ marks }) => marks))
        if (mark.kind === 'text' && mark.text.length > 4)
          expect(said, mark.text).toContain(mark.text.replaceAll(/\s+/g, '').slice(0, 12))
      // The edges of its small drawings, in their own pen.
      const edges = page.blocks.flatMap(({ marks }) =>
        marks.flatMap((mark) =>
          mark.kind === 'drawing'
            ? mark.drawing.shapes.filter((shape) => shape.kind === 'path' && shape.role === 'edge')
            : [],
        ),
      )
      drawn += edges.length
      const wide = read.strokes(i + 1).filter(({ penMm }) => Math.abs(penMm - SMALL_PENS.wide) < 0.01)
      expect(wide.length).toBeGreaterThanOrEqual(edges.length)
    })
    expect(drawn).toBeGreaterThan(1)
  })
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Bounds } from '../../../src/drawing/drawing.ts'
import type { Plot } from '../../../src/drawing/plot.ts'
import { hasInk, inkOf } from '../../../src/papers/fullSize/ink.ts'
import { type TileSheet, tiling } from '../../../src/papers/fullSize/tiling.ts'
import { SHEET_SIZES } from '../../../src/papers/page.ts'

const sheets = fc
  .record({
    size: fc.constantFrom(...Object.values(SHEET_SIZES)),
    overlapMm: fc.double({ min: 3, max: 40, noNaN: true }),
    across: fc.double({ min: 0.9, max: 1.1, noNaN: true }),
    along: fc.double({ min: 0.9, max: 1.1, noNaN: true }),
  })
  .map(
    ({ size, overlapMm, across, along }): TileSheet => ({
      ...size,
      isRoll: false,
      marginMm: 12,
      footMm: 33,
      overlapMm,
      times: { across, along },
    }),
  )
const boxes = fc
  .record({
    x: fc.double({ min: -500, max: 500, noNaN: true }),
    y: fc.double({ min: -500, max: 500, noNaN: true }),
    w: fc.double({ min: 1, max: 2500, noNaN: true }),
    h: fc.double({ min: 1, max: 1500, noNaN: true }),
  })
  .map(({ x, y, w, h }): Bounds => ({ minX: x, minY: y, maxX: x + w, maxY: y + h }))

const everywhere = () => true
const SLACK_MM = 1e-6
const holds = ({ minX, minY, maxX, maxY }: Bounds, x: number, y: number) =>
  x >= minX - SLACK_MM && x <= maxX + SLACK_MM && y >= minY - SLACK_MM && y <= maxY + SLACK_MM

describe('a box cut into sheets', () => {
  test('has every point on a sheet', () => {
    fc.assert(
      fc.property(
        boxes,
        sheets,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (box, sheet, u, v) => {
          const { tiles, rows, columns } = tiling(box, sheet, everywhere)
          expect(tiles.length).toBe(rows * columns)
          const [x, y] = [box.minX + u * (box.maxX - box.minX), box.minY + v * (box.maxY - box.minY)]
          expect(tiles.some(({ window }) => holds(window, x, y))).toBe(true)
        },
      ),
    )
  })

  test('has neighbours that share what was asked, as printed', () => {
    fc.assert(
      fc.property(boxes, sheets, (box, sheet) => {
        const { tiles } = tiling(box, sheet, everywhere)
        for (const { row, column, window } of tiles) {
          const right = tiles.find((tile) => tile.row === row && tile.column === column + 1)
          const below = tiles.find((tile) => tile.row === row + 1 && tile.column === column)
          if (right) expect((window.maxX - right.window.minX) * sheet.times.across).toBeCloseTo(sheet.overlapMm, 6)
          if (below) expect((window.maxY - below.window.minY) * sheet.times.along).toBeCloseTo(sheet.overlapMm, 6)
        }
      }),
    )
  })

  test('fills its sheets between the margins, as printed', () => {
    fc.assert(
      fc.property(boxes, sheets, (box, sheet) => {
        const { tiles, pageWidthMm, pageHeightMm } = tiling(box, sheet, everywhere)
        expect([pageWidthMm, pageHeightMm].toSorted((a, b) => a - b)).toEqual([sheet.widthMm, sheet.heightMm])
        for (const { window } of tiles) {
          expect((window.maxX - window.minX) * sheet.times.across).toBeCloseTo(pageWidthMm - 24, 6)
          expect((window.maxY - window.minY) * sheet.times.along).toBeCloseTo(pageHeightMm - 24 - 33, 6)
        }
      }),
    )
  })

  test('takes the way that needs fewer sheets, and upright where both need as many', () => {
    const a4: TileSheet = {
      ...SHEET_SIZES.A4,
      isRoll: false,
      marginMm: 12,
      footMm: 33,
      overlapMm: 10,
      times: { across: 1, along: 1 },
    }
    const of = (w: number, h: number) => {
      const { tiles, pageWidthMm } = tiling({ minX: 0, minY: 0, maxX: w, maxY: h }, a4, everywhere)
      return [tiles.length, pageWidthMm]
    }
    // Windows of 186 x 240 upright, 273 x 153 lying.
    expect(of(186, 240)).toEqual([1, 210])
    expect(of(150, 150)).toEqual([1, 210])
    expect(of(273, 153)).toEqual([1, 297])
    expect(of(186.1, 240)).toEqual([2, 210])
    expect(of(362, 240)).toEqual([2, 210])
    expect(of(536, 153)).toEqual([2, 297])
    expect(of(10, 470)).toEqual([2, 210])
    expect(of(362.1, 470)).toEqual([6, 210])
  })

  test('is one length cut off a roll, no longer than it has to be', () => {
    const roll: TileSheet = {
      widthMm: 610,
      heightMm: 5000,
      isRoll: true,
      marginMm: 12,
      footMm: 33,
      overlapMm: 10,
      times: { across: 1, along: 1 },
    }
    const of = (w: number, h: number) => tiling({ minX: 0, minY: 0, maxX: w, maxY: h }, roll, everywhere)
    expect(of(500, 400)).toMatchObject({ pageWidthMm: 610, pageHeightMm: 457, rows: 1, columns: 1 })
    // Wider than the roll: along it.
    expect(of(900, 400)).toMatchObject({ pageWidthMm: 924, pageHeightMm: 610, rows: 1, columns: 1 })
    expect(of(100, 20)).toMatchObject({ pageWidthMm: 610, pageHeightMm: 210, rows: 1, columns: 1 })
    // 900 x 800 lies two abreast: 500 and 10 shared, each no longer than the 900 that are needed.
    const two = of(900, 800)
    expect(two.tiles.length).toBe(2)
    expect(Math.max(two.pageWidthMm, two.pageHeightMm)).toBeLessThan(1000)
    // Longer than a hand can hold: cut in even lengths.
    const long = of(500, 9000)
    expect(long.rows).toBe(2)
    expect(long.pageHeightMm).toBeCloseTo((9000 + 10) / 2 + 57, 6)
  })
})

describe('sheets without ink', () => {
  const points = fc.array(
    fc.tuple(fc.double({ min: 0, max: 1200, noNaN: true }), fc.double({ min: 0, max: 900, noNaN: true })),
    {
      minLength: 4,
      maxLength: 12,
    },
  )
  /** One cubic run through the points, three at a time. */
  const plotOf = (at: readonly (readonly [number, number])[]): Plot => ({
    box: { minX: 0, minY: 0, maxX: 1200, maxY: 900 },
    strokes: [
      {
        layer: 'cut',
        penMm: 0.2,
        dashesMm: [],
        covers: false,
        commands: [
          ['M', at[0]![0], at[0]![1]],
          ...at
            .slice(3)
            .map((to, i) => ['C', at[i + 1]![0], at[i + 1]![1], at[i + 2]![0], at[i + 2]![1], to[0], to[1]] as const),
        ],
      },
    ],
    letterings: [],
  })
  /** By Bernstein's polynomials, close together. */
  const along = (at: readonly (readonly [number, number])[]): [number, number][] => {
    const out: [number, number][] = []
    let from = at[0]!
    at.slice(3).forEach((to, i) => {
      const handles = [from, at[i + 1]!, at[i + 2]!, to]
      for (let n = 0; n <= 1500; n++) {
        const t = n / 1500
        const weights = [(1 - t) ** 3, 3 * t * (1 - t) ** 2, 3 * t * t * (1 - t), t ** 3]
        out.push(
          [0, 1].map((k) => handles.reduce((sum, handle, h) => sum + weights[h]! * handle[k]!, 0)) as [number, number],
        )
      }
      from = to
    })
    return out
  }
  const sheet: TileSheet = {
    ...SHEET_SIZES.A4,
    isRoll: false,
    marginMm: 12,
    footMm: 33,
    overlapMm: 10,
    times: { across: 1, along: 1 },
  }

  test('are left out, and all ink is on one that is not', () => {
    fc.assert(
      fc.property(points, (at) => {
        const plot = plotOf(at)
        const ink = inkOf(plot)
        const { tiles } = tiling(plot.box, sheet, (part) => hasInk(ink, part))
        const line = along(at)
        expect(line.filter(([x, y]) => !tiles.some(({ window }) => holds(window, x, y)))).toEqual([])
        for (const { window } of tiles) {
          const near = {
            minX: window.minX - 0.3,
            minY: window.minY - 0.3,
            maxX: window.maxX + 0.3,
            maxY: window.maxY + 0.3,
          }
          expect(line.some(([x, y]) => holds(near, x, y))).toBe(true)
        }
      }),
      { numRuns: 20 },
    )
  })

  test('are left out inside a ring, whose box covers them', () => {
    const ring: Plot = {
      box: { minX: -600, minY: -600, maxX: 600, maxY: 600 },
      letterings: [],
      strokes: [
        {
          layer: 'cut',
          penMm: 0.25,
          dashesMm: [],
          covers: false,
          commands: [['M', 590, 0], ['A', 590, 0, 1, -590, 0], ['A', 590, 0, 1, 590, 0], ['Z']],
        },
      ],
    }
    const ink = inkOf(ring)
    const { tiles, rows, columns } = tiling(ring.box, sheet, (part) => hasInk(ink, part))
    expect(tiles.length).toBeLessThan(rows * columns - 5)
    for (const { window } of tiles) {
      const far = Math.max(
        ...[window.minX, window.maxX].flatMap((x) => [window.minY, window.maxY].map((y) => Math.hypot(x, y))),
      )
      const [x, y] = [Math.min(Math.max(0, window.minX), window.maxX), Math.min(Math.max(0, window.minY), window.maxY)]
      expect([Math.hypot(x, y) < 590.2, far > 589.8]).toEqual([true, true])
    }
  })
})

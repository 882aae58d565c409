import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { compute } from '../../../src/core/compute.ts'
import { layOutBoards, layoutPart } from '../../../src/core/wood/boardLayout.ts'
import { cutList } from '../../../src/core/wood/cutList.ts'
import { GRAINS } from '../../../src/core/wood/part.ts'
import type { LayoutPart, StockBoard } from '../../../src/core/wood/placement.ts'
import { STEEL_STRING } from '../../generators/demoModels.ts'
import { real } from '../../generators/real.ts'
import { canBeSawn, expectSound, mostFillMm2 } from './checkLayout.ts'

const board = (lengthMm: number, widthMm: number, thicknessMm = 10, id = 'board'): StockBoard => ({
  id,
  lengthMm,
  widthMm,
  thicknessMm,
})
const part = (lengthMm: number, widthMm: number, more: Partial<LayoutPart> = {}, thicknessMm = 10): LayoutPart => ({
  id: 'part',
  size: { lengthMm, widthMm, thicknessMm },
  grain: 'alongLength',
  quantity: 1,
  isBookmatched: false,
  ...more,
})
const placedCount = (layout: ReturnType<typeof layOutBoards>): number =>
  layout.boards.flatMap(({ placements }) => placements).reduce((sum, { copies }) => sum + copies, 0)

/** A chain of numbers of its own, for samples that are the same in every run. */
function seeded(seed: number): () => number {
  let state = seed
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0
    return state / 4294967296
  }
}

const boards = fc
  .array(fc.tuple(real(60, 900), real(30, 300), real(4, 60)), { minLength: 1, maxLength: 4 })
  .map((list) => list.map(([l, w, t], i) => board(l, w, t, `board ${i}`)))
const parts = fc
  .array(
    fc.record({
      size: fc.record({ lengthMm: real(10, 700), widthMm: real(5, 200), thicknessMm: real(1, 50) }),
      grain: fc.constantFrom(...GRAINS),
      quantity: fc.integer({ min: 1, max: 6 }),
      isBookmatched: fc.boolean(),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map((list) => list.map((one, i) => ({ ...one, id: `part ${i}` })))
const rules = fc.record({
  kerfMm: fc.oneof(fc.constant(0), real(0.1, 4)),
  trimMm: fc.oneof(fc.constant(0), real(0, 12)),
})

describe('the checks themselves', () => {
  test('five blocks round a middle one cannot be sawn by cuts right through', () => {
    const pinwheel = [
      { x0: 0, y0: 0, x1: 20, y1: 10 },
      { x0: 20, y0: 0, x1: 30, y1: 20 },
      { x0: 10, y0: 20, x1: 30, y1: 30 },
      { x0: 0, y0: 10, x1: 10, y1: 30 },
      { x0: 10, y0: 10, x1: 20, y1: 20 },
    ]
    expect(canBeSawn(pinwheel, 0)).toBe(false)
    expect(canBeSawn(pinwheel.slice(0, 2), 0)).toBe(true)
  })

  test('the most that can be filled, of cases done by hand', () => {
    const strip = { lengthMm: 50, widthMm: 10, mayTurn: false }
    expect(mostFillMm2([strip, strip], { lengthMm: 100, widthMm: 10 }, 0)).toBe(1000)
    expect(mostFillMm2([strip, strip], { lengthMm: 100, widthMm: 10 }, 1)).toBe(500)
    expect(mostFillMm2([{ ...strip, mayTurn: true }], { lengthMm: 10, widthMm: 50 }, 1)).toBe(500)
  })
})

describe('sound on any boards', () => {
  test('inside, a kerf apart, sawn by cuts right through, grain along, nothing lost or twice', () => {
    fc.assert(
      fc.property(boards, parts, rules, (rack, list, own) => {
        expectSound(layOutBoards(list, rack, own), list, rack, own)
      }),
      { numRuns: 100 },
    )
  })

  test('what found no room would not go into any piece that is left', () => {
    fc.assert(
      fc.property(boards, parts, rules, (rack, list, own) => {
        const layout = layOutBoards(list, rack, own)
        for (const { partId, reason } of layout.unplaced) {
          if (reason !== 'noRoom') continue
          const { size, grain, isBookmatched } = list.find(({ id }) => id === partId)!
          const neededMm = isBookmatched ? 2 * size.thicknessMm + own.kerfMm : size.thicknessMm
          layout.boards.forEach((sawn, i) => {
            if (rack[i]!.thicknessMm < neededMm) return
            for (const { lengthMm, widthMm, thicknessMm } of sawn.offcuts) {
              if (thicknessMm < rack[i]!.thicknessMm || sawn.placements.length === 0) continue
              const along = size.lengthMm < lengthMm - 1e-6 && size.widthMm < widthMm - 1e-6
              const across = size.widthMm < lengthMm - 1e-6 && size.lengthMm < widthMm - 1e-6
              expect((along && grain !== 'acrossLength') || (across && grain !== 'alongLength')).toBe(false)
            }
          })
        }
      }),
      { numRuns: 100 },
    )
  })

  test('the same boards and parts give the same layout', () => {
    fc.assert(
      fc.property(boards, parts, rules, (rack, list, own) => {
        expect(layOutBoards(list, rack, own)).toEqual(layOutBoards(structuredClone(list), structuredClone(rack), own))
      }),
      { numRuns: 20 },
    )
  })
})

describe('against every way to saw them', () => {
  /** How often the most there is was reached, and the share of it on average, of boards that do not hold everything. */
  function compared(pieces: number, samples: number): { readonly reached: number; readonly share: number } {
    const random = seeded(20261127)
    let [tight, reached, shares] = [0, 0, 0]
    for (let n = 0; n < samples; n++) {
      const rack = [board(300 + 300 * random(), 120 + 100 * random())]
      const list = Array.from({ length: pieces }, (_, i) => {
        const grain = random() < 0.5 ? ('any' as const) : ('alongLength' as const)
        return part(60 + 220 * random(), 30 + 70 * random(), { id: `part ${i}`, grain })
      })
      const kerfMm = 3 * random()
      const { partsMm3 } = layOutBoards(list, rack, { kerfMm, trimMm: 0 }).boards[0]!
      const faces = list.map(({ size, grain }) => ({ ...size, mayTurn: grain === 'any' }))
      const most = mostFillMm2(faces, rack[0]!, kerfMm)
      const share = partsMm3 / 10 / most
      expect(share).toBeLessThan(1 + 1e-9)
      if (most > faces.reduce((sum, { lengthMm, widthMm }) => sum + lengthMm * widthMm, 0) - 1) continue
      tight += 1
      shares += share
      if (share > 1 - 1e-9) reached += 1
    }
    expect(tight).toBeGreaterThan(samples / 4)
    return { reached: reached / tight, share: shares / tight }
  }

  test('up to five pieces: the most there is', () => {
    expect(compared(4, 30)).toEqual({ reached: 1, share: expect.closeTo(1, 9) })
    expect(compared(5, 30)).toEqual({ reached: 1, share: expect.closeTo(1, 9) })
  })

  test('six pieces: never more than that, nearly always it, and within half a hundredth of it on average', () => {
    const { reached, share } = compared(6, 50)
    expect(share).toBeGreaterThan(0.995)
    expect(reached).toBeGreaterThan(0.9)
  })
})

test('a whole cut list on a rack of boards', () => {
  const list = cutList(STEEL_STRING.plan, compute(STEEL_STRING.plan).numbers).map(layoutPart)
  const rack = [
    board(900, 230, 26, 'one'),
    board(1200, 160, 26, 'two'),
    board(700, 120, 45, 'three'),
    board(850, 140, 8, 'four'),
  ]
  const own = { kerfMm: 1.2, trimMm: 5 }
  const layout = layOutBoards(list, rack, own)
  expectSound(layout, list, rack, own)
  expect(placedCount(layout)).toBeGreaterThan(20)
})

describe('by hand', () => {
  const rules2 = { kerfMm: 2, trimMm: 0 }

  test('four that fill a board to the last kerf, and one less where they are a hair longer', () => {
    // 499 + 2 + 499 = 1000, 99 + 2 + 99 = 200.
    expect(placedCount(layOutBoards([part(499, 99, { quantity: 4 })], [board(1000, 200)], rules2))).toBe(4)
    expect(placedCount(layOutBoards([part(499.1, 99, { quantity: 4 })], [board(1000, 200)], rules2))).toBe(2)
  })

  test('the edge is trimmed all round first', () => {
    expect(placedCount(layOutBoards([part(480, 80)], [board(500, 100)], { kerfMm: 2, trimMm: 10 }))).toBe(1)
    expect(placedCount(layOutBoards([part(480, 81)], [board(500, 100)], { kerfMm: 2, trimMm: 10 }))).toBe(0)
  })

  test('slices: 25.4 mm gives four of 5.2 with a kerf of 1.2, and five need two places', () => {
    // 4 x 5.2 + 3 x 1.2 = 24.4; five would take 30.8.
    const own = { kerfMm: 1.2, trimMm: 0 }
    const [sawn] = layOutBoards([part(300, 50, { quantity: 5 }, 5.2)], [board(700, 50, 25.4)], own).boards
    expect(sawn!.placements.map(({ copies }) => copies)).toEqual([4, 1])
    // Over the single slice 25.4 - 5.2 - 1.2 = 19.0 is left in one slab; over the four nothing (1.0 is less than a kerf).
    expect(sawn!.offcuts.filter(({ thicknessMm }) => thicknessMm < 25.4).map(({ thicknessMm }) => thicknessMm)).toEqual(
      [expect.closeTo(19, 9)],
    )
  })

  test('a bookmatched pair lies in one place, and asks for two slices', () => {
    const pair = part(300, 50, { quantity: 2, isBookmatched: true }, 5.2)
    const own = { kerfMm: 1.2, trimMm: 0 }
    expect(layOutBoards([pair], [board(700, 50, 11.6)], own).boards[0]!.placements[0]!.copies).toBe(2)
    expect(layOutBoards([pair], [board(700, 50, 11.5)], own).unplaced).toEqual([
      { partId: 'part', quantity: 2, reason: 'tooThick' },
    ])
  })

  test('grain decides how a piece lies', () => {
    const wide = [board(100, 300)]
    expect(layOutBoards([part(250, 80)], wide, rules2).unplaced[0]?.reason).toBe('tooLong')
    for (const grain of ['acrossLength', 'any'] as const)
      expect(layOutBoards([part(250, 80, { grain })], wide, rules2).boards[0]!.placements[0]).toMatchObject({
        isTurned: true,
        lengthMm: 80,
        widthMm: 250,
      })
  })

  test.each([
    ['too thick', part(100, 50, {}, 10.1), 'tooThick'],
    ['too long', part(501, 50), 'tooLong'],
    ['too wide', part(100, 101), 'tooWide'],
    ['of no length', part(0, 50), 'noSize'],
    ['of no number', part(Number.NaN, 50), 'noSize'],
    ['endless', part(Number.POSITIVE_INFINITY, 50), 'noSize'],
  ] as const)('%s', (_, one, reason) => {
    const { unplaced, boards: sawn } = layOutBoards([one], [board(500, 100)], rules2)
    expect(unplaced).toEqual([{ partId: 'part', quantity: 1, reason }])
    expect(sawn[0]!.offcutsMm3).toBe(500 * 100 * 10)
  })

  test('no room: two of three that each fill more than a third', () => {
    expect(layOutBoards([part(200, 100, { quantity: 3 })], [board(500, 100)], rules2).unplaced).toEqual([
      { partId: 'part', quantity: 1, reason: 'noRoom' },
    ])
  })

  test('of two boards it takes the one that is nearly as thick, and one rather than both', () => {
    const rack = [board(600, 200, 50, 'billet'), board(600, 200, 12, 'board')]
    const { boards: sawn } = layOutBoards([part(500, 90, { quantity: 2 })], rack, rules2)
    expect(sawn.map(({ placements }) => placements.length)).toEqual([0, 2])
  })

  test('a long list is laid out up to its bound, and the rest is said', () => {
    const list = Array.from({ length: 50 }, (_, i) => part(50 + i, 20, { id: `part ${i}`, quantity: 9 }))
    const rack = Array.from({ length: 12 }, (_, i) => board(1000, 200, 10, `board ${i}`))
    const layout = layOutBoards(list, rack, rules2)
    expectSound(layout, list, rack, rules2)
    expect(layout.unplaced.reduce((sum, one) => sum + (one.reason === 'tooMany' ? one.quantity : 0), 0)).toBe(50)
  })

  test('nothing to lay out, and nothing to lay it on', () => {
    expect(layOutBoards([], [board(500, 100)], rules2)).toMatchObject({ unplaced: [], boards: [{ placements: [] }] })
    expect(layOutBoards([part(10, 10)], [], rules2)).toEqual({
      boards: [],
      unplaced: [{ partId: 'part', quantity: 1, reason: 'tooThick' }],
    })
  })
})

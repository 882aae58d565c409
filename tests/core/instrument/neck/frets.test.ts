import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { makeFretboard } from '../../../../src/core/instrument/neck/fretboard.ts'
import { type FretRow, fretRows } from '../../../../src/core/instrument/neck/frets.ts'
import type { StringLine } from '../../../../src/core/instrument/neck/strings.ts'
import type { BoardPlan, FretsPlan, ScalePlan } from '../../../../src/core/neckPlan.ts'
import { STEEL_NECK } from '../../../generators/demoNecks.ts'
import { real } from '../../../generators/real.ts'
import { readTable } from '../../../tables/readTable.ts'
import { DEG, expectWithin } from '../../within.ts'

interface Change {
  readonly scale?: Partial<ScalePlan>
  readonly board?: Partial<BoardPlan>
  readonly frets?: Partial<FretsPlan>
  readonly nutSpreadMm?: number
  readonly saddleSpreadMm?: number
}
interface Heights {
  readonly nutMm: number
  readonly saddleMm: number
}
const LOW: Heights = { nutMm: 0.5, saddleMm: 4.3 }

/** The rows of the steel-string board changed, its outer strings both at these heights over the plane of the frets' crest. */
function rowsOf(change: Change, heights = LOW): readonly FretRow[] {
  const { nutSpreadMm = 37, saddleSpreadMm = 55 } = change
  const board = { ...STEEL_NECK.board, ...change.board }
  const shape = makeFretboard({ ...STEEL_NECK.scale, ...change.scale }, board, {
    bodyLengthMm: 496,
    nutSpreadMm,
    saddleSpreadMm,
  })
  const lineOn = (side: number): StringLine => {
    const [nut, saddle] = [shape.fretLine(0), shape.saddleLine]
    const nutMm = nut.xMm + (nut.slant * side * nutSpreadMm) / 2
    const saddleMm = saddle.xMm + (saddle.slant * side * saddleSpreadMm) / 2
    return {
      nutAcrossMm: (side * nutSpreadMm) / 2,
      saddleAcrossMm: (side * saddleSpreadMm) / 2,
      scaleMm: nutMm - saddleMm,
      nutHeightMm: heights.nutMm,
      saddleHeightMm: heights.saddleMm,
      nutMm,
      saddleMm,
    }
  }
  return fretRows(board, { ...STEEL_NECK.frets, ...change.frets }, shape, { bass: lineOn(-1), treble: lineOn(1) })
}

const IN_TABLE = [1, 2, 3, 4, 5, 7, 9, 12, 14, 15, 19, 20, 24]

describe('square frets', () => {
  test.each(readTable('fret_positions.csv'))('the table of equal temperament, row %#', ({ number }) => {
    const lengthMm = number('scale_mm')
    const rows = rowsOf({ scale: { lengthMm, frets: 24 } })
    for (const fret of IN_TABLE) {
      const row = rows[fret - 1]!
      const xMm = number(`x${fret}`)
      expect(row.number).toBe(fret)
      for (const here of [row.fromNutMm, row.bassEdgeMm, row.trebleEdgeMm])
        expectWithin(here, xMm, 6e-5, `fret ${fret}`)
      expectWithin(row.toSaddleMm, lengthMm - xMm, 6e-5)
      // The octave is halfway and 11 wider than the nut.
      expectWithin(row.widthMm, 44 + (22 * xMm) / lengthMm, 1e-5)
      expectWithin(row.slantRad, 0, 0)
    }
    expectWithin(rows[1]!.fromLastMm, number('x2') - number('x1'), 1.2e-4)
    expectWithin(rows[0]!.fromLastMm, number('x1'), 6e-5)
  })

  test('slot and wire: at fret 12 between the edges 55', () => {
    const plain = rowsOf({})[11]!
    expectWithin(plain.slotMm, 55, 1e-9)
    expectWithin(plain.wireMm, 58, 1e-9)
    const bound = rowsOf({ board: { bindingMm: 1.8 }, frets: { overhangMm: 0.4 } })[11]!
    expectWithin(bound.slotMm, 51.4, 1e-9)
    expectWithin(bound.wireMm, 55.8, 1e-9)
  })

  test('bindings as wide as the board leave no slot', () => {
    expect(rowsOf({ board: { nutWidthMm: 8, widthAtTwelfthMm: 8, bindingMm: 5 } })[0]!.slotMm).toBe(0)
  })

  test('no frets, no rows', () => expect(rowsOf({ scale: { frets: 0 } })).toEqual([]))
})

/** A place in the plane of the board: toward the neck, and toward the treble side. */
type Place = readonly [xMm: number, yMm: number]

/**
 * A fret as the maker lays it out: a straightedge through the two points where it stops the outer strings, each at its own share of its own
 * scale; followed outward until the board's edge is reached, found by halving. Measured from the square fret.
 */
function laidOut(scale: ScalePlan, nutSpreadMm: number, saddleSpreadMm: number) {
  const left = (fret: number) => 0.5 ** (fret / 12)
  const stop = (fret: number, side: number): Place => [
    (side < 0 ? scale.lengthMm : scale.trebleLengthMm) * (left(fret) - left(scale.squareFret)),
    (side * (saddleSpreadMm + (nutSpreadMm - saddleSpreadMm) * left(fret))) / 2,
  ]
  const at = (fret: number, part: number): Place => {
    const [bass, treble] = [stop(fret, -1), stop(fret, 1)]
    return [bass[0] + (treble[0] - bass[0]) * part, bass[1] + (treble[1] - bass[1]) * part]
  }
  const nutX = at(0, 0.5)[0]
  const twelfthX = at(12, 0.5)[0]
  const halfMm = (xMm: number) => 22 + (5.5 * (nutX - xMm)) / (nutX - twelfthX)
  const end = (fret: number, side: number): Place => {
    let [inside, outside] = [0.5, 0.5 + side * 2]
    for (let i = 0; i < 60; i++) {
      const middle = (inside + outside) / 2
      const [x, y] = at(fret, middle)
      if (Math.abs(y) < halfMm(x)) inside = middle
      else outside = middle
    }
    return at(fret, inside)
  }
  return { middle: (fret: number) => at(fret, 0.5), end }
}

describe('fanned frets', () => {
  const fans = fc.record({
    lengthMm: real(600, 760),
    trebleLengthMm: real(560, 720),
    squareFret: fc.nat(20),
    nutSpreadMm: real(30, 40),
    saddleSpreadMm: real(45, 62),
  })

  test('agree with lines laid out in the plane: places, ends, lengths and slant', () => {
    fc.assert(
      fc.property(fans, ({ nutSpreadMm, saddleSpreadMm, ...lengths }) => {
        const scale: ScalePlan = { ...STEEL_NECK.scale, ...lengths, fan: 'fanned', frets: 24 }
        const laid = laidOut(scale, nutSpreadMm, saddleSpreadMm)
        const [nutBass, nutTreble] = [laid.end(0, -1), laid.end(0, 1)]
        for (const row of rowsOf({ scale, board: { bindingMm: 1.5 }, nutSpreadMm, saddleSpreadMm })) {
          const [bass, treble] = [laid.end(row.number, -1), laid.end(row.number, 1)]
          const what = `fret ${row.number}`
          const lengthMm = Math.hypot(treble[0] - bass[0], treble[1] - bass[1])
          expectWithin(row.fromNutMm, laid.middle(0)[0] - laid.middle(row.number)[0], 1e-8, what)
          expectWithin(row.bassEdgeMm, nutBass[0] - bass[0], 1e-8, `${what}, bass edge`)
          expectWithin(row.trebleEdgeMm, nutTreble[0] - treble[0], 1e-8, `${what}, treble edge`)
          expectWithin(row.slotMm, lengthMm - 3, 1e-8, `${what}, slot`)
          expectWithin(row.wireMm, lengthMm + 3, 1e-8, `${what}, wire`)
          expectWithin(row.slantRad, Math.atan2(treble[0] - bass[0], treble[1] - bass[1]), 1e-9, `${what}, slant`)
        }
      }),
      { seed: 51 },
    )
  })

  test('a binding taken along the slot or square to the edge: a fortieth apart at 2 thick and 6 degrees', () => {
    const rows = rowsOf({
      scale: { fan: 'fanned', lengthMm: 650, trebleLengthMm: 640, squareFret: 7 },
      board: { bindingMm: 2 },
    })
    const edgeRad = Math.atan(11 / 642.5)
    for (const { slantRad, slotMm, wireMm } of rows) {
      const betweenMm = wireMm - 3
      const squareMm = betweenMm - 2 / Math.cos(slantRad - edgeRad) - 2 / Math.cos(slantRad + edgeRad)
      expect(Math.abs(slantRad)).toBeLessThan(6.5 * DEG)
      expectWithin(slotMm, squareMm, 0.025)
    }
  })

  test('the square fret is square; a longer bass leans those beyond it back on the bass side', () => {
    const rows = rowsOf({ scale: { fan: 'fanned', lengthMm: 660, trebleLengthMm: 630, squareFret: 7 } })
    expectWithin(rows[6]!.slantRad, 0, 0)
    for (const { slantRad } of rows.slice(0, 6)) expect(slantRad).toBeLessThan(0)
    for (const { slantRad } of rows.slice(7)) expect(slantRad).toBeGreaterThan(0)
    for (const row of rows) expect(row.bassEdgeMm).toBeGreaterThan(row.trebleEdgeMm)
  })

  test('turned over, bass and treble change places', () => {
    const fan = { fan: 'fanned', squareFret: 5 } as const
    const rows = rowsOf({ scale: { ...fan, lengthMm: 670, trebleLengthMm: 620 } })
    const over = rowsOf({ scale: { ...fan, lengthMm: 620, trebleLengthMm: 670 } })
    for (const [i, row] of rows.entries()) {
      expectWithin(over[i]!.bassEdgeMm, row.trebleEdgeMm, 1e-9)
      expectWithin(over[i]!.slantRad, -row.slantRad, 1e-12)
      expectWithin(over[i]!.slotMm, row.slotMm, 1e-9)
      expectWithin(over[i]!.bassOverMm, row.trebleOverMm, 1e-9)
    }
  })
})

describe('what lies over and under the crest', () => {
  test.each(readTable('sagitta.csv').filter((row) => row.number('chord') < 100))('the edge, row %#', ({ number }) => {
    const widthMm = number('chord')
    const board = { surface: 'single' as const, radiusMm: number('R'), nutWidthMm: widthMm, widthAtTwelfthMm: widthMm }
    for (const row of rowsOf({ board })) {
      expectWithin(row.edgeDropMm, number('sagitta'), 6e-7)
      expect(row.radiusMm).toBe(number('R'))
    }
  })

  test('strings over a flat board: by the table a straight line from nut to saddle', () => {
    const [table] = readTable('fret_positions.csv').filter((row) => row.number('scale_mm') === 1000)
    for (const fan of ['square', 'fanned'] as const) {
      const rows = rowsOf({ scale: { fan, frets: 24 }, board: { surface: 'flat', fallOffMm: 0 } })
      for (const fret of IN_TABLE) {
        const overMm = 0.5 + (3.8 * table!.number(`x${fret}`)) / 1000
        expectWithin(rows[fret - 1]!.bassOverMm, overMm, 1e-6, `fret ${fret}`)
        expectWithin(rows[fret - 1]!.trebleOverMm, overMm, 1e-6, `fret ${fret}`)
      }
      expectWithin(rows[11]!.bassOverMm, 2.4, 1e-9)
    }
  })

  test('over a round one more, by what the crown falls under the string', () => {
    for (const row of rowsOf({ board: { surface: 'single', radiusMm: 300, fallOffMm: 0 } })) {
      const part = 1 - 2 ** (-row.number / 12)
      const acrossMm = 18.5 + 9 * part
      const overMm = 0.5 + 3.8 * part + 300 - Math.sqrt(300 ** 2 - acrossMm ** 2)
      expectWithin(row.bassOverMm, overMm, 1e-9)
      expectWithin(row.trebleOverMm, overMm, 1e-9)
    }
  })

  test('a cone whose point the strings run to: over every fret the line alone, less the cone’s own line', () => {
    // Radius and spread grow in step, so the crowns under a string lie on one straight line.
    const lengthMm = 645 * (1 - 2 ** (-20 / 12)) + 6
    const endRadiusMm = 300 * (1 + ((55 / 37 - 1) * lengthMm) / 645)
    const atNut = 300 - Math.sqrt(300 ** 2 - 18.5 ** 2)
    for (const row of rowsOf({ board: { surface: 'compound', radiusMm: 300, endRadiusMm, fallOffMm: 0 } })) {
      const part = 1 - 2 ** (-row.number / 12)
      expectWithin(row.bassOverMm, 0.5 + 3.8 * part + atNut * (1 + (18 / 37) * part), 1e-9)
      expectWithin(row.radiusMm, 300 * (1 + (18 / 37) * part), 1e-9)
    }
  })

  test('beyond the joint the frets fall away from the strings, evenly to the end', () => {
    const [rows, even] = [rowsOf({ board: { fallOffMm: 0.3 } }), rowsOf({ board: { fallOffMm: 0 } })]
    const overMm = 645 * (2 ** (-14 / 12) - 2 ** (-20 / 12)) + 6
    for (const [i, row] of rows.entries()) {
      const beyondMm = Math.max(645 * (2 ** (-14 / 12) - 2 ** (-row.number / 12)), 0)
      expectWithin(row.fallOffMm, (0.3 * beyondMm) / overMm, 1e-9)
      expectWithin(row.trebleOverMm - even[i]!.trebleOverMm, row.fallOffMm, 1e-9)
    }
  })
})

test('every value finite, whatever the plan; lengths never under 0, places rising', () => {
  const changes = fc.record({
    scale: fc.record({
      lengthMm: real(250, 1000),
      trebleLengthMm: real(250, 1000),
      fan: fc.constantFrom('square' as const, 'fanned' as const),
      jointFret: fc.integer({ min: 8, max: 24 }),
      squareFret: fc.nat(24),
      frets: fc.nat(60),
    }),
    board: fc.record({
      nutWidthMm: real(1, 140),
      widthAtTwelfthMm: real(1, 140),
      endBeyondLastFretMm: real(0, 300),
      surface: fc.constantFrom('flat' as const, 'single' as const, 'compound' as const),
      radiusMm: real(100, 3000),
      endRadiusMm: real(100, 3000),
      bindingMm: real(0, 5),
    }),
    nutSpreadMm: real(0, 110),
    saddleSpreadMm: real(0, 130),
  })
  fc.assert(
    fc.property(changes, (change) => {
      const rows = rowsOf(change)
      expect(rows).toHaveLength(change.scale.frets)
      const values = rows.flatMap((row) => Object.values(row).filter((one) => one !== 'flat'))
      expect(values.filter((one) => !Number.isFinite(one))).toEqual([])
      for (const row of rows) {
        expect(row.fromLastMm).toBeGreaterThan(0)
        expect(row.slotMm).toBeGreaterThanOrEqual(0)
        expect(row.wireMm).toBeGreaterThanOrEqual(row.slotMm)
      }
    }),
    { seed: 52 },
  )
})

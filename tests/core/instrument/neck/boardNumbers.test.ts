import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type BoardNumbers, markerRows, measureBoard } from '../../../../src/core/instrument/neck/boardNumbers.ts'
import { makeFretboard } from '../../../../src/core/instrument/neck/fretboard.ts'
import type { BoardPlan, FretsPlan, ScalePlan } from '../../../../src/core/neckPlan.ts'
import { STEEL_NECK } from '../../../generators/demoNecks.ts'
import { real } from '../../../generators/real.ts'
import { readSteelModel, readTable } from '../../../tables/readTable.ts'
import { expectWithin } from '../../within.ts'

interface Change {
  readonly scale?: Partial<ScalePlan>
  readonly board?: Partial<BoardPlan>
  readonly frets?: Partial<FretsPlan>
}
function plansOf({ scale, board, frets }: Change) {
  const plan = { ...STEEL_NECK.board, ...board }
  const shape = makeFretboard({ ...STEEL_NECK.scale, ...scale }, plan, {
    bodyLengthMm: 496,
    nutSpreadMm: 37,
    saddleSpreadMm: 55,
  })
  return { board: plan, frets: { ...STEEL_NECK.frets, ...frets }, shape }
}
function measured(change: Change): BoardNumbers {
  const { board, frets, shape } = plansOf(change)
  return measureBoard(board, frets, shape)
}
const marked = (markersAt: readonly number[], scale: Partial<ScalePlan> = {}) => {
  const { board, shape } = plansOf({ scale, board: { markersAt } })
  return markerRows(board, shape)
}

/** The steel-string board, its edges at nut and fret 12 both this wide: as wide everywhere. */
const parallel = (widthMm: number): Partial<BoardPlan> => ({ nutWidthMm: widthMm, widthAtTwelfthMm: widthMm })

describe('the nut of fanned frets', () => {
  /** Where the straight through the outer strings' own nuts meets an edge: found by walking the edge, from the nut's middle toward the head. */
  function nutEndMm(bassScaleMm: number, trebleScaleMm: number, squareFret: number, side: -1 | 1): number {
    const part = 1 - 2 ** (-squareFret / 12)
    // Over the square fret, which both strings share; 37 apart at the nut.
    const [bassMm, trebleMm] = [bassScaleMm * part, trebleScaleMm * part]
    const off = (mm: number) => {
      // The edges pass 22 from the middle at the nut, 27.5 half a scale further toward the body.
      const acrossMm = side * (22 - (5.5 * mm) / ((bassScaleMm + trebleScaleMm) / 4))
      return mm - ((trebleMm - bassMm) * acrossMm) / 37
    }
    let [low, high] = [-40, 40]
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2
      if (off(middle) < 0) low = middle
      else high = middle
    }
    return (low + high) / 2
  }

  test.each([
    [660, 630, 7],
    [660, 630, 12],
    [630, 660, 9],
    [690, 630, 5],
  ])(
    '%d and %d, fret %d square: its ends by walking the edges, and the board reaches to the further one',
    (lengthMm, trebleLengthMm, squareFret) => {
      const here = measured({ scale: { lengthMm, fan: 'fanned', trebleLengthMm, squareFret } })
      const [bass, treble] = [-1, 1].map((side) => nutEndMm(lengthMm, trebleLengthMm, squareFret, side as -1 | 1))
      expectWithin(here.nutBassAheadMm, bass!, 1e-9)
      expectWithin(here.nutTrebleAheadMm, treble!, 1e-9)
      const meanMm = (lengthMm + trebleLengthMm) / 2
      expectWithin(here.lengthMm, meanMm * (1 - 2 ** (-20 / 12)) + 6 + Math.max(bass!, treble!), 1e-9)
    },
  )

  test('660 and 630 with fret 7 square: the bass end 5.9 ahead', () => {
    expectWithin(
      measured({ scale: { lengthMm: 660, fan: 'fanned', trebleLengthMm: 630 } }).nutBassAheadMm,
      5.9054,
      1e-3,
    )
  })

  test('square frets, or the nut itself the square one: none', () => {
    for (const scale of [{}, { fan: 'fanned', lengthMm: 660, squareFret: 0 }] as const) {
      const here = measured({ scale })
      expect([here.nutBassAheadMm, here.nutTrebleAheadMm]).toEqual(['none', 'none'])
    }
  })
})

describe('the board', () => {
  test('the steel-string model: widths at joint and end, and what lies over the body', () => {
    const { board } = readSteelModel()
    const here = measured({})
    expectWithin(here.widthAtJointMm, board['width_at_joint']!, 0.005)
    expectWithin(here.widthAtEndMm, board['width_at_end']!, 0.005)
    expectWithin(here.overBodyMm, board['end_beyond_joint']!, 0.005)
  })

  test.each(readTable('fret_positions.csv'))(
    'nut to joint and to the end by the table of frets, row %#',
    ({ number }) => {
      const lengthMm = number('scale_mm')
      for (const jointFret of [12, 14, 15]) {
        const here = measured({ scale: { lengthMm, jointFret, frets: 20 }, board: { endBeyondLastFretMm: 5 } })
        expectWithin(here.nutToJointMm, number(`x${jointFret}`), 6e-5)
        expectWithin(here.lengthMm, number('x20') + 5, 6e-5)
        expectWithin(here.overBodyMm, number('x20') + 5 - number(`x${jointFret}`), 1.2e-4)
        // A half of the scale widens the board by 11: so does every further part of it.
        expectWithin(here.widthAtJointMm, 44 + (22 * number(`x${jointFret}`)) / lengthMm, 1e-5)
      }
    },
  )

  test('a board that ends before the joint lies over the body by less than nothing', () => {
    const here = measured({ scale: { frets: 12, jointFret: 14 }, board: { endBeyondLastFretMm: 6 } })
    expectWithin(here.overBodyMm, 322.5 + 6 - 645 * (1 - 2 ** (-14 / 12)), 1e-9)
    expect(here.overBodyMm).toBeLessThan(0)
  })

  test('what is entered is handed on', () => {
    const here = measured({
      board: { thicknessMm: 6.3, fallOffMm: 0.35 },
      frets: { slotDepthMm: 2.9, slotWidthMm: 0.58 },
    })
    expect(here).toMatchObject({
      nutWidthMm: 44,
      widthAtTwelfthMm: 55,
      thicknessMm: 6.3,
      fallOffMm: 0.35,
      slotDepthMm: 2.9,
      slotWidthMm: 0.58,
    })
  })
})

const CHORDS = readTable('sagitta.csv').filter((row) => row.number('chord') < 100)

describe('edges and slots', () => {
  test.each(CHORDS)('the edge is thinner by the sagitta of the width, row %#', ({ number }) => {
    const surface = { surface: 'single' as const, radiusMm: number('R'), ...parallel(number('chord')) }
    const here = measured({ board: { ...surface, thicknessMm: 6.5 } })
    for (const edge of [here.edgeAtNutMm, here.edgeAtJointMm, here.edgeAtEndMm])
      expectWithin(edge, 6.5 - number('sagitta'), 6e-7)
  })

  test.each(CHORDS)('the slot too, by the sagitta between the bindings, row %#', ({ number }) => {
    const between = {
      surface: 'single' as const,
      radiusMm: number('R'),
      ...parallel(number('chord') + 4),
      bindingMm: 2,
    }
    const here = measured({ board: between, frets: { slotDepthMm: 3, tangMm: 1.6 } })
    expectWithin(here.slotAtEdgeMm, 3 - number('sagitta'), 6e-7)
    expectWithin(here.underTangMm, 3 - number('sagitta') - 1.6, 6e-7)
  })

  test('round, nut and end apart: at the nut 42 on 254, wider the nearer the body', () => {
    const here = measured({
      board: { surface: 'single', radiusMm: 254, nutWidthMm: 42, widthAtTwelfthMm: 57, thicknessMm: 6 },
    })
    expectWithin(here.edgeAtNutMm, 6 - 0.869599, 6e-7)
    expect(here.edgeAtJointMm).toBeLessThan(here.edgeAtNutMm)
    expect(here.edgeAtEndMm).toBeLessThan(here.edgeAtJointMm)
    const lastMm = 42 + 30 * (1 - 2 ** (-20 / 12))
    expectWithin(here.slotAtEdgeMm, 3 - (254 - Math.sqrt(254 ** 2 - (lastMm / 2) ** 2)), 1e-9)
  })

  test('compound and parallel: the shallowest slot is the first, where the radius is least', () => {
    const board = { surface: 'compound' as const, radiusMm: 254, endRadiusMm: 406.4, ...parallel(42) }
    const here = measured({ board })
    const lengthMm = 645 * (1 - 2 ** (-20 / 12)) + 6
    const firstR = 254 + (152.4 * 645 * (1 - 2 ** (-1 / 12))) / lengthMm
    expectWithin(here.slotAtEdgeMm, 3 - (firstR - Math.sqrt(firstR ** 2 - 21 ** 2)), 1e-9)
    expectWithin(here.edgeAtNutMm, 6.2 - 0.869599, 6e-7)
  })

  test('flat: edge and slot as in the middle', () => {
    const here = measured({ board: { surface: 'flat' } })
    expect([here.edgeAtNutMm, here.edgeAtJointMm, here.edgeAtEndMm]).toEqual([6.2, 6.2, 6.2])
    expect(here.slotAtEdgeMm).toBe(3)
    expectWithin(here.underTangMm, 1.4, 1e-12)
    expectWithin(here.leftUnderSlotMm, 3.2, 1e-12)
  })

  test('a slot that runs out at the edge has no depth there; one through the board leaves less than nothing', () => {
    const runsOut = measured({
      board: { surface: 'single', radiusMm: 100, ...parallel(60) },
      frets: { slotDepthMm: 2 },
    })
    expect(runsOut.slotAtEdgeMm).toBe(0)
    expectWithin(runsOut.underTangMm, -1.6, 1e-12)
    expectWithin(measured({ board: { thicknessMm: 2.5 } }).leftUnderSlotMm, -0.5, 1e-12)
  })

  test('no frets: no slot is shallower than asked', () => {
    expect(measured({ scale: { frets: 0 } }).slotAtEdgeMm).toBe(3)
  })

  test('fanned: the shallowest place of a slot is where it really leaves the board', () => {
    const fans = fc.record({
      treble: real(600, 660),
      squareFret: fc.nat(12),
      radiusMm: real(180, 600),
      endRadiusMm: real(180, 600),
    })
    fc.assert(
      fc.property(fans, ({ treble, squareFret, radiusMm, endRadiusMm }) => {
        const { board, frets, shape } = plansOf({
          scale: { fan: 'fanned', lengthMm: 660, trebleLengthMm: treble, squareFret },
          board: { surface: 'compound', radiusMm, endRadiusMm },
        })
        const depthsMm = Array.from({ length: 20 }, (_, i) => shape.fretLine(i + 1)).flatMap(({ xMm, slant }) =>
          [-1, 1].map((side) => {
            // Walked outward along the slot until the edge is there.
            let y = 0
            for (let step = 0; step < 60; step++) y = side * shape.halfWidthAtMm(xMm + slant * y)
            return frets.slotDepthMm - shape.dropMm(xMm + slant * y, y)
          }),
        )
        expectWithin(measureBoard(board, frets, shape).slotAtEdgeMm, Math.max(Math.min(...depthsMm), 0), 1e-9)
      }),
      { seed: 41 },
    )
  })
})

describe('the marks', () => {
  test('midway between the fret and the one before, by the table; pairs at the octaves', () => {
    const [row] = readTable('fret_positions.csv').filter((one) => one.number('scale_mm') === 1000)
    const x = (fret: number) => row!.number(`x${fret}`)
    const rows = marked([3, 5, 15, 24, 12], { lengthMm: 1000, frets: 24 })
    expect(rows.map(({ fret }) => fret)).toEqual([3, 5, 12, 15, 24])
    expectWithin(rows[0]!.fromNutMm, (x(2) + x(3)) / 2, 1e-4)
    expectWithin(rows[1]!.fromNutMm, (x(4) + x(5)) / 2, 1e-4)
    expectWithin(rows[3]!.fromNutMm, (x(14) + x(15)) / 2, 1e-4)
    expect(rows.map(({ acrossMm }) => typeof acrossMm)).toEqual(['string', 'string', 'number', 'string', 'number'])
    // A quarter of the width there: 44 at the nut, and 22 more by the saddle.
    for (const { fret, fromNutMm, acrossMm } of [rows[2]!, rows[4]!])
      expectWithin(acrossMm, (44 + (22 * fromNutMm) / 1000) / 4, 1e-9, `fret ${fret}`)
    expectWithin(rows[2]!.fromNutMm, 1000 * (1 - (2 ** (-11 / 12) + 0.5) / 2), 1e-9)
  })

  test('the first stands halfway to the nut', () => {
    expectWithin(marked([1], { lengthMm: 1000 })[0]!.fromNutMm, 56.1257 / 2, 1e-4)
  })

  test('every fret once, in rising order, only those the board has', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -2, max: 40 }), { maxLength: 24 }), fc.nat(36), (markersAt, frets) => {
        const rows = marked(markersAt, { frets })
        const asked = Array.from({ length: frets }, (_, i) => i + 1).filter((fret) => markersAt.includes(fret))
        expect(rows.map(({ fret }) => fret)).toEqual(asked)
        for (const [i, row] of rows.entries()) if (i > 0) expect(row.fromNutMm).toBeGreaterThan(rows[i - 1]!.fromNutMm)
      }),
      { seed: 42 },
    )
  })
})

test('every value finite, whatever the plan; the shallowest slot never under 0 nor over the slot', () => {
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
      thicknessMm: real(2, 15),
      surface: fc.constantFrom('flat' as const, 'single' as const, 'compound' as const),
      radiusMm: real(100, 3000),
      endRadiusMm: real(100, 3000),
      bindingMm: real(0, 5),
      markersAt: fc.array(fc.integer({ min: 1, max: 36 }), { maxLength: 24 }),
    }),
    frets: fc.record({ slotDepthMm: real(0.5, 8), tangMm: real(0.5, 4) }),
  })
  fc.assert(
    fc.property(changes, (change) => {
      const { board, frets, shape } = plansOf(change)
      const here = measureBoard(board, frets, shape)
      const marks = markerRows(board, shape).flatMap((row) => Object.values(row).filter((one) => one !== 'none'))
      const all = Object.values(here).filter((one) => one !== 'none')
      expect([...all, ...marks].filter((one) => !Number.isFinite(one))).toEqual([])
      expect(here.slotAtEdgeMm).toBeGreaterThanOrEqual(0)
      expect(here.slotAtEdgeMm).toBeLessThanOrEqual(frets.slotDepthMm)
      const ahead = [here.nutBassAheadMm, here.nutTrebleAheadMm].map((one) => (one === 'none' ? 0 : one))
      expectWithin(here.lengthMm, here.nutToJointMm + here.overBodyMm + Math.max(...ahead), 1e-9)
    }),
    { seed: 43 },
  )
})

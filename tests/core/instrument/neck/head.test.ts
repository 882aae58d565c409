import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { makeFretboard } from '../../../../src/core/instrument/neck/fretboard.ts'
import { measureHead, type TunerRow, tunerRows } from '../../../../src/core/instrument/neck/head.ts'
import { placeStrings, type StringLine } from '../../../../src/core/instrument/neck/strings.ts'
import type { HeadPlan } from '../../../../src/core/neckPlan.ts'
import { NYLON_NECK, SMALL_NECK, STEEL_NECK } from '../../../generators/demoNecks.ts'
import { anyPlan } from '../../../generators/plans.ts'
import { real } from '../../../generators/real.ts'
import { DEG, expectWithin } from '../../within.ts'

const HEAD = STEEL_NECK.head

/** So many strings, evenly over 37 at the nut and 55 at the saddle. */
const linesOf = (count: number): StringLine[] =>
  Array.from({ length: count }, (_, i) => {
    const part = count > 1 ? i / (count - 1) - 0.5 : 0
    return {
      nutAcrossMm: 37 * part,
      saddleAcrossMm: 55 * part,
      scaleMm: 645,
      nutMm: 853,
      saddleMm: 208,
      nutHeightMm: 0.5,
      saddleHeightMm: 3.7,
    }
  })
const rowsOf = (head: Partial<HeadPlan>, count = 6, overMm = 6.3): readonly TunerRow[] => {
  const lines = linesOf(count)
  return tunerRows({ ...HEAD, ...head }, { lines, nutOverFaceMm: lines.map(() => overMm) })
}

describe('the head', () => {
  test('175 long at 15 degrees its end lies 45.3 under the face; 14.5 less a veneer of 1.5', () => {
    const head = measureHead(HEAD)
    expectWithin(head.dropMm, 45.29, 0.005)
    expectWithin(head.coreMm, 13, 1e-12)
    expectWithin(head.angleRad, Math.PI / 12, 1e-12)
    expect([head.lengthMm, head.thicknessMm, head.holeMm]).toEqual([175, 14.5, 10])
  })

  test('veneers thicker than the head leave less than nothing', () => {
    expectWithin(measureHead({ ...HEAD, faceVeneerMm: 8, backVeneerMm: 8 }).coreMm, -1.5, 1e-12)
  })
})

describe('which post a string goes to', () => {
  test.each([
    ['bothSides', 6, [-1, -2, -3, 3, 2, 1]],
    ['bothSides', 4, [-1, -2, 2, 1]],
    ['bothSides', 7, [-1, -2, -3, -4, 3, 2, 1]],
    ['bothSides', 1, [-1]],
    ['bothSides', 0, []],
    ['bassSide', 6, [-1, -2, -3, -4, -5, -6]],
  ] as const)('%s, %d strings: %j', (tuners, count, posts) => {
    const rows = rowsOf({ tuners }, count)
    expect(rows.map((row) => Math.sign(row.acrossMm) * Math.round((row.fromNutMm - 32) / 40 + 1))).toEqual(posts)
  })

  test('three on a side, 40 apart from 32 on, opening from 20 to 25', () => {
    const rows = rowsOf({})
    expect(rows.map(({ fromNutMm }) => fromNutMm)).toEqual([32, 72, 112, 112, 72, 32])
    expect(rows.map(({ acrossMm }) => acrossMm)).toEqual([-20, -22.5, -25, 25, 22.5, 20])
  })

  test('the side with fewer posts runs along the line of the other', () => {
    const rows = rowsOf({}, 7)
    for (const [bass, treble] of [
      [0, 6],
      [1, 5],
      [2, 4],
    ] as const) {
      expectWithin(rows[treble]!.acrossMm, -rows[bass]!.acrossMm, 1e-12)
      expectWithin(rows[treble]!.fromNutMm, rows[bass]!.fromNutMm, 1e-12)
    }
    expectWithin(rows[3]!.acrossMm, -25, 1e-12)
  })
})

/** The turn from one direction to another in a plane, left positive. */
const turnRad = ([ax, ay]: readonly [number, number], [bx, by]: readonly [number, number]): number =>
  Math.atan2(ax * by - ay * bx, ax * bx + ay * by)

describe('sideways at the nut', () => {
  test('worked by hand: a string parallel to the centreline, its post 3 further out at 30', () => {
    const line = { ...linesOf(1)[0]!, nutAcrossMm: -10, saddleAcrossMm: -10 }
    const head = { ...HEAD, firstPostMm: 30, firstAcrossMm: 16, postMm: 6 }
    const [row] = tunerRows(head, { lines: [line], nutOverFaceMm: [6] })
    expectWithin(row!.sideRad, Math.atan(0.1), 1e-12)
  })

  test('straight through: no turn', () => {
    // 645 of scale bring it from 27.5 to 18.5 across; 64.5 more to 17.6.
    const [row] = rowsOf({ firstPostMm: 64.5, firstAcrossMm: 17.6, lastAcrossMm: 17.6, postMm: 0 })
    expectWithin(row!.sideRad, 0, 1e-12)
  })

  const heads = fc.record({
    tuners: fc.constantFrom('bothSides' as const, 'bassSide' as const),
    firstPostMm: real(10, 120),
    postSpacingMm: real(10, 80),
    firstAcrossMm: real(7, 80),
    lastAcrossMm: real(7, 80),
    postMm: real(0, 12),
  })

  test('the turn between two directions laid flat, toward the post positive', () => {
    fc.assert(
      fc.property(heads, fc.integer({ min: 2, max: 14 }), (head, count) => {
        const lines = linesOf(count)
        rowsOf(head, count).forEach((row, i) => {
          const { nutAcrossMm, saddleAcrossMm } = lines[i]!
          const side = Math.sign(row.acrossMm)
          // The nearest place of the post to the centreline, tried all round.
          let inner = Number.POSITIVE_INFINITY
          for (let deg = 0; deg < 360; deg++)
            inner = Math.min(inner, side * row.acrossMm + (head.postMm / 2) * Math.cos(deg * DEG))
          const turn = turnRad([645, nutAcrossMm - saddleAcrossMm], [row.fromNutMm, side * inner - nutAcrossMm])
          expectWithin(row.sideRad, side * turn, 1e-9)
        })
      }),
      { seed: 61 },
    )
  })

  test('the bass half and the treble half mirror each other', () => {
    fc.assert(
      fc.property(heads, fc.integer({ min: 1, max: 7 }), (head, half) => {
        const rows = rowsOf({ ...head, tuners: 'bothSides' }, 2 * half)
        const mirrored = rows.toReversed()
        rows.forEach((row, i) => {
          expectWithin(row.sideRad, mirrored[i]!.sideRad, 1e-12)
          expectWithin(row.acrossMm, -mirrored[i]!.acrossMm, 1e-12)
        })
      }),
      { seed: 62 },
    )
  })
})

describe('down over the nut', () => {
  test('no post height beside the slot: with the slot on the face itself the angle of the head', () => {
    for (const row of rowsOf({ stringOverFaceMm: 0 }, 6, 0)) expectWithin(row.overNutRad / DEG, 15, 1e-9)
  })

  test('a level head: the fall alone', () => {
    const [row] = rowsOf({ angleDeg: 0, stringOverFaceMm: 2, firstPostMm: 40 }, 6, 6)
    expectWithin(row!.overNutRad, Math.atan(4 / 40), 1e-12)
  })

  test('points in space: the post stands on the head turned down about the nut', () => {
    const heads = fc.record({
      angleDeg: real(0, 25),
      firstPostMm: real(10, 120),
      postSpacingMm: real(10, 80),
      stringOverFaceMm: real(-20, 20),
    })
    fc.assert(
      fc.property(heads, real(0, 20), (head, overMm) => {
        const [cos, sin] = [Math.cos(head.angleDeg * DEG), Math.sin(head.angleDeg * DEG)]
        for (const row of rowsOf(head, 6, overMm)) {
          // x toward the head's end, z up, both along the neck's face; the slot straight over the nut's front edge.
          const along = [cos, 0, -sin] as const
          const square = [sin, 0, cos] as const
          const met = along.map((u, i) => u * row.fromNutMm + square[i]! * head.stringOverFaceMm)
          const way = [met[0]!, row.acrossMm, met[2]! - overMm]
          expectWithin(row.overNutRad, Math.atan2(-way[2]!, way[0]!), 1e-9)
        }
      }),
      { seed: 63 },
    )
  })

  test('steeper with a steeper head, a higher nut, a lower post', () => {
    const given = rowsOf({})[0]!.overNutRad
    expect(rowsOf({ angleDeg: 16 })[0]!.overNutRad).toBeGreaterThan(given)
    expect(rowsOf({}, 6, 7)[0]!.overNutRad).toBeGreaterThan(given)
    expect(rowsOf({ stringOverFaceMm: 8 })[0]!.overNutRad).toBeLessThan(given)
  })
})

const placed = ({ scale, board, frets, strings, setup, head }: typeof STEEL_NECK) => {
  const { nutSpreadMm, saddleSpreadMm } = strings
  const shape = makeFretboard(scale, board, { bodyLengthMm: 496, nutSpreadMm, saddleSpreadMm })
  const lines = placeStrings(strings, setup, shape)
  const nutOverFaceMm = lines.map((line) => line.nutHeightMm + frets.crownMm + board.thicknessMm - head.faceVeneerMm)
  return { lines, nutOverFaceMm }
}

describe('the models', () => {
  test.each([
    ['steel', STEEL_NECK, 15.5],
    ['nylon', NYLON_NECK, 26],
    ['small', SMALL_NECK, 15.5],
  ] as const)('%s: strings bend as is usual and clear each other and the posts before theirs', (_, model, mostDeg) => {
    const { lines, nutOverFaceMm } = placed(model)
    const rows = tunerRows(model.head, { lines, nutOverFaceMm })
    for (const row of rows) {
      expect(row.overNutRad / DEG).toBeGreaterThan(7)
      expect(row.overNutRad / DEG).toBeLessThan(mostDeg)
      expect(Math.abs(row.sideRad) / DEG).toBeLessThan(12)
    }
    const half = rows.length / 2
    const flank = (row: TunerRow) => Math.abs(row.acrossMm) - model.head.postMm / 2
    for (let i = 1; i < half && model.head.postMm > 0; i++) {
      const [near, far] = [rows[i - 1]!, rows[i]!]
      const nutMm = Math.abs(lines[i]!.nutAcrossMm)
      const there = nutMm + ((flank(far) - nutMm) * near.fromNutMm) / far.fromNutMm
      expect(there).toBeLessThan(flank(near))
    }
  })
})

test('anything a plan may hold: a row for each string, finite', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      const rows = tunerRows(plan.head, placed(plan))
      expect(rows).toHaveLength(plan.strings.set.length)
      expect([...rows, measureHead(plan.head)].flatMap(Object.values).filter((one) => !Number.isFinite(one))).toEqual(
        [],
      )
    }),
    { seed: 64, numRuns: 300 },
  )
})

test('heights left out count as none; a post on the nut as 1 from it', () => {
  const head = { ...HEAD, firstPostMm: 0, postSpacingMm: 0 }
  for (const row of tunerRows(head, { lines: linesOf(6), nutOverFaceMm: [] }))
    expect(Object.values(row).every(Number.isFinite)).toBe(true)
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Curve } from '../../../../src/core/geometry/curve.ts'
import { curveAt } from '../../../../src/core/geometry/curve.ts'
import type { FairCurveAim } from '../../../../src/core/geometry/fair/fairCurve.ts'
import { fairCurve } from '../../../../src/core/geometry/fair/fairCurve.ts'
import type { Point } from '../../../../src/core/geometry/point.ts'
import { expectWithin } from '../../within.ts'
import { fairPolyline, MOST_PATIENT, PATIENT } from './fairCurveReference.ts'

/** An aim from x and half width by turns. */
const aimOf = (
  lengthMm: number,
  xAndHalfWidthMm: readonly number[],
  tailCurvaturePerMm: number | null,
  neckFlatHalfWidthMm: number,
): FairCurveAim => ({
  lengthMm,
  through: xAndHalfWidthMm.flatMap((x, i) => (i % 2 === 0 ? [{ x, y: xAndHalfWidthMm[i + 1]! }] : [])),
  tailCurvaturePerMm,
  neckFlatHalfWidthMm,
  neckCurvaturePerMm: 0,
})

// Plausible bodies; invented.
const STEEL = aimOf(496, [137.3, 196, 296, 119, 400.4, 145], 1 / 950, 28)
const NYLON = aimOf(486, [130, 182, 284, 116, 392, 139], 1 / 600, 28)
const SMALL = aimOf(302, [85, 114, 182, 74, 244, 86], 1 / 420, 20)
const ROUND = aimOf(508, [140, 200, 310, 142, 425, 146], 1 / 600, 28)
/** Long and narrow: between bout and waist the freest curve would bend in, out, in again. */
const NARROW = aimOf(508, [140, 100, 310, 71, 425, 73], 0, 28)
const BODIES = { STEEL, NYLON, SMALL, ROUND, NARROW }

/** Distance of a point from the curve, along the normal nearest to arc length `fromMm`; and where that is. */
function offCurve(curve: Curve, point: Point, fromMm: number): { byMm: number; sMm: number } {
  let sMm = fromMm
  for (let turn = 0; turn < 8; turn++) {
    const { point: foot, headingRad } = curveAt(curve, sMm)
    const ahead = (point.x - foot.x) * Math.cos(headingRad) + (point.y - foot.y) * Math.sin(headingRad)
    sMm = Math.min(Math.max(sMm + ahead, 0), curve.lengthMm)
  }
  const foot = curveAt(curve, sMm).point
  return { byMm: Math.hypot(point.x - foot.x, point.y - foot.y), sMm }
}

/** The furthest any of the points, in order along it, lies from the curve. */
function furthestMm(curve: Curve, points: readonly Point[]): number {
  let at = 0
  let most = 0
  for (const point of points) {
    const { byMm, sMm } = offCurve(curve, point, at)
    at = sMm
    most = Math.max(most, byMm)
  }
  return most
}

const sample = (curve: Curve, count: number): Point[] =>
  Array.from({ length: count + 1 }, (_, i) => curveAt(curve, (curve.lengthMm * i) / count).point)

const bendsOf = (curve: Curve): number[] => [
  curve.pieces[0]!.startCurvaturePerMm,
  ...curve.pieces.map((piece) => piece.endCurvaturePerMm),
]

/** Changes of sign along a row of numbers; those below a thousandth of the largest have none. */
function countSignChanges(values: readonly number[]): number {
  const least = Math.max(...values.map(Math.abs)) / 1000
  const signs = values.filter((value) => Math.abs(value) > least).map(Math.sign)
  return signs.filter((sign, i) => i > 0 && sign !== signs[i - 1]).length
}

/** Which way curvature goes, one sign for each stretch; anything but rounding counts. */
function riseSigns(curve: Curve): string {
  const rises = curve.pieces.map((p) => p.endCurvaturePerMm - p.startCurvaturePerMm)
  const most = Math.max(...rises.map(Math.abs))
  const signs = rises.filter((rise) => Math.abs(rise) > 1e-9 * most).map((rise) => (rise > 0 ? '+' : '-'))
  return signs.filter((sign, i) => sign !== signs[i - 1]).join('')
}

describe('agrees with a polyline of the same aim, fitted by other means', () => {
  test.each([
    ['STEEL', PATIENT],
    ['NYLON', PATIENT],
    ['SMALL', PATIENT],
    ['NARROW', MOST_PATIENT],
  ] as const)('%s', (name, patience) => {
    const aim = BODIES[name]
    const { curve, fair, missMm } = fairCurve(aim)
    expect(fair).toBe(true)
    expectWithin(missMm, 0, 1e-6, 'miss')
    const reference = fairPolyline(aim, 200, true, patience)
    expectWithin(reference.missMm, 0, 0.03, 'miss of the polyline')
    expectWithin(furthestMm(curve, reference.points), 0, 0.05, 'furthest')
  })

  test('least variation alone gives NARROW four inflections; the rule on the turns leaves two', () => {
    const free = fairPolyline(NARROW, 160, false, { stiffness: 2e6, rounds: 80, stepsPerRound: 4000 })
    expectWithin(free.missMm, 0, 1e-3, 'miss of the polyline')
    expect(countSignChanges(free.curvaturesPerMm)).toBe(4)
    expect(countSignChanges(bendsOf(fairCurve(NARROW).curve))).toBe(2)
  })
})

describe('a body of three widths', () => {
  test.each(Object.entries(BODIES))('%s passes its points, meets its ends and bends once each way', (_, aim) => {
    const { curve, fair, culprit } = fairCurve(aim)
    expect({ fair, culprit }).toEqual({ fair: true, culprit: null })
    for (const point of aim.through) {
      const nearest = Math.min(
        ...curve.places.map((place) => Math.hypot(place.point.x - point.x, place.point.y - point.y)),
      )
      expectWithin(nearest, 0, 1e-8, 'distance from the point')
    }
    const end = curve.places.at(-1)!
    expectWithin(end.point.x, aim.lengthMm, 1e-8, 'x at the neck')
    expectWithin(end.point.y, 0, 1e-8, 'y at the neck')
    expectWithin(end.headingRad, -Math.PI / 2, 1e-10, 'heading at the neck')
    expect(curve.pieces.at(-1)).toEqual({
      lengthMm: aim.neckFlatHalfWidthMm,
      startCurvaturePerMm: 0,
      endCurvaturePerMm: 0,
    })
    expectWithin(curve.pieces[0]!.startCurvaturePerMm, aim.tailCurvaturePerMm!, 1e-15, 'curvature at the tail')
    expect(riseSigns(curve)).toBe('+-+-')
    expect(countSignChanges(bendsOf(curve))).toBe(2)
    curve.pieces.slice(1).forEach((piece, i) => {
      expectWithin(piece.startCurvaturePerMm, curve.pieces[i]!.endCurvaturePerMm, 1e-12, 'curvature across a joint')
    })
  })

  test.each(Object.entries(BODIES))('%s stays where it is when one of its own places is asked for too', (_, aim) => {
    const { curve } = fairCurve(aim)
    for (const part of [0.1, 0.2, 0.3, 0.42, 0.5, 0.57, 0.68, 0.8, 0.9]) {
      const more = curveAt(curve, (curve.lengthMm - aim.neckFlatHalfWidthMm) * part).point
      const through = [...aim.through, more].toSorted((a, b) => a.x - b.x)
      const again = fairCurve({ ...aim, through })
      expect(again.fair).toBe(true)
      expectWithin(furthestMm(again.curve, sample(curve, 200)), 0, 0.02, `moved by a point at ${part}`)
    }
  })

  test('a free end curvature costs no more variation than any given one, and is not negative', () => {
    const variation = (curve: Curve) =>
      curve.pieces.reduce((sum, p) => sum + (p.endCurvaturePerMm - p.startCurvaturePerMm) ** 2 / p.lengthMm, 0)
    const free = fairCurve({ ...ROUND, tailCurvaturePerMm: null })
    expect(free.fair).toBe(true)
    expect(free.curve.pieces[0]!.startCurvaturePerMm).toBeGreaterThanOrEqual(0)
    for (const tailCurvaturePerMm of [0, 1 / 2000, 1 / 1000, 1 / 600]) {
      const given = fairCurve({ ...ROUND, tailCurvaturePerMm })
      expect(variation(free.curve)).toBeLessThan(variation(given.curve) * 1.0005)
    }
  })
})

describe('a circle comes back as a circle', () => {
  const radiusMm = 180
  test.each([
    ['given', 'given', [30, 90, 150]],
    ['free', 'free', [30, 90, 150]],
    ['given', 'free', [90]],
    ['free', 'given', [20, 55, 70, 120, 165]],
  ] as const)('tail %s, neck %s, points at %j degrees', (tail, neck, angles) => {
    const { curve, fair } = fairCurve({
      lengthMm: 2 * radiusMm,
      through: angles.map((angle) => ({
        x: radiusMm * (1 - Math.cos((angle * Math.PI) / 180)),
        y: radiusMm * Math.sin((angle * Math.PI) / 180),
      })),
      tailCurvaturePerMm: tail === 'given' ? 1 / radiusMm : null,
      neckFlatHalfWidthMm: 0,
      neckCurvaturePerMm: neck === 'given' ? 1 / radiusMm : null,
    })
    expect(fair).toBe(true)
    for (const { x, y } of sample(curve, 100)) expectWithin(Math.hypot(x - radiusMm, y), radiusMm, 0.001, 'radius')
  })
})

/** Bodies as builders draw them: sizes over the length, and what is asked of the ends. */
const body = fc
  .record({
    lengthMm: fc.double({ min: 280, max: 530, noNaN: true }),
    lower: fc.tuple(fc.double({ min: 0.24, max: 0.31, noNaN: true }), fc.double({ min: 0.34, max: 0.42, noNaN: true })),
    upper: fc.tuple(fc.double({ min: 0.76, max: 0.84, noNaN: true }), fc.double({ min: 0.7, max: 0.84, noNaN: true })),
    waist: fc.tuple(fc.double({ min: 0.56, max: 0.64, noNaN: true }), fc.double({ min: 0.78, max: 0.92, noNaN: true })),
    tail: fc.constantFrom(0, 0.4, 0.8, null),
  })
  .map(
    ({ lengthMm, lower, upper, waist, tail }): FairCurveAim => ({
      lengthMm,
      through: [
        { x: lower[0] * lengthMm, y: lower[1] * lengthMm },
        { x: waist[0] * lengthMm, y: waist[1] * upper[1] * lower[1] * lengthMm },
        { x: upper[0] * lengthMm, y: upper[1] * lower[1] * lengthMm },
      ],
      tailCurvaturePerMm: tail === null ? null : tail / lengthMm,
      neckFlatHalfWidthMm: 0,
      neckCurvaturePerMm: null,
    }),
  )

describe('no way of looking at it changes it', () => {
  test('asked again, after another', () => {
    const first = fairCurve(STEEL)
    fairCurve(NARROW)
    expect(fairCurve(structuredClone(STEEL))).toEqual(first)
  })

  test('tail and neck swapped', () => {
    fc.assert(
      fc.property(body, (aim) => {
        const there = fairCurve(aim)
        const back = fairCurve({
          lengthMm: aim.lengthMm,
          through: aim.through.map(({ x, y }) => ({ x: aim.lengthMm - x, y })).toReversed(),
          tailCurvaturePerMm: aim.neckCurvaturePerMm,
          neckFlatHalfWidthMm: 0,
          neckCurvaturePerMm: aim.tailCurvaturePerMm,
        })
        expect(there.fair).toBe(true)
        expect(back.fair).toBe(true)
        expectWithin(back.curve.lengthMm, there.curve.lengthMm, 1e-6, 'length')
        const mirrored = sample(back.curve, 60).toReversed()
        sample(there.curve, 60).forEach(({ x, y }, i) => {
          expectWithin(aim.lengthMm - mirrored[i]!.x, x, 1e-6, 'x')
          expectWithin(mirrored[i]!.y, y, 1e-6, 'y')
        })
      }),
      { seed: 1, numRuns: 150 },
    )
  })

  test('drawn larger or smaller', () => {
    fc.assert(
      fc.property(body, fc.double({ min: 0.1, max: 30, noNaN: true }), (aim, scale) => {
        const one = fairCurve(aim)
        const other = fairCurve({
          lengthMm: aim.lengthMm * scale,
          through: aim.through.map(({ x, y }) => ({ x: x * scale, y: y * scale })),
          tailCurvaturePerMm: aim.tailCurvaturePerMm === null ? null : aim.tailCurvaturePerMm / scale,
          neckFlatHalfWidthMm: 0,
          neckCurvaturePerMm: null,
        })
        expect(other.fair).toBe(one.fair)
        const scaled = sample(other.curve, 60)
        sample(one.curve, 60).forEach(({ x, y }, i) => {
          expectWithin(scaled[i]!.x / scale, x, 1e-6, 'x')
          expectWithin(scaled[i]!.y / scale, y, 1e-6, 'y')
        })
      }),
      { seed: 2, numRuns: 150 },
    )
  })
})

describe('what cannot be is said, with a point whose moving mends it', () => {
  test.each<[string, xAndHalfWidthMm: readonly number[], oneOf: readonly number[]]>([
    ['a waist wider than the bouts', [130, 182, 284, 300, 392, 139], [1]],
    ['an upper bout twice as wide as the lower', [130, 182, 284, 116, 392, 400], [1, 2]],
    ['a second waist', [80, 170, 150, 182, 220, 110, 265, 170, 310, 110, 392, 139], [2, 3, 4]],
    ['a place beyond the neck', [130, 182, 284, 116, 500, 139], [2]],
    ['a place behind the tail', [-20, 182, 284, 116, 392, 139], [0]],
    ['two widths at one place', [130, 182, 284, 116, 284, 139], [2]],
    ['a width below the axis', [130, 182, 284, -5, 392, 139], [1]],
  ])('%s', (_, flat, oneOf) => {
    const aim = aimOf(486, flat, 1 / 600, 28)
    const { fair, culprit, missMm, curve } = fairCurve(aim)
    expect(fair).toBe(false)
    expect(oneOf).toContain(culprit)
    expect(missMm).toBeGreaterThan(0.05)
    expect('+-+-').toContain(riseSigns(curve))
    const others = aim.through.filter((_point, i) => i !== culprit)
    expect(fairCurve({ ...aim, through: others }).fair).toBe(true)
  })

  test('a curve that leaves the tail backwards runs out of bounds', () => {
    const { fair, culprit, missMm } = fairCurve({ ...NYLON, tailCurvaturePerMm: -1 / 300 })
    expect({ fair, culprit }).toEqual({ fair: false, culprit: 0 })
    expect(missMm).toBeGreaterThan(0.05)
  })
})

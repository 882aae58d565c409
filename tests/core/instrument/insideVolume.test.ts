import { describe, expect, test } from 'vitest'
import { type Curve, makeCurve } from '../../../src/core/geometry/curve.ts'
import { arc, straight } from '../../../src/core/geometry/piece.ts'
import { plane, splitAtX } from '../../../src/core/geometry/surface.ts'
import { makeBack } from '../../../src/core/instrument/back.ts'
import { insideOfBox } from '../../../src/core/instrument/insideVolume.ts'
import { makeTop } from '../../../src/core/instrument/top.ts'
import { creaseOfTop } from '../../../src/core/instrument/topCrease.ts'
import type { TopPlan } from '../../../src/core/plan.ts'
import { readTable } from '../../tables/readTable.ts'
import { expectWithin } from '../within.ts'

const SIDE = 2
const TOP: TopPlan = {
  form: 'flat',
  radiusMm: 4572,
  flatFromMm: 0,
  flatSlope: 'entered',
  flatSlopeDeg: 0,
  riseAtSaddleMm: 0,
}

/** A round box whose inside has this radius, its rim from 0 down to `depthMm`. */
function roundBox(insideMm: number, top: Partial<TopPlan>, depthMm: number, back = plane(-depthMm, 0)) {
  const outerMm = insideMm + SIDE
  const half = makeCurve({ point: { x: 0, y: 0 }, headingRad: Math.PI / 2 }, [arc(outerMm, Math.PI)])
  const made = makeTop(
    { ...TOP, ...top },
    { lengthMm: 2 * outerMm, saddleLineMm: outerMm, halfWidthAtMm: () => 0, flatSlopeRad: () => 0 },
  )
  return insideOfBox({
    bass: half,
    treble: half,
    sideThicknessMm: SIDE,
    top: made.plate,
    back,
    crease: creaseOfTop(made, 2 * outerMm, outerMm),
  })
}

test('a round box with flat plates is a cylinder', () => {
  const { volumeMm3, areaMm2 } = roundBox(200, {}, 95)
  expectWithin(areaMm2, Math.PI * 200 ** 2, 1e-4)
  expectWithin(volumeMm3, Math.PI * 200 ** 2 * 95, 1e-2)
})

test('a plate that falls toward one end leaves what its middle height says', () => {
  const { volumeMm3 } = roundBox(200, {}, 0, plane(-110, 20 / 404))
  expectWithin(volumeMm3, Math.PI * 200 ** 2 * 100, 1e-2)
})

const caps = readTable('spherical_cap.csv')
  .map((row) => ({
    R: row.number('R'),
    base: row.number('base_radius'),
    height: row.number('height'),
    volume: row.number('volume'),
  }))
  .filter(({ R, base }) => R > 4 * base)

describe('domes on a cylinder 90 deep', () => {
  test('the table has some as shallow as a plate', () => expect(caps.length).toBeGreaterThan(0))

  test.each(caps)('a flat rim and a dome of $R over $base: $volume more', ({ R, base, height, volume }) => {
    const { volumeMm3 } = roundBox(base, { form: 'flatRim', radiusMm: R, riseAtSaddleMm: height }, 90)
    expectWithin(volumeMm3 - Math.PI * base ** 2 * 90, volume, volume * 1e-5)
  })

  test.each(caps)('the same dome in a wider body stands on a flat', ({ R, base, height, volume }) => {
    const { volumeMm3 } = roundBox(base * 1.3, { form: 'flatRim', radiusMm: R, riseAtSaddleMm: height }, 90)
    // The ring of the dome's foot is walked by a three-point rule: within 1e-5 of the whole box.
    const cylinder = Math.PI * (base * 1.3) ** 2 * 90
    expectWithin(volumeMm3, cylinder + volume, cylinder * 1e-5)
  })

  test.each(caps)('a back of $R through the rim bulges by the same', ({ R, base, volume }) => {
    // Through the outer faces, so that the dome's base is that much wider; what is inside reaches to the inner one.
    const outer = base + SIDE
    const back = makeBack({ form: 'sphere', radiusMm: R }, 2 * outer, 90, 90).surface
    const { volumeMm3 } = roundBox(base, {}, 0, back)
    const edge = Math.sqrt(R * R - base * base) - Math.sqrt(R * R - outer * outer)
    expectWithin(volumeMm3, Math.PI * base ** 2 * (90 + edge) + volume, volume * 1e-5)
  })
})

describe('corners of the sides are mitred', () => {
  const walk = (half: Curve) =>
    insideOfBox({
      bass: half,
      treble: half,
      sideThicknessMm: SIDE,
      top: plane(0, 0),
      back: plane(-50, 0),
      crease: { breaksAtXMm: [], halfWidthAtMm: () => 0 },
    })
  const right = Math.PI / 2

  test('a box of boards, 300 by 200 outside', () => {
    const pieces = [straight(100), straight(300), straight(100)]
    const half = makeCurve({ point: { x: 0, y: 0 }, headingRad: right }, pieces, [0, right, right])
    expectWithin(walk(half).areaMm2, 296 * 196, 1e-6)
    expectWithin(walk(half).volumeMm3, 296 * 196 * 50, 1e-4)
  })

  test('one with a step: the corner that looks inward too', () => {
    const pieces = [straight(100), straight(200), straight(40), straight(100), straight(60)]
    const half = makeCurve({ point: { x: 0, y: 0 }, headingRad: right }, pieces, [0, right, right, -right, right])
    expectWithin(walk(half).areaMm2, 2 * (196 * 98 + 100 * 58), 1e-6)
  })

  test('a roof at 60 degrees, cut off square', () => {
    const third = Math.PI / 3
    const [roofMm, endMm] = [60 / Math.sin(third), 40]
    const pieces = [straight(100), straight(100), straight(roofMm), straight(endMm)]
    const turns = [0, right, third, right - third]
    const half = makeCurve({ point: { x: 0, y: 0 }, headingRad: right }, pieces, turns)
    // Steiner for mitred corners: area - side x perimeter + side^2 x the sum of tan(turn / 2).
    const area = 2 * (100 * 100 + ((100 + 40) / 2) * (60 / Math.tan(third)))
    const perimeter = 2 * (100 + 100 + roofMm + endMm)
    const mitres = 2 * turns.reduce((sum, turn) => sum + Math.tan(turn / 2), 0)
    expectWithin(walk(half).areaMm2, area - SIDE * perimeter + SIDE * SIDE * mitres, 1e-6)
  })
})

test('a top that steps down by 10 at x = 137 is two boxes', () => {
  const right = Math.PI / 2
  const half = makeCurve(
    { point: { x: 0, y: 0 }, headingRad: right },
    [straight(100), straight(300), straight(100)],
    [0, right, right],
  )
  const { volumeMm3 } = insideOfBox({
    bass: half,
    treble: half,
    sideThicknessMm: SIDE,
    top: splitAtX(137, plane(0, 0), plane(-10, 0)),
    back: plane(-50, 0),
    crease: { breaksAtXMm: [137], halfWidthAtMm: () => 0 },
  })
  expectWithin(volumeMm3, 196 * ((137 - SIDE) * 50 + (298 - 137) * 40), 1e-3)
})

test('one outline with other sides, or with its flat elsewhere, is walked anew', () => {
  const half = makeCurve({ point: { x: 0, y: 0 }, headingRad: Math.PI / 2 }, [arc(200, Math.PI)])
  const walked = (sideThicknessMm: number, breakMm: number) =>
    insideOfBox({
      bass: half,
      treble: half,
      sideThicknessMm,
      top: splitAtX(breakMm, plane(0, 0), plane(-10, 0)),
      back: plane(-50, 0),
      crease: { breaksAtXMm: [breakMm], halfWidthAtMm: () => 0 },
    })
  expectWithin(walked(2, 200).areaMm2, Math.PI * 198 ** 2, 1e-3)
  expectWithin(walked(5, 200).areaMm2, Math.PI * 195 ** 2, 1e-3)
  // Half of it 50 deep and half 40; then a segment 100 from the middle to the neck side.
  expectWithin(walked(5, 200).volumeMm3, Math.PI * 195 ** 2 * 45, 1)
  const segment = 195 ** 2 * Math.acos(100 / 195) - 100 * Math.sqrt(195 ** 2 - 100 ** 2)
  expectWithin(walked(5, 300).volumeMm3, Math.PI * 195 ** 2 * 50 - 10 * segment, 1)
})

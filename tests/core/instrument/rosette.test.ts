import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type BoardEnd, hiddenRad, measureRing } from '../../../src/core/instrument/rosette.ts'
import type { RingPlan, RosettePlan } from '../../../src/core/plan.ts'
import { real } from '../../generators/real.ts'
import { DEG, expectWithin } from '../within.ts'

const square = (fromCentreMm: number, widthMm: number): BoardEnd => ({
  fromCentreMm,
  halfWidthMm: widthMm / 2,
  taper: 0,
})

describe('the angle a board hides of a ring', () => {
  test.each([
    [50, 44.4],
    [52, 31.3],
  ])('ring 54 to 66 under a board 57 wide, %d from the centre: %d degrees', (e, degrees) => {
    expectWithin(hiddenRad(54, 66, square(e, 57)) / DEG, degrees, 0.05)
  })

  test('hides nothing once its end stands beyond the inner edge', () => {
    expect(hiddenRad(54, 66, square(54, 57))).toBe(0)
    expect(hiddenRad(54, 66, square(80, 57))).toBe(0)
  })

  /** Counted in a fan of rays: a ray is hidden when every place of the ring on it lies under the board. */
  function countedRad(inner: number, outer: number, board: BoardEnd): number {
    const rays = 20000
    const hidden = (angle: number) => {
      for (let i = 0; i <= 40; i++) {
        const r = inner + ((outer - inner) * i) / 40
        const [x, y] = [r * Math.cos(angle), Math.abs(r * Math.sin(angle))]
        if (x < board.fromCentreMm) return false
        if (y > board.halfWidthMm - board.taper * (x - board.fromCentreMm)) return false
      }
      return true
    }
    let ray = 0
    while (ray < rays && hidden((Math.PI * (ray + 0.5)) / rays)) ray++
    return (2 * Math.PI * ray) / rays
  }

  test('against counting rays, for any ring and board', () => {
    fc.assert(
      fc.property(
        real(20, 80),
        real(1, 40),
        real(-120, 90),
        real(12, 60),
        real(-0.05, 0.05),
        (inner, width, fromCentreMm, halfWidthMm, taper) => {
          const board = { fromCentreMm, halfWidthMm, taper }
          expectWithin(hiddenRad(inner, inner + width, board), countedRad(inner, inner + width, board), 4e-4)
        },
      ),
      { numRuns: 300, seed: 11 },
    )
  })
})

describe('one ring', () => {
  const ring: RingPlan = {
    order: 'i',
    innerRadiusMm: 54,
    outerRadiusMm: 66,
    join: 'openUnderBoard',
    gapMm: null,
    tileCount: 40,
  }
  const rosette: RosettePlan = {
    rings: {},
    inlayMm: 2,
    standsProudMm: 0.2,
    cutterMm: 3,
    passOverlapMm: 0.5,
    gapMarginMm: 4,
  }
  const found = measureRing(ring, rosette, square(50, 57))

  test('its gap is as wide as the board hides at mid radius, less a margin on both sides', () => {
    expectWithin(found.hiddenMm, 44.4 * DEG * 60, 0.06)
    expectWithin(found.gapMm, found.hiddenMm - 8, 1e-12)
    expectWithin(found.stripLengthMm, 2 * Math.PI * 60 - found.gapMm, 1e-12)
    expectWithin(found.tileLengthMm, found.stripLengthMm / 40, 1e-12)
    expectWithin((found.tileRad as number) * 40 + found.gapRad, 2 * Math.PI, 1e-12)
  })

  test('its cutting circles clear the channel in counted passes', () => {
    expect(found.innerCutterCircleMm).toBe(55.5)
    expect(found.outerCutterCircleMm).toBe(64.5)
    // Circles 2.5 apart from 55.5: 55.5, 58, 60.5, 63 and the last at 64.5.
    expect(found.passes).toBe(5)
    expect(measureRing({ ...ring, outerRadiusMm: 57 }, rosette, square(50, 57)).passes).toBe(1)
  })

  test('closed it has no gap, whatever was entered', () => {
    const closed = measureRing({ ...ring, join: 'closed', gapMm: 12 }, rosette, square(50, 57))
    expect(closed.gapMm).toBe(0)
    expectWithin(closed.stripLengthMm, 120 * Math.PI, 1e-12)
  })
})

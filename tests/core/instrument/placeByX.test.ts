import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { makeCurve } from '../../../src/core/geometry/curve.ts'
import { arc } from '../../../src/core/geometry/piece.ts'
import {
  distanceFromOriginMm,
  distanceOfXMm,
  distanceRangeMm,
  type Layout,
  ORIGINS,
  placeAtDistance,
  placeByX,
  WAYS_ALONG,
} from '../../../src/core/instrument/placeByX.ts'

// Half of a round body of radius 200: everything about it is known in closed form.
const R = 200
const half = makeCurve({ point: { x: 0, y: 0 }, headingRad: Math.PI / 2 }, [arc(R, Math.PI)])
const layout = (more: Partial<Layout> = {}): Layout => ({
  half,
  lengthMm: 2 * R,
  saddleLineMm: 120,
  origin: 'tail',
  along: 'centreline',
  ...more,
})

describe('a place by its distance, on a round body', () => {
  it('stands over x where x = R - R cos(s/R)', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: Math.PI - 0.01, noNaN: true }), (angle) => {
        expect(placeByX(half, R - R * Math.cos(angle))).toBeCloseTo(R * angle, 7)
      }),
    )
    expect(placeByX(half, -1)).toBeNull()
    expect(placeByX(half, 2 * R + 1)).toBeNull()
  })

  it('counts from the tail and the saddle line toward the neck, from the neck edge toward the tail', () => {
    const s = (R * Math.PI) / 2
    const centreline = ORIGINS.map((origin) => distanceFromOriginMm(layout({ origin }), s))
    expect(centreline.map((d) => Math.round(d * 1e6) / 1e6)).toEqual([200, 200, 80])
    const saddleAlong = R * Math.acos(1 - 120 / R)
    const outer = ORIGINS.map((origin) => distanceFromOriginMm(layout({ origin, along: 'outerFace' }), s))
    ;[s, R * Math.PI - s, s - saddleAlong].forEach((want, i) => {
      expect(outer[i]).toBeCloseTo(want, 7)
    })
    expect(ORIGINS.map((origin) => distanceOfXMm(layout({ origin }), 100))).toEqual([100, 300, -20])
  })

  it('finds a place again from its distance, whatever it is measured from', () => {
    for (const origin of ORIGINS)
      for (const along of WAYS_ALONG)
        for (const s of [1, 50, 200, 400, 620]) {
          const one = layout({ origin, along })
          expect(placeAtDistance(one, distanceFromOriginMm(one, s))).toBeCloseTo(s, 5)
        }
  })

  it('says how far the side reaches, and nothing beyond it', () => {
    const neck = layout({ origin: 'neckEdge' })
    const { minMm, maxMm } = distanceRangeMm(neck)
    expect([minMm, maxMm].map((d) => Math.round(d * 1e6) / 1e6 + 0)).toEqual([0, 400])
    expect(placeAtDistance(neck, maxMm + 0.1)).toBeNull()
    expect(placeAtDistance(layout({ along: 'outerFace' }), R * Math.PI + 0.1)).toBeNull()
    const saddle = distanceRangeMm(layout({ origin: 'saddleLine', along: 'outerFace' }))
    expect(saddle.maxMm - saddle.minMm).toBeCloseTo(R * Math.PI, 7)
  })
})

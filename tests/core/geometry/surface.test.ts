import { describe, expect, test } from 'vitest'
import { lowerOf, plane, slopeToward, sphere, splitAtX } from '../../../src/core/geometry/surface.ts'
import { readTable } from '../../tables/readTable.ts'
import { expectWithin } from '../within.ts'

/** A cylinder of radius r stood on its end in a dish, d off the axis: where its wall is cut, at arc length s round it. */
const wall = readTable('unrolled_wall.csv').map((row) => ({
  cutter: row.text('cutter'),
  first: row.number('R_or_z0'),
  r: row.number('cylinder_r'),
  d: Number(row.text('axis_offset_d')),
  s: row.number('s_arc'),
  z: row.number('z'),
}))

describe('the wall of a cylinder, cut by a dish and unrolled', () => {
  test.each(wall.filter(({ cutter }) => cutter === 'sphere'))(
    'sphere $first, r $r, $d off, at $s',
    ({ first, r, d, s, z }) => {
      // Deepest place of the dish at height 0, its axis at the origin; the wall's axis stands at x = d.
      const dish = sphere(first, 0, { x: 0, z: 0 }, 'down')
      expectWithin(dish.heightMm(d + r * Math.cos(s / r), r * Math.sin(s / r)), z, 1e-6)
    },
  )

  test.each(wall.filter(({ cutter }) => cutter.startsWith('plane')))('tilted plane, at $s', ({ first, r, s, z }) => {
    const tilted = plane(first, 20 / 500)
    // s is written to 1e-4, over which this plane rises by 4e-6.
    expectWithin(tilted.heightMm(r * Math.cos(s / r), r * Math.sin(s / r)), z, 5e-6)
  })
})

describe('a spherical cap', () => {
  test.each(
    readTable('spherical_cap.csv').map((row) =>
      ['R', 'base_radius', 'height', 'volume', 'curved_area'].map(row.number),
    ),
  )(
    'R %d over a circle of %d: height %d, volume %d, area %d',
    (radius = 0, base = 0, height = 0, volume = 0, area = 0) => {
      const cap = sphere(radius, 0, { x: base, z: 0 }, 'up')
      expectWithin(cap.heightMm(0, 0), height, 6e-7 * radius)
      // Volume and curved area summed over rings of the cap as the surface gives it: height and slope are both at work.
      let summedVolume = 0
      let summedArea = 0
      const count = 20000
      for (let i = 0; i < count; i++) {
        const r = (base * (i + 0.5)) / count
        const ring = (2 * Math.PI * r * base) / count
        const { x, y } = cap.slope(0, r)
        summedVolume += ring * cap.heightMm(0, r)
        summedArea += ring * Math.hypot(1, x, y)
      }
      expectWithin(summedVolume, volume, 2e-5 * volume)
      expectWithin(summedArea, area, 2e-5 * area)
    },
  )
})

describe('slopes', () => {
  const dome = sphere(4600, 120, { x: 0, z: -100 }, 'down')
  test.each([
    [30, 40],
    [400, -120],
    [120, 0],
    [0, 190],
  ])('at (%d, %d) by finite difference', (x, y) => {
    const h = 0.01
    const slope = dome.slope(x, y)
    expectWithin(slope.x, (dome.heightMm(x + h, y) - dome.heightMm(x - h, y)) / (2 * h), 1e-9)
    expectWithin(slope.y, (dome.heightMm(x, y + h) - dome.heightMm(x, y - h)) / (2 * h), 1e-9)
    expectWithin(slopeToward(dome, { x, y }, { x: 0.6, y: 0.8 }), 0.6 * slope.x + 0.8 * slope.y, 1e-15)
  })

  test('the slope of a sphere at plan distance d is asin(d / R)', () => {
    expectWithin(Math.atan(dome.slope(120, 300).y), Math.asin(300 / 4600), 1e-12)
  })
})

describe('surfaces put together', () => {
  const low = plane(0, 0)
  const rising = plane(-10, 0.1)
  test('the lower of two takes the slope of the lower', () => {
    const both = lowerOf(low, rising)
    expect(both.heightMm(50, 3)).toBe(-5)
    expect(both.slope(50, 3).x).toBe(0.1)
    expect(both.heightMm(200, 3)).toBe(0)
    expect(both.slope(200, 3).x).toBe(0)
  })
  test('one before x, the other from there', () => {
    const both = splitAtX(40, low, rising)
    expect(both.heightMm(39.999, 0)).toBe(0)
    expect(both.heightMm(40, 0)).toBe(-6)
  })
})

test('a sphere tighter than the body it is asked to cover stays finite', () => {
  const tight = sphere(100, 0, { x: 0, z: 0 }, 'up')
  for (const x of [0, 99, 100, 101, 5000]) {
    expect(Number.isFinite(tight.heightMm(x, 300))).toBe(true)
    expect(Number.isFinite(tight.slope(x, 300).y)).toBe(true)
  }
})

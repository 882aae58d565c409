import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { makeBack } from '../../../src/core/instrument/back.ts'
import { real } from '../../generators/real.ts'
import { DEG, expectWithin } from '../within.ts'

describe('a spherical back, body 496, rim 106 and 90, radius 4572', () => {
  const { surface, axisAtMm } = makeBack({ form: 'sphere', radiusMm: 4572 }, 496, 106, 90)

  test('its axis stands at 100.81', () => expectWithin(axisAtMm, 100.81, 0.005))

  test('it passes through both rim edges', () => {
    expectWithin(surface.heightMm(0, 0), -106, 1e-12)
    expectWithin(surface.heightMm(496, 0), -90, 1e-10)
  })

  test('the bevel is 1.26 degrees at the tail and 4.96 at the neck', () => {
    expectWithin(Math.atan(-surface.slope(0, 0).x) / DEG, 1.26, 0.005)
    expectWithin(Math.atan(surface.slope(496, 0).x) / DEG, 4.96, 0.005)
  })
})

test('every place of a spherical back is one radius from one centre', () => {
  fc.assert(
    fc.property(
      real(300, 560),
      real(60, 140),
      real(-20, 30),
      real(1500, 20000),
      (length, depthAtTail, taper, radius) => {
        const depthAtNeck = depthAtTail - taper
        const { surface, axisAtMm } = makeBack({ form: 'sphere', radiusMm: radius }, length, depthAtTail, depthAtNeck)
        const x = axisAtMm as number
        const centre = { x, z: surface.heightMm(x, 0) + radius }
        for (const [px, py] of [
          [0, 0],
          [length, 0],
          [length / 3, 190],
          [length * 0.8, -120],
        ] as const)
          expectWithin(Math.hypot(px - centre.x, py, surface.heightMm(px, py) - centre.z), radius, 1e-8)
      },
    ),
  )
})

describe('the other forms', () => {
  test('across only: straight along the taper, an arc of the radius square to it', () => {
    const { surface, axisAtMm } = makeBack({ form: 'across', radiusMm: 4572 }, 496, 106, 90)
    expect(axisAtMm).toBe('none')
    for (const x of [0, 100, 300, 496]) expectWithin(surface.heightMm(x, 0), -106 + (16 * x) / 496, 1e-12)
    // The cylinder's axis runs one radius over the taper line: the distance of any place from it is the radius.
    const way = { x: 496 / Math.hypot(496, 16), z: 16 / Math.hypot(496, 16) }
    const over = { x: -way.z * 4572, z: -106 + way.x * 4572 }
    for (const [x, y] of [
      [50, 170],
      [300, -119],
      [480, 100],
    ] as const) {
      const from = { x: x - over.x, z: surface.heightMm(x, y) - over.z }
      const along = from.x * way.x + from.z * way.z
      expectWithin(Math.hypot(from.x - along * way.x, y, from.z - along * way.z), 4572, 1e-9)
    }
  })

  test('flat: one plane, without a radius', () => {
    const back = makeBack({ form: 'flat', radiusMm: 4572 }, 496, 106, 90)
    expect(back.radiusMm).toBe('flat')
    expectWithin(back.surface.heightMm(248, 150), -98, 1e-12)
  })

  test('without taper the axis stands in the middle', () => {
    expectWithin(makeBack({ form: 'sphere', radiusMm: 4600 }, 500, 100, 100).axisAtMm, 250, 1e-12)
  })

  test('a radius to infinity is flat', () => {
    const wide = makeBack({ form: 'sphere', radiusMm: 1e12 }, 496, 106, 90).surface
    const flat = makeBack({ form: 'flat', radiusMm: 1 }, 496, 106, 90).surface
    for (const x of [0, 137, 300, 496]) expectWithin(wide.heightMm(x, 150), flat.heightMm(x, 150), 1e-6)
  })
})

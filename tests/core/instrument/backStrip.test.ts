import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { makeBack } from '../../../src/core/instrument/back.ts'
import { type BackStripSite, measureBackStrip } from '../../../src/core/instrument/backStrip.ts'
import { BACK_FORMS } from '../../../src/core/plan.ts'
import { real } from '../../generators/real.ts'
import { expectWithin } from '../within.ts'

const site: BackStripSite = {
  back: makeBack({ form: 'sphere', radiusMm: 4572 }, 496, 106, 90).surface,
  lengthMm: 496,
  plateMm: 2.5,
  bindingThicknessMm: 2,
  widthMm: 6,
  depthMm: 1.2,
  trimMm: 15,
}

describe.each([
  [4572, 496, 106, 90],
  [1800, 254, 66, 60],
  [700, 496, 100, 100],
])('on a sphere of %s over %s', (radius, lengthMm, tail, neck) => {
  const { surface } = makeBack({ form: 'sphere', radiusMm: radius }, lengthMm, tail, neck)
  const found = measureBackStrip({ ...site, back: surface, lengthMm })

  test('arc and chord of the circle through the outer face', () => {
    // The centre stands over the middle of the chord from tail to neck, square to it; the ends by Pythagoras from there.
    const [dx, dz] = [lengthMm, tail - neck]
    const chord = Math.hypot(dx, dz)
    const up = Math.sqrt(radius * radius - (chord * chord) / 4)
    const centre = { x: dx / 2 - (up * dz) / chord, z: -tail + dz / 2 + (up * dx) / chord }
    const end = (x: number) => ({ x, z: centre.z - Math.sqrt(radius * radius - (x - centre.x) ** 2) })
    const [a, b] = [end(2), end(lengthMm - 2)]
    const angle = 2 * Math.asin(Math.hypot(b.x - a.x, b.z - a.z) / (2 * radius))
    expectWithin(found.arcMm, (radius + 2.5) * angle, 1e-8)
    expectWithin(found.chordMm, 2 * (radius + 2.5) * Math.sin(angle / 2), 1e-8)
    expectWithin(found.cutMm, (radius + 2.5) * angle + 30, 1e-8)
  })
})

test.each(['flat', 'across'] as const)('%s: straight along the taper', (form) => {
  const { surface } = makeBack({ form, radiusMm: 4572 }, 496, 106, 90)
  const found = measureBackStrip({ ...site, back: surface })
  const straight = Math.hypot(492, (16 * 492) / 496)
  expectWithin(found.arcMm, straight, 1e-9)
  expectWithin(found.chordMm, straight, 1e-9)
})

test('what is left of the back; no width, no strip', () => {
  expectWithin(measureBackStrip(site).leftMm, 1.3, 1e-12)
  expectWithin(measureBackStrip({ ...site, depthMm: 3 }).leftMm, -0.5, 1e-12)
  expect(measureBackStrip({ ...site, widthMm: 6, depthMm: 1.2 })).toMatchObject({ widthMm: 6, downMm: 1.2 })
  for (const value of Object.values(measureBackStrip({ ...site, widthMm: 0 }))) expect(value).toBe('none')
})

test('whatever the back: finite, and the dome never shorter than its chord', () => {
  const mm = (min: number, max: number) => real(min, max)
  fc.assert(
    fc.property(
      fc.constantFrom(...BACK_FORMS),
      mm(100, 30000),
      mm(1, 800),
      mm(20, 220),
      mm(20, 220),
      mm(0, 6),
      (form, radiusMm, lengthMm, tail, neck, bindingThicknessMm) => {
        const back = makeBack({ form, radiusMm }, lengthMm, tail, neck).surface
        const { arcMm, chordMm } = measureBackStrip({ ...site, back, lengthMm, bindingThicknessMm })
        expect(Number.isFinite(arcMm)).toBe(true)
        expect(Number.isFinite(chordMm)).toBe(true)
        if (radiusMm > lengthMm) expect(Number(arcMm)).toBeGreaterThanOrEqual(Number(chordMm) - 1e-6)
      },
    ),
    { seed: 8 },
  )
})

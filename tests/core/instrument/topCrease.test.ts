import { describe, expect, test } from 'vitest'
import { makeTop } from '../../../src/core/instrument/top.ts'
import { creaseOfTop } from '../../../src/core/instrument/topCrease.ts'
import type { TopPlan } from '../../../src/core/plan.ts'
import { DEG, expectWithin } from '../within.ts'

const LENGTH = 496
const SADDLE = 140
const [RADIUS, FROM, SLOPE] = [8500, 400, 1.3 * DEG]
const topOf = (form: TopPlan['form'], radiusMm = RADIUS) =>
  makeTop(
    { form, radiusMm, flatFromMm: FROM, flatSlope: 'entered', flatSlopeDeg: 1.3, riseAtSaddleMm: 3 },
    { lengthMm: LENGTH, saddleLineMm: SADDLE, halfWidthAtMm: () => 145, flatSlopeRad: () => SLOPE },
  )

describe('a flat upper bout', () => {
  const crease = creaseOfTop(topOf('flatUpperBout'), LENGTH, SADDLE)
  // The sphere through both ends has its centre under the middle, by Pythagoras.
  const underMm = Math.sqrt(RADIUS ** 2 - (LENGTH / 2) ** 2)
  const toCentre = (x: number, y: number, z: number) => Math.hypot(x - LENGTH / 2, y, z + underMm)
  // Its edge 145 off the centreline is where the flat begins.
  const startMm = Math.sqrt(RADIUS ** 2 - (FROM - LENGTH / 2) ** 2 - 145 ** 2) - underMm

  test('breaks where it begins, and has no crease before', () => {
    expect(crease.breaksAtXMm).toEqual([FROM])
    expect(crease.halfWidthAtMm(FROM - 1)).toBe(0)
    expectWithin(crease.halfWidthAtMm(FROM), 145, 1e-6)
  })

  test.each([400, 410, 430, 460])('at %d flat and dish meet one radius from its centre', (x) => {
    const y = crease.halfWidthAtMm(x)
    expect(y).toBeGreaterThan(50)
    expectWithin(toCentre(x, y, startMm - (x - FROM) * Math.tan(SLOPE)), RADIUS, 1e-8)
  })
})

test('a dome of 3 on a flat rim stands on the circle that a chord of that sagitta has', () => {
  // A sphere of 4056.5 cut 3 under its crown has a foot of radius sqrt(8113 x 3 - 9).
  const crease = creaseOfTop(topOf('flatRim', 4056.5), LENGTH, SADDLE)
  const foot = Math.sqrt(24330)
  expectWithin(crease.breaksAtXMm[0], SADDLE - foot, 1e-9)
  expectWithin(crease.breaksAtXMm[1], SADDLE + foot, 1e-9)
  for (const x of [20, 140, 250]) expectWithin(Math.hypot(x - SADDLE, crease.halfWidthAtMm(x)), foot, 1e-9)
  expect(crease.halfWidthAtMm(SADDLE + foot + 1)).toBe(0)
})

test.each(['sphere', 'flat'] as const)('a top that is a %s has none', (form) => {
  const crease = creaseOfTop(topOf(form), LENGTH, SADDLE)
  expect(crease.breaksAtXMm).toEqual([])
  expect(crease.halfWidthAtMm(450)).toBe(0)
})

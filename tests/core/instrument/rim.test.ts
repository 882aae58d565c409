import { describe, expect, test } from 'vitest'
import { compute } from '../../../src/core/compute.ts'
import { curveAt } from '../../../src/core/geometry/curve.ts'
import { halfWidthAtMm } from '../../../src/core/instrument/body.ts'
import { stationStepMm, stationsMm } from '../../../src/core/instrument/rim.ts'
import type { Plan } from '../../../src/core/plan.ts'
import { SMALL, STEEL_STRING } from '../../generators/demoModels.ts'
import { marchSolids } from '../solids.ts'
import { expectWithin } from '../within.ts'

const plans: { name: string; plan: Plan }[] = [
  {
    name: 'planed upper bout',
    plan: { ...STEEL_STRING.plan, top: { ...STEEL_STRING.plan.top, flatSlope: 'entered' } },
  },
  { name: 'sphere to the rim', plan: { ...STEEL_STRING.plan, top: { ...STEEL_STRING.plan.top, form: 'sphere' } } },
  {
    name: 'small, strongly domed',
    plan: {
      ...SMALL.plan,
      top: { ...SMALL.plan.top, form: 'sphere', radiusMm: 2500 },
      back: { form: 'sphere', radiusMm: 1800 },
    },
  },
]

describe.each(plans)('the side of a body, $name, met by upright rays', ({ plan }) => {
  const { numbers, geometry } = compute(plan)
  const { bass: half } = geometry.outline
  const march = marchSolids(plan, numbers.body.lengthMm, halfWidthAtMm(half, plan.top.flatFromMm))

  test('depth, top edge and back edge', () => {
    for (const row of numbers.rim) {
      expectWithin(row.topEdgeMm, march.topMm(row.xMm, row.yMm), 1e-8, `top edge at ${row.alongOuterMm}`)
      expectWithin(row.backEdgeMm, march.backMm(row.xMm, row.yMm), 1e-8, `back edge at ${row.alongOuterMm}`)
      expectWithin(row.depthMm, march.topMm(row.xMm, row.yMm) - march.backMm(row.xMm, row.yMm), 1e-8)
    }
  })

  test('bevels, by stepping across the edge', () => {
    const h = 0.02
    for (const row of numbers.rim) {
      // The way along the edge from two near places, and square to it the way out of the body.
      const s = Math.min(Math.max(row.alongOuterMm, h), half.lengthMm - h)
      const [a, b] = [curveAt(half, s - h).point, curveAt(half, s + h).point]
      const size = Math.hypot(b.x - a.x, b.y - a.y)
      const out = { x: -(b.y - a.y) / size, y: (b.x - a.x) / size }
      // On a flat's border the slope has no one value: the two sides differ there.
      if (plan.top.form === 'flatUpperBout' && Math.abs(row.xMm - plan.top.flatFromMm) < 2) continue
      const across = (heightMm: (x: number, y: number) => number) =>
        (heightMm(row.xMm + h * out.x, row.yMm + h * out.y) - heightMm(row.xMm - h * out.x, row.yMm - h * out.y)) /
        (2 * h)
      const near = row.alongOuterMm < h || row.alongOuterMm > half.lengthMm - h ? 2e-5 : 3e-6
      expectWithin(Math.tan(row.backBevelRad), across(march.backMm), near, `back bevel at ${row.alongOuterMm}`)
      expectWithin(Math.tan(row.topBevelRad), -across(march.topMm), near, `top bevel at ${row.alongOuterMm}`)
    }
  })
})

describe('stations', () => {
  test('the widest round step that gives forty', () => {
    expect(stationStepMm(763.3, null)).toBe(20)
    expect(stationsMm(763.3, 20)).toHaveLength(40)
    expect(stationStepMm(760, null)).toBe(15)
    expect(stationsMm(760, 15)).toHaveLength(52)
  })
  test('an entered step is taken unless it gives too few', () => {
    expect(stationStepMm(763.3, 10)).toBe(10)
    expect(stationStepMm(300, 20)).toBe(6)
  })
  test('both ends are stations, once each', () => {
    for (const length of [300, 450, 763.3, 1e4]) {
      const stations = stationsMm(length, stationStepMm(length, null))
      expect(stations[0]).toBe(0)
      expect(stations.at(-1)).toBe(length)
      expect(stations.length).toBeGreaterThanOrEqual(40)
      expect(new Set(stations).size).toBe(stations.length)
    }
  })
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { compute } from '../../../src/core/compute.ts'
import { curveAt } from '../../../src/core/geometry/curve.ts'
import { halfWidthAtMm } from '../../../src/core/instrument/body.ts'
import { type EdgeCuts, edgeRow } from '../../../src/core/instrument/edgeCut.ts'
import type { Plan } from '../../../src/core/plan.ts'
import { SMALL, STEEL_STRING } from '../../generators/demoModels.ts'
import { real } from '../../generators/real.ts'
import { marchSolids } from '../solids.ts'
import { DEG, expectWithin } from '../within.ts'

const steel: Plan = {
  ...STEEL_STRING.plan,
  top: { ...STEEL_STRING.plan.top, form: 'sphere' },
  back: { form: 'sphere', radiusMm: 4572 },
  rim: { ...STEEL_STRING.plan.rim, depthAtTailMm: 106, depthAtNeckMm: 90 },
  binding: { heightMm: 6, thicknessMm: 2, topPurflingMm: 1.5, backPurflingMm: 1 },
}
const strongly: Plan = {
  ...SMALL.plan,
  top: { ...SMALL.plan.top, form: 'sphere', radiusMm: 2500 },
  back: { form: 'sphere', radiusMm: 1800 },
  binding: { heightMm: 4, thicknessMm: 1.5, topPurflingMm: 1, backPurflingMm: 2 },
}
const cut: Plan = { ...steel, outline: { ...steel.outline, cutaway: { ...steel.outline.cutaway, form: 'pointed' } } }

type Vector = readonly [number, number, number]
const dot = (a: Vector, b: Vector) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2]

/** Where the upright through `at` comes under the plane through `on` with this normal: by halving. */
function meetPlane(on: Vector, normal: Vector, at: { x: number; y: number }): number {
  const over = (z: number) => dot(normal, [at.x - on[0], at.y - on[1], z - on[2]])
  const rises = over(500) > over(-500)
  let [low, high] = [-500, 500]
  for (let i = 0; i < 90; i++) {
    const z = (low + high) / 2
    if (over(z) > 0 === rises) high = z
    else low = z
  }
  return (low + high) / 2
}

describe.each([
  ['steel-string', steel, false],
  ['small, strongly domed', strongly, false],
  ['treble half with a pointed cutaway', cut, true],
] as const)('a guide on the dome against one square to the side, built in space: %s', (_, plan, ofTreble) => {
  const { numbers, geometry } = compute(plan)
  const half = ofTreble ? geometry.outline.treble : geometry.outline.bass
  const march = marchSolids(plan, numbers.body.lengthMm, halfWidthAtMm(half, plan.top.flatFromMm))
  const rows = ofTreble ? numbers.trebleEdgePlaces : numbers.edgePlaces
  const { heightMm: ledge, thicknessMm: binding } = plan.binding
  const depth = plan.edges.purflingDepthMm

  test('stands at the same places as the rest of the rim', () => {
    const places = ofTreble ? numbers.treblePlaces : numbers.places
    expect(rows.map(({ place, alongOuterMm }) => [place, alongOuterMm])).toEqual(
      places.map(({ place, alongOuterMm }) => [place, alongOuterMm]),
    )
    expect(rows.length).toBeGreaterThan(4)
  })

  test.each(['top', 'back'] as const)('%s', (plate) => {
    const heightMm = plate === 'top' ? march.topMm : march.backMm
    const out = plate === 'top' ? 1 : -1
    for (const row of rows) {
      // Just beside a corner of the outline, on the row's own piece: the way along from two near places.
      const s = row.alongOuterMm
      const [a, b] = [curveAt(half, s - 2e-3).point, curveAt(half, s - 1e-3).point]
      const onward = s < 1 ? [curveAt(half, 1e-3).point, curveAt(half, 2e-3).point] : [a, b]
      const [p, q] = [onward[0]!, onward[1]!]
      const size = Math.hypot(q.x - p.x, q.y - p.y)
      const inward = { x: (q.y - p.y) / size, y: -(q.x - p.x) / size }
      const corner = curveAt(half, s - 1e-9).point
      const at = (inset: number) => ({ x: corner.x + inset * inward.x, y: corner.y + inset * inward.y })
      const z0 = heightMm(corner.x, corner.y)
      // The base lies on three places of the dome close round the outer corner.
      const h = 0.05
      const east = (heightMm(corner.x + h, corner.y) - heightMm(corner.x - h, corner.y)) / (2 * h)
      const north = (heightMm(corner.x, corner.y + h) - heightMm(corner.x, corner.y - h)) / (2 * h)
      const leans: Vector = [-east, -north, 1]
      // Its cutter ends in a plane parallel to it, let down until it is a ledge deep on the outer face; the square one's ends level.
      const floor: Vector = [corner.x, corner.y, z0 - out * ledge]
      const purflingMm = plate === 'top' ? plan.binding.topPurflingMm : plan.binding.backPurflingMm
      const higher = (inset: number) => out * (meetPlane(floor, leans, at(inset)) - floor[2])
      const [bindingOff, purflingOff, bindingSet, purflingSet, foot] =
        plate === 'top'
          ? [row.topBindingOffMm, row.topPurflingOffMm, row.topBindingSetMm, row.topPurflingSetMm, row.topFootMm]
          : [row.backBindingOffMm, row.backPurflingOffMm, row.backBindingSetMm, row.backPurflingSetMm, row.backFootMm]
      expectWithin(bindingOff, higher(binding), 2e-5, `${row.place}, binding`)
      expectWithin(purflingOff, higher(binding + purflingMm), 3e-5, `${row.place}, purfling`)
      expectWithin(foot, higher(10), 8e-5, `${row.place}, foot`)

      // Against the true dome, whose bend is left out of the sums: u2 / 2R at the inset u.
      const rise = (inset: number) => out * (heightMm(at(inset).x, at(inset).y) - z0)
      const bend = (inset: number) => (0.6 * inset * inset) / (plate === 'top' ? plan.top : plan.back).radiusMm + 3e-5
      expectWithin(bindingSet, ledge + rise(binding), bend(binding), `${row.place}, gauge on the plate to the ledge`)
      const wall = binding + purflingMm
      const under = depth - rise(wall)
      if (purflingMm > 0) expectWithin(purflingSet, under, bend(wall), `${row.place}, floor under the corner`)

      const z = (of: March, p2: { x: number; y: number }) => of(p2.x, p2.y)
      const whole = z(march.topMm, corner) - z(march.backMm, corner) + plan.plates.topMm + plan.plates.backMm
      expectWithin(row.betweenMm, whole - 2 * ledge, 1e-6, `${row.place}, between`)
    }
  })
})
type March = (x: number, y: number) => number

test('bevels of 1.26 and 4.96 degrees on the back: two millimetres off at the neck take a foot 23 mm inside', () => {
  const { edgePlaces } = compute(steel).numbers
  const [tail, neck] = [edgePlaces[0]!, edgePlaces.at(-1)!]
  // The published angles are to 0.005 degrees.
  expectWithin(tail.backFootMm, 10 * Math.tan(1.26 * DEG), 9e-4)
  expectWithin(neck.backFootMm, 10 * Math.tan(4.96 * DEG), 9e-4)
  expectWithin(2.3 * neck.backFootMm, 2, 0.01)
  expectWithin(neck.backBindingOffMm, 2 * Math.tan(4.96 * DEG), 2e-4)
  expectWithin(neck.backPurflingOffMm, 3 * Math.tan(4.96 * DEG), 3e-4)
  expectWithin(neck.backBindingSetMm, 6.1736, 2e-4)
})

const length = real(0, 15)
const cuts: fc.Arbitrary<EdgeCuts> = fc.record({
  bindingHeightMm: length,
  bindingThicknessMm: fc.oneof(length, fc.constant(0)),
  purflingDepthMm: length,
  top: fc.record({ purflingMm: fc.oneof(length, fc.constant(0)), plateMm: length }),
  back: fc.record({ purflingMm: fc.oneof(length, fc.constant(0)), plateMm: length }),
})

test('whatever the cuts: finite or none, and too shallow exactly where the plate stands prouder inside', () => {
  const at = compute(steel).numbers.places[2]!
  const bevel = real(-1.53, 1.53)
  fc.assert(
    fc.property(cuts, bevel, bevel, (of, topBevelRad, backBevelRad) => {
      const row = edgeRow({ ...at, topBevelRad, backBevelRad }, of)
      for (const [name, value] of Object.entries(row))
        if (name !== 'place') expect(value === 'none' || Number.isFinite(value), name).toBe(true)
      const isBound = of.bindingThicknessMm > 0
      expect(row.topBindingOffMm !== 'none').toBe(isBound)
      expect(row.betweenMm !== 'none').toBe(isBound)
      expect(row.topPurflingSetMm !== 'none').toBe(of.top.purflingMm > 0)
      expect(row.backPurflingSetMm !== 'none').toBe(of.back.purflingMm > 0)
      if (isBound && of.bindingThicknessMm > 1e-3 && Math.abs(topBevelRad) > 1e-3)
        expect(Math.sign(Number(row.topBindingOffMm))).toBe(Math.sign(topBevelRad))
    }),
    { seed: 3 },
  )
})

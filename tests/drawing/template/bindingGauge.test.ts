import { describe, expect, test } from 'vitest'
import { compute } from '../../../src/core/compute.ts'
import { curveAt } from '../../../src/core/geometry/curve.ts'
import { halfWidthAtMm } from '../../../src/core/instrument/body.ts'
import type { Plan } from '../../../src/core/plan.ts'
import type { PathShape } from '../../../src/drawing/drawing.ts'
import { bindingGauge } from '../../../src/drawing/template/bindingGauge.ts'
import { withFields } from '../../core/everyForm.ts'
import { marchSolids } from '../../core/solids.ts'
import { DEG, expectWithin } from '../../core/within.ts'
import { SMALL, STEEL_STRING } from '../../generators/demoModels.ts'
import { cornersOf, pathsOf } from './linesOf.ts'

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
  binding: { heightMm: 4, thicknessMm: 1.5, topPurflingMm: 0, backPurflingMm: 0 },
}
const cut = withFields(steel, { 'outline.cutaway.form': 'pointed' })

/** How far a gauge stands out at the upper left and the lower right, and how high its steps are there. */
function stepsOf(gauge: PathShape) {
  const corners = cornersOf(gauge)
  const xs = [...new Set(corners.map(({ x }) => x))].toSorted((a, b) => a - b)
  const ys = corners.map(({ y }) => y)
  const heightAt = (x: number) => {
    const there = corners.filter((corner) => corner.x === x).map(({ y }) => y)
    return Math.max(...there) - Math.min(...there)
  }
  return {
    top: { depthMm: xs[1]! - xs[0]!, heightMm: heightAt(xs[0]!) },
    back: { depthMm: xs.at(-1)! - xs.at(-2)!, heightMm: heightAt(xs.at(-1)!) },
    heightMm: Math.max(...ys) - Math.min(...ys),
    isTopAtHead: corners.find(({ x }) => x === xs[0])!.y === Math.min(...ys),
  }
}

describe.each([
  ['steel-string', steel],
  ['small, strongly domed', strongly],
  ['with a pointed cutaway', cut],
] as const)('%s, against a guide square to the side on domes met by upright rays', (_, plan) => {
  const { numbers, geometry } = compute(plan)
  const { outline } = geometry
  const gauges = pathsOf(bindingGauge(compute(plan), plan), 'edge')
  const { heightMm: ledge, thicknessMm } = plan.binding
  const places = [
    ...numbers.edgePlaces.map((row) => ({ row, half: outline.bass })),
    ...numbers.trebleEdgePlaces.map((row) => ({ row, half: outline.treble })),
  ]

  test('there is one for every named place, and one for the purflings', () => {
    expect(gauges).toHaveLength(places.length + (plan.binding.topPurflingMm > 0 ? 1 : 0))
  })

  test('each step is as deep as the binding and as high as the wall of its ledge', () => {
    places.forEach(({ row, half }, i) => {
      const march = marchSolids(plan, numbers.body.lengthMm, halfWidthAtMm(half, plan.top.flatFromMm))
      const steps = stepsOf(gauges[i]!)
      const s = row.alongOuterMm
      // The way along from two near places, on the row's own piece.
      const [p, q] = s < 1 ? [1e-3, 2e-3] : [s - 2e-3, s - 1e-3]
      const [a, b] = [curveAt(half, p).point, curveAt(half, q).point]
      const size = Math.hypot(b.x - a.x, b.y - a.y)
      const inward = { x: (b.y - a.y) / size, y: -(b.x - a.x) / size }
      const corner = curveAt(half, s - 1e-9).point
      for (const plate of ['top', 'back'] as const) {
        const [heightMm, out] = plate === 'top' ? [march.topMm, 1] : [march.backMm, -1]
        const z = (inset: number) => out * heightMm(corner.x + inset * inward.x, corner.y + inset * inward.y)
        const bend = (0.6 * thicknessMm ** 2) / (plate === 'top' ? plan.top : plan.back).radiusMm + 3e-5
        expectWithin(steps[plate].heightMm, ledge + z(thicknessMm) - z(0), bend, `${row.place}, ${plate}`)
        expectWithin(steps[plate].depthMm, thicknessMm, 1e-9)
      }
      // Both steps fit on one gauge, and the upper one is level with its upper edge.
      expect(steps.isTopAtHead).toBe(true)
      expect(steps.heightMm).toBeGreaterThan(steps.top.heightMm + steps.back.heightMm + 20)
    })
  })
})

test('a back of 4.96 degrees at the neck: the ledge of 6 is 6.174 high at its wall, 2 inside', () => {
  const { numbers } = compute(steel)
  const gauges = pathsOf(bindingGauge(compute(steel), steel), 'edge')
  const neck = stepsOf(gauges[numbers.edgePlaces.length - 1]!)
  expectWithin(neck.back.heightMm, 6 + 2 * Math.tan(4.96 * DEG), 3e-4)
})

test('the gauge of the purflings reaches past the binding, as deep as the channels are cut', () => {
  const last = stepsOf(pathsOf(bindingGauge(compute(steel), steel), 'edge').at(-1)!)
  const depth = steel.edges.purflingDepthMm
  expectWithin(last.top.depthMm, 3.5, 1e-9)
  expectWithin(last.top.heightMm, depth, 1e-9)
  expectWithin(last.back.depthMm, 3, 1e-9)
  expectWithin(last.back.heightMm, depth, 1e-9)
})

test('every gauge tells its place; figures stand at its steps', () => {
  const drawing = bindingGauge(compute(cut), cut)
  const words = (word: string) => drawing.shapes.filter((shape) => shape.kind === 'label' && shape.word === word)
  expect(words('tail')).toHaveLength(2)
  expect(words('hornTip')).toHaveLength(1)
  expect([words('bass').length, words('treble').length]).toEqual([5, 6])
  for (const shape of drawing.shapes)
    if (shape.kind === 'ordinate') expect(shape.figured.key).toMatch(/dgePlaces\[\]\.(top|back)BindingSetMm$/)
})

test('without strips there is nothing to check', () => {
  const bare = withFields(steel, {
    'binding.thicknessMm': 0,
    'binding.topPurflingMm': 0,
    'binding.backPurflingMm': 0,
  })
  expect(bindingGauge(compute(bare), bare).shapes).toEqual([])
})

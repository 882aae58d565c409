import manifold from 'manifold-3d'
import { describe, expect, test } from 'vitest'
import { compute } from '../../../src/core/compute.ts'
import { type Curve, curveAt } from '../../../src/core/geometry/curve.ts'
import type { Point } from '../../../src/core/geometry/point.ts'
import { insideOfBox } from '../../../src/core/instrument/insideVolume.ts'
import { creaseOfTop } from '../../../src/core/instrument/topCrease.ts'
import type { Plan } from '../../../src/core/plan.ts'
import { SMALL, STEEL_STRING } from '../../generators/demoModels.ts'
import { BY_KEY_WIDTHS } from '../../generators/demoNylon.ts'
import { PLANED, withFields } from '../everyForm.ts'
import { marchSolids } from '../solids.ts'
import { expectWithin } from '../within.ts'

const { CrossSection, Manifold } = await (async () => {
  const library = await manifold()
  library.setup()
  return library
})()

interface Heights {
  readonly topMm: (x: number, y: number) => number
  readonly backMm: (x: number, y: number) => number
}

/**
 * The box once more, by a general library of solids: dense points of the outer face moved inward, drawn up to a prism, broken into
 * triangles of 12 mm, and every corner of them laid on the plates. The library adds up what it holds, and misses a few parts in 1e5.
 */
function solidBox(outer: readonly Point[], sideThicknessMm: number, { topMm, backMm }: Heights) {
  const points = outer.map(({ x, y }): [number, number] => [x, y])
  const inner = new CrossSection([points], 'NonZero').offset(-sideThicknessMm, 'Miter', 10)
  const box = Manifold.extrude(inner, 1)
    .refineToLength(12)
    .warp((at) => {
      at[2] = at[2] > 0.5 ? topMm(at[0], at[1]) : backMm(at[0], at[1])
    })
  return { volumeMm3: box.volume(), areaMm2: Math.abs(inner.area()) }
}

/** Points along a half, its corners among them. */
function pointsOf(half: Curve): Point[] {
  const even = Array.from({ length: 601 }, (_, i) => (half.lengthMm * i) / 600)
  const stops = [...even, ...half.corners.map(({ sMm }) => sMm)].sort((a, b) => a - b)
  return stops.map((s) => curveAt(half, s).point)
}

function bothWays(plan: Plan, heights: Heights | null) {
  const { geometry, numbers } = compute(plan)
  const { outline, top, back, lengthMm } = geometry
  const own = insideOfBox({
    bass: outline.bass,
    treble: outline.treble,
    sideThicknessMm: plan.rim.sideThicknessMm,
    top: top.plate,
    back: back.surface,
    crease: creaseOfTop(top, lengthMm, numbers.scale.saddleLineMm),
  })
  const bass = pointsOf(outline.bass).map(({ x, y }) => ({ x, y: -y }))
  const solid = solidBox([...bass, ...pointsOf(outline.treble).toReversed()], plan.rim.sideThicknessMm, {
    topMm: heights?.topMm ?? top.plate.heightMm,
    backMm: heights?.backMm ?? back.surface.heightMm,
  })
  return { own, solid }
}

const STEEL = STEEL_STRING.plan
const SPHERE = { 'top.form': 'sphere', 'back.form': 'sphere' }
const ROUND_CUT = { 'outline.cutaway.form': 'rounded' }
const POINTED_CUT = { 'outline.cutaway.form': 'pointed' }

/** Heights found along upright rays, where those know the form. */
const rays = (plan: Plan): Heights => {
  const { geometry } = compute(plan)
  return marchSolids(plan, geometry.lengthMm, geometry.halfWidthAtMm(plan.top.flatFromMm))
}

const CASES: readonly (readonly [string, Plan, boolean])[] = [
  ['domed top and back', withFields(STEEL, SPHERE), true],
  ['a flat upper bout', withFields(STEEL, { ...PLANED, 'back.form': 'sphere' }), true],
  ['a rounded cutaway', withFields(STEEL, { ...SPHERE, ...ROUND_CUT }), true],
  ['a pointed cutaway on a flat upper bout', withFields(STEEL, { ...PLANED, ...POINTED_CUT }), true],
  ['fair curves, thick sides', withFields(BY_KEY_WIDTHS, { ...SPHERE, 'rim.sideThicknessMm': 4 }), true],
  ['a dome on a flat rim', SMALL.plan, false],
  [
    'a steep dome on a flat rim',
    withFields(STEEL, { 'top.form': 'flatRim', 'top.radiusMm': 4000, 'top.riseAtSaddleMm': 3 }),
    false,
  ],
  ['a back arched across', withFields(STEEL, { 'top.form': 'flat', 'back.form': 'across' }), false],
]

describe('the inside of a box, against a solid of triangles', () => {
  test.each(CASES)('%s', (_, plan, byRays) => {
    const { own, solid } = bothWays(plan, byRays ? rays(plan) : null)
    expect(solid.volumeMm3).toBeGreaterThan(1e6)
    expectWithin(own.areaMm2, solid.areaMm2, solid.areaMm2 * 2e-5)
    expectWithin(own.volumeMm3, solid.volumeMm3, solid.volumeMm3 * 1e-4)
  })
})

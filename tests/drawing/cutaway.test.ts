import { describe, expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import type { Point } from '../../src/core/geometry/point.ts'
import type { Drawing, LineRole } from '../../src/drawing/drawing.ts'
import { drawingOf } from '../../src/drawing/drawingOf.ts'
import { svgPath } from '../../src/drawing/svgPath.ts'
import { DEMO_MODELS, STEEL_STRING } from '../generators/demoModels.ts'
import { withCutaway } from './cutModels.ts'
import { pointsAlong } from './svgArc.ts'
import { nearest, walked } from './walked.ts'

const FORMS = ['rounded', 'pointed'] as const
const CUTS = DEMO_MODELS.flatMap(({ name, plan }) =>
  FORMS.map((form) => [`${name}, ${form}`, withCutaway(plan, form)] as const),
)

const lines = (drawing: Drawing, role: LineRole): Point[][] =>
  drawing.shapes.flatMap((shape) =>
    shape.kind === 'path' && shape.role === role ? [pointsAlong(svgPath(shape.commands, 9))] : [],
  )

/** The circle through three points. */
function circleThrough(a: Point, b: Point, c: Point): { centre: Point; radiusMm: number } {
  const d = 2 * (a.x * (b.y - c.y) + b.x * (c.y - a.y) + c.x * (a.y - b.y))
  const [aa, bb, cc] = [a, b, c].map(({ x, y }) => x * x + y * y) as [number, number, number]
  const centre = {
    x: (aa * (b.y - c.y) + bb * (c.y - a.y) + cc * (a.y - b.y)) / d,
    y: (aa * (c.x - b.x) + bb * (a.x - c.x) + cc * (b.x - a.x)) / d,
  }
  return { centre, radiusMm: Math.hypot(a.x - centre.x, a.y - centre.y) }
}

describe.each(CUTS)('%s', (_name, plan) => {
  const computed = compute(plan)
  const { outline, rimSite } = computed.geometry
  const drawing = drawingOf('plan', computed, plan)
  const wood = walked(outline.treble, outline.trebleWoodEndMm)

  test('the outer face of the treble half lies on the curve, corner and joint included', () => {
    const [treble] = lines(drawing, 'edge')
    const whole = walked(outline.treble, Number.POSITIVE_INFINITY)
    for (const point of treble!) expect(nearest(point, whole)).toBeLessThan(0.06)
    expect(Math.max(...treble!.map(({ y }) => y))).toBeCloseTo(Math.max(...whole.map(({ y }) => y)), 1)
  })

  test('its inner face stands a side thickness from the outer one all along, to the mitre of a pointed horn', () => {
    const inner = lines(drawing, 'thin').slice(0, outline.cut?.hornAngleRad === null ? 1 : 2)
    for (const point of inner.flat()) {
      const off = nearest(point, wood)
      expect(off).toBeGreaterThan(rimSite.sideThicknessMm - 0.02)
      expect(off).toBeLessThan(rimSite.sideThicknessMm + 0.02)
    }
  })

  test('the blanks of the treble side are as long as its inner and outer faces allow', () => {
    const names =
      outline.cut?.hornAngleRad === null ? (['blankTreble'] as const) : (['blankTreble', 'blankHorn'] as const)
    names.forEach((name, i) => {
      const blank = drawingOf(name, computed, plan)
      const row = computed.numbers.blanks[1 + i]!
      expect(blank.name).toBe(name)
      expect(blank.bounds.maxX).toBeCloseTo(row.blankLengthMm, 6)
      expect(blank.marks).toEqual({
        left: i === 0 ? 'tail' : 'horn',
        right: i === names.length - 1 ? 'neck' : 'horn',
      })
    })
  })

  test('the bass blank runs on past the neck centre to the cut, as wide as the back stands there', () => {
    const blank = drawingOf('blankBass', computed, plan)
    const { meetsNeckAtMm } = plan.outline.cutaway
    const flatMm = computed.numbers.sides.flatLengthMm + meetsNeckAtMm
    expect(-blank.bounds.minX).toBeCloseTo(flatMm + 2 * plan.rim.trimEachEndMm, 6)
    const end = lines(blank, 'cut')[0]!.at(-1)!
    expect(-end.x).toBeCloseTo(flatMm + plan.rim.trimEachEndMm, 6)
    // The back of a body stands as high on one side of the centreline as on the other: the width is that of the bass side as far out.
    const { back, referenceMm } = rimSite
    const heightMm = back.heightMm(computed.geometry.lengthMm, -meetsNeckAtMm)
    expect(end.y).toBeCloseTo(referenceMm - heightMm + plan.rim.backAllowanceMm, 6)
  })

  test('the side is seen whole, and what lies behind the horn is hidden', () => {
    const side = drawingOf('side', computed, plan, { side: 'treble' })
    const hornX = computed.numbers.cutaway.hornAtMm as number
    for (const point of lines(side, 'hidden').flat()) expect(point.x).toBeLessThan(hornX + 1e-6)
    const seen = lines(side, 'edge').flat()
    expect(Math.max(...seen.map(({ x }) => x))).toBeCloseTo(computed.geometry.lengthMm, 6)
    expect(Math.min(...seen.map(({ x }) => x))).toBeCloseTo(0, 6)
  })

  test('braces stand inside the treble side, as long as figured', () => {
    const inside = drawingOf('inside', computed, plan, { side: 'treble' })
    const lengths = inside.shapes.filter(
      (shape) => shape.kind === 'linear' && shape.figured.key === 'trebleBraces[].lengthMm',
    )
    expect(lengths).toHaveLength(computed.numbers.trebleBraces.filter(({ lengthMm }) => lengthMm > 0).length)
    for (const shape of lengths)
      if (shape.kind === 'linear') expect(shape.to.y - shape.from.y).toBeCloseTo(shape.figured.value as number, 6)
  })
})

test('horn and hollow are the circles asked for, touching each other, and the hollow meets the neck where it should', () => {
  const plan = withCutaway(STEEL_STRING.plan, 'rounded')
  const { hornRadiusMm, hollowRadiusMm, meetsNeckAtMm } = plan.outline.cutaway
  const computed = compute(plan)
  const edge = lines(drawingOf('plan', computed, plan), 'edge')[0]!
  const end = edge.findLastIndex(({ y }) => y > meetsNeckAtMm + 1e-6)
  const hollow = circleThrough(edge[end]!, edge[end - 4]!, edge[end - 8]!)
  expect(hollow.radiusMm).toBeCloseTo(hollowRadiusMm, 3)
  expect(Math.hypot(496 - hollow.centre.x, meetsNeckAtMm - hollow.centre.y)).toBeCloseTo(hollowRadiusMm, 3)
  const round = edge
    .slice(2)
    .map((c, i) => circleThrough(edge[i]!, edge[i + 1]!, c))
    .find(({ radiusMm, centre }) => Math.abs(radiusMm - hornRadiusMm) < 1e-3 && centre.x > 400)
  expect(round).toBeDefined()
  expect(Math.hypot(round!.centre.x - hollow.centre.x, round!.centre.y - hollow.centre.y)).toBeCloseTo(
    hornRadiusMm + hollowRadiusMm,
    3,
  )
})

test('a block beside a cutaway is cut along its flank', () => {
  const plan = withCutaway(STEEL_STRING.plan, 'rounded')
  const computed = compute(plan)
  const block = computed.numbers.blocks.neck
  const [face] = lines(drawingOf('blockNeck', computed, plan, { heightsTimes: 1 }), 'edge')
  expect(Math.min(...face!.map(({ y }) => y))).toBeCloseTo(-plan.blocks.neck.widthMm / 2, 6)
  for (const { fromFaceMm, acrossMm } of block.flank) {
    if (acrossMm >= plan.blocks.neck.widthMm / 2) continue
    expect(nearest({ x: -fromFaceMm, y: acrossMm }, face!)).toBeLessThan(0.5)
  }
})

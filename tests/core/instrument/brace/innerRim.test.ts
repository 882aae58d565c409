import { describe, expect, test } from 'vitest'
import { curveAt, makeCurve } from '../../../../src/core/geometry/curve.ts'
import { arc, straight } from '../../../../src/core/geometry/piece.ts'
import { innerRimOf, isInsideRim, leavesRim, meetRim, rimAtX } from '../../../../src/core/instrument/brace/innerRim.ts'
import { drawOutline } from '../../../../src/core/instrument/outline.ts'
import { SMALL, STEEL_STRING } from '../../../generators/demoModels.ts'
import { BY_KEY_WIDTHS } from '../../../generators/demoNylon.ts'
import { withField } from '../../../generators/plans.ts'
import { traceChain } from '../../trace.ts'
import { expectWithin } from '../../within.ts'
import { longestWithin, movedInward } from './clip.ts'

const tail = { point: { x: 0, y: 0 }, headingRad: Math.PI / 2 }
const half = makeCurve(tail, [arc(200, Math.PI)])
const round = innerRimOf({ bass: half, treble: half }, 3)

describe('a round body of 400, sides of 3', () => {
  test('a ray leaves it at the circle of 197', () => {
    for (const [x, y] of [
      [200, 0],
      [90, 60],
      [310, -120],
      [20, -5],
    ] as const)
      for (let i = 0; i < 48; i++) {
        const [dx, dy] = [Math.cos((i * Math.PI) / 24), Math.sin((i * Math.PI) / 24)]
        // |p + t d - c| = 197, the greater root.
        const along = (x - 200) * dx + y * dy
        const t = -along + Math.sqrt(along * along - ((x - 200) ** 2 + y * y) + 197 * 197)
        const found = meetRim(round, { x, y }, { x: dx, y: dy })!
        expectWithin(found.point.x, x + t * dx, 1e-9)
        expectWithin(found.point.y, y + t * dy, 1e-9)
        if (Math.abs(found.point.y) > 1e-6) expect(found.side).toBe(found.point.y < 0 ? 'bass' : 'treble')
        const angle = Math.atan2(Math.abs(found.point.y), 200 - found.point.x)
        expectWithin(found.alongOuterMm, 200 * angle, 1e-8)
      }
  })

  test('looked for from a distance from the tail, on either side, held to the body', () => {
    for (const x of [3, 40, 200, 333.3, 397]) {
      const y = Math.sqrt(197 * 197 - (x - 200) ** 2)
      expectWithin(rimAtX(round, 'treble', x).point.y, y, 1e-7)
      expectWithin(rimAtX(round, 'bass', x).point.y, -y, 1e-7)
      expectWithin(rimAtX(round, 'bass', x).alongOuterMm, 200 * Math.acos((200 - x) / 197), 1e-6)
    }
    expectWithin(rimAtX(round, 'bass', -20).point.x, 3, 1e-9)
    expectWithin(rimAtX(round, 'bass', 900).point.x, 397, 1e-9)
  })

  test('what lies inside', () => {
    for (const r of [0, 100, 196.9999, 197.0001, 198, 300])
      for (let i = 0; i < 60; i++) {
        const point = { x: 200 + r * Math.cos(i * 0.105), y: r * Math.sin(i * 0.105) }
        expect(isInsideRim(round, point)).toBe(r < 197)
      }
  })
})

/** Outlines of every kind, as dots of both halves moved inward: the treble one upward, the bass one under it. */
function traced(outline: ReturnType<typeof drawOutline>, thicknessMm: number) {
  const side = (curve: typeof outline.bass) => {
    const stops = [...new Set([0, ...curve.corners.map(({ sMm }) => sMm), curve.lengthMm])]
    return stops.slice(1).map((toMm, i) => {
      const fromMm = stops[i]!
      const count = Math.ceil((toMm - fromMm) / 0.05)
      const dots = Array.from(
        { length: count + 1 },
        (_, j) => curveAt(curve, fromMm + ((toMm - fromMm - 1e-7) * j) / count).point,
      )
      return movedInward(dots, thicknessMm)
    })
  }
  return { bass: side(outline.bass), treble: side(outline.treble) }
}

describe('against a general library of polygons', () => {
  const { pieces } = STEEL_STRING.plan.outline
  const outline = drawOutline(STEEL_STRING.plan.outline)
  const t = STEEL_STRING.plan.rim.sideThicknessMm
  const rim = innerRimOf(outline, t)
  const inner = movedInward(traceChain(pieces, 0.1), t)
  const whole = [...inner, ...inner.toReversed().map(({ x, y }) => ({ x, y: -y }))]

  test.each([
    [250, 0, 0.3],
    [250, 0, 1.57],
    [130, 60, 2.2],
    [130, -90, 4],
    [400, 20, 5.5],
    [300, -100, 0.1],
    [60, 30, 3.4],
  ])('the steel-string, from %d, %d', (x, y, angle) => {
    const way = { x: Math.cos(angle), y: Math.sin(angle) }
    const within = longestWithin(whole, { x, y }, way)
    const found = meetRim(rim, { x, y }, way)!
    expectWithin((found.point.x - x) * way.x + (found.point.y - y) * way.y, within.endMm, 1e-4)
  })

  test('a stretch past the waist leaves it, one across does not', () => {
    const [low, high] = [rimAtX(rim, 'bass', 200), rimAtX(rim, 'bass', 400)]
    expect(leavesRim(rim, low.point, high.point, [low, high])).toBe(true)
    expect(leavesRim(rim, low.point, high.point, [])).toBe(true)
    const other = rimAtX(rim, 'treble', 400)
    expect(leavesRim(rim, low.point, other.point, [low, other])).toBe(false)
    expect(leavesRim(rim, low.point, other.point, [])).toBe(false)
  })

  test.each([
    ['rounded', STEEL_STRING.plan],
    ['pointed', STEEL_STRING.plan],
    ['rounded', SMALL.plan],
    ['pointed', BY_KEY_WIDTHS],
  ] as const)('a %s cutaway: the first face a ray comes to, tried by small steps', (form, plan) => {
    const cut = drawOutline(withField(plan, 'outline.cutaway.form', form).outline)
    expect(cut.cut?.fits).toBe(true)
    const faces = innerRimOf(cut, 2)
    const dots = traced(cut, 2)
    const { lengthMm } = cut
    const from = { x: 0.62 * lengthMm, y: 5 }
    const rows = [...dots.treble, ...dots.bass.map((row) => row.map(({ x, y }) => ({ x, y: -y })))]
    for (let i = 0; i < 40; i++) {
      const angle = -1.2 + i * 0.06 + 0.003
      const way = { x: Math.cos(angle), y: Math.sin(angle) }
      let first = Infinity
      for (const row of rows)
        for (let j = 1; j < row.length; j++) {
          const off = (p: { x: number; y: number }) => (p.y - from.y) * way.x - (p.x - from.x) * way.y
          const [a, b] = [row[j - 1]!, row[j]!]
          if (off(a) < 0 === off(b) < 0) continue
          const share = off(a) / (off(a) - off(b))
          const along = (a.x + share * (b.x - a.x) - from.x) * way.x + (a.y + share * (b.y - a.y) - from.y) * way.y
          if (along > 0) first = Math.min(first, along)
        }
      if (first === Infinity) continue
      const found = meetRim(faces, from, way)!
      expectWithin((found.point.x - from.x) * way.x + (found.point.y - from.y) * way.y, first, 2e-3, `${i}`)
    }
  })

  test('the outermost place of a horn that is passed more than once, and nothing of the wood beyond its mitre', () => {
    const cut = drawOutline(withField(STEEL_STRING.plan, 'outline.cutaway.form', 'pointed').outline)
    const faces = innerRimOf(cut, 2)
    const tip = curveAt(cut.treble, cut.cut!.hornMm!).point
    expect(isInsideRim(faces, tip)).toBe(false)
    expect(isInsideRim(faces, { x: tip.x, y: tip.y + 1 })).toBe(false)
    const x = tip.x + 3
    const rows = traced(cut, 2).treble.flat()
    const above = rows.filter((dot) => Math.abs(dot.x - x) < 0.1).map(({ y }) => y)
    if (above.length > 0) expectWithin(rimAtX(faces, 'treble', x).point.y, Math.max(...above), 0.2)
  })
})

test('bodies that are none stay finite', () => {
  for (const pieces of [[straight(0)], [straight(50)], [arc(-30, 1), straight(4)], [arc(1, 3)], []]) {
    const curve = makeCurve(tail, pieces)
    const faces = innerRimOf({ bass: curve, treble: curve }, 6)
    for (const x of [-5, 0, 20, 700]) {
      const { point, alongOuterMm } = rimAtX(faces, 'treble', x)
      expect([point.x, point.y, alongOuterMm].every(Number.isFinite)).toBe(true)
      const met = meetRim(faces, { x, y: 3 }, { x: 0.6, y: 0.8 })
      if (met !== null) expect([met.point.x, met.point.y, met.alongOuterMm].every(Number.isFinite)).toBe(true)
      expect(typeof isInsideRim(faces, { x, y: 3 })).toBe('boolean')
    }
  }
})

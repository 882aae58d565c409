import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type Curve, curveAt, insetPoint, makeCurve } from '../../../src/core/geometry/curve.ts'
import { arc, straight } from '../../../src/core/geometry/piece.ts'
import { closeChain } from '../../../src/core/instrument/compassArcs.ts'
import { cutTreble } from '../../../src/core/instrument/cutaway.ts'
import {
  type EdgeStripSite,
  edgeStripRows,
  sumOf,
  tightestBindingBend,
} from '../../../src/core/instrument/edgeStrips.ts'
import { STEEL_STRING } from '../../generators/demoModels.ts'
import { real } from '../../generators/real.ts'
import { polylineLengthMm, traceChain } from '../trace.ts'
import { DEG, expectWithin } from '../within.ts'

const { plan } = STEEL_STRING
const { half } = closeChain(plan.outline.pieces, plan.outline.lengthMm)
const start = { point: { x: 0, y: 0 }, headingRad: Math.PI / 2 }
const wholeOf = (curve: Curve) => ({ curve, woodEndMm: curve.lengthMm })

const site = (of: Partial<EdgeStripSite> & Pick<EdgeStripSite, 'bass'>): EdgeStripSite => ({
  treble: of.bass,
  bassRunsOnMm: 0,
  bindingThicknessMm: 2,
  purflingMm: { top: 1.5, back: 0 },
  trimMm: 15,
  ...of,
})

/** Dots of the outer face moved inward one by one, square to the chord of their neighbours. */
function movedInward(dots: readonly { x: number; y: number }[], by: number) {
  return dots.slice(1, -1).map((dot, i) => {
    const [a, b] = [dots[i]!, dots[i + 2]!]
    const size = Math.hypot(b.x - a.x, b.y - a.y)
    return { x: dot.x + (by * (b.y - a.y)) / size, y: dot.y - (by * (b.x - a.x)) / size }
  })
}

describe('on a box whose parallels are known', () => {
  // Ends 100 wide across, corners rounded to 50 outside.
  const box = makeCurve(start, [
    straight(100),
    arc(50, Math.PI / 2),
    straight(300),
    arc(50, Math.PI / 2),
    straight(100),
  ])
  const rows = edgeStripRows(site({ bass: wholeOf(box) }))
  const along = (inset: number) => 500 + (50 - inset) * Math.PI

  test('four pieces of binding, purfling for the top alone', () => {
    expect(rows.map((row) => `${row.half} ${row.plate}`)).toEqual([
      'bass top',
      'bass back',
      'treble top',
      'treble back',
    ])
    for (const row of rows) {
      expectWithin(row.bindingMm, along(1), 1e-9)
      expectWithin(row.bindingCutMm, along(1) + 30, 1e-9)
      expect(row.mitreRad).toBe('none')
      if (row.plate === 'back') expect([row.purflingMm, row.purflingCutMm]).toEqual(['none', 'none'])
      else {
        expectWithin(row.purflingMm, along(2.75), 1e-9)
        expectWithin(row.purflingCutMm, along(2.75) + 30, 1e-9)
      }
    }
    expectWithin(sumOf(rows.map((row) => row.bindingCutMm)), 4 * (along(1) + 30), 1e-8)
    expect(sumOf(['none', 'none'])).toBe('none')
  })

  test('what the bass half runs on is bound as well', () => {
    const [bass, , treble] = edgeStripRows(
      site({ bass: wholeOf(box), treble: { ...wholeOf(box), woodEndMm: 560 }, bassRunsOnMm: 28 }),
    )
    expectWithin(bass!.bindingMm, along(1) + 28, 1e-9)
    expectWithin(treble!.bindingMm, along(1) - (box.lengthMm - 560), 1e-9)
  })

  test('without a binding the purfling lies at the outer face', () => {
    const [top] = edgeStripRows(site({ bass: wholeOf(box), bindingThicknessMm: 0 }))
    expect([top!.bindingMm, top!.bindingCutMm]).toEqual(['none', 'none'])
    expectWithin(top!.purflingMm, along(0.75), 1e-9)
  })

  test('its tightest bend is inside the round, and on the outer face of a hollow', () => {
    const found = tightestBindingBend([wholeOf(box)], 2)!
    expectWithin(found.radiusMm, 48, 1e-9)
    expectWithin(found.atMm, 100 + (50 * Math.PI) / 4, 1e-9)
    const hollow = makeCurve(start, [straight(80), arc(50, Math.PI / 2), arc(-47, 1), straight(40)])
    expectWithin(tightestBindingBend([wholeOf(hollow)], 2)!.radiusMm, 47, 1e-9)
    expectWithin(tightestBindingBend([wholeOf(hollow)], 4)!.radiusMm, 46, 1e-9)
    expectWithin(tightestBindingBend([wholeOf(hollow)], 60)!.radiusMm, 0, 1e-12)
    // Past the end of the wood nothing is bound.
    expectWithin(tightestBindingBend([{ curve: hollow, woodEndMm: 80 + 25 * Math.PI }], 2)!.radiusMm, 48, 1e-9)
    expect(tightestBindingBend([wholeOf(makeCurve(start, [straight(80)]))], 2)).toBe(null)
    expect(tightestBindingBend([wholeOf(box)], 0)).toBe(null)
  })
})

describe('on the steel-string', () => {
  const dots = traceChain(plan.outline.pieces, 0.02)

  test.each([
    ['binding', 2, 1],
    ['purfling', 2, 2.75],
  ])('%s: length of dense dots moved inward', (what, bindingThicknessMm, inset) => {
    const [top] = edgeStripRows(site({ bass: wholeOf(half), bindingThicknessMm }))
    // The first and last dot are lost.
    expectWithin(
      what === 'binding' ? top!.bindingMm : top!.purflingMm,
      polylineLengthMm(movedInward(dots, inset)) + 0.04,
      0.02,
    )
  })

  test('tightest bend: the smallest circle through three dots of the face inside the bend', () => {
    const t = 2
    const coarse = traceChain(plan.outline.pieces, 1.5)
    const inside = movedInward(coarse, t)
    let least = Number.POSITIVE_INFINITY
    for (let i = 1; i + 1 < inside.length; i++) {
      const face = (j: number) => (hollowAt(coarse, i + 1) ? coarse[j + 1]! : inside[j]!)
      least = Math.min(least, radiusThrough(face(i - 1), face(i), face(i + 1)))
    }
    // Where arcs meet the circle through three dots lies between the two.
    expectWithin(tightestBindingBend([wholeOf(half)], t)!.radiusMm, least, 0.02 * least)
  })
})

/** Whether the way bends to the left at a dot. */
function hollowAt(dots: readonly { x: number; y: number }[], i: number): boolean {
  const [a, b, c] = [dots[i - 1]!, dots[i]!, dots[i + 1]!]
  return (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x) > 0
}
type Dot = { readonly x: number; readonly y: number }
function radiusThrough(a: Dot, b: Dot, c: Dot): number {
  const [p, q, r] = [
    Math.hypot(b.x - a.x, b.y - a.y),
    Math.hypot(c.x - b.x, c.y - b.y),
    Math.hypot(c.x - a.x, c.y - a.y),
  ]
  const twice = Math.abs((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x))
  return twice < 1e-12 ? Number.POSITIVE_INFINITY : (p * q * r) / (2 * twice)
}

describe('at sharp corners', () => {
  test('two right angles, one out and one in, are mitred at 45 degrees and change the pieces by the mitre', () => {
    const step = makeCurve(start, [straight(100), straight(60), straight(40)], [0, Math.PI / 2, -Math.PI / 2])
    const rows = edgeStripRows(site({ bass: wholeOf(step) })).filter(
      (row) => row.half === 'bass' && row.plate === 'top',
    )
    expect(rows).toHaveLength(3)
    // In the middle of a strip 2 thick: 1 shorter, 1 shorter and 1 longer, 1 longer.
    for (const [i, lengthMm] of [99, 60, 41].entries()) expectWithin(rows[i]!.bindingMm, lengthMm, 1e-9)
    for (const i of [0, 1]) expectWithin(rows[i]!.mitreRad, 45 * DEG, 1e-12)
    expect(rows[2]!.mitreRad).toBe('none')
  })

  test('a pointed horn: half of the turn between two directions, pieces to where their middle lines cross', () => {
    const cut = cutTreble(half, { ...plan.outline.cutaway, form: 'pointed' }, plan.outline.lengthMm!)
    expect(cut.fits).toBe(true)
    const rows = edgeStripRows(
      site({ bass: wholeOf(half), treble: { curve: cut.treble, woodEndMm: cut.woodEndMm } }),
    ).filter((row) => row.half === 'treble' && row.plate === 'top')
    expect(rows).toHaveLength(2)
    const tip = cut.hornMm!
    const way = (from: number, to: number) => {
      const [a, b] = [curveAt(cut.treble, from).point, curveAt(cut.treble, to).point]
      return { x: b.x - a.x, y: b.y - a.y }
    }
    const [into, outOf] = [way(tip - 1e-3, tip - 1e-6), way(tip + 1e-6, tip + 1e-3)]
    const cosine = (into.x * outOf.x + into.y * outOf.y) / (Math.hypot(into.x, into.y) * Math.hypot(outOf.x, outOf.y))
    expectWithin(rows[0]!.mitreRad, Math.acos(cosine) / 2, 1e-4)
    expect(rows[1]!.mitreRad).toBe('none')

    const line = (from: number, to: number) =>
      Array.from({ length: 40001 }, (_, i) => insetPoint(cut.treble, from + 1e-9 + ((to - from - 2e-9) * i) / 40000, 1))
    const [first, second] = [line(0, tip), line(tip, cut.woodEndMm)]
    let [least, i, j] = [Number.POSITIVE_INFINITY, 0, 0]
    for (let p = first.length - 500; p < first.length; p++)
      for (let q = 0; q < 2500; q += 3) {
        const apart = Math.hypot(first[p]!.x - second[q]!.x, first[p]!.y - second[q]!.y)
        if (apart < least) [least, i, j] = [apart, p, q]
      }
    expect(least).toBeLessThan(0.02)
    // The mitre is taken as between straights.
    expectWithin(rows[0]!.bindingMm, polylineLengthMm(first.slice(0, i + 1)), 0.1)
    expectWithin(rows[1]!.bindingMm, polylineLengthMm(second.slice(j)), 0.1)
  })
})

test('any chain of pieces gives lengths that are finite and not under nothing', () => {
  const piece = fc.oneof(
    fc.record({ mm: real(0.01, 400) }).map(({ mm }) => straight(mm)),
    fc.record({ r: real(0.5, 2000), a: real(0.01, 3) }).chain(({ r, a }) => fc.constantFrom(arc(r, a), arc(-r, a))),
    fc
      .record({ mm: real(0.01, 400), from: real(-0.02, 0.02), to: real(-0.02, 0.02), isFlat: fc.boolean() })
      .map(({ mm, from, to, isFlat }) => ({
        lengthMm: mm,
        startCurvaturePerMm: isFlat ? 0 : from,
        endCurvaturePerMm: to,
      })),
  )
  const turn = real(-3, 3)
  fc.assert(
    fc.property(fc.array(fc.tuple(piece, turn), { minLength: 1, maxLength: 8 }), real(0, 6), (chain, t) => {
      const curve = makeCurve(
        start,
        chain.map(([one]) => one),
        [0, ...chain.slice(1).map(([, rad]) => rad)],
      )
      for (const row of edgeStripRows(site({ bass: wholeOf(curve), bindingThicknessMm: t })))
        for (const value of [row.bindingMm, row.bindingCutMm, row.purflingMm, row.purflingCutMm, row.mitreRad])
          expect(value === 'none' || (Number.isFinite(value) && Number(value) >= 0)).toBe(true)
      const bend = tightestBindingBend([wholeOf(curve)], t)
      expect(bend === null || (bend.radiusMm >= 0 && Number.isFinite(bend.radiusMm + bend.atMm))).toBe(true)
    }),
    { seed: 11 },
  )
})

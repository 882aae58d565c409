import { describe, expect, test } from 'vitest'
import { curveAt, makeCurve } from '../../../src/core/geometry/curve.ts'
import { arc, straight } from '../../../src/core/geometry/piece.ts'
import { plane } from '../../../src/core/geometry/surface.ts'
import { makeBack } from '../../../src/core/instrument/back.ts'
import { halfWidthAtMm } from '../../../src/core/instrument/body.ts'
import { closeChain } from '../../../src/core/instrument/compassArcs.ts'
import { placeSideBraces, sideBraceRow } from '../../../src/core/instrument/sideBraces.ts'
import { makeTop } from '../../../src/core/instrument/top.ts'
import type { SideBracesPlan } from '../../../src/core/plan.ts'
import { STEEL_STRING } from '../../generators/demoModels.ts'
import { marchSolids } from '../solids.ts'
import { traceChain } from '../trace.ts'
import { expectWithin } from '../within.ts'

const plan: SideBracesPlan = { ...STEEL_STRING.plan.sideBraces, atMm: null }
const tail = { point: { x: 0, y: 0 }, headingRad: Math.PI / 2 }

describe('places of side braces', () => {
  test('none where the form is none', () => {
    expect(placeSideBraces({ ...plan, form: 'none', atMm: [100] }, 760, 40, 720)).toEqual([])
  })

  test('entered ones are sorted, held between the blocks, and each place told once', () => {
    const atMm = [650, 110, 900, 20, 340, 10, 800]
    expect(placeSideBraces({ ...plan, atMm }, 760, 40, 720)).toEqual([40, 110, 340, 650, 720])
    expect(atMm[0]).toBe(650)
    expect(placeSideBraces({ ...plan, atMm: [] }, 760, 40, 720)).toEqual([])
  })

  test('evenly: as few as keep within the spacing', () => {
    for (const [from, to] of [
      [40, 720],
      [40, 740],
      [0, 763.3],
      [38.1, 690.2],
      [40, 41],
    ] as const) {
      for (const spacingMm of [30, 70, 100, 110, 400]) {
        const places = placeSideBraces({ ...plan, spacingMm }, 763.3, from, to)
        const stops = [from, ...places, to]
        const gaps = stops.slice(1).map((s, i) => s - stops[i]!)
        for (const gap of gaps) expectWithin(gap, (to - from) / gaps.length, 1e-9)
        expect(gaps[0]).toBeLessThanOrEqual(spacingMm + 1e-6)
        // One brace fewer would stand them too far apart.
        if (places.length > 0) expect((to - from) / places.length).toBeGreaterThan(spacingMm)
      }
    }
    expect(placeSideBraces({ ...plan, spacingMm: 100 }, 760, 0, 700)).toEqual([100, 200, 300, 400, 500, 600])
  })

  test('no room between the blocks, no brace', () => {
    expect(placeSideBraces(plan, 100, 80, 20)).toEqual([])
    expect(placeSideBraces({ ...plan, spacingMm: 0 }, 760, 40, 720)).toEqual([])
  })
})

const site = {
  sMm: 0,
  previousMm: null,
  sideThicknessMm: 2,
  widthMm: 10,
  ends: 'fullDepth',
  topLiningHeightMm: 15,
  backLiningHeightMm: 14,
  top: plane(0, 0),
  back: plane(-100, 0),
} as const

describe('the face of a side brace', () => {
  test('on a round side it has the inner radius, and rises by its sagitta', () => {
    const row = sideBraceRow({ ...site, curve: makeCurve(tail, [arc(102, Math.PI)]), sMm: 150 })
    expectWithin(row.faceRadiusMm, 100, 1e-7)
    expectWithin(row.faceRiseMm, 100 - Math.sqrt(100 * 100 - 25), 1e-9)
  })

  test('in a hollow side the inner radius is larger and the face hollow', () => {
    const row = sideBraceRow({
      ...site,
      curve: makeCurve({ point: { x: 0, y: 100 }, headingRad: -0.8 }, [arc(-78, 1.6)]),
      sMm: 60,
    })
    expectWithin(row.faceRadiusMm, -80, 1e-7)
    expectWithin(row.faceRiseMm, -(80 - Math.sqrt(80 * 80 - 25)), 1e-9)
  })

  test('on a straight side it is flat', () => {
    const row = sideBraceRow({ ...site, curve: makeCurve(tail, [straight(200)]), sMm: 77 })
    expect(row.faceRadiusMm).toBe('flat')
    expectWithin(row.faceRiseMm, 0, 1e-12)
  })

  test('at the ends of a curve it stays finite', () => {
    const curve = makeCurve(tail, [arc(40, 1), straight(3), arc(-3, 1), arc(1, 2)])
    for (const sMm of [-5, 0, 1, 20, 40, 44, 46, 47.9, curve.lengthMm, 1e4])
      for (const widthMm of [0, 2, 40]) {
        const { alongOuterMm, faceRadiusMm, ...rest } = sideBraceRow({ ...site, curve, sMm, widthMm })
        expect(alongOuterMm).toBeLessThanOrEqual(curve.lengthMm)
        expect(faceRadiusMm === 'flat' || Number.isFinite(faceRadiusMm)).toBe(true)
        expect([rest.xMm, rest.lengthMm, rest.faceRiseMm].every(Number.isFinite)).toBe(true)
      }
  })
})

test('its length: from edge to edge, or what the linings leave, but not under nothing; and how far from the one before', () => {
  const curve = makeCurve(tail, [arc(102, Math.PI)])
  const row = sideBraceRow({ ...site, curve, sMm: 150 })
  expectWithin(row.lengthMm, 100, 1e-12)
  expect(row.spacingMm).toBe('none')
  expectWithin(sideBraceRow({ ...site, curve, sMm: 150, ends: 'betweenLinings' }).lengthMm, 71, 1e-12)
  expect(sideBraceRow({ ...site, curve, sMm: 150, ends: 'betweenLinings', topLiningHeightMm: 90 }).lengthMm).toBe(0)
  expectWithin(sideBraceRow({ ...site, curve, sMm: 150, previousMm: 62 }).spacingMm, 88, 1e-12)
})

describe('the steel-string, its inner face as dots moved inward one by one', () => {
  const { outline, rim, back: backPlan, top: topPlan, sideBraces, linings } = STEEL_STRING.plan
  const lengthMm = outline.lengthMm!
  const { half } = closeChain(outline.pieces, lengthMm)
  const halfWidth = halfWidthAtMm(half, topPlan.flatFromMm)
  const top = makeTop(topPlan, {
    lengthMm,
    saddleLineMm: 330,
    halfWidthAtMm: () => halfWidth,
    flatSlopeRad: () => (topPlan.flatSlopeDeg * Math.PI) / 180,
  }).rim
  const back = makeBack(backPlan, lengthMm, rim.depthAtTailMm, rim.depthAtNeckMm).surface
  const march = marchSolids(STEEL_STRING.plan, lengthMm, halfWidth)
  const t = rim.sideThicknessMm

  const dots = traceChain(outline.pieces, 0.004)
  let along = 0
  const inner = dots.slice(1, -1).map((dot, i) => {
    along += Math.hypot(dot.x - dots[i]!.x, dot.y - dots[i]!.y)
    const [a, b] = [dots[i]!, dots[i + 2]!]
    const size = Math.hypot(b.x - a.x, b.y - a.y)
    const way = { x: (b.x - a.x) / size, y: (b.y - a.y) / size }
    return { s: along, x: dot.x + t * way.y, y: dot.y - t * way.x, way }
  })

  test.each([...sideBraces.atMm!, 170, 300, 420, 480, 505])('brace at %d', (sMm) => {
    const row = sideBraceRow({
      curve: half,
      sMm,
      previousMm: null,
      sideThicknessMm: t,
      widthMm: sideBraces.widthMm,
      ends: 'betweenLinings',
      topLiningHeightMm: linings.top.heightMm,
      backLiningHeightMm: linings.back.heightMm,
      top,
      back,
    })
    const middle = inner.find(({ s }) => s >= sMm)!
    // Measured along and square to the side where the brace stands.
    const alongSide = (dot: { x: number; y: number }) =>
      (dot.x - middle.x) * middle.way.x + (dot.y - middle.y) * middle.way.y
    const inward = (dot: { x: number; y: number }) =>
      (dot.x - middle.x) * middle.way.y - (dot.y - middle.y) * middle.way.x
    const near = inner.filter(({ s }) => Math.abs(s - sMm) < 30)
    const before = near.findLast((dot) => alongSide(dot) <= -sideBraces.widthMm / 2)!
    const after = near.find((dot) => alongSide(dot) >= sideBraces.widthMm / 2)!
    const rise = (inward(before) + inward(after)) / 2
    expectWithin(row.faceRiseMm, rise, 1e-3, 'rise')
    const bend = rise === 0 ? 0 : (2 * rise) / ((sideBraces.widthMm / 2) ** 2 + rise * rise)
    const found = row.faceRadiusMm === 'flat' ? 0 : 1 / (row.faceRadiusMm as number)
    expectWithin(found, bend, 1e-4, 'bend')
    const depth = march.topMm(middle.x, middle.y) - march.backMm(middle.x, middle.y)
    expectWithin(row.lengthMm, depth - linings.top.heightMm - linings.back.heightMm, 1e-3, 'length')
    expectWithin(row.xMm, curveAt(half, sMm).point.x, 1e-12)
  })
})

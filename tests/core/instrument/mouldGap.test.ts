import { describe, expect, test } from 'vitest'
import { type Curve, curveAt, makeCurve } from '../../../src/core/geometry/curve.ts'
import { arc, straight } from '../../../src/core/geometry/piece.ts'
import { signedDistanceMm, tabulate } from '../../../src/core/geometry/signedDistance.ts'
import { closeChain } from '../../../src/core/instrument/compassArcs.ts'
import { fairThrough } from '../../../src/core/instrument/keyWidths.ts'
import { mouldGap } from '../../../src/core/instrument/mouldGap.ts'
import type { OutlinePiece } from '../../../src/core/plan.ts'
import { STEEL_PIECES } from '../../generators/demoModel.ts'
import { STEEL_STRING } from '../../generators/demoModels.ts'
import { traceChain } from '../trace.ts'
import { expectWithin } from '../within.ts'

const halves = (half: Curve) => ({ bass: half, treble: half, isMirrored: true })
const circle = (radiusMm: number, atMm = 0) =>
  makeCurve({ point: { x: atMm, y: 0 }, headingRad: Math.PI / 2 }, [arc(radiusMm, Math.PI)])
const steel = closeChain(STEEL_PIECES, 496).half
/** The same chain with a wider lower bout and a tighter waist, left as it then ends. */
const OTHER: readonly OutlinePiece[] = STEEL_PIECES.map((piece, i) =>
  piece.kind === 'arc' && piece.radiusMm !== null && (i === 1 || i === 4)
    ? { ...piece, radiusMm: piece.radiusMm + (i === 1 ? 1.5 : -2) }
    : piece,
)

/** How far a point stands off a dense polyline, by trying every step of it; the way from tail to neck has the outside at its left. */
function offPolylineMm(line: readonly { x: number; y: number }[], x: number, y: number): number {
  let least = Number.POSITIVE_INFINITY
  let signed = 0
  for (let i = 1; i < line.length; i++) {
    const [a, b] = [line[i - 1]!, line[i]!]
    const [wx, wy] = [b.x - a.x, b.y - a.y]
    const part = Math.min(1, Math.max(0, ((x - a.x) * wx + (y - a.y) * wy) / (wx * wx + wy * wy)))
    const [ox, oy] = [x - a.x - part * wx, y - a.y - part * wy]
    const off = Math.hypot(ox, oy)
    if (off < least) {
      least = off
      signed = wx * oy - wy * ox > 0 ? off : -off
    }
  }
  return signed
}

describe('how far a point stands off a curve', () => {
  test('is the distance to the centre less the radius on a circle, either side', () => {
    const table = tabulate(circle(180))
    for (const [x, y] of [
      [-3, 1],
      [60, 200],
      [200, 150],
      [363, 4],
      [330, 20],
    ] as const)
      expectWithin(signedDistanceMm(table, { x, y }), Math.hypot(x - 180, y) - 180, 1e-9)
  })

  test('agrees with a dense polyline all round a guitar', () => {
    const line = traceChain(STEEL_PIECES, 0.05)
    const table = tabulate(steel)
    for (let i = 40; i < line.length - 40; i += 397) {
      for (const off of [-9, -0.5, 0.5, 9]) {
        const [x, y] = [line[i]!.x + off * 0.6, line[i]!.y + off * 0.8]
        expectWithin(signedDistanceMm(table, { x, y }), offPolylineMm(line, x, y), 1e-4)
      }
    }
  })

  test('agrees with stepping along a fair curve, whose curvature changes everywhere', () => {
    const { curve } = fairThrough(STEEL_STRING.plan.outline.keyWidths, 496)
    const table = tabulate(curve)
    const line = Array.from({ length: 7001 }, (_, i) => curveAt(curve, (curve.lengthMm * i) / 7000).point)
    for (let i = 150; i < line.length - 150; i += 311) {
      const [x, y] = [line[i]!.x + 0.7, line[i]!.y + 1.1]
      // Chords of a tenth of a millimetre leave the polyline up to 2e-5 inside the curve.
      expectWithin(signedDistanceMm(table, { x, y }), offPolylineMm(line, x, y), 5e-5)
    }
  })

  test('is exact beside a place where an arc turns into another', () => {
    const curve = makeCurve({ point: { x: 0, y: 0 }, headingRad: Math.PI / 2 }, [arc(50, 2), arc(-8, 1.03)])
    const table = tabulate(curve)
    for (const along of [-0.08, -0.03, 0.03, 0.08]) {
      const { point, normal } = curveAt(curve, 100 + along)
      for (const off of [-3, 3]) {
        const beside = { x: point.x + off * normal.x, y: point.y + off * normal.y }
        expectWithin(signedDistanceMm(table, beside), off, 1e-9)
      }
    }
  })

  test('at a corner is the distance to the corner, from outside and from within a hollow one', () => {
    const up = { point: { x: 0, y: 0 }, headingRad: Math.PI / 2 }
    const convex = tabulate(makeCurve(up, [straight(100), straight(100)], [0, Math.PI / 2]))
    expectWithin(signedDistanceMm(convex, { x: -3, y: 104 }), 5, 1e-9)
    expectWithin(signedDistanceMm(convex, { x: 4, y: 50 }), -4, 1e-9)
    expectWithin(signedDistanceMm(convex, { x: 0.2, y: 101 }), 1, 1e-6)
    // A horn as sharp as 30 degrees, from beside its first flank; and a point almost over the corner.
    const horn = tabulate(makeCurve(up, [straight(100), straight(100)], [0, (5 * Math.PI) / 6]))
    expectWithin(signedDistanceMm(horn, { x: -4, y: 103 }), 5, 1e-9)
    expectWithin(signedDistanceMm(convex, { x: -0.2, y: 100.3 }), Math.hypot(0.2, 0.3), 1e-9)
    const hollow = tabulate(makeCurve(up, [straight(100), straight(100)], [0, -Math.PI / 2]))
    expectWithin(signedDistanceMm(hollow, { x: 3, y: 104 }), -5, 1e-9)
  })
})

describe('an outline in a mould', () => {
  test('made to it fits all round, wherever along the centreline it lies', () => {
    const found = mouldGap(halves(steel), halves(steel), 0)
    expectWithin(found.gapMm, 0, 1e-9)
    expect(found.outside.atMm).toBe('none')
    const moved = {
      ...steel,
      places: steel.places.map((at) => ({ ...at, point: { x: at.point.x + 7, y: at.point.y } })),
    }
    const { gapMm, slide, unslidMm } = mouldGap(halves(steel), halves(moved), 0)
    expectWithin(gapMm, 0, 1e-5)
    expect(slide.toward).toBe('neck')
    expectWithin(slide.byMm, 7, 1e-5)
    expectWithin(unslidMm, 7, 1e-6)
  })

  test('a larger circle stands out all round once centred, and by twice that at the far end with tail on tail', () => {
    const { outside, inside, slide, unslidMm, holds } = mouldGap(halves(circle(182)), halves(circle(180)), 0)
    expectWithin(outside.byMm, 2, 1e-6)
    expectWithin(inside.byMm, 0, 1e-6)
    expect(slide.toward).toBe('tail')
    expectWithin(slide.byMm, 2, 1e-5)
    expectWithin(unslidMm, 4, 1e-6)
    expect(holds).toBe(false)
    expect(mouldGap(halves(circle(180.4)), halves(circle(180)), 0).holds).toBe(true)
  })

  test('a smaller circle leaves that gap; a form is the same at its inset', () => {
    for (const insetMm of [0, 5]) {
      const { outside, inside } = mouldGap(halves(circle(180)), halves(circle(181.5)), insetMm)
      expectWithin(inside.byMm, 1.5, 1e-6)
      expectWithin(outside.byMm, 0, 1e-6)
    }
  })

  test('of another guitar departs as dense points tried at every slide do', () => {
    const wood = halves(closeChain(OTHER, null).half)
    const found = mouldGap(wood, halves(steel), 0)
    const points = traceChain(OTHER, 2)
    const line = traceChain(STEEL_PIECES, 1)
    const worstAt = (slideMm: number) => {
      const offs = points.map(({ x, y }) => offPolylineMm(line, x + slideMm, y))
      return { outsideMm: Math.max(...offs), insideMm: -Math.min(...offs) }
    }
    const slidMm = found.slide.toward === 'neck' ? found.slide.byMm : -found.slide.byMm
    const at = worstAt(slidMm)
    expectWithin(found.outside.byMm, at.outsideMm, 0.02)
    expectWithin(found.inside.byMm, at.insideMm, 0.02)
    for (let slideMm = -8; slideMm <= 8; slideMm += 0.5) {
      const { outsideMm, insideMm } = worstAt(slideMm)
      expect(Math.max(outsideMm, insideMm)).toBeGreaterThan(found.gapMm - 0.02)
    }
    const unslid = worstAt(0)
    expectWithin(found.unslidMm, Math.max(unslid.outsideMm, unslid.insideMm), 0.02)
    // It says where: the outline there, slid, stands that far off.
    const atMm = found.outside.atMm as number
    const there = points.reduce((a, b) => (Math.abs(b.x - atMm) < Math.abs(a.x - atMm) ? b : a))
    expectWithin(offPolylineMm(line, there.x + slidMm, there.y), found.outside.byMm, 0.1)
  })

  test('names the half that departs where the halves differ', () => {
    const wood = { bass: circle(180), treble: circle(182, -2), isMirrored: false }
    const { outside } = mouldGap(wood, halves(circle(180)), 0)
    expect(outside.half).toBe('treble')
    expectWithin(outside.byMm, 2, 1e-6)
    expectWithin(mouldGap(wood, wood, 0).gapMm, 0, 1e-9)
  })

  test('always gives finite numbers, even inset beyond its tightest bend', () => {
    const odd = makeCurve({ point: { x: 0, y: 0 }, headingRad: Math.PI / 2 }, [
      arc(5, Math.PI),
      straight(0),
      arc(-5, 3),
    ])
    const { gapMm, slide } = mouldGap(halves(odd), halves(steel), 30)
    expect(Number.isFinite(gapMm) && Number.isFinite(slide.byMm)).toBe(true)
  })
})

import { describe, expect, test } from 'vitest'
import { insetPoint, makeCurve } from '../../../src/core/geometry/curve.ts'
import { arc, straight } from '../../../src/core/geometry/piece.ts'
import { plane } from '../../../src/core/geometry/surface.ts'
import { measureBlock } from '../../../src/core/instrument/block.ts'
import { closeChain } from '../../../src/core/instrument/compassArcs.ts'
import { STEEL_STRING } from '../../generators/demoModels.ts'
import { expectWithin } from '../within.ts'

const start = { point: { x: 0, y: 0 }, headingRad: Math.PI / 2 }
const level = { cut: null, top: plane(0, 0), back: plane(-100, 0) }

describe('the face of a block', () => {
  test('on a tail arc whose inner face has radius 1000 it rises 0.800 over 80', () => {
    const half = makeCurve(start, [arc(1002, Math.PI)])
    const block = measureBlock({ widthMm: 80, thicknessMm: 20 }, { half, end: 'tail', sideThicknessMm: 2, ...level })
    expectWithin(block.contourRiseMm, 0.8, 0.0005)
    expectWithin(block.contourRadiusMm, 1000, 1e-6)
    expectWithin(block.contourGapMm, 0, 1e-9)
    expectWithin(block.heightAtFaceMm, 100, 1e-12)
  })

  test('on a flat end it is flat', () => {
    const half = makeCurve(start, [straight(50), arc(60, Math.PI / 2), straight(300)])
    const block = measureBlock({ widthMm: 80, thicknessMm: 20 }, { half, end: 'tail', sideThicknessMm: 2, ...level })
    expect(block.contourRadiusMm).toBe('flat')
    expectWithin(block.contourRiseMm, 0, 1e-12)
  })
})

describe.each(['tail', 'neck'] as const)('the %s block of the steel-string model', (end) => {
  const { outline, rim, blocks } = STEEL_STRING.plan
  const { half } = closeChain(outline.pieces, outline.lengthMm)
  const t = rim.sideThicknessMm
  const block = measureBlock(blocks[end], { half, end, sideThicknessMm: t, ...level })
  const halfMm = blocks[end].widthMm / 2

  /** The inner face as a dense list of points, moved inward one by one. */
  const face = Array.from({ length: 60001 }, (_, i) => {
    const u = (150 * i) / 60000
    return insetPoint(half, end === 'tail' ? u : half.lengthMm - u, t)
  })
  const away = end === 'tail' ? 1 : -1
  const fallsBackMm = (across: number) => {
    const point = face.find(({ y }) => y >= across)!
    return away * (point.x - face[0]!.x)
  }

  test('its contour follows the parallel of the outer face', () => {
    expectWithin(block.contourRiseMm, fallsBackMm(halfMm), 0.002)
    for (const { acrossMm, fallsBackMm: fall } of block.contour) expectWithin(fall, fallsBackMm(acrossMm), 0.002)
    expectWithin(block.contour.at(-1)!.acrossMm, halfMm, 1e-9)
  })

  test('no other radius fits better', () => {
    const samples = Array.from({ length: 77 }, (_, i) => (halfMm * i) / 76).map((y) => [y, fallsBackMm(y)] as const)
    const gapOf = (radius: number) => {
      const gaps = samples.map(([y, fall]) => fall - (radius - Math.sqrt(radius * radius - y * y)))
      return Math.max(...gaps) - Math.min(...gaps)
    }
    const radius = block.contourRadiusMm as number
    expectWithin(gapOf(radius), block.contourGapMm, 0.003)
    for (let i = -40; i <= 40; i++) expect(gapOf(radius * 1.02 ** i)).toBeGreaterThan(block.contourGapMm - 0.003)
  })
})

test('heights at both faces and slopes of the ends follow the planes they are cut to', () => {
  const half = makeCurve(start, [arc(1002, Math.PI)])
  const block = measureBlock(
    { widthMm: 80, thicknessMm: 30 },
    { half, end: 'tail', cut: null, sideThicknessMm: 2, top: plane(0, 0.01), back: plane(-90, -0.1) },
  )
  expectWithin(block.heightAtFaceMm, 90 + 0.11 * 2, 1e-9)
  expectWithin(block.heightInsideMm, 90 + 0.11 * 32, 1e-9)
  expectWithin(block.topSlopeRad, Math.atan(0.01), 1e-12)
  expectWithin(block.backSlopeRad, Math.atan(0.1), 1e-12)
})

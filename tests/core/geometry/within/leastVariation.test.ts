import { describe, expect, test } from 'vitest'
import type { Point } from '../../../../src/core/geometry/point.ts'
import type { Curve } from '../../../../src/core/geometry/curve.ts'
import { curveAt } from '../../../../src/core/geometry/curve.ts'
import type { WithinAim, WithinResult } from '../../../../src/core/geometry/within/curveWithin.ts'
import { curveWithin } from '../../../../src/core/geometry/within/curveWithin.ts'
import { STEEL_STRING } from '../../../generators/demoModels.ts'
import { traceChain } from '../../trace.ts'
import { expectWithin } from '../../within.ts'
import { fairLine } from './withinReference.ts'
import { furthestMm, halfAim, readTrace, sampleCurve, seededErrors, variationPerMm3 } from './withinSamples.ts'

const ELLIPSE: Point[] = Array.from({ length: 2001 }, (_, i) => {
  const angle = Math.PI * (1 - i / 2000)
  return { x: 240 + 240 * Math.cos(angle), y: 150 * Math.sin(angle) }
})

/** An ellipse misread by up to a millimetre. */
function misread(seed: number): WithinAim {
  const error = seededErrors(seed)
  const readings = readTrace(ELLIPSE, 20, [20, 40, 60, 80], [20, 40, 60, 80], 0, (mm) => mm + error())
  return { ...halfAim(readings, 480, 0, 1), shape: 'free' }
}

const { outline } = STEEL_STRING.plan
const ARCS = [...traceChain(outline.kind === 'compassArcs' ? outline.pieces.slice(0, -1) : [], 0.5), { x: 496, y: 0 }]

/** Which way curvature goes on a curve at this part of its length, or went when it last moved: +1 up, -1 down. */
function wayOf(curve: Curve, part: number): number {
  let way = 1
  curve.pieces.forEach((piece, i) => {
    const rise = piece.endCurvaturePerMm - piece.startCurvaturePerMm
    if (curve.startsMm[i]! < part * curve.lengthMm && Math.abs(rise) > 1e-12) way = Math.sign(rise)
  })
  return way
}

const squaresOf = ({ departuresMm }: WithinResult): number => departuresMm.reduce((sum, off) => sum + off * off, 0)

describe('a broken line that asks for the same by other means', () => {
  test.each([1, 2, 3])('comes to the same curve (seed %d)', { timeout: 60_000 }, (seed) => {
    const aim = misread(seed)
    const found = curveWithin(aim)
    expect(found.within).toBe(true)
    // Errors spread evenly over +-1, less what a curve follows of them.
    const m = aim.readings.length
    expect(squaresOf(found)).toBeLessThan((1.1 * m * Math.max(1 - 18 / m, 0.45)) / 3)
    const line = fairLine(aim, sampleCurve(found.curve, 200), squaresOf(found), () => 0)
    expectWithin(variationPerMm3(found.curve) / line.variationPerMm3, 1, 0.06)
    expectWithin(furthestMm(sampleCurve(found.curve, 400), line.points), 0, 0.02)
  })

  test.each([1, 2, 3])('for a guitar, too, turning where it does (seed %d)', { timeout: 60_000 }, (seed) => {
    const error = seededErrors(seed)
    const across = [20, 40, 60, 80, 100]
    const readings = readTrace(ARCS, 20, across, across.slice(1), 28, (mm) => mm + error() / 2)
    const aim = halfAim(readings, 496, 28, 0.5)
    const found = curveWithin(aim)
    const { curve } = found
    const line = fairLine(aim, sampleCurve(curve, 240), squaresOf(found), (part) => wayOf(curve, part))
    expectWithin(variationPerMm3(curve) / line.variationPerMm3, 1, 0.06)
    expectWithin(furthestMm(sampleCurve(curve, 400), line.points), 0, 0.06)
  })
})

describe('the same asked otherwise', () => {
  const aim = misread(4)
  const { curve } = curveWithin(aim)

  test('from end to end', () => {
    const back: WithinAim = {
      ...aim,
      start: { point: { x: 480, y: 0 }, headingRad: Math.PI / 2, curvaturePerMm: null },
      end: { point: { x: 0, y: 0 }, headingRad: (3 * Math.PI) / 2, curvaturePerMm: null },
      readings: aim.readings.toReversed(),
    }
    const reversed = curveWithin(back)
    expectWithin(furthestMm(sampleCurve(reversed.curve, 200), sampleCurve(curve, 2000)), 0, 0.01)
  })

  test('in a mirror, for a guitar: tail and neck changed over', () => {
    const guitar = { ...aim, shape: 'guitar' as const }
    const mirrored = curveWithin({
      ...guitar,
      readings: aim.readings.map(({ x, y }) => ({ x: 480 - x, y })).toReversed(),
    })
    const again = sampleCurve(mirrored.curve, 200).map(({ x, y }) => ({ x: 480 - x, y }))
    expectWithin(furthestMm(again, sampleCurve(curveWithin(guitar).curve, 2000)), 0, 0.02)
  })

  test('shifted and turned', () => {
    const [cos, sin] = [Math.cos(0.7), Math.sin(0.7)]
    const move = ({ x, y }: Point): Point => ({ x: 1000 + cos * x - sin * y, y: cos * y + sin * x - 300 })
    const moved = curveWithin({
      ...aim,
      start: { ...aim.start, point: move(aim.start.point), headingRad: aim.start.headingRad + 0.7 },
      end: { ...aim.end, point: move(aim.end.point), headingRad: aim.end.headingRad! + 0.7 },
      readings: aim.readings.map(move),
    })
    expectWithin(furthestMm(sampleCurve(curve, 200).map(move), sampleCurve(moved.curve, 2000)), 0, 0.005)
  })

  test('ten times as large', () => {
    const grow = ({ x, y }: Point): Point => ({ x: 10 * x, y: 10 * y })
    const grown = curveWithin({ ...halfAim(aim.readings.map(grow), 4800, 0, 10), shape: 'free' })
    expectWithin(grown.curve.lengthMm, 10 * curve.lengthMm, 1e-6)
  })

  test.each([0.2, 0.45, 0.7])('with a point of the curve at %d of its length as a further reading', (part) => {
    const { point } = curveAt(curve, part * curve.lengthMm)
    const at = aim.readings.findIndex(({ x }) => x > point.x)
    const readings = aim.readings.toSpliced(at, 0, point)
    const again = curveWithin({ ...aim, readings })
    expectWithin(furthestMm(sampleCurve(again.curve, 300), sampleCurve(curve, 2000)), 0, 0.1)
  })
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { type EndWedgeSite, measureEndWedge } from '../../../src/core/instrument/endWedge.ts'
import { real } from '../../generators/real.ts'
import { DEG, expectWithin } from '../within.ts'

const site: EndWedgeSite = {
  topMm: 18,
  backMm: 12,
  depthMm: 3,
  purflingMm: 0.6,
  trimMm: 15,
  bodyDepthMm: 111.3,
  bindingHeightMm: 6,
  sideThicknessMm: 2.2,
  block: { widthMm: 80, thicknessMm: 20 },
}
type Point = { readonly x: number; readonly y: number }
const to = (a: Point, b: Point) => ({ x: b.x - a.x, y: b.y - a.y })
const angleRad = (a: Point, b: Point) =>
  Math.acos((a.x * b.x + a.y * b.y) / (Math.hypot(a.x, a.y) * Math.hypot(b.x, b.y)))
/** The place of the line a b at this height. */
const atHeight = (a: Point, b: Point, y: number): Point => ({ x: a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y), y })

describe.each([
  ['wider at the top', site],
  ['wider at the back', { ...site, topMm: 10, backMm: 24 }],
  ['parallel', { ...site, topMm: 15, backMm: 15 }],
  ['running to a point', { ...site, topMm: 0, backMm: 20, purflingMm: 1 }],
])('a wedge %s, drawn by its corners', (_, of) => {
  const found = measureEndWedge(of)
  // Its edge on one side, tail seen from behind: top at y 0, back below.
  const [top, back] = [
    { x: of.topMm / 2, y: 0 },
    { x: of.backMm / 2, y: -of.bodyDepthMm },
  ]
  const upper = atHeight(top, back, -of.bindingHeightMm)
  const lower = atHeight(top, back, -of.bodyDepthMm + of.bindingHeightMm)

  test('lengths and widths', () => {
    expectWithin(found.fullMm, 111.3, 1e-12)
    expectWithin(found.betweenMm, 99.3, 1e-9)
    expectWithin(found.topMm, 2 * upper.x, 1e-9)
    expectWithin(found.backMm, 2 * lower.x, 1e-9)
    const edge = to(upper, lower)
    expectWithin(found.purflingMm, Math.hypot(edge.x, edge.y), 1e-9)
    expectWithin(found.purflingCutMm, Math.hypot(edge.x, edge.y) + 30, 1e-9)
  })

  test('the taper, and the wood between the purflings as lines moved in', () => {
    const edge = to(top, back)
    const size = Math.hypot(edge.x, edge.y)
    const tilt = angleRad(edge, { x: 0, y: -1 })
    expectWithin(Math.abs(Number(found.taperRad)), tilt, 1e-7)
    expect(Math.sign(Number(found.taperRad))).toBe(Math.sign(of.topMm - of.backMm))
    const inward = { x: (edge.y * of.purflingMm) / size, y: (-edge.x * of.purflingMm) / size }
    const moved = [top, back].map(({ x, y }) => ({ x: x + inward.x, y: y + inward.y }))
    const woodAt = (y: number) => Math.max(2 * atHeight(moved[0]!, moved[1]!, y).x, 0)
    expectWithin(found.woodTopMm, woodAt(0), 1e-9)
    expectWithin(found.woodBackMm, woodAt(-of.bodyDepthMm), 1e-9)
  })

  test('mitres halve the angle between the edge and the binding that runs away from it', () => {
    const away = { x: 1, y: 0 }
    expectWithin(found.mitreTopRad, angleRad(to(upper, lower), away) / 2, 1e-9)
    expectWithin(found.mitreBackRad, angleRad(to(lower, upper), away) / 2, 1e-9)
    expectWithin(Number(found.mitreTopRad) + Number(found.mitreBackRad), 90 * DEG, 1e-12)
  })
})

test('what it takes of side and block', () => {
  const found = measureEndWedge(site)
  expectWithin(found.intoBlockMm, 0.8, 1e-12)
  expectWithin(found.blockLeftMm, 19.2, 1e-12)
  expectWithin(found.besideMm, 31, 1e-12)
  const shallow = measureEndWedge({ ...site, depthMm: 1.4 })
  expect([found.intoSideMm, found.edgeMm, shallow.intoSideMm]).toEqual([3, 0.6, 1.4])
  expect(measureEndWedge({ ...site, purflingMm: 0 }).edgeMm).toBe('none')
  expectWithin(shallow.intoBlockMm, -0.8, 1e-12)
  expectWithin(shallow.blockLeftMm, 20, 1e-12)
  expectWithin(measureEndWedge({ ...site, backMm: 90 }).besideMm, -5, 1e-12)
})

test('no width, no wedge; no purfling, no mitre', () => {
  for (const value of Object.values(measureEndWedge({ ...site, topMm: 0, backMm: 0 }))) expect(value).toBe('none')
  const bare = measureEndWedge({ ...site, purflingMm: 0 })
  expect([bare.purflingMm, bare.purflingCutMm, bare.mitreTopRad, bare.mitreBackRad]).toEqual(Array(4).fill('none'))
  expectWithin(bare.woodTopMm, 18, 1e-12)
})

test('whatever is entered: finite, and nothing shorter than nothing', () => {
  const mm = (max: number) => real(0, max)
  fc.assert(
    fc.property(
      mm(80),
      mm(80),
      mm(20),
      mm(5),
      mm(220),
      mm(15),
      (topMm, backMm, depthMm, purflingMm, bodyDepthMm, bindingHeightMm) => {
        const found = measureEndWedge({ ...site, topMm, backMm, depthMm, purflingMm, bodyDepthMm, bindingHeightMm })
        for (const [name, value] of Object.entries(found))
          expect(value === 'none' || Number.isFinite(value), name).toBe(true)
        if (found.betweenMm !== 'none') expect(Number(found.betweenMm)).toBeGreaterThanOrEqual(0)
      },
    ),
    { seed: 5 },
  )
})

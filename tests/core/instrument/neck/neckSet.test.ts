import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { sphere } from '../../../../src/core/geometry/surface.ts'
import { type NeckSetSite, setNeck, STEEPEST_SLOPE } from '../../../../src/core/instrument/neck/neckSet.ts'
import { real } from '../../../generators/real.ts'
import { DEG, expectWithin } from '../../within.ts'

/**
 * The same by another way: the neck as a rigid body, its board and crowns square to its face and its length laid off along it, turned about
 * the rim's edge at the joint until the line over the crowns stands as high as it should over the top at the saddle. Found by halving.
 */
function turnedRad(site: NeckSetSite, riseMm: number, topAtMm: (toSaddleMm: number) => number): number {
  const over = site.bridgeMm + site.saddleShowingMm - (2 * site.actionMm - site.nutHeightMm) + riseMm
  const aboveRad = (angle: number): number => {
    const pivot =
      site.seat.kind === 'edge' ? site.seat.edgeMm : site.seat.startMm - site.seat.fromJointMm * Math.tan(angle)
    const thick = site.boardMm + site.crownMm
    const along = site.toSaddleMm * Math.cos(angle) - thick * Math.sin(angle)
    const height = pivot + site.toSaddleMm * Math.sin(angle) + thick * Math.cos(angle)
    return height - (topAtMm(along) + over)
  }
  let [low, high] = [-0.2, 0.2]
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2
    if (aboveRad(middle) < 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}

/** A worked example of common practice: body 496, top sphere 28 ft, scale 645, joint at fret 14. */
const dish = sphere(8534.4, 248, { x: 0, z: 0 }, 'up')
const toSaddleMm = 645 * 2 ** (-14 / 12)
const example: NeckSetSite = {
  toSaddleMm,
  topAtSaddleMm: dish.heightMm(496 - toSaddleMm, 0),
  seat: { kind: 'edge', edgeMm: 0 },
  boardMm: 6.2,
  crownMm: 1.1,
  bridgeMm: 9,
  saddleShowingMm: 3.2,
  actionMm: 2.1,
  nutHeightMm: 0.5,
  riseMm: 0,
}

describe('the set of a neck', () => {
  test('the worked example: 0.940 degrees, the board end 0.67 inside a top domed to the edge', () => {
    const { slope } = setNeck(example, 0)
    expectWithin(Math.atan(slope) / DEG, 0.94, 0.001)
    expectWithin(90.2 * slope - dish.heightMm(496 - 90.2, 0), -0.67, 0.01)
  })

  test('with a flat upper bout and 0.8 of rise about 1.3 degrees', () => {
    const startMm = dish.heightMm(406, 144.6)
    const flat: NeckSetSite = { ...example, seat: { kind: 'flat', startMm, fromJointMm: 90 } }
    expectWithin(Math.atan(setNeck(flat, 0.8).slope) / DEG, 1.3, 0.05)
  })

  test('board and flat are one plane: the rim edge at the neck lies on the line of the flat', () => {
    const line = setNeck({ ...example, seat: { kind: 'flat', startMm: 0.86, fromJointMm: 90 } }, 0.8)
    expectWithin(line.edgeMm + 90 * line.slope, 0.86, 1e-12)
  })

  const anySite = fc.record<NeckSetSite>({
    toSaddleMm: real(150, 400),
    topAtSaddleMm: real(0, 6),
    seat: fc.oneof(
      fc.record({ kind: fc.constant('edge' as const), edgeMm: real(-3, 1) }),
      fc.record({ kind: fc.constant('flat' as const), startMm: real(-2, 2), fromJointMm: real(10, 90) }),
    ),
    boardMm: real(3, 9),
    crownMm: real(0.7, 1.4),
    bridgeMm: real(5, 11),
    saddleShowingMm: real(2, 5),
    actionMm: real(1.5, 4),
    nutHeightMm: real(0.3, 1),
    riseMm: real(0, 1.5),
  })

  test('agrees with a rigid neck turned about the joint, lengths laid off along it, to 0.001 degree', () => {
    fc.assert(
      fc.property(anySite, (site) => {
        const { slope } = setNeck(site, site.riseMm)
        fc.pre(Math.abs(slope) < 0.05)
        const turned = turnedRad(site, site.riseMm, () => site.topAtSaddleMm)
        expectWithin(Math.atan(slope) / DEG, turned / DEG, 0.001)
      }),
    )
  })

  test('at the angles that are built it is within 0.001 degree', () => {
    for (const seat of [example.seat, { kind: 'flat', startMm: 0.86, fromJointMm: 90 } as const])
      for (const riseMm of [0, 0.4, 0.8]) {
        const site = { ...example, seat }
        const top = (alongMm: number) => dish.heightMm(496 - alongMm, 0)
        expectWithin(Math.atan(setNeck(site, riseMm).slope) / DEG, turnedRad(site, riseMm, top) / DEG, 0.001)
      }
  })

  test('rises with bridge and saddle, falls with board, crown and action; never leaves its limits', () => {
    fc.assert(
      fc.property(anySite, real(0.05, 0.5), (site, more) => {
        const slope = setNeck(site, site.riseMm).slope
        const held = Math.abs(slope) === STEEPEST_SLOPE
        const after = (change: Partial<NeckSetSite>) => setNeck({ ...site, ...change }, site.riseMm).slope
        expect(after({ bridgeMm: site.bridgeMm + more }) > slope || held).toBe(true)
        expect(after({ boardMm: site.boardMm + more }) < slope || held).toBe(true)
        expect(after({ actionMm: site.actionMm + more }) < slope || held).toBe(true)
        expect(Math.abs(slope)).toBeLessThanOrEqual(STEEPEST_SLOPE)
      }),
    )
  })
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { plane, type Surface, sphere } from '../../../../src/core/geometry/surface.ts'
import { measureBridge } from '../../../../src/core/instrument/neck/bridge.ts'
import { makeFretboard } from '../../../../src/core/instrument/neck/fretboard.ts'
import { placeStrings } from '../../../../src/core/instrument/neck/strings.ts'
import type { BridgePlan, ScalePlan, StringsPlan } from '../../../../src/core/neckPlan.ts'
import { NYLON_NECK, SMALL_NECK, STEEL_NECK } from '../../../generators/demoNecks.ts'
import { anyPlan } from '../../../generators/plans.ts'
import { real } from '../../../generators/real.ts'
import { readSteelModel, readTable } from '../../../tables/readTable.ts'
import { DEG, expectWithin } from '../../within.ts'

const known = readSteelModel()

interface Changes {
  readonly bridge?: Partial<BridgePlan>
  readonly scale?: Partial<ScalePlan>
  readonly strings?: Partial<StringsPlan>
  readonly topPlate?: Surface
  readonly bodyLengthMm?: number
}
/** A bridge on its body; the compensation as entered. */
function bridgeOf(neck: typeof STEEL_NECK, changes: Changes = {}) {
  const bridge = { ...neck.bridge, ...changes.bridge }
  const strings = { ...neck.strings, ...changes.strings }
  const { nutSpreadMm, saddleSpreadMm } = strings
  const shape = makeFretboard({ ...neck.scale, ...changes.scale }, neck.board, {
    bodyLengthMm: changes.bodyLengthMm ?? 496,
    nutSpreadMm,
    saddleSpreadMm,
  })
  const lines = placeStrings(strings, neck.setup, shape)
  const { compensationBassMm, compensationTrebleMm } = bridge
  const topPlate = changes.topPlate ?? plane(0, 0)
  return {
    ...measureBridge(bridge, { shape, lines, topPlate, compensationBassMm, compensationTrebleMm }),
    lines,
    shape,
  }
}

/** Square to the line through two places, signed: how far a third lies off it. */
const offLineMm = (a: readonly number[], b: readonly number[], c: readonly number[]): number => {
  const [ux, uy] = [b[0]! - a[0]!, b[1]! - a[1]!]
  return (ux * (c[1]! - a[1]!) - uy * (c[0]! - a[0]!)) / Math.hypot(ux, uy)
}

describe('the steel-string bridge', () => {
  const { bridge, pins } = bridgeOf(STEEL_NECK)

  test('the crown stands behind the saddle line of the table by the compensation', () => {
    const lineMm = known.scale['saddle_x_uncompensated']!
    expectWithin(bridge.saddleBassAtMm, lineMm - 4.6, 0.01)
    expectWithin(bridge.saddleTrebleAtMm, lineMm - 2.2, 0.01)
    expectWithin(bridge.saddleMiddleAtMm, lineMm - 3.4, 0.01)
    expectWithin(bridge.jointToSaddleMm, known.scale['fret_joint_to_saddle']! + 3.4, 0.01)
  })

  test('from fret 12 half the scale and the compensation', () => {
    expectWithin(bridge.twelfthToBassMm, 645 / 2 + 4.6, 1e-9)
    expectWithin(bridge.twelfthToTrebleMm, 645 / 2 + 2.2, 1e-9)
  })

  test('the saddle slants 2.4 in 55, the bass end nearer the tail: 3.2 over 74', () => {
    expectWithin(bridge.slantRad / DEG, 2.4986, 1e-4) // tan 2.4986 deg = 0.043636
    expectWithin(bridge.slotEndsDifferMm, (74 * 2.4) / Math.sqrt(2.4 ** 2 + 55 ** 2), 1e-9)
  })

  test('edges, heights, holds and plate by plain sums', () => {
    const crownMm = bridge.saddleMiddleAtMm
    expectWithin(bridge.frontEdgeAtMm, crownMm + 8, 1e-9)
    expectWithin(bridge.backEdgeAtMm, crownMm + 8 - 32, 1e-9)
    expectWithin(bridge.jointToFrontMm, 496 - crownMm - 8, 1e-9)
    expectWithin(bridge.saddleHeightMm, 9.7, 1e-12)
    expectWithin(bridge.woodUnderSlotMm, 2.5, 1e-12)
    expect(bridge.thicknessMm).toBe(9)
    expectWithin(bridge.holdsAtMm, crownMm - 18, 1e-9)
    expectWithin(bridge.holdsSlantRad, 0, 0)
    expectWithin(bridge.plateBehindHoldsMm, 208.69 - 3.4 - 18 - 168, 0.01)
    expectWithin(bridge.plateBeforeSaddleMm, 228 - (208.69 - 2.2), 0.01)
  })

  test('six pins on a square line, 11 apart over 55; the bass string lies 16.8 before its pin, the treble 19.2', () => {
    expect(pins).toHaveLength(6)
    for (const [i, pin] of pins.entries()) {
      expectWithin(pin.acrossMm, -27.5 + 11 * i, 1e-9)
      expectWithin(pin.atMm, bridge.holdsAtMm, 1e-9)
    }
    expectWithin(pins[0]!.behindSaddleMm, 18 - 1.2, 1e-9)
    expectWithin(pins[5]!.behindSaddleMm, 18 + 1.2, 1e-9)
  })
})

describe('underside of a bridge', () => {
  /** A dome whose axis stands some way from the bridge's middle, along. */
  const domed = (radiusMm: number, offMm: number, lengthMm: number, widthMm: number, bulges: 'up' | 'down' = 'up') => {
    const plan = { lengthMm, widthMm, saddleFromFrontMm: widthMm / 2 } // its crown in its middle
    const axisMm = bridgeOf(STEEL_NECK, { bridge: plan }).bridge.saddleMiddleAtMm + offMm
    return bridgeOf(STEEL_NECK, { bridge: plan, topPlate: sphere(radiusMm, axisMm, { x: 0, z: 0 }, bulges) }).bridge
  }

  test.each(
    readTable('sagitta.csv')
      .map((row) => [row.number('R'), row.number('chord'), row.number('sagitta')] as const)
      .filter(([radiusMm]) => radiusMm > 1000),
  )('%d over %d: the hollow of the table', (radiusMm, chordMm, sagittaMm) => {
    const across = domed(radiusMm, 0, chordMm, 30)
    expectWithin(across.hollowAcrossMm, sagittaMm, 1e-5)
    expectWithin(across.undersideRadiusMm, radiusMm, radiusMm * 1e-9)
    expectWithin(domed(radiusMm, 0, 100, chordMm).hollowAlongMm, sagittaMm, 1e-5)
  })

  test('28 ft over 155: 0.35', () => expectWithin(domed(8534.4, 0, 155, 32).hollowAcrossMm, 0.35, 0.005))

  test('off the axis the cut through a sphere is a smaller circle', () => {
    fc.assert(
      fc.property(real(1500, 20000), real(-300, 300), real(30, 300), (radiusMm, offMm, lengthMm) => {
        const expected = Math.sqrt(radiusMm ** 2 - offMm ** 2)
        expectWithin(domed(radiusMm, offMm, lengthMm, 30).undersideRadiusMm, expected, expected * 1e-6)
        expectWithin(domed(radiusMm, offMm, lengthMm, 30, 'down').undersideRadiusMm, -expected, expected * 1e-6)
      }),
      { seed: 41 },
    )
  })

  test('a plane, however it falls, is flat', () => {
    const { bridge } = bridgeOf(STEEL_NECK, { topPlate: plane(3, -0.02) })
    expect(bridge.undersideRadiusMm).toBe('flat')
    expectWithin(bridge.hollowAcrossMm, 0, 1e-12)
    expectWithin(bridge.hollowAlongMm, 0, 1e-12)
  })
})

describe('a saddle that leans', () => {
  /** A straight saddle turned about where its middle leaves the bridge, its crown a height over the bridge: how far back the crown stands. */
  const leanMm = (heightMm: number, deg: number): number => {
    const alongSaddle = heightMm / Math.cos(deg * DEG)
    return Math.sqrt(alongSaddle ** 2 - heightMm ** 2) * Math.sign(deg)
  }
  test.each([-5, 0, 3, 9, 15])('%d degrees to the tail', (deg) => {
    const { bridge } = bridgeOf(STEEL_NECK, { bridge: { saddleTiltDeg: deg } })
    expectWithin(bridge.slotFromCrownMm, leanMm(3.2, deg), 1e-9)
    expectWithin(bridge.crownMovesMm, leanMm(4.2, deg) - leanMm(3.2, deg), 1e-9)
    expectWithin(bridge.saddleMiddleAtMm, bridgeOf(STEEL_NECK).bridge.saddleMiddleAtMm, 1e-12)
  })
})

describe('fanned', () => {
  const scale = { fan: 'fanned', lengthMm: 660, trebleLengthMm: 630, squareFret: 7 } as const
  const { bridge, pins, lines } = bridgeOf(STEEL_NECK, { scale, bridge: { pinRun: 'withSaddle', pinSpreadMm: 60 } })
  const bass = [bridge.saddleBassAtMm, -27.5]
  const treble = [bridge.saddleTrebleAtMm, 27.5]

  test('each outer string has half of its own scale to fret 12', () => {
    expectWithin(bridge.twelfthToBassMm, 330 + 4.6, 1e-9)
    expectWithin(bridge.twelfthToTrebleMm, 315 + 2.2, 1e-9)
  })

  test('its middle lies on the line through both crowns, its slant is theirs', () => {
    expectWithin(offLineMm(bass, treble, [bridge.saddleMiddleAtMm, 0]), 0, 1e-9)
    expectWithin(bridge.slantRad, Math.atan2(treble[0]! - bass[0]!, 55), 1e-12)
    // The scales differ by 30; up to the square fret 30 x 2^(-7/12) of that is left, and the compensation turns the saddle further.
    expectWithin(treble[0]! - bass[0]!, 30 * 2 ** (-7 / 12) + 2.4, 1e-9)
  })

  test('pins that run with the saddle: in line, and everywhere as far from it', () => {
    const [first, last] = [pins[0]!, pins[5]!].map((pin) => [pin.atMm, pin.acrossMm])
    const square = 18 * Math.cos(bridge.slantRad)
    for (const pin of pins) {
      expectWithin(offLineMm(first!, last!, [pin.atMm, pin.acrossMm]), 0, 1e-9)
      expectWithin(Math.abs(offLineMm(bass, treble, [pin.atMm, pin.acrossMm])), square, 1e-9)
    }
    expectWithin(bridge.holdsSlantRad, bridge.slantRad, 1e-12)
    for (const [i, pin] of pins.entries()) {
      const crownMm = pin.atMm + pin.behindSaddleMm
      expectWithin(offLineMm(bass, treble, [crownMm, lines[i]!.saddleAcrossMm]), 0, 1e-9)
    }
  })

  test('the plate is measured from the rearmost pin and from the foremost crown', () => {
    expectWithin(bridge.plateBehindHoldsMm, Math.min(...pins.map(({ atMm }) => atMm)) - 168, 1e-9)
    expectWithin(bridge.plateBehindHoldsMm, pins[0]!.atMm - 168, 1e-9)
    expectWithin(bridge.plateBeforeSaddleMm, 228 - bridge.saddleTrebleAtMm, 1e-9)
  })
})

describe('ways to hold strings', () => {
  test('tied strings run straight back', () => {
    const { bridge, pins, lines } = bridgeOf(NYLON_NECK)
    for (const [i, pin] of pins.entries()) {
      expectWithin(pin.acrossMm, lines[i]!.saddleAcrossMm, 1e-12)
      expectWithin(pin.atMm, bridge.saddleMiddleAtMm - 12, 1e-9)
    }
    expect(bridge.plateBehindHoldsMm).toBe('none')
    expect(bridge.plateBeforeSaddleMm).toBe('none')
  })

  test('pairs of one course have pins as far apart as all others', () => {
    const set = STEEL_NECK.strings.set.map((string) => ({ ...string, pairedWithNext: true }))
    const across = bridgeOf(STEEL_NECK, { strings: { set } }).pins.map(({ acrossMm }) => acrossMm)
    for (let i = 1; i < across.length; i++) expectWithin(across[i]! - across[i - 1]!, 11, 1e-9)
  })

  test('one string: its pin in the middle, the saddle square; none: no pins, the crowns at the spread asked', () => {
    const one = bridgeOf(STEEL_NECK, { strings: { set: STEEL_NECK.strings.set.slice(0, 1) } })
    expect(one.pins).toHaveLength(1)
    expectWithin(one.pins[0]!.acrossMm, 0, 0)
    expectWithin(one.bridge.slantRad, 0, 0)
    const none = bridgeOf(STEEL_NECK, { strings: { set: [] } })
    expect(none.pins).toEqual([])
    expectWithin(none.bridge.slantRad, Math.atan2(2.4, 55), 1e-12)
    expectWithin(none.bridge.twelfthToBassMm, 322.5 + 4.6, 1e-9)
  })
})

describe('moved and turned about', () => {
  const compensations = fc.record({ compensationBassMm: real(-3, 20), compensationTrebleMm: real(-3, 20) })

  test('bass and treble exchanged: the slant turned about, all on the centreline as it was', () => {
    fc.assert(
      fc.property(compensations, (bridge) => {
        const exchanged = {
          compensationBassMm: bridge.compensationTrebleMm,
          compensationTrebleMm: bridge.compensationBassMm,
        }
        const [a, b] = [bridgeOf(SMALL_NECK, { bridge }).bridge, bridgeOf(SMALL_NECK, { bridge: exchanged }).bridge]
        expectWithin(a.slantRad, -b.slantRad, 1e-12)
        expectWithin(a.saddleMiddleAtMm, b.saddleMiddleAtMm, 1e-9)
        expectWithin(a.saddleBassAtMm, b.saddleTrebleAtMm, 1e-9)
        expect(Math.sign(a.slantRad)).toBe(Math.sign(bridge.compensationBassMm - bridge.compensationTrebleMm))
      }),
      { seed: 42 },
    )
  })

  test('a longer body with the same neck carries the bridge along', () => {
    fc.assert(
      fc.property(compensations, real(-150, 150), (bridge, byMm) => {
        const here = bridgeOf(STEEL_NECK, { bridge }).bridge
        const there = bridgeOf(STEEL_NECK, { bridge, bodyLengthMm: 496 + byMm }).bridge
        for (const key of ['saddleBassAtMm', 'saddleMiddleAtMm', 'frontEdgeAtMm', 'backEdgeAtMm', 'holdsAtMm'] as const)
          expectWithin(there[key], here[key] + byMm, 1e-9, key)
        for (const key of ['jointToSaddleMm', 'twelfthToBassMm', 'slantRad', 'jointToFrontMm'] as const)
          expectWithin(there[key], here[key], 1e-9, key)
      }),
      { seed: 43 },
    )
  })
})

test('anything a plan may hold: finite, flat or none; a row for each string', () => {
  const tops = fc.oneof(
    fc.tuple(real(500, 20000), real(0, 600)).map(([radius, axis]) => sphere(radius, axis, { x: 0, z: 0 }, 'up')),
    real(-0.2, 0.2).map((slope) => plane(0, slope)),
  )
  fc.assert(
    fc.property(anyPlan, tops, real(200, 700), (plan, topPlate, bodyLengthMm) => {
      const { bridge, pins } = bridgeOf(plan, { topPlate, bodyLengthMm })
      const off = Object.entries(bridge).filter(([, one]) => one !== 'none' && one !== 'flat' && !Number.isFinite(one))
      expect(off).toEqual([])
      expect(pins).toHaveLength(plan.strings.set.length)
      expect(pins.flatMap(Object.values).filter((one) => !Number.isFinite(one))).toEqual([])
    }),
    { seed: 44, numRuns: 300 },
  )
})

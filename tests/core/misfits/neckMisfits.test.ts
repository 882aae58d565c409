import { describe, expect, test } from 'vitest'
import { compute } from '../../../src/core/compute.ts'
import type { Finding, FindingCode } from '../../../src/core/findings.ts'
import type { Plan } from '../../../src/core/plan.ts'
import type { PlanField } from '../../../src/core/planFields.ts'
import { DEMO_MODELS, STEEL_STRING } from '../../generators/demoModels.ts'
import { withFields } from '../everyForm.ts'
import { DEG, expectWithin } from '../within.ts'

type Change = Partial<Record<PlanField, unknown>>
const STEEL = STEEL_STRING.plan
const found = (code: FindingCode, change: Change, plan: Plan = STEEL): Finding | undefined =>
  compute(withFields(plan, change)).findings.find((finding) => finding.code === code)

/** Outer scales 660 and 630 share fret 7; 645 on the centreline. */
const FANNED: Change = { 'scale.fan': 'fanned', 'scale.lengthMm': 660, 'scale.trebleLengthMm': 630 }

test('the models have no misfit of the neck', () => {
  for (const { plan } of DEMO_MODELS) expect(compute(plan).findings).toEqual([])
})

describe('the last fret of a fan', () => {
  // Fret 20: 2^(-20/12) = 0.31498, fret 7: 0.66742. It falls 30 x 0.35244 = 10.573 over the strings' spread there, 55 - 18 x 0.31498 = 49.330:
  // 0.21434 a mm. The board is 2 x 29.535 wide there and widens 0.017054 a mm to either side, so the bass edge is met
  // 29.535 / (1 - 0.017054 x 0.21434) = 29.643 across, 6.354 nearer the tail than the middle.
  test('leaves a board that ends 6 beyond it, at the bass edge', () => {
    const finding = found('fretPastBoardEnd', FANNED)
    expect(finding?.weight).toBe('cannot')
    expectWithin(finding?.values['byMm'], 0.354, 0.001)
    expect(finding?.values['side']).toBe(0)
  })

  test('and at the treble edge with the scales the other way round', () => {
    const finding = found('fretPastBoardEnd', { ...FANNED, 'scale.lengthMm': 630, 'scale.trebleLengthMm': 660 })
    expectWithin(finding?.values['byMm'], 0.354, 0.001)
    expect(finding?.values['side']).toBe(1)
  })

  test('stays on one that ends 6.4 beyond it; a square one always does', () => {
    expect(found('fretPastBoardEnd', { ...FANNED, 'board.endBeyondLastFretMm': 6.4 })).toBeUndefined()
    expect(found('fretPastBoardEnd', { 'board.endBeyondLastFretMm': 0 })).toBeUndefined()
  })
})

test('a slanted nut is said with what its ends differ by, and its bass end stands ahead', () => {
  // 30 (1 - 0.66742) = 9.9774 over 37: 0.26966 a mm; the edges are met 21.899 and 22.102 across.
  const finding = found('nutSlants', FANNED)
  expect(finding?.weight).toBe('care')
  expectWithin(finding?.values['byMm'], 0.26966 * (21.899 + 22.102), 0.001)
  expect(finding?.values['side']).toBe(0)
  expect(found('nutSlants', { ...FANNED, 'scale.squareFret': 0 })).toBeUndefined()
})

describe('a tang of 1.6', () => {
  // At fret 20 the board of radius 400 lies 400 - sqrt(400^2 - 29.535^2) = 1.092 lower at its edge.
  test('in slots 2 deep: at the edge 0.908 is left, and they may follow the radius', () => {
    const finding = found('tangDeeperAtEdge', { 'frets.slotDepthMm': 2 })
    expect(finding?.weight).toBe('care')
    expectWithin(finding?.values['slotMm'], 0.908, 0.001)
    expect(found('tangDeeperThanSlot', { 'frets.slotDepthMm': 2 })).toBeUndefined()
  })

  test('in slots 1.5 deep: nothing helps', () => {
    expect(found('tangDeeperThanSlot', { 'frets.slotDepthMm': 1.5 })?.weight).toBe('cannot')
    expect(found('tangDeeperAtEdge', { 'frets.slotDepthMm': 1.5 })).toBeUndefined()
  })
})

describe('strings', () => {
  const { set } = STEEL.strings

  test('an octave too low pulls a quarter', () => {
    // 0.3048 of steel weighs 0.5728 g/m; at 164.81 Hz on 645: 0.0005728 (2 x 0.645 x 164.81)^2.
    const low = set.map((string, i) => (i === 5 ? { ...string, note: 52 } : string))
    const finding = found('stringSlack', { 'strings.set': low })
    expect([finding?.weight, finding?.values['string']]).toEqual(['care', 6])
    expectWithin(finding?.values['tensionN'], 25.89, 0.02)
    expect(found('stringSlack', {})).toBeUndefined()
  })

  test('the first without a mass is told', () => {
    const bare = set.map((string, i) => (i === 1 || i === 3 ? { ...string, massGPerM: null } : string))
    expect(found('stringMassUnknown', { 'strings.set': bare })?.values).toEqual({ count: 2, string: 2 })
  })
})

describe('holes behind the saddle', () => {
  // The saddle falls 2.4 over 55: at the bass pin, 27.5 across, its middle lies 1.2 nearer the tail. Its slot is 3 wide, a pin 5.
  const tilt = Math.cos(Math.atan(2.4 / 55))

  test.each([
    [3, 'cannot'],
    [5.1, 'cannot'],
    [5.3, 'care'],
    [8, 'care'],
    [8.3, undefined],
  ] as const)('pins %d behind it: %s', (behindMm, weight) => {
    const finding = found('holdsInSlot', { 'bridge.holdsBehindMm': behindMm })
    expect(finding?.weight).toBe(weight)
    if (finding === undefined) return
    expectWithin(finding.values['woodMm'], (behindMm - 1.2) * tilt - 4, 1e-9)
    expect(finding.values['string']).toBe(1)
  })

  test('a leaning saddle enters the bridge before its crown: 3.2 tan 10 more', () => {
    const finding = found('holdsInSlot', { 'bridge.holdsBehindMm': 5, 'bridge.saddleTiltDeg': 10 })
    expectWithin(finding?.values['woodMm'], (5 - 1.2 + 3.2 * Math.tan(10 * DEG)) * tilt - 4, 1e-9)
  })

  test('fanned, the holes square: those of the treble stand far off, those of the bass in the slot', () => {
    // The saddle falls 30 x 0.66742 more, 22.42 over 55: 11.21 at the bass pin.
    const finding = found('holdsInSlot', { ...FANNED, 'bridge.holdsBehindMm': 12 })
    expect(finding?.weight).toBe('cannot')
    expectWithin(finding?.values['woodMm'], (12 - 11.2113) * Math.cos(Math.atan(22.4226 / 55)) - 4, 0.001)
    expect(
      found('holdsInSlot', { ...FANNED, 'bridge.holdsBehindMm': 12, 'bridge.pinRun': 'withSaddle' }),
    ).toBeUndefined()
  })

  test('a tied string bends too steeply before its hole meets the slot', () => {
    const tied = { 'bridge.holds': 'tie', 'bridge.holdsBehindMm': 3 }
    expect(found('holdsInSlot', tied)).toBeUndefined()
    // 8.2 down over 1.8 to 4.2.
    expect(found('breakAngleGreat', tied)?.values['breakRad']).toBeGreaterThan(70 * DEG)
    expect(found('breakAngleGreat', { ...tied, 'bridge.holdsBehindMm': 12 })).toBeUndefined()
    // A hole in the slot itself is said once: 3.2 down over 0.8 would be steep as well.
    expect(found('breakAngleGreat', { ...FANNED, 'bridge.holdsBehindMm': 12 })).toBeUndefined()
  })

  test.each([
    ['square', 'pins', 20.5, undefined, 3.5],
    ['withSaddle', 'pins', 20.5, 'care', 2.3],
    ['withSaddle', 'pins', 24.5, 'cannot', -1.7],
    ['withSaddle', 'tie', 22, undefined, 0.8],
    ['withSaddle', 'tie', 24.5, 'cannot', -1.7],
  ] as const)(
    '%s %s %d behind: the rearmost to the back edge of a bridge 32 wide, 24 behind the saddle: %s',
    (run, holds, behindMm, weight, leftMm) => {
      const change = { 'bridge.pinRun': run, 'bridge.holds': holds, 'bridge.holdsBehindMm': behindMm }
      const finding = found('holdsOffBridge', change)
      expect(finding?.weight).toBe(weight)
      if (finding !== undefined) expectWithin(finding.values['byMm'], leftMm, 1e-9)
    },
  )
})

describe('the saddle of a fan', () => {
  test('slants 22.42 in 55 on a square bridge: its slot of 74 differs by 28', () => {
    const finding = found('slotSlantsOnBridge', FANNED)
    expect(finding?.weight).toBe('care')
    expectWithin(finding?.values['slantRad'], Math.atan(22.4226 / 55), 1e-5)
    expectWithin(finding?.values['differMm'], (74 * 22.4226) / Math.hypot(22.4226, 55), 0.001)
  })

  test('square frets slant it by their compensation alone: nothing to say', () => {
    expect(found('slotSlantsOnBridge', { 'bridge.compensationTrebleMm': 0 })).toBeUndefined()
  })
})

test('a crown leaves the saddle beyond half its width, however the estimate errs', () => {
  // The saddle entered too far forward by 2 everywhere: the B string wants its crown 2 further behind.
  const forward = { 'bridge.compensationBassMm': 2.6, 'bridge.compensationTrebleMm': 0.2 }
  const row = compute(withFields(STEEL, forward)).numbers.strings[4]!
  const [crownMm, estimateMm] = [Number(row.crownBehindLineMm), Number(row.compensationMm)]
  const enoughMm = 2 * (crownMm - Math.max(estimateMm / 3, 1))
  expect(enoughMm).toBeGreaterThan(4)
  const narrow = found('saddleTooNarrow', { ...forward, 'bridge.saddleWidthMm': enoughMm - 0.01 })
  expect([narrow?.weight, narrow?.values['string']]).toEqual(['care', 5])
  expectWithin(narrow?.values['halfMm'], enoughMm / 2 - 0.005, 1e-9)
  expectWithin(narrow?.values['byMm'], crownMm, 1e-9)
  expect(found('saddleTooNarrow', { ...forward, 'bridge.saddleWidthMm': enoughMm + 0.01 })).toBeUndefined()
})

describe('the rod', () => {
  // From fret 1 on there is 21 - 6.2 = 14.8 of neck under the board.
  const fromFirst = { 'neck.rodFromNutMm': 645 - 645 / 2 ** (1 / 12) }
  test.each([
    [9.5, undefined],
    [10, 'care'],
    [12.7, 'care'],
    [12.9, 'cannot'],
    [15, 'cannot'],
  ] as const)('a channel %d deep: %s', (depthMm, weight) => {
    const finding = found('rodTooDeep', { ...fromFirst, 'neck.rodDepthMm': depthMm })
    expect(finding?.weight).toBe(weight)
    if (finding !== undefined) expectWithin(finding.values['woodMm'], 14.8 - depthMm, 1e-9)
  })

  test('ends 30.7 before the joint: short; 29.7: not', () => {
    // Fret 14 lies 357.69 from the nut; the channel begins at 5.
    const finding = found('rodTooShort', { 'neck.rodLengthMm': 322 })
    expect(finding?.weight).toBe('care')
    expectWithin(finding?.values['byMm'], 30.69, 0.01)
    expect(found('rodTooShort', { 'neck.rodLengthMm': 323 })).toBeUndefined()
  })

  test('meets a bolt only where it reaches it', () => {
    const high = { 'neck.boltsAtMm': [12, 65] } // 12 - 3 - 9.5
    expectWithin(found('rodMeetsBolt', high)?.values['clearMm'], -0.5, 1e-9)
    expect(found('rodMeetsBolt', { ...high, 'neck.rodLengthMm': 350 })).toBeUndefined()
    expect(found('rodMeetsBolt', { ...high, 'neck.rodLengthMm': 350, 'neck.joint': 'butt' })?.weight).toBe('cannot')
  })
})

describe('tuners on a head', () => {
  test('twelve on one of 175: the last hole ends at 237', () => {
    const twelve = STEEL.strings.set.flatMap((string) => [string, string])
    const finding = found('postOffHead', { 'strings.set': twelve })
    expect(finding?.weight).toBe('cannot')
    expectWithin(finding?.values['leftMm'], 175 - 237, 1e-9)
    expect(found('postOffHead', { 'strings.set': twelve, 'head.lengthMm': 245 })).toBeUndefined()
  })

  test.each([
    [116, 'cannot'],
    [121, 'care'],
    [122, undefined],
  ] as const)('six on one of %d, the last hole ending at 117: %s', (lengthMm, weight) => {
    expect(found('postOffHead', { 'head.lengthMm': lengthMm })?.weight).toBe(weight)
  })
})

describe('wood off the heel', () => {
  test('by the box as it is: about the joint; planned anew: about where the flat begins', () => {
    const { neckSet, bridge, neck } = compute(STEEL).numbers
    const toFlatMm = 496 - STEEL.top.flatFromMm
    // Half a millimetre at the saddle, over the lever either way.
    const anewMm = neckSet.changes.find(({ what }) => what === 'saddle')!.wedgeMm
    expectWithin(
      Number(neckSet.wedgePerMm) * bridge.jointToSaddleMm,
      Number(anewMm) * 2 * (bridge.jointToSaddleMm - toFlatMm),
      0.3,
    )
    expectWithin(neckSet.wedgePerMm, neck.heelDepthMm / bridge.jointToSaddleMm, 1e-12)
  })

  test('one lever where nothing is planed: the same', () => {
    const { neckSet } = compute(withFields(STEEL, { 'top.form': 'sphere' })).numbers
    const anewMm = neckSet.changes.find(({ what }) => what === 'saddle')!.wedgeMm
    expectWithin(Number(anewMm) * 2, Number(neckSet.wedgePerMm), 0.001)
  })

  test('none where the sides are let into the heel', () => {
    const { neckSet } = compute(withFields(STEEL, { 'neck.joint': 'sidesInHeel' })).numbers
    expect(neckSet.wedgePerMm).toBe('none')
    expect(neckSet.changes.map(({ wedgeMm }) => wedgeMm)).toEqual(['none', 'none', 'none', 'none'])
  })
})

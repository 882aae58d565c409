import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { makeFretboard } from '../../../../src/core/instrument/neck/fretboard.ts'
import { measureNeckBlank } from '../../../../src/core/instrument/neck/neckBlank.ts'
import { type HeadPlan, NECK_JOINTS, type NeckPlan } from '../../../../src/core/neckPlan.ts'
import { NYLON_NECK, SMALL_NECK, STEEL_NECK } from '../../../generators/demoNecks.ts'
import { anyPlan } from '../../../generators/plans.ts'
import { real } from '../../../generators/real.ts'
import { DEG, expectWithin } from '../../within.ts'

const SITE = {
  bodyDepthMm: 95.3,
  dishedDepthMm: 96.4,
  angleRad: 1.3 * DEG,
  blockWidthMm: 80,
  blockThicknessMm: 36,
  /** A round end of 500. */
  outlineFallsMm: (acrossMm: number) => 500 - Math.sqrt(500 ** 2 - acrossMm ** 2),
}

interface Changes {
  readonly neck?: Partial<NeckPlan>
  readonly head?: Partial<HeadPlan>
}
function blankOf(
  model: Pick<typeof STEEL_NECK, 'scale' | 'board' | 'strings' | 'neck' | 'head'>,
  { neck, head }: Changes = {},
) {
  const { nutSpreadMm, saddleSpreadMm } = model.strings
  const shape = makeFretboard(model.scale, model.board, { bodyLengthMm: 496, nutSpreadMm, saddleSpreadMm })
  return measureNeckBlank({ ...model.neck, ...neck }, model.board, { ...model.head, ...head }, { ...SITE, shape })
}

const toFretMm = (scaleMm: number, fret: number): number => scaleMm - scaleMm / 2 ** (fret / 12)
const FIRST_MM = toFretMm(645, 1)
const TENTH_MM = toFretMm(645, 10)

describe('wood behind the rod', () => {
  test('the steel-string neck, the rod from fret 1: 21 - 6.2 - 9.5 = 5.3', () => {
    const blank = blankOf(STEEL_NECK, { neck: { rodFromNutMm: FIRST_MM } })
    expectWithin(blank.woodBehindRodMm, 5.3, 1e-9)
    expectWithin(blank.woodAtFirstMm, 14.8, 1e-12)
    expectWithin(blank.woodAtTenthMm, 16.8, 1e-12)
  })

  /** The back of the shaft as a straight edge through two places; the least over the channel's bottom, walked along it. */
  function walkedMm(neck: NeckPlan): number {
    const back = (mm: number) => {
      const along = (mm - FIRST_MM) / (TENTH_MM - FIRST_MM)
      return (1 - along) * neck.thicknessAtFirstMm + along * neck.thicknessAtTenthMm
    }
    const from = Math.max(neck.rodFromNutMm, 0)
    const to = Math.max(from, Math.min(neck.rodFromNutMm + neck.rodLengthMm, TENTH_MM))
    let least = Number.POSITIVE_INFINITY
    for (let i = 0; i <= 200; i++) least = Math.min(least, back(from + ((to - from) * i) / 200))
    return least - 6.2 - neck.rodDepthMm
  }

  test('as walked along the channel, whichever end of the shaft is the thinner', () => {
    const any = fc.record({
      thicknessAtFirstMm: real(10, 40),
      thicknessAtTenthMm: real(10, 45),
      rodLengthMm: real(50, 700),
      rodDepthMm: real(3, 25),
      rodFromNutMm: real(-60, 60),
    })
    fc.assert(
      fc.property(any, (neck) => {
        expectWithin(blankOf(STEEL_NECK, { neck }).woodBehindRodMm, walkedMm({ ...STEEL_NECK.neck, ...neck }), 1e-9)
      }),
      { seed: 51 },
    )
  })

  test('a channel begun in the head is measured from the nut on', () => {
    const [inHead, atNut] = [-40, 0].map((rodFromNutMm) => blankOf(STEEL_NECK, { neck: { rodFromNutMm } }))
    expectWithin(inHead!.woodBehindRodMm, Number(atNut!.woodBehindRodMm), 1e-12)
    expect(Number(atNut!.woodBehindRodMm)).toBeLessThan(5.3)
  })

  test('begun 5 from the nut and 360 long it ends 7.3 beyond a joint at fret 14; 18.8 of wood on either side', () => {
    const blank = blankOf(STEEL_NECK)
    // Equal temperament: 645 to fret 14 is 357.69.
    expectWithin(blank.rodEndsBeforeJointMm, 357.69 - 365, 0.01)
    expectWithin(blank.besideRodMm, 18.825, 1e-9)
  })

  test('no rod: nothing of it', () => {
    const blank = blankOf(NYLON_NECK)
    for (const key of ['woodBehindRodMm', 'rodEndsBeforeJointMm', 'rodToBoltMm', 'besideRodMm'] as const)
      expect(blank[key]).toBe('none')
  })
})

describe('heel and joint', () => {
  test('the heel stands on the body, as wide as the board at the joint, hollowed by the outline under its edges', () => {
    const blank = blankOf(STEEL_NECK)
    expectWithin(blank.heelWidthMm, 56.2, 0.005) // 44 + 22 (1 - 2^(-14/12))
    expect([blank.heelDepthMm, blank.heelStockMm, blank.heelCapMm]).toEqual([95.3, 96.4, 22])
    expectWithin(blank.cheekRad / DEG, 1.3, 1e-12)
    expectWithin(blank.cheekHollowMm, 0.79, 0.005) // the sagitta of 56.2 on 500
  })

  test('bolts of 6 at 25 and 65 under a channel of 9.5, in a heel of 95.3', () => {
    const blank = blankOf(STEEL_NECK)
    expectWithin(blank.rodToBoltMm, 12.5, 1e-12) // 22 - 9.5
    expectWithin(blank.boltToHeelEndMm, 27.3, 1e-12) // 95.3 - 68
    expect(blank.bolts).toEqual([{ underTopMm: 25 }, { underTopMm: 65 }])
    const turned = blankOf(STEEL_NECK, { neck: { boltsAtMm: [65, 25] } })
    expect(turned).toEqual({ ...blank, bolts: [{ underTopMm: 65 }, { underTopMm: 25 }] })
  })

  test('a tenon 24 wide and 28 deep in a block of 80 by 36: 8 behind it, 28 on either side', () => {
    const blank = blankOf(STEEL_NECK)
    expectWithin(blank.blockBehindTenonMm, 8, 1e-12)
    expectWithin(blank.blockBesideTenonMm, 28, 1e-12)
    expectWithin(blankOf(STEEL_NECK, { neck: { tenonDepthMm: 40 } }).blockBehindTenonMm, -4, 1e-12)
  })

  test.each([
    ['boltedTenon', true, true, 28],
    ['dovetail', true, false, 28],
    ['butt', false, true, 0],
    ['sidesInHeel', false, false, 36],
  ] as const)('%s: tenon %s, bolts %s, %d of the neck in the block', (joint, hasTenon, hasBolts, insideMm) => {
    const blank = blankOf(STEEL_NECK, { neck: { joint } })
    expect(typeof blank.blockBehindTenonMm).toBe(hasTenon ? 'number' : 'string')
    expect(typeof blank.blockBesideTenonMm).toBe(hasTenon ? 'number' : 'string')
    expect(typeof blank.boltToHeelEndMm).toBe(hasBolts ? 'number' : 'string')
    expect(blank.bolts).toHaveLength(hasBolts ? 2 : 0)
    expect(typeof blank.rodToBoltMm).toBe(hasBolts ? 'number' : 'string')
    expectWithin(blank.stockLengthMm, 357.69 + 175 + insideMm, 0.01)
  })

  test.each([
    ['boltedTenon', 350, false],
    ['boltedTenon', 355, true],
    ['butt', 320, true],
    ['butt', 312, false],
  ] as const)('%s: a channel of %d from 5 behind the nut comes over a bolt: %s', (joint, rodLengthMm, meets) => {
    // Nut to joint is 357.69: 5 + 350 ends 2.7 before it, 5 + 355 2.3 beyond; a bolt of a butted heel is taken to reach 40 into it, to 317.69.
    expect(blankOf(STEEL_NECK, { neck: { joint, rodLengthMm } }).rodToBoltMm === 'none').toBe(!meets)
  })

  test('fanned frets: the blank begins at the end of the nut that stands further ahead', () => {
    const scale = { ...STEEL_NECK.scale, lengthMm: 660, fan: 'fanned', trebleLengthMm: 630, squareFret: 7 } as const
    // Mean scale 645. The bass string's nut stands 30 (1 - 2^(-7/12)) = 9.977 before the treble's, 37 apart: a fall of 0.26966 a mm;
    // with edges that widen 11 in 645 the bass edge is met b = 22 / (1 + 0.26966 x 11 / 645) = 21.899 across, 5.905 ahead.
    expectWithin(blankOf({ ...STEEL_NECK, scale }).stockLengthMm, 357.69 + 175 + 28 + 5.905, 0.01)
  })

  test('every joint is in the table above', () => expect(NECK_JOINTS).toHaveLength(4))

  test('bolts forgotten, or no rod: no way between them', () => {
    expect(blankOf(STEEL_NECK, { neck: { boltsAtMm: [] } }).boltToHeelEndMm).toBe('none')
    expect(blankOf(STEEL_NECK, { neck: { boltsAtMm: [] } }).rodToBoltMm).toBe('none')
    expect(blankOf(SMALL_NECK).rodToBoltMm).toBe('none')
    expectWithin(blankOf(SMALL_NECK).boltToHeelEndMm, 95.3 - 45, 1e-12)
  })
})

describe('the scarf', () => {
  test.each([1, 5, 13, 15, 25])('sawn through 20 at %d degrees: from face to back', (angleDeg) => {
    // A saw's line through the stock, walked from the face to where it leaves the back.
    const [rise, run] = [Math.sin(angleDeg * DEG), Math.cos(angleDeg * DEG)]
    const runMm = (20 * run) / rise
    expectWithin(blankOf(STEEL_NECK, { head: { angleDeg } }).scarfMm, Math.hypot(runMm, 20), 1e-8)
  })

  test('20 at 15 degrees: 77.3', () => expectWithin(blankOf(STEEL_NECK).scarfMm, 77.27, 0.005))

  test('a level head, or one that stands up, has none', () => {
    for (const angleDeg of [0, -3]) expect(blankOf(STEEL_NECK, { head: { angleDeg } }).scarfMm).toBe('none')
  })
})

test('anything a plan may hold: finite or none', () => {
  fc.assert(
    fc.property(anyPlan, (plan) => {
      const { bolts, ...numbers } = blankOf(plan)
      const off = Object.entries(numbers).filter(([, one]) => one !== 'none' && !Number.isFinite(one))
      expect(off).toEqual([])
      const hasBolts = plan.neck.joint === 'boltedTenon' || plan.neck.joint === 'butt'
      expect(bolts.map(({ underTopMm }) => underTopMm)).toEqual(hasBolts ? plan.neck.boltsAtMm : [])
    }),
    { seed: 52, numRuns: 300 },
  )
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  type CompensationSite,
  compensationMm,
  stiffnessFactor,
} from '../../../../src/core/instrument/neck/compensation.ts'
import { betweenOuter, spaceStrings } from '../../../../src/core/instrument/neck/strings.ts'
import { coreOf, MATERIALS, massGPerM, noteHz, tensionN } from '../../../../src/core/instrument/neck/tension.ts'
import { NYLON_NECK, STEEL_NECK } from '../../../generators/demoNecks.ts'
import { real } from '../../../generators/real.ts'
import { readTable } from '../../../tables/readTable.ts'
import { expectWithin } from '../../within.ts'

const LEAST_MM = -10
const MOST_MM = 40
const centsOf = (ratio: number): number => 1200 * Math.log2(ratio)

/** Where f turns from above 0 to under it, by halving; the end it does not reach where it does not turn. */
function halve(f: (t: number) => number, low: number, high: number): number {
  for (let i = 0; i < 80; i++) {
    const middle = (low + high) / 2
    if (f(middle) > 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}

type Stiffness = (e: number) => number
const series: Stiffness = (e) => 1 + 2 * e + (4 + Math.PI ** 2 / 2) * e ** 2

/**
 * The lowest tone of a bar under pull, clamped at both ends, over that of the string without stiffness: from the differential equation itself.
 * E I y'''' - T y'' = m w^2 y has, half the string taken as 1/2, k1 tan(k1/2) = -k2 tanh(k2/2), k2^2 = k1^2 + 1/e^2, w ~ k1 k2.
 */
const byEquation: Stiffness = (e) => {
  const k2 = (k1: number) => Math.hypot(k1, 1 / e)
  const off = (k1: number) => -(k1 * Math.tan(k1 / 2) + k2(k1) * Math.tanh(k2(k1) / 2))
  const k1 = halve(off, Math.PI * (1 + 1e-12), 2 * Math.PI)
  return (k1 * k2(k1) * e) / Math.PI
}

/**
 * The octave at fret 12 against the open string, cents, with the saddle c behind the line: points in space, SI units, a string of 1 g/m tuned
 * by its pull to the frequency asked.
 */
function octaveCents(site: CompensationSite, c: number, stiffness: Stiffness): number {
  const kgPerM = 0.001
  const [scale, core] = [site.scaleMm / 1000, site.coreMm / 1000]
  const hertz = Math.sqrt(site.tensionN / kgPerM) / (2 * scale)
  const nut = [0, site.nutHeightMm / 1000] as const
  const crown = [scale / 2, 0] as const
  const saddle = [scale + c / 1000, (2 * site.actionMm - site.nutHeightMm) / 1000] as const
  const apart = (p: readonly [number, number], q: readonly [number, number]) =>
    Math.sqrt((p[0] - q[0]) ** 2 + (p[1] - q[1]) ** 2)
  const section = Math.PI * (core / 2) ** 2
  const pascal = site.modulusGPa * 1e9
  const bending = site.isSolid ? (pascal * section * (core / 2) ** 2) / 4 : 0
  const tone = (length: number, pull: number) =>
    (Math.sqrt(pull / kgPerM) / (2 * length)) * (bending > 0 ? stiffness(Math.sqrt(bending / pull) / length) : 1)
  const open = saddle[0]
  const openPull = kgPerM * (2 * open * hertz) ** 2
  const strain = (apart(nut, crown) + apart(crown, saddle) - apart(nut, saddle)) / open
  return centsOf(tone(saddle[0] - crown[0], openPull + pascal * section * strain) / (2 * tone(open, openPull)))
}

const pulled = (min: number, max: number) => real(Math.log(min), Math.log(max)).map(Math.exp)
const strings: fc.Arbitrary<CompensationSite> = fc
  .constantFrom([207, 0.6, true], [3, 1.6, true], [3, 1.6, false], [4, 1.4, true])
  .chain(([modulusGPa, thickest, isSolid]) =>
    fc.record({
      scaleMm: real(300, 800),
      tensionN: pulled(10, 400),
      coreMm: real(0.1, thickest),
      modulusGPa: fc.constant(modulusGPa),
      isSolid: fc.constant(isSolid),
      actionMm: real(0.3, 8),
      nutHeightMm: real(0.1, 3),
    }),
  )

describe('stiffness of a clamped string', () => {
  test.each(
    readTable('plain_steel_strings.csv').map((row) => [row.text('dia_in'), row.text('length_m'), row] as const),
  )('%s in, %s m: cents by the table', (_, __, row) => {
    const factor = stiffnessFactor(207, row.number('dia_mm'), row.number('tension_N'), row.number('length_m') * 1000)
    expectWithin(centsOf(factor), row.number('clamped_stiffness_sharpening_cents'), 6e-4)
  })

  test('the differential equation solved: alike to the third order', () => {
    for (const e of [0.001, 0.002, 0.005, 0.01, 0.02]) {
      // A string of 1 N and 1 mm: E I = e^2.
      const factor = stiffnessFactor((e * e * 64) / Math.PI / 1000, 1, 1, 1)
      expectWithin(factor, byEquation(e), 40 * e ** 3, `e ${e}`)
    }
  })
})

describe('compensation put back into the same physics', () => {
  test('the octave is true within 0.1 cent, wherever a saddle within reach makes it so', () => {
    let [found, beyond] = [0, 0]
    fc.assert(
      fc.property(strings, (site) => {
        const c = compensationMm(site)
        if (octaveCents(site, MOST_MM, series) > 0) {
          beyond++
          expect(c).toBe(MOST_MM)
          return
        }
        found++
        expectWithin(octaveCents(site, c, series), 0, 1e-4, 'cents')
        expectWithin(
          c,
          halve((t) => octaveCents(site, t, series), LEAST_MM, MOST_MM),
          1e-6,
          'c',
        )
      }),
      { seed: 12, numRuns: 2000 },
    )
    // Only slack steel far over the frets is beyond reach.
    expect(beyond).toBeLessThan(found / 10)
  })

  test('without slack or great height none is beyond reach', () => {
    fc.assert(
      fc.property(strings, pulled(50, 200), real(0.3, 4), (string, pull, actionMm) => {
        const site = { ...string, tensionN: pull, actionMm, coreMm: Math.min(string.coreMm, pull / 250 + 0.2) }
        const c = compensationMm(site)
        expect(c).toBeLessThan(MOST_MM)
        expectWithin(octaveCents(site, c, series), 0, 1e-4, 'cents')
      }),
      { seed: 13, numRuns: 500 },
    )
  })

  /** With every height small beside the scale the way through the crown is 2 A^2/S longer, whatever the nut. */
  const firstOrder = ({ scaleMm, tensionN: pull, coreMm, modulusGPa, isSolid, actionMm }: CompensationSite): number => {
    const [area, inertia] = [(Math.PI * coreMm ** 2) / 4, (Math.PI * coreMm ** 4) / 64]
    const stretch = (actionMm ** 2 * modulusGPa * 1000 * area) / (scaleMm * pull)
    return stretch + (isSolid ? 2 * Math.sqrt((modulusGPa * 1000 * inertia) / pull) : 0)
  }

  test('to the first order c = A^2 E F/(S T) + 2 sqrt(E I/T), F the section', () => {
    fc.assert(
      fc.property(strings, (site) => {
        const closed = firstOrder(site)
        fc.pre(closed < site.scaleMm / 100)
        // What the second order leaves: shares of c/S and of (A/S)^2.
        const left = (12 * closed) / site.scaleMm + 10 * (site.actionMm / site.scaleMm) ** 2
        expectWithin(compensationMm(site), closed, closed * left + 1e-6)
      }),
      { seed: 14, numRuns: 1000 },
    )
  })
})

describe('strings of the models', () => {
  const sitesOf = ({ scale, strings: plan, setup }: typeof STEEL_NECK): CompensationSite[] =>
    plan.set.map((string, i) => {
      const across = spaceStrings(plan, plan.nutSpreadMm).acrossMm[i]!
      const { modulusGPa, isSolid } = MATERIALS[string.material]
      return {
        scaleMm: scale.lengthMm,
        tensionN: tensionN(Number(massGPerM(string)), scale.lengthMm, noteHz(string.note, plan.pitchHz)),
        coreMm: Number(coreOf(string)),
        modulusGPa,
        isSolid,
        actionMm: betweenOuter(setup.actionBassMm, setup.actionTrebleMm, across, plan.nutSpreadMm),
        nutHeightMm: betweenOuter(setup.nutBassMm, setup.nutTrebleMm, across, plan.nutSpreadMm),
      }
    })

  test('a few millimetres, as saddles stand', () => {
    for (const site of [...sitesOf(STEEL_NECK), ...sitesOf(NYLON_NECK)]) {
      const c = compensationMm(site)
      expect(c).toBeGreaterThan(0)
      expect(c).toBeLessThan(8)
    }
  })

  test('with the stiffness of the differential equation the octave is still true within 0.1 cent', () => {
    for (const site of [...sitesOf(STEEL_NECK), ...sitesOf(NYLON_NECK)])
      expectWithin(octaveCents(site, compensationMm(site), byEquation), 0, 0.1, 'cents')
  })
})

describe('how it goes with what it hangs on', () => {
  const site: CompensationSite = {
    scaleMm: 645,
    tensionN: 103.6,
    coreMm: 0.3048,
    modulusGPa: 207,
    isSolid: true,
    actionMm: 1.8,
    nutHeightMm: 0.5,
  }

  test('more with a higher action, a thicker core, a stiffer string, less pull', () => {
    fc.assert(
      fc.property(strings, real(1.02, 1.5), (one, more) => {
        const c = compensationMm(one)
        fc.pre(c < MOST_MM)
        expect(compensationMm({ ...one, actionMm: one.actionMm * more })).toBeGreaterThan(c)
        expect(compensationMm({ ...one, coreMm: one.coreMm * more })).toBeGreaterThan(c)
        expect(compensationMm({ ...one, modulusGPa: one.modulusGPa * more })).toBeGreaterThan(c)
        expect(compensationMm({ ...one, tensionN: one.tensionN * more })).toBeLessThan(c)
      }),
      { seed: 15, numRuns: 300 },
    )
  })

  test('a stranded core asks less than a solid one; without height and stiffness nothing', () => {
    expect(compensationMm({ ...site, isSolid: false })).toBeLessThan(compensationMm(site))
    expectWithin(compensationMm({ ...site, isSolid: false, actionMm: 0, nutHeightMm: 0 }), 0, 1e-8)
  })

  test('anything at all: a finite place between -10 and 40', () => {
    const any = fc.record({
      scaleMm: pulled(50, 3000),
      tensionN: fc.oneof(fc.constant(0), pulled(1e-6, 1e5)),
      coreMm: pulled(0.01, 10),
      modulusGPa: pulled(0.01, 1000),
      isSolid: fc.boolean(),
      actionMm: real(-5, 30),
      nutHeightMm: real(-5, 10),
    })
    fc.assert(
      fc.property(any, (one) => {
        const c = compensationMm(one)
        expect(Number.isFinite(c)).toBe(true)
        expect(c).toBeGreaterThanOrEqual(LEAST_MM)
        expect(c).toBeLessThanOrEqual(MOST_MM)
      }),
      { seed: 16, numRuns: 2000 },
    )
  })
})

import { describe, expect, test } from 'vitest'
import type { BracePlan } from '../../../../src/core/boxPlan.ts'
import { makeCurve } from '../../../../src/core/geometry/curve.ts'
import { arc } from '../../../../src/core/geometry/piece.ts'
import { plane, sphere } from '../../../../src/core/geometry/surface.ts'
import { type BracedPlate, braceArchRows, braceFace } from '../../../../src/core/instrument/brace/braceArch.ts'
import { braceHeightMm } from '../../../../src/core/instrument/brace/braceHeight.ts'
import { innerRimOf } from '../../../../src/core/instrument/brace/innerRim.ts'
import { placeBraces } from '../../../../src/core/instrument/brace/placedBrace.ts'
import type { Plan } from '../../../../src/core/plan.ts'
import { STEEL_STRING } from '../../../generators/demoModels.ts'
import { withField } from '../../../generators/plans.ts'
import { readTable } from '../../../tables/readTable.ts'
import { marchSolids } from '../../solids.ts'
import { expectWithin } from '../../within.ts'
import { beyond, brace, computed, end, here } from './braceSamples.ts'

const half = makeCurve({ point: { x: 0, y: 0 }, headingRad: Math.PI / 2 }, [arc(1000, Math.PI)])
const rim = innerRimOf({ bass: half, treble: half }, 2)
const placed = (plan: BracePlan) => placeBraces([{ id: 'a', brace: plan }], rim)[0]!

const flat: BracedPlate = { surface: plane(0, 0), outward: 'up' }

describe('an arch of its own', () => {
  test.each(readTable('sagitta.csv').map((row) => [row.number('R'), row.number('chord'), row.number('sagitta')]))(
    'radius %d over %d rises %d',
    (R, chord, sagitta) => {
      const one = placed(brace(here(900, -chord / 2), here(900, chord / 2), { underside: 'own', archRadiusMm: R }))
      const face = braceFace(one, flat)
      expectWithin(face.riseMm(chord / 2), sagitta, 1e-6)
      expectWithin(face.riseMm(0), 0, 1e-12)
      expectWithin(face.riseMm(chord), 0, 1e-12)
      expect(face.radiusMm).toBe(R)
      // At the quarter: what the arc has lost there is the sagitta of half the chord.
      const quarter = R - Math.sqrt(R * R - (chord * chord) / 16)
      expectWithin(face.riseMm(chord / 4), sagitta - quarter, 1e-6)
    },
  )

  test('a flat face has neither rise nor radius, and a radius too small is half a circle', () => {
    const none = braceFace(placed(brace(here(900, 0), here(900, 300), { underside: 'flat' })), {
      surface: sphere(3000, 900, { x: 900, z: 0 }, 'up'),
      outward: 'up',
    })
    expect([none.radiusMm, none.riseMm(150)]).toEqual(['flat', 0])
    const tight = braceFace(placed(brace(here(500, 0), here(1500, 0), { underside: 'own', archRadiusMm: 200 })), flat)
    expectWithin(tight.riseMm(500), 500, 1e-9)
  })
})

describe('the dome’s own section', () => {
  test.each([
    [8500, 250, 100, -150, 100, 150],
    [8500, 250, 280, -90, 60, 160],
    [3600, 40, 10, 5, 480, 60],
    [12000, 900, 800, -10, 300, 400],
  ])('radius %d: the circle an upright plane cuts', (R, axis, x1, y1, x2, y2) => {
    const one = placed(brace(here(x1, y1), here(x2, y2)))
    const size = Math.hypot(x2 - x1, y2 - y1)
    // Plan distance of the axis from the line of the brace.
    const d = Math.abs((x2 - x1) * (0 - y1) - (y2 - y1) * (axis - x1)) / size
    for (const outward of ['up', 'down'] as const) {
      const surface = sphere(R, axis, { x: 0, z: -90 }, outward)
      const radius = braceFace(one, { surface, outward }).radiusMm as number
      expectWithin(radius / Math.sqrt(R * R - d * d), 1, 1e-8)
      expect(braceFace(one, { surface, outward: outward === 'up' ? 'down' : 'up' }).radiusMm).toBeLessThan(0)
    }
  })

  test('on a flat plate it is flat', () => {
    expect(
      braceFace(placed(brace(here(100, 0), here(300, 50))), { surface: plane(3, 0.02), outward: 'up' }),
    ).toMatchObject({
      radiusMm: 'flat',
    })
  })
})

describe('ordinates, against upright rays halved until they meet the solids', () => {
  const forms: Record<string, Plan> = {
    sphere: withField(STEEL_STRING.plan, 'top.form', 'sphere'),
    planed: withField(STEEL_STRING.plan, 'top.flatSlope', 'entered'),
  }
  test.each(Object.keys(forms))('%s', (form) => {
    const plan = forms[form]!
    const { numbers, geometry } = computed(plan, {
      x: brace(beyond(330, -60), beyond(200, 80)),
      upper: brace(beyond(430, -60), beyond(430, 60)),
      astride: brace(beyond(450, -40), beyond(380, 60)),
      low: brace(beyond(120, -60), beyond(140, 60), { plate: 'back' }),
      along: brace(here(60, 20), here(420, -30), { plate: 'back' }),
    })
    const march = marchSolids(plan, geometry.lengthMm, geometry.halfWidthAtMm(plan.top.flatFromMm))
    let kinked = 0
    numbers.braces.forEach((row) => {
      const stands = (share: number) => {
        const x = row.fromXMm + share * (row.toXMm - row.fromXMm)
        const y = row.fromAcrossMm + share * (row.toAcrossMm - row.fromAcrossMm)
        return row.plate === 'top' ? march.topMm(x, y) : -march.backMm(x, y)
      }
      const rows = numbers.braceArch.filter(({ number }) => number === row.number)
      expect(rows).toHaveLength(9)
      rows.forEach(({ riseMm, alongMm }, i) => {
        const share = i / 8
        expectWithin(alongMm, share * row.lengthMm, 1e-9)
        expectWithin(riseMm, stands(share) - stands(0) * (1 - share) - stands(1) * share, 1e-6, `${row.id} ${i}`)
      })
      const rises = rows.map(({ riseMm }) => riseMm)
      const [most, least] = [Math.max(...rises), Math.min(...rises)]
      expect(row.archRiseMm).toBe(Math.abs(most) >= Math.abs(least) ? most : least)
      expectWithin(row.blankHeightMm, 16 + most - least + plan.bracing.blankHeightMm, 1e-9)
      // The circle through three places in the upright plane of the brace, by its middle; how far off it each eighth stands.
      const place = (share: number) => ({ u: share * row.lengthMm, v: stands(share) })
      const [a, b, c] = [place(0), place(0.5), place(1)]
      const twice = 2 * ((b.u - a.u) * (c.v - a.v) - (c.u - a.u) * (b.v - a.v))
      const square = (p: typeof a) => (p.u - a.u) ** 2 + (p.v - a.v) ** 2
      const middle = {
        u: a.u + (square(b) * (c.v - a.v) - square(c) * (b.v - a.v)) / twice,
        v: a.v + (square(c) * (b.u - a.u) - square(b) * (c.u - a.u)) / twice,
      }
      const radius = Math.hypot(a.u - middle.u, a.v - middle.v)
      const offMm = Math.max(
        ...rises.map((_, i) => {
          const { u, v } = place(i / 8)
          const chordMm = v - a.v - ((c.v - a.v) * u) / c.u
          return Math.abs(twice) < 1e-6 ? Math.abs(chordMm) : Math.abs(Math.hypot(u - middle.u, v - middle.v) - radius)
        }),
      )
      if (row.undersideRadiusMm !== 'none') expect(offMm).toBeLessThan(0.051)
      else {
        expect(offMm).toBeGreaterThan(0.049)
        kinked += 1
      }
    })
    expect(kinked > 0).toBe(form === 'planed')
  })

  test('an arch of its own springs by what it rises more than the dome', () => {
    const plan = forms['sphere']!
    const ends = [here(250, -140), here(250, 140)] as const
    const row = computed(plan, { a: brace(...ends, { underside: 'own', archRadiusMm: 6000 }) }).numbers.braces[0]!
    const rise = (R: number) => R - Math.sqrt(R * R - 140 * 140)
    // Over the middle of the body, 2 mm from it, the dish is cut by a circle of all but its own radius.
    const dish = Math.sqrt(plan.top.radiusMm ** 2 - 2 * 2)
    expectWithin(row.springMm, rise(6000) - rise(dish), 1e-8)
    expect(computed(plan, { a: brace(...ends) }).numbers.braces[0]!.springMm).toBe('none')
  })
})

describe('heights', () => {
  const tapered = brace(
    end({ taper: 'straight', taperMm: 40, endHeightMm: 2 }),
    end({ taper: 'scoop', taperMm: 60, endHeightMm: 4 }),
    { heightMm: 14 },
  )

  test('a straight taper is a ramp', () => {
    for (const [u, high] of [
      [0, 2],
      [10, 5],
      [20, 8],
      [40, 14],
      [100, 14],
    ] as const)
      expectWithin(braceHeightMm(tapered, 300, u), high, 1e-12)
  })

  test('a scoop leaves the thin end level, is hollow, and comes to the ridge with an edge', () => {
    const at = (u: number) => braceHeightMm(tapered, 300, 300 - u)
    expectWithin(at(0), 4, 1e-12)
    expectWithin(at(60), 14, 1e-12)
    expect((at(0.01) - at(0)) / 0.01).toBeLessThan(1e-3)
    // Level at the end: the whole slope, twice the mean, stands at the ridge.
    expectWithin((at(60) - at(59.999)) / 0.001, (2 * 10) / 60, 1e-4)
    for (let u = 1; u < 60; u++) expect(at(u)).toBeLessThan((at(u - 1) + at(u + 1)) / 2)
    // Simpson's rule is exact for a parabola: a third of the rise on the mean.
    expectWithin((at(0) + 4 * at(30) + at(60)) / 6, 4 + 10 / 3, 1e-9)
  })

  test('tapers that overlap leave the lower of both; an end taller than the brace is no taller', () => {
    expectWithin(braceHeightMm(tapered, 50, 0), Math.min(2, 4 + (10 * 50 * 50) / 3600), 1e-12)
    const tall = brace(end({ taper: 'straight', taperMm: 30, endHeightMm: 40 }), end(), { heightMm: 10 })
    expect(braceHeightMm(tall, 200, 0)).toBe(10)
    const none = brace(end({ taper: 'scoop', taperMm: 0, endHeightMm: 1 }), end(), { heightMm: 10 })
    expect(braceHeightMm(none, 200, 0)).toBe(10)
    expect(braceHeightMm(none, 0, -0)).toBe(10)
  })

  test('stand in the rows, eighth by eighth', () => {
    const one = placed({
      ...tapered,
      from: { ...tapered.from, yMm: -80, xMm: 800 },
      to: { ...tapered.to, yMm: 80, xMm: 800 },
    })
    const rows = braceArchRows(one, braceFace(one, flat), 7)
    expect(rows.map(({ number }) => number)).toEqual(Array.from({ length: 9 }, () => 7))
    // 160 long, every 20: 2, 8 and then 14; from the other end 4 + 10 (u / 60) squared.
    expect(rows.map(({ heightMm }) => Number(heightMm.toFixed(6)))).toEqual([
      2, 8, 14, 14, 14, 14, 8.444444, 5.111111, 4,
    ])
  })
})

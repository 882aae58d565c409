import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { NUMBER_KEYS, aboutNumber, type NumberKey } from '../../src/core/catalogue.ts'
import { rimRowAt } from '../../src/core/instrument/rim.ts'
import { readNumbers } from '../../src/core/numbers.ts'
import type { Plan } from '../../src/core/plan.ts'
import { SMALL, STEEL_STRING } from '../generators/demoModels.ts'
import { BY_KEY_WIDTHS, NYLON_STRING } from '../generators/demoNylon.ts'
import { withField } from '../generators/plans.ts'
import { real } from '../generators/real.ts'
import { expectWithin } from './within.ts'

const MODELS = [STEEL_STRING, SMALL, { ...NYLON_STRING, plan: BY_KEY_WIDTHS }]

/** Pulls and masses of strings, what hangs on them, and ratios: none of these is a length of the plan. */
const OWN_MEASURE =
  /mass|tension|torque|stress|compensation|crownBehind|wedgePerMm|crownMoves|^neckSet\.changes|FootMm$/i

/** The plan with every length as many times as large. */
function scaled(plan: Plan, factor: number): Plan {
  const grow = (value: unknown, key: string): unknown => {
    if (typeof value === 'number') return key.endsWith('Mm') ? value * factor : value
    if (Array.isArray(value)) return value.map((one) => grow(one, key))
    if (typeof value === 'object' && value !== null)
      return Object.fromEntries(Object.entries(value).map(([name, inner]) => [name, grow(inner, name)]))
    return value
  }
  return grow(plan, '') as Plan
}

describe.each(MODELS)('$name', ({ plan: model }) => {
  const plan = withField(model, 'rim.stationStepMm', 10)

  test('twice as large: lengths twice, areas four times, angles the same', () => {
    fc.assert(
      fc.property(real(0.5, 1.9), (factor) => {
        const [one, other] = [compute(plan).numbers, compute(scaled(plan, factor)).numbers]
        // A contour is listed every 5 mm whatever its size, so that its rows do not correspond.
        // Forces and moduli do not grow with the lengths, so neither does the caul.
        for (const key of NUMBER_KEYS.filter((name) => !/contour\[\]|^caul/.test(name) && !OWN_MEASURE.test(name))) {
          const [before, after] = [readNumbers(one, key), readNumbers(other, key)]
          expect(after).toHaveLength(before.length)
          const power = {
            angle: 0,
            count: 0,
            force: 0,
            stress: 0,
            torque: 0,
            frequency: 0,
            linearMass: 0,
            ratio: 0,
            interval: 0,
            resonance: -1,
            volume: 3,
            area: 2,
            bodyLength: 1,
            domeRadius: 1,
            thickness: 1,
            fineLength: 1,
            across: 1,
          }[aboutNumber(key).quantity]
          before.forEach((value, i) => {
            if (typeof value !== 'number') expect(after[i]).toBe(value)
            else {
              // A place of something widest or highest is found to fewer digits than its height.
              const tolerance = /AtMm$|Gap|contour/.test(key) ? 2e-4 : 1e-6
              expectWithin(after[i], value * factor ** power, tolerance * factor ** power, key)
            }
          })
        }
      }),
      { numRuns: 12, seed: 3 },
    )
  })

  test('without taper a spherical back stands over the middle, and both ends slope alike', () => {
    const even = withField(
      withField(withField(plan, 'rim.depthAtTailMm', 96), 'rim.depthAtNeckMm', 96),
      'back.form',
      'sphere',
    )
    const { numbers } = compute(even)
    expectWithin(numbers.back.axisAtMm, numbers.body.lengthMm / 2, 1e-9)
    expectWithin(numbers.back.lowestAtMm, numbers.body.lengthMm / 2, 1e-3)
    expectWithin(numbers.rim[0]!.backBevelRad, numbers.rim.at(-1)!.backBevelRad, 1e-9)
  })

  test.each(['sphere', 'across'])('a back of the form %s and of a radius to infinity is a flat one', (form) => {
    const wide = compute(withField(withField(plan, 'back.form', form), 'back.radiusMm', 1e12)).numbers
    const flat = compute(withField(plan, 'back.form', 'flat')).numbers
    wide.rim.forEach((row, i) => {
      expectWithin(row.depthMm, flat.rim[i]!.depthMm, 1e-6)
      expectWithin(row.backBevelRad, flat.rim[i]!.backBevelRad, 1e-8)
    })
    expectWithin(wide.sides.blankWidthMm, flat.sides.blankWidthMm, 1e-6)
  })

  test('a top of a radius to infinity is a flat one', () => {
    const wide = compute(withField(withField(plan, 'top.form', 'sphere'), 'top.radiusMm', 1e12)).numbers
    const flat = compute(withField(plan, 'top.form', 'flat')).numbers
    wide.rim.forEach((row, i) => expectWithin(row.depthMm, flat.rim[i]!.depthMm, 1e-6))
  })

  test('a deeper rim is deeper everywhere by as much', () => {
    fc.assert(
      fc.property(real(1, 40), (more) => {
        const deeper = withField(
          withField(plan, 'rim.depthAtTailMm', plan.rim.depthAtTailMm + more),
          'rim.depthAtNeckMm',
          plan.rim.depthAtNeckMm + more,
        )
        const [a, b] = [compute(plan).numbers, compute(deeper).numbers]
        a.rim.forEach((row, i) => expectWithin(b.rim[i]!.depthMm, row.depthMm + more, 1e-9))
      }),
      { numRuns: 10, seed: 4 },
    )
  })
})

describe.each([STEEL_STRING, SMALL])('$name, turned end for end', ({ plan: model }) => {
  const spherical = withField(withField(model, 'top.form', 'sphere'), 'back.form', 'sphere')
  const turned: Plan = {
    ...spherical,
    outline: { ...spherical.outline, pieces: spherical.outline.pieces.toReversed() },
    rim: {
      ...spherical.rim,
      depthAtTailMm: spherical.rim.depthAtNeckMm,
      depthAtNeckMm: spherical.rim.depthAtTailMm,
    },
  }
  const [a, b] = [compute(spherical), compute(turned)]

  test.each(['body.halfLengthMm', 'body.areaMm2', 'sides.flatLengthMm', 'sides.deepestInsideMm'] satisfies NumberKey[])(
    '%s is the same',
    (key) => {
      const value = readNumbers(a.numbers, key)[0] as number
      expectWithin(readNumbers(b.numbers, key)[0], value, 1e-4 + 1e-8 * value)
    },
  )

  test('bouts change places', () => {
    expectWithin(b.numbers.body.lowerBoutMm, a.numbers.body.upperBoutMm as number, 1e-5)
    expectWithin(b.numbers.body.waistAtMm, a.numbers.body.lengthMm - (a.numbers.body.waistAtMm as number), 1e-4)
  })

  test('every depth and bevel is found again from the other end', () => {
    const whole = a.numbers.body.halfLengthMm
    for (let i = 0; i <= 24; i++) {
      const [here, there] = [
        rimRowAt(a.geometry.rimSite, (whole * i) / 24),
        rimRowAt(b.geometry.rimSite, whole - (whole * i) / 24),
      ]
      expectWithin(there.depthMm, here.depthMm, 1e-5)
      expectWithin(there.backBevelRad, here.backBevelRad, 1e-6)
      expectWithin(there.topBevelRad, here.topBevelRad, 1e-6)
    }
  })
})

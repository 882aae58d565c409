import { describe, expect, test } from 'vitest'
import { caulBump } from '../../../src/core/instrument/caul.ts'
import { NYLON_STRING } from '../../generators/demoNylon.ts'
import { SMALL, STEEL_STRING } from '../../generators/demoModels.ts'
import { expectWithin } from '../within.ts'

/**
 * The deflection in the middle by another way: the bending moment is added up along the beam into slope and deflection, and the slope at
 * the first end chosen so that the other end lies level with it. The second moment of area is added up layer by layer too.
 */
function bendStepwise(caul: { spanMm: number; widthMm: number; heightMm: number; modulusGPa: number; forceN: number }) {
  const { spanMm, widthMm, heightMm, modulusGPa, forceN } = caul
  const layers = 4000
  let secondMoment = 0
  for (let i = 0; i < layers; i++) {
    const fromMiddle = ((i + 0.5) / layers - 0.5) * heightMm
    secondMoment += widthMm * (heightMm / layers) * fromMiddle * fromMiddle
  }
  const steps = 40000
  const h = spanMm / steps
  const moment = (x: number) => (forceN / 2) * Math.min(x, spanMm - x)
  let slope = 0
  const deflection = [0]
  for (let i = 0; i < steps; i++) {
    const bend = moment((i + 0.5) * h) / (modulusGPa * 1000 * secondMoment)
    deflection.push(deflection[i]! + h * (slope + (h * bend) / 2))
    slope += h * bend
  }
  const tilt = deflection[steps]! / spanMm
  const middleMm = (tilt * spanMm) / 2 - deflection[steps / 2]!
  return { middleMm, fibreMPa: (moment(spanMm / 2) * (heightMm / 2)) / secondMoment }
}

const cauls = [STEEL_STRING, NYLON_STRING, SMALL].map(({ plan }) => plan.caul)

describe('a springy caul', () => {
  test.each([...cauls, { spanMm: 400, widthMm: 40, heightMm: 30, modulusGPa: 13.5, forceN: 900 }])(
    'bends as its moments add up: %j',
    (caul) => {
      const { bumpMm, clampForceN, stressMPa } = caulBump(caul)
      const { middleMm, fibreMPa } = bendStepwise(caul)
      expectWithin(bumpMm, middleMm, bumpMm * 1e-6)
      expectWithin(stressMPa, fibreMPa, stressMPa * 1e-6)
      expectWithin(2 * clampForceN, caul.forceN, 1e-12)
    },
  )

  test('by hand: 1000 N on 480 mm of 20 x 30, 10 GPa, bumps 5.12 mm and strains to 40 MPa', () => {
    const { bumpMm, stressMPa } = caulBump({ spanMm: 480, widthMm: 20, heightMm: 30, modulusGPa: 10, forceN: 1000 })
    expectWithin(bumpMm, 5.12, 1e-12)
    expectWithin(stressMPa, 40, 1e-12)
  })

  test('no measure makes it infinite', () => {
    const numbers = caulBump({ spanMm: 0, widthMm: 0, heightMm: 0, modulusGPa: 0, forceN: 0 })
    expect(Object.values(numbers).every(Number.isFinite)).toBe(true)
  })
})

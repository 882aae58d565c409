import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { cents, rigidHz, soundMPerS } from '../../../src/core/instrument/airResonance.ts'
import { real } from '../../generators/real.ts'
import { readTable } from '../../tables/readTable.ts'
import { expectWithin } from '../within.ts'

describe('a rigid box with a round hole', () => {
  const rows = readTable('helmholtz.csv').map((row) =>
    ['V_m3', 'hole_radius_m', 'plate_t_m', 'temp_C', 'f_16/(3pi)r'].map(row.number),
  )
  test.each(rows)('%d m3, radius %d m, edge %d m at %d degrees sounds %d Hz', (...row) => {
    const [volume = 0, radius = 0, edge = 0, temperatureC = 0, hz = 0] = row
    const site = {
      volumeMm3: volume * 1e9,
      holeMm2: Math.PI * (radius * 1000) ** 2,
      edgeMm: edge * 1000,
      temperatureC,
    }
    expectWithin(rigidHz(site), hz, 0.001)
  })
})

test('sound runs 331.3 m/s at freezing point, 343.2 at 20 degrees', () => {
  expectWithin(soundMPerS(0), 331.3, 1e-12)
  // ISO 9613-1:1993 gives 343.2 m/s as the reference at 20 degrees.
  expectWithin(soundMPerS(20), 343.2, 0.05)
})

test('of a thin edge: an octave up for a quarter of the air, down for a quarter of the radius', () => {
  fc.assert(
    fc.property(real(1e6, 2e7), real(15, 60), real(0, 35), (volumeMm3, radius, temperatureC) => {
      const at = (part: number, hole: number) =>
        rigidHz({ volumeMm3: volumeMm3 * part, holeMm2: Math.PI * (radius * hole) ** 2, edgeMm: 0, temperatureC })!
      expectWithin(cents(at(0.25, 1), at(1, 1)), 1200, 1e-9)
      expectWithin(cents(at(1, 0.25), at(1, 1)), -1200, 1e-9)
    }),
  )
})

test('without air or without a hole there is none', () => {
  const site = { volumeMm3: 1e7, holeMm2: 7800, edgeMm: 3, temperatureC: 20 }
  expect(rigidHz(site)).not.toBeNull()
  for (const none of [0, -1]) {
    expect(rigidHz({ ...site, volumeMm3: none })).toBeNull()
    expect(rigidHz({ ...site, holeMm2: none })).toBeNull()
  }
})

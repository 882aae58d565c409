import { createRequire } from 'node:module'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  coreOf,
  MATERIALS,
  massGPerM,
  noteHz,
  stressMPa,
  tensionN,
} from '../../../../src/core/instrument/neck/tension.ts'
import { STRING_MATERIALS, type StringPlan } from '../../../../src/core/neckPlan.ts'
import { STEEL_NECK } from '../../../generators/demoNecks.ts'
import { real } from '../../../generators/real.ts'
import { readTable } from '../../../tables/readTable.ts'
import { expectWithin } from '../../within.ts'

const require = createRequire(import.meta.url)
/** A music library of its own; it brings no types. */
const teoria = require('teoria') as {
  readonly note: { fromMIDI(note: number): { fq(pitchHz?: number): number } }
}

const plainSteel = (diameterMm: number): StringPlan => ({
  material: 'steel',
  diameterMm,
  coreMm: null,
  massGPerM: null,
  note: 64,
  pairedWithNext: false,
})

describe('frequency of a note', () => {
  test.each(readTable('equal_temperament.csv').map((row) => [row.text('note'), row] as const))('%s', (_, row) => {
    expectWithin(noteHz(row.number('midi'), 440), row.number('freq_Hz_A440'), 5.1e-7)
  })

  test('over the whole keyboard and beyond, and at other pitches, as a music library has it', () => {
    for (let note = 12; note <= 120; note++)
      for (const pitchHz of [380, 415, 432, 440, 442, 470]) {
        const theirs = teoria.note.fromMIDI(note).fq(pitchHz)
        expectWithin(noteHz(note, pitchHz) / theirs, 1, 1e-12, `note ${note} at ${pitchHz}`)
      }
  })

  test('the pitch is that of note 69; twelve steps double it', () => {
    expect(noteHz(69, 432)).toBe(432)
    for (let note = 20; note < 100; note++) expectWithin(noteHz(note + 12, 440) / noteHz(note, 440), 2, 1e-12)
  })
})

describe('plain steel strings, by the table', () => {
  const rows = readTable('plain_steel_strings.csv')
  test.each(rows.map((row) => [row.text('dia_in'), row.text('length_m'), row] as const))(
    '%s in, %s m',
    (_, __, row) => {
      const diameterMm = row.number('dia_mm')
      const mass = Number(massGPerM(plainSteel(diameterMm)))
      expectWithin(mass / 1000, row.number('mu_kg_m'), 5.1e-10, 'mass')
      const pull = tensionN(mass, row.number('length_m') * 1000, row.number('freq_Hz'))
      expectWithin(pull, row.number('tension_N'), 6e-5, 'pull')
      expectWithin(stressMPa(pull, diameterMm), row.number('stress_MPa'), 6e-3, 'stress')
    },
  )

  test('the table has its five rows', () => expect(rows).toHaveLength(5))
})

/** The 14-fret steel-string model, scale 645: worked out by a program of its own from the masses stated. */
const MODEL_PULLS_N = [112.8, 126.5, 131.3, 132.3, 103.3, 103.6]

describe('the steel-string model', () => {
  const pulls = STEEL_NECK.strings.set.map((string) =>
    tensionN(Number(massGPerM(string)), 645, noteHz(string.note, 440)),
  )
  test('pulls of its strings, the plain ones by diameter', () => {
    for (const [i, pull] of pulls.entries()) expectWithin(pull, MODEL_PULLS_N[i]!, 0.051, `string ${i}`)
  })

  test('together about 710 N', () => {
    const together = pulls.reduce((sum, pull) => sum + pull, 0)
    expectWithin(together, 710, 0.5)
  })
})

test('a wave runs along the string and back once in a period', () => {
  fc.assert(
    fc.property(real(0.1, 20), real(300, 800), real(40, 700), (mass, scaleMm, hz) => {
      const speedMPerS = Math.sqrt(tensionN(mass, scaleMm, hz) / (mass / 1000))
      expectWithin(((2 * scaleMm) / 1000 / speedMPerS) * hz, 1, 1e-12)
    }),
    { seed: 8 },
  )
})

test('a kilogram hung on a square millimetre: 9.80665 MPa', () => {
  expectWithin(stressMPa(9.80665, Math.sqrt(4 / Math.PI)), 9.80665, 1e-12)
})

describe('mass and core', () => {
  test.each(STRING_MATERIALS)('%s', (material) => {
    const isWound = material.startsWith('wound')
    const string: StringPlan = { ...plainSteel(0.8), material }
    expect(massGPerM({ ...string, massGPerM: 3.21 })).toBe(3.21)
    expect(coreOf({ ...string, coreMm: 0.33 })).toBe(isWound ? 0.33 : 0.8)
    expect(coreOf(string)).toBe(isWound ? 'none' : 0.8)
    const { densityKgPerM3, modulusGPa } = MATERIALS[material]
    expect(modulusGPa).toBeGreaterThan(0)
    if (isWound) expect(massGPerM(string)).toBe('none')
    // A metre of it is a cylinder of 1000 mm: its volume in mm3 times the density in g/mm3.
    else expectWithin(massGPerM(string), Math.PI * 0.4 ** 2 * 1000 * (densityKgPerM3! * 1e-6), 1e-12)
  })

  test('a wound string has the modulus of its core', () => {
    expect(MATERIALS.woundOnSteel.modulusGPa).toBe(MATERIALS.steel.modulusGPa)
    expect(MATERIALS.woundOnNylon.modulusGPa).toBe(MATERIALS.nylon.modulusGPa)
  })
})

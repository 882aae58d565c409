import { describe, expect, it } from 'vitest'
import { NUMBER_KEYS } from '../../src/core/catalogue.ts'
import { compute } from '../../src/core/compute.ts'
import { keptName, readKeptName, withKept } from '../../src/core/keptNumbers.ts'
import { readNumbers } from '../../src/core/numbers.ts'
import { NYLON_STRING } from '../generators/demoNylon.ts'
import { withField } from '../generators/plans.ts'

const { plan } = NYLON_STRING
const then = compute(plan).numbers
const kept = Object.fromEntries(
  NUMBER_KEYS.flatMap((key) => readNumbers(then, key).map((value, row) => [keptName(key, row), value])),
)

describe('numbers that were kept', () => {
  it('have names that lead back to their number and row', () => {
    for (const key of NUMBER_KEYS)
      expect(readKeptName(keptName(key, 17))).toEqual({ key, row: key.includes('[]') ? 17 : 0 })
    expect(readKeptName('sides.colour')).toBeNull()
    expect(readKeptName('rim[2].place')).toBeNull()
  })

  it('stand in the place of all that was worked out, row by row', () => {
    const now = compute(withField(withField(plan, 'rim.depthAtTailMm', 91), 'rim.sideThicknessMm', 1.7)).numbers
    const shown = withKept(now, kept)
    for (const key of NUMBER_KEYS) expect(readNumbers(shown, key), key).toEqual(readNumbers(then, key))
    expect(now).toEqual(
      compute(withField(withField(plan, 'rim.depthAtTailMm', 91), 'rim.sideThicknessMm', 1.7)).numbers,
    )
  })

  it('change nothing where their row is gone, and no text', () => {
    expect(withKept(then, { 'rim[900].depthMm': 1, 'places[0].place': 2, '__proto__.x': 3, 'frets[0].y': 4 })).toBe(
      then,
    )
    expect(withKept(then, { 'rim[3].depthMm': 7 }).rim[3]?.depthMm).toBe(7)
    expect(withKept(then, { 'rim[3].depthMm': 7 }).rim[2]).toBe(then.rim[2])
  })
})

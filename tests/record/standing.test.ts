import { expect, test } from 'vitest'
import { aboutNumber, NUMBER_KEYS } from '../../src/core/catalogue.ts'
import { standingOf } from '../../src/record/standing.ts'

const ENTERED = { bridge: { compensation: 'entered' } } as const
const ESTIMATED = { bridge: { compensation: 'estimated' } } as const

test('with an estimated compensation every number stands as the catalogue has it', () => {
  for (const key of NUMBER_KEYS) expect(standingOf(key, ESTIMATED), key).toBe(aboutNumber(key).standing)
})

test('with an entered one the places of saddle and bridge are as sure as what was entered', () => {
  for (const key of [
    'bridge.compensationBassMm',
    'bridge.twelfthToTrebleMm',
    'bridge.jointToFrontMm',
    'pins[].atMm',
  ] as const) {
    expect(aboutNumber(key).standing).toBe('estimate')
    expect(standingOf(key, ENTERED), key).toBe('exact')
  }
})

test('what each string wants stays an estimate, and so does what has nothing to do with the saddle', () => {
  for (const key of ['strings[].compensationMm', 'strings[].crownBehindLineMm', 'caul.bumpMm'] as const)
    expect(standingOf(key, ENTERED), key).toBe('estimate')
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { equivalentRadiusMm, freeHoleMm2 } from '../../../src/core/instrument/freeHole.ts'
import { real } from '../../generators/real.ts'
import { expectWithin } from '../within.ts'

const board = (fromCentreMm: number, widthMm: number, taper = 0) => ({ fromCentreMm, halfWidthMm: widthMm / 2, taper })

describe('a hole of 50', () => {
  const whole = Math.PI * 2500

  test('is free where the board ends at its edge or before', () => {
    expectWithin(freeHoleMm2(50, board(50, 57)), whole, 1e-9)
    expectWithin(freeHoleMm2(50, board(70, 57)), whole, 1e-9)
  })
  test('under a board wider than its chord loses a segment', () => {
    // 30-40-50: a chord 40 from the centre is 60 long.
    expectWithin(freeHoleMm2(50, board(40, 64)), whole - (2500 * Math.acos(0.8) - 40 * 30), 1e-9)
  })
  test('under a narrow board loses a strip with a rounded end', () => {
    // From the chord 0 to the edge, 60 wide: a rectangle of 60 x 40 and the segment beyond a chord 40 from the centre.
    expectWithin(freeHoleMm2(50, board(0, 60)), whole - (60 * 40 + 2500 * Math.acos(0.8) - 40 * 30), 1e-9)
  })
  test('under a board that goes right across is closed', () => {
    expect(freeHoleMm2(50, board(-50, 100))).toBe(0)
    expect(freeHoleMm2(50, board(-60, 140, 0.01))).toBe(0)
  })
})

test('no hole has no area, a board of no width covers none', () => {
  expect(freeHoleMm2(0, board(-10, 50))).toBe(0)
  expect(freeHoleMm2(-3, board(-10, 50))).toBe(0)
  expectWithin(freeHoleMm2(50, board(0, 0)), Math.PI * 2500, 1e-9)
})

test('the round hole of the same area', () => {
  expectWithin(equivalentRadiusMm(Math.PI * 2500), 50, 1e-12)
  expect(equivalentRadiusMm(0)).toBe(0)
})

test('any hole and board, against the free lengths of lines across the hole', () => {
  fc.assert(
    fc.property(
      real(20, 60),
      real(-70, 70),
      real(10, 120),
      real(-0.05, 0.05),
      (radius, fromCentreMm, widthMm, taper) => {
        const lines = 4000
        let area = 0
        for (let i = 0; i < lines; i++) {
          const x = -radius + (2 * radius * (i + 0.5)) / lines
          const halfHole = Math.sqrt(radius * radius - x * x)
          const halfBoard = x < fromCentreMm ? 0 : Math.max(widthMm / 2 - taper * (x - fromCentreMm), 0)
          area += (2 * Math.max(halfHole - halfBoard, 0) * 2 * radius) / lines
        }
        expectWithin(freeHoleMm2(radius, board(fromCentreMm, widthMm, taper)), area, 4)
      },
    ),
    { numRuns: 300, seed: 3 },
  )
})

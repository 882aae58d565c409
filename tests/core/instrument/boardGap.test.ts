import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { boardGap } from '../../../src/core/instrument/boardGap.ts'
import { real } from '../../generators/real.ts'
import { expectWithin } from '../within.ts'

/** A face that is an arc of a circle, from its centre: R - sqrt(R^2 - y^2). */
const arcFace = (radiusMm: number, halfMm: number, count = 400) =>
  Array.from({ length: count + 1 }, (_, i) => {
    const acrossMm = (halfMm * i) / count
    return { acrossMm, fallsBackMm: radiusMm - Math.sqrt(radiusMm * radiusMm - acrossMm * acrossMm) }
  })

/** The largest gap found by pushing: the board comes nearer by halves until it would cross the face at any place. */
function pushedGapMm(face: readonly { acrossMm: number; fallsBackMm: number }[], radiusMm: number): number {
  const boardMm = (y: number) => radiusMm - Math.sqrt(radiusMm * radiusMm - y * y)
  const gapsAt = (awayMm: number) => face.map((row) => awayMm + row.fallsBackMm - boardMm(row.acrossMm))
  let near = -100
  let far = 100
  for (let count = 0; count < 80; count++) {
    const middle = (near + far) / 2
    if (gapsAt(middle).some((gap) => gap < 0)) near = middle
    else far = middle
  }
  return Math.max(...gapsAt(far))
}

describe('a contour board on the face of a block', () => {
  test('a flat board against radius 1000 over 80 mm opens 0.800 at the ends', () => {
    const { gapMm, opens } = boardGap(arcFace(1000, 40), 'flat')
    expectWithin(gapMm, 0.8003, 0.0001)
    expect(opens).toBe('ends')
  })

  test('a board rounder than the face opens in the middle, by the difference of the rises', () => {
    // 39 over radius 65: 65 - 52 = 13; over radius 1521/2 + 1/2 = 761: 1. Both exact.
    const { gapMm, opens } = boardGap(arcFace(761, 39), 65)
    expectWithin(gapMm, 12, 1e-9)
    expect(opens).toBe('middle')
  })

  test('its own radius closes everywhere, a hollow board on a hollow face too', () => {
    expect(boardGap(arcFace(600, 40), 600)).toMatchObject({ opens: 'nowhere' })
    const hollow = arcFace(600, 40).map((row) => ({ ...row, fallsBackMm: -row.fallsBackMm }))
    expect(boardGap(hollow, -600).opens).toBe('nowhere')
    expectWithin(boardGap(hollow, 600).gapMm, 2 * (600 - Math.sqrt(600 ** 2 - 40 ** 2)), 1e-9)
  })

  test('a face hollowed between middle and ends opens there', () => {
    const face = Array.from({ length: 81 }, (_, i) => ({
      acrossMm: i / 2,
      fallsBackMm: 0.5 * Math.sin((Math.PI * i) / 80),
    }))
    expect(boardGap(face, 'flat').opens).toBe('between')
    expectWithin(boardGap(face, 'flat').gapMm, 0.5, 1e-12)
    expectWithin(boardGap(face, 4000).gapMm, pushedGapMm(face, 4000), 1e-9)
  })

  test('pushing by halves finds the same gap for any face and board', () => {
    fc.assert(
      fc.property(real(60, 3000), real(60, 3000), real(-1, 1), (faceMm, boardMm, ripple) => {
        const face = arcFace(faceMm, 40, 80).map(({ acrossMm, fallsBackMm }) => ({
          acrossMm,
          fallsBackMm: fallsBackMm + ripple * (1 - Math.cos(acrossMm / 6)),
        }))
        expectWithin(boardGap(face, boardMm).gapMm, pushedGapMm(face, boardMm), 1e-9)
      }),
      { numRuns: 60 },
    )
  })

  test('a board too tight to reach the ends and an empty face still give numbers', () => {
    expect(Number.isFinite(boardGap(arcFace(1000, 40), 20).gapMm)).toBe(true)
    expect(boardGap([], 20)).toEqual({ gapMm: 0, opens: 'nowhere' })
  })
})

import { describe, expect, test } from 'vitest'
import { closeChain } from '../../../src/core/instrument/compassArcs.ts'
import type { OutlinePiece } from '../../../src/core/plan.ts'
import { SMALL, STEEL_STRING } from '../../generators/demoModels.ts'
import { expectWithin } from '../within.ts'

/** Opens one value of one piece: 'r' a radius, 's' a sweep, 'l' the length of a straight. */
function open(pieces: readonly OutlinePiece[], which: readonly string[]): OutlinePiece[] {
  return pieces.map((piece, i): OutlinePiece => {
    if (piece.kind === 'straight') return which.includes(`l${i}`) ? { ...piece, lengthMm: null } : piece
    return {
      ...piece,
      radiusMm: which.includes(`r${i}`) ? null : piece.radiusMm,
      sweepDeg: which.includes(`s${i}`) ? null : piece.sweepDeg,
    }
  })
}

/** The first chain closed to the last digit, so that what is opened can come back to more places than a drawing has. */
function closedExactly(pieces: readonly OutlinePiece[], lengthMm: number, closing: readonly string[]): OutlinePiece[] {
  const solved = closeChain(open(pieces, closing), lengthMm)
  return pieces.map((piece, i): OutlinePiece => {
    const found = solved.pieces[i]!
    if (piece.kind === 'straight') return { ...piece, lengthMm: found.lengthMm }
    return { ...piece, radiusMm: Math.abs(found.radiusMm as number), sweepDeg: (found.sweepRad * 180) / Math.PI }
  })
}

const CLOSING = ['s2', 's4', 's7']

describe.each([STEEL_STRING, SMALL])('$name', ({ plan }) => {
  const { pieces, lengthMm } = plan.outline

  test('closes as published with the model', () => {
    const { closure, openCount } = closeChain(pieces, lengthMm)
    expect(openCount).toBe(0)
    expectWithin(closure.alongMm, 0, 1e-5)
    expectWithin(closure.acrossMm, 0, 1e-5)
    expectWithin(closure.cornerRad, 0, 1e-7)
  })

  const exact = closedExactly(pieces, lengthMm!, CLOSING)
  const opened = [
    ['l9'],
    ['r1'],
    ['s4'],
    ['r4'],
    ['l3', 's7'],
    ['s2', 's4'],
    ['r6', 'r7'],
    ['r1', 's8'],
    ['s2', 's4', 's7'],
    ['l3', 'l5', 's1'],
    ['s1', 's4', 'l9'],
    ['r0', 's4', 's7'],
  ]
  test.each(opened.map((which) => [which]))('%j left open come back', (which) => {
    const found = closeChain(open(exact, which), lengthMm)
    expect(found.openCount).toBe(which.length)
    expectWithin(Math.hypot(found.closure.alongMm, found.closure.acrossMm), 0, 1e-7)
    expectWithin(found.closure.cornerRad, 0, 1e-9)
    exact.forEach((piece, i) => {
      const solved = found.pieces[i]!
      if (piece.kind === 'straight') expectWithin(solved.lengthMm, piece.lengthMm!, 1e-6, `length ${i}`)
      else {
        const radius = solved.radiusMm as number
        // A radius as wide as the tail's hardly moves the end of the chain: it is known to fewer digits.
        expectWithin(Math.abs(radius), piece.radiusMm!, Math.max(1e-6, 1e-8 * piece.radiusMm! ** 1.5), `radius ${i}`)
        expectWithin((solved.sweepRad * 180) / Math.PI, piece.sweepDeg!, 1e-6, `sweep ${i}`)
      }
    })
  })

  test('without a length of its own the chain gives it', () => {
    const found = closeChain(open(exact, ['s4', 's7']), null)
    expectWithin(found.half.places.at(-1)!.point.x, lengthMm!, 1e-6)
    expect(found.closure.alongMm).toBe(0)
  })
})

test('more than three open are not solved, and are counted', () => {
  const found = closeChain(open(STEEL_STRING.plan.outline.pieces, ['r1', 's1', 'r2', 's2']), 496)
  expect(found.openCount).toBe(4)
  expect(found.pieces.every(({ lengthMm }) => Number.isFinite(lengthMm))).toBe(true)
})

test('what cannot close keeps what is missing, as lengths and an angle', () => {
  // A quarter circle ends one radius off the centreline, heading along it.
  const { closure } = closeChain([{ kind: 'arc', bend: 'convex', radiusMm: 100, sweepDeg: 90 }], 150)
  expectWithin(closure.alongMm, -50, 1e-10)
  expectWithin(closure.acrossMm, 100, 1e-10)
  expectWithin(closure.cornerRad, Math.PI / 2, 1e-10)
})

test('one open chain gives one outline, however often it is asked', () => {
  const pieces = open(STEEL_STRING.plan.outline.pieces, ['r1', 'r4', 'r7'])
  expect(closeChain(pieces, 496)).toEqual(closeChain(structuredClone(pieces), 496))
})

import { describe, expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import type { Plan } from '../../src/core/plan.ts'
import { STEEL } from '../papers/samplePlans.ts'

const codes = (plan: Plan) => compute(plan).findings.map(({ code }) => code)

describe('the board over the hole', () => {
  const withBoard = (overBodyMm: number): Plan => {
    // As far over the body as asked: what stands beyond the last fret makes up for it.
    const more = overBodyMm - compute(STEEL).numbers.board.overBodyMm
    return { ...STEEL, board: { ...STEEL.board, endBeyondLastFretMm: STEEL.board.endBeyondLastFretMm + more } }
  }

  test('may just reach its edge', () => {
    expect(codes(STEEL)).not.toContain('boardCoversHole')
  })

  test('is said when it stands well inside, and by how much', () => {
    // L 496, hole of 50 at 356: a board 120 over the body ends at 376, 20 from the centre, 30 inside the edge.
    const finding = compute(withBoard(120)).findings.find(({ code }) => code === 'boardCoversHole')
    expect(finding?.values['overHoleMm']).toBeCloseTo(30, 9)
    expect(finding?.weight).toBe('care')
  })
})

test('too many open values are said once, without a corner that nobody drew', () => {
  const pieces = STEEL.outline.pieces.map((piece, i) =>
    piece.kind === 'arc' && i < 4 ? { ...piece, radiusMm: null, sweepDeg: null } : piece,
  )
  const found = codes({ ...STEEL, outline: { ...STEEL.outline, pieces } })
  expect(found).toContain('outlineTooManyOpen')
  expect(found).not.toContain('outlineHasCorner')
})

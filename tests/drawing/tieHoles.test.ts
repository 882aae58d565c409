import { describe, expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import type { Plan } from '../../src/core/plan.ts'
import type { Drawing, PathCommand } from '../../src/drawing/drawing.ts'
import { bracingPlan } from '../../src/drawing/template/bracingPlan.ts'
import { NYLON_STRING } from '../generators/demoNylon.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { withField } from '../generators/plans.ts'
import { everyDrawing } from './everyDrawing.ts'

/** A pin is about 5 thick; nothing else is round and as small. */
const PIN_RADIUS_MM = 2.5
const NAMES = ['plan', 'bridge', 'bridgeSection', 'bracingTop', 'bracingTemplate'] as const
const drawingsOf = (plan: Plan): Record<(typeof NAMES)[number], Drawing> => {
  const computed = compute(plan)
  return { ...everyDrawing(computed, 5, plan), bracingTemplate: bracingPlan(computed, plan, 'top') }
}
const pinCircles = ({ shapes }: Drawing): number =>
  shapes.filter(
    (shape) =>
      shape.kind === 'path' &&
      shape.commands.some((step) => step[0] === 'A' && Math.abs(step[1] - PIN_RADIUS_MM) < 0.5),
  ).length

interface Wall {
  readonly fromMm: number
  readonly toMm: number
  readonly yMm: number
}
const levelOf = ([start, end, ...more]: readonly PathCommand[]): Wall[] =>
  start?.[0] === 'M' && end?.[0] === 'L' && more.length === 0 && start[2] === end[2]
    ? [{ fromMm: Math.min(start[1], end[1]), toMm: Math.max(start[1], end[1]), yMm: start[2] }]
    : []
/** Dashed lines along the body, from bass to treble or from above. */
const wallsOf = ({ shapes }: Drawing): Wall[] =>
  shapes
    .flatMap((shape) => (shape.kind === 'path' && shape.role === 'hidden' ? levelOf(shape.commands) : []))
    .toSorted((a, b) => a.yMm - b.yMm)

describe('a bridge with pins', () => {
  const drawings = drawingsOf(STEEL_STRING.plan)

  test.each([
    ['bridge', 6],
    ['bracingTop', 6],
    ['bracingTemplate', 6],
    ['plan', 0],
    ['bridgeSection', 0],
  ] as const)('%s: %d round holes from above', (name, holes) => expect(pinCircles(drawings[name])).toBe(holes))

  test.each(['bridge', 'bridgeSection'] as const)('%s: no hole runs along the body', (name) =>
    expect(wallsOf(drawings[name])).toEqual([]),
  )
})

describe('a bridge strings are tied to', () => {
  const drawings = drawingsOf(NYLON_STRING.plan)

  test.each(NAMES)('%s: no round hole from above', (name) => expect(pinCircles(drawings[name])).toBe(0))

  test('from above two dashed lines for each string run through the block', () => {
    const walls = wallsOf(drawings.bridge)
    expect(walls).toHaveLength(12)
    const middles = Array.from({ length: 6 }, (_, i) => (walls[2 * i]!.yMm + walls[2 * i + 1]!.yMm) / 2)
    // Outer ones 58 apart; air between 1.09, 0.89, 0.74, 1.02, 0.82 and 0.72 thick: (58 - 4.375) / 5 = 10.725 each.
    for (const [i, acrossMm] of [-29, -17.285, -5.745, 5.86, 17.505, 29].entries())
      expect(middles[i]).toBeCloseTo(acrossMm, 9)
    // 28 wide: 6 in front of the crown and 12 behind it leave 10 for the hole, from the back edge on.
    const backMm = compute(NYLON_STRING.plan).numbers.bridge.backEdgeAtMm
    for (const { fromMm, toMm } of walls) {
      expect(fromMm).toBeCloseTo(backMm, 9)
      expect(toMm - fromMm).toBeCloseTo(10, 9)
    }
  })

  test('cut along, the hole lies 4 over the top, 22 to 12 behind the crown', () => {
    const walls = wallsOf(drawings.bridgeSection)
    expect(walls).toHaveLength(2)
    for (const { fromMm, toMm } of walls) {
      expect(fromMm).toBeCloseTo(-22, 9)
      expect(toMm).toBeCloseTo(-12, 9)
    }
    expect((walls[0]!.yMm + walls[1]!.yMm) / 2).toBeCloseTo(7.5 - 4, 9)
  })

  test.each([
    ['behind the back edge', 'bridge.holdsBehindMm', 23],
    ['over the block', 'bridge.tieHoleOverTopMm', 8],
  ] as const)('no hole is cut %s', (_where, field, valueMm) => {
    const off = drawingsOf(withField(NYLON_STRING.plan, field, valueMm))
    expect(wallsOf(off.bridgeSection)).toEqual([])
    expect(wallsOf(off.bridge)).toHaveLength(field === 'bridge.holdsBehindMm' ? 0 : 12)
  })
})

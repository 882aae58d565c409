import { describe, expect, test } from 'vitest'
import { traceChain } from '../../core/trace.ts'
import { STEEL_STRING } from '../../generators/demoModels.ts'
import { withField } from '../../generators/plans.ts'
import { withCutaway } from '../cutModels.ts'
import { cutLine, linesOf, nearestIn } from './cutLine.ts'
import { drawn } from './drawn.ts'

/** The steel model's half by centres and spokes. */
const TRACED = traceChain(STEEL_STRING.plan.outline.pieces, 0.01)

describe('contour boards', () => {
  const t = STEEL_STRING.plan.rim.sideThicknessMm
  /** The inner face: each dot of the traced half moved square to the way between its neighbours. */
  const inner = TRACED.slice(1, -1).map(({ x, y }, i) => {
    const [a, b] = [TRACED[i]!, TRACED[i + 2]!]
    const size = Math.hypot(b.x - a.x, b.y - a.y)
    return { x: x + (t * (b.y - a.y)) / size, y: y - (t * (b.x - a.x)) / size }
  })

  test.each([
    ['tail', 38, t],
    ['neck', 40, 496 - t],
  ] as const)('of the %s block follow the inner face across the block and 20 mm beyond', (end, halfMm, middleX) => {
    const points = cutLine(drawn(STEEL_STRING.plan, 'contourBoard', end))
    const off = nearestIn(inner)
    for (const { x, y } of points) expect(off({ x: x + middleX, y: Math.max(Math.abs(y), 0.01) })).toBeLessThan(0.02)
    expect(Math.min(...points.map(({ y }) => y))).toBeCloseTo(-halfMm - 20, 4)
    expect(Math.max(...points.map(({ y }) => y))).toBeCloseTo(halfMm + 20, 4)
  })

  test('are parted by one line from edge to edge, which falls back from the tail as the arc of its radius does', () => {
    const points = cutLine(drawn(STEEL_STRING.plan, 'contourBoard', 'tail'))
    const radiusMm = 950 - t
    for (const { x, y } of points) expect(x).toBeCloseTo(radiusMm - Math.sqrt(radiusMm ** 2 - y ** 2), 4)
    for (let i = 1; i < points.length; i++) expect(points[i]!.y).toBeGreaterThanOrEqual(points[i - 1]!.y - 1e-9)
  })

  test.each([
    ['right', 1],
    ['left', -1],
  ] as const)('for the %s hand show the reach of a cutaway’s face on the treble side', (hand, way) => {
    const plan = withField(withCutaway(STEEL_STRING.plan, 'pointed'), 'handed', hand)
    const board = drawn(plan, 'contourBoard', 'neck')
    const across = linesOf(board, 'thin').filter((line) => Math.abs(line[0]!.x - line.at(-1)!.x) > 30)
    expect(across).toHaveLength(1)
    expect(Math.sign(across[0]![0]!.y)).toBe(way)
    expect(board.marks[way > 0 ? 'bottom' : 'top']).toBe('treble')
  })
})

test.each([
  ['top', 8500],
  ['back', 4600],
] as const)('the arch of the %s has the radius of its dish over the body’s width and 40 mm', (plate, radiusMm) => {
  const arch = cutLine(drawn(STEEL_STRING.plan, 'dishArch', plate), 64)
  const chordMm = 392 + 40
  expect(arch.at(-1)!.x - arch[0]!.x).toBeCloseTo(chordMm, 4)
  const sagittaMm = radiusMm - Math.sqrt(radiusMm ** 2 - (chordMm / 2) ** 2)
  const crown = arch.reduce((a, b) => (b.y < a.y ? b : a))
  expect(-crown.y).toBeCloseTo(sagittaMm, 4)
  for (const { x, y } of arch) expect(Math.hypot(x, y - (radiusMm - sagittaMm))).toBeCloseTo(radiusMm, 4)
})

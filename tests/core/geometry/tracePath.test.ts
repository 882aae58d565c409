import { describe, expect, test } from 'vitest'
import type { Path, Stroke } from '../../../src/core/geometry/path.ts'
import { pathEnd, pathLengthMm, reversePath } from '../../../src/core/geometry/path.ts'
import { tracePath } from '../../../src/core/geometry/tracePath.ts'

const line = (x0: number, y0: number, x: number, y: number): Path => ({
  start: { x: x0, y: y0 },
  strokes: [{ kind: 'line', to: { x, y } }],
})
const loose = (...paths: Path[]) => paths.map((path) => ({ path, isClosed: false }))
const WHOLE = { gapsClosed: 0, largestGapMm: 0, tinyDropped: 0, duplicatesDropped: 0 }

describe('loose lines', () => {
  test('drawn in any order and any way round become one closed chain; nothing had to be mended', () => {
    const sides = [line(100, 0, 100, 60), line(0, 60, 0, 0), line(0, 0, 100, 0), line(0, 60, 100, 60)]
    const { chains, healed } = tracePath(loose(...sides))
    expect(chains).toHaveLength(1)
    expect(chains[0]).toMatchObject({ isClosed: true })
    expect([...chains[0]!.from].toSorted((a, b) => a - b)).toEqual([0, 1, 2, 3])
    expect(pathLengthMm(chains[0]!.path)).toBeCloseTo(320, 12)
    expect(healed).toEqual(WHOLE)
  })

  test('gaps up to the tolerance are closed and told; wider ones stay', () => {
    const within = tracePath(loose(line(0, 0, 100, 0), line(100.3, 0.4, 100, 90), line(100, 90.2, 0, 90)))
    expect(within.chains).toHaveLength(1)
    expect(within.healed.gapsClosed).toBe(2)
    expect(within.healed.largestGapMm).toBeCloseTo(0.5, 12)
    const beyond = tracePath(loose(line(0, 0, 100, 0), line(100.31, 0.4, 100, 90)))
    expect(beyond.chains).toHaveLength(2)
    expect(beyond.healed).toEqual(WHOLE)
  })

  test('beside a short stroke a gap is closed by a line, beside long ones by moving', () => {
    const short = tracePath(loose(line(0, 0, 100, 0), line(100.4, 0, 103, 0)))
    expect(short.chains[0]!.path.strokes).toHaveLength(3)
    const long = tracePath(loose(line(0, 0, 100, 0), line(100.4, 0, 203, 0)))
    expect(long.chains[0]!.path.strokes).toHaveLength(2)
    expect(long.chains[0]!.path.strokes[0]!.to.x).toBeCloseTo(100.2, 12)
  })

  test('where three ends meet, those that go on straight are joined', () => {
    const arc: Stroke = { kind: 'arc', to: { x: 0, y: 100 }, bulge: -1 }
    const { chains } = tracePath(
      loose(
        line(0, 0, 0, 100),
        { start: { x: 0, y: 0 }, strokes: [arc] },
        {
          start: { x: 0, y: 0 },
          strokes: [{ kind: 'arc', to: { x: 0, y: 100 }, bulge: 1 }],
        },
      ),
    )
    expect(chains.map(({ isClosed, from }) => [isClosed, [...from].toSorted((a, b) => a - b)])).toEqual([
      [true, [1, 2]],
      [false, [0]],
    ])
  })
})

describe('what was drawn by mistake', () => {
  test('a path drawn twice, or back, is dropped once and told', () => {
    const arc: Path = { start: { x: 0, y: 0 }, strokes: [{ kind: 'arc', to: { x: 50, y: 0 }, bulge: 0.3 }] }
    const { chains, healed } = tracePath(loose(arc, reversePath(arc), line(0, 0, 50, 0), line(50, 0, 0, 0)))
    expect(healed.duplicatesDropped).toBe(2)
    expect(chains).toHaveLength(1)
    expect(chains[0]!.isClosed).toBe(true)
  })

  test('a speck is dropped, and the path still ends where it ended', () => {
    const path: Path = {
      start: { x: 0, y: 0 },
      strokes: [
        { kind: 'line', to: { x: 0.004, y: 0 } },
        { kind: 'cubic', control1: { x: 10, y: 10 }, control2: { x: 20, y: 10 }, to: { x: 30, y: 0 } },
        { kind: 'line', to: { x: 30.005, y: 0 } },
      ],
    }
    const { chains, healed } = tracePath(loose(path, line(7, 7, 7.001, 7)))
    expect(healed.tinyDropped).toBe(3)
    expect(chains).toHaveLength(1)
    expect(chains[0]!.path.start).toEqual({ x: 0, y: 0 })
    expect(pathEnd(chains[0]!.path)).toEqual({ x: 30.005, y: 0 })
  })

  test('steps that are each too small but go somewhere are not lost', () => {
    const strokes = Array.from(
      { length: 10_000 },
      (_, i): Stroke => ({ kind: 'line', to: { x: (i + 1) * 0.004, y: 0 } }),
    )
    const { chains } = tracePath(loose({ start: { x: 0, y: 0 }, strokes }))
    expect(pathLengthMm(chains[0]!.path)).toBeCloseTo(40, 9)
  })
})

test('20000 lines from one point are chained within a moment', () => {
  const star = Array.from({ length: 20_000 }, (_, i) => line(0, 0, 100 * Math.cos(i), 100 * Math.sin(i)))
  expect(tracePath(loose(...star)).chains.length).toBeGreaterThan(1)
})

test('20000 loose lines end to end are one chain', () => {
  const row = Array.from({ length: 20_000 }, (_, i) => line(i, 0, i + 1, 0))
  const { chains } = tracePath(loose(...row))
  expect(chains).toHaveLength(1)
  expect(pathLengthMm(chains[0]!.path)).toBeCloseTo(20_000, 6)
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { pathOfEllipse } from '../../../src/core/geometry/ellipsePath.ts'
import type { Path, Stroke } from '../../../src/core/geometry/path.ts'
import {
  joinPaths,
  pathEnd,
  pathLengthMm,
  pointAt,
  reversePath,
  transformPath,
} from '../../../src/core/geometry/path.ts'
import {
  type DrawnOutline,
  outlineFromPath,
  type OutlineReading,
} from '../../../src/core/instrument/outlineFromPath.ts'
import { anyPath } from '../geometry/drawnPaths.ts'

const READING: OutlineReading = {
  mmPerUnit: 1,
  end: 'asFound',
  treble: 'asDrawn',
  symmetry: 'mirrorBass',
  axis: 'found',
}

/** A half drawn for the test: tail, lower bout, waist, upper bout, neck flat. Widest at the end of its first cubic: 190 at x = 120. */
const half: Path = {
  start: { x: 0, y: 0 },
  strokes: [
    { kind: 'cubic', control1: { x: 0, y: 120 }, control2: { x: 50, y: 190 }, to: { x: 120, y: 190 } },
    { kind: 'cubic', control1: { x: 200, y: 190 }, control2: { x: 220, y: 115 }, to: { x: 300, y: 115 } },
    { kind: 'cubic', control1: { x: 350, y: 115 }, control2: { x: 360, y: 140 }, to: { x: 410, y: 140 } },
    { kind: 'cubic', control1: { x: 460, y: 140 }, control2: { x: 490, y: 90 }, to: { x: 490, y: 30 } },
    { kind: 'line', to: { x: 490, y: 0 } },
  ],
}
const whole = joinPaths(half, reversePath(transformPath(half, { mirrored: true })))

const read = (path: Path, isClosed: boolean, reading: Partial<OutlineReading> = {}): DrawnOutline => {
  const result = outlineFromPath({ path, isClosed }, { ...READING, ...reading })
  if (!result.ok) expect.fail(result.problem)
  return result.value
}
const problemOf = (path: Path, isClosed: boolean, reading: Partial<OutlineReading> = {}) => {
  const result = outlineFromPath({ path, isClosed }, { ...READING, ...reading })
  return result.ok ? null : result.problem
}

/** Largest distance between points of two paths with the same strokes. */
function apartMm(a: Path, b: Path): number {
  expect(a.strokes.map(({ kind }) => kind)).toEqual(b.strokes.map(({ kind }) => kind))
  return Math.max(
    ...a.strokes.flatMap((_, stroke) =>
      [0, 0.3, 0.6, 1].map((t) => {
        const [p, q] = [pointAt(a, { stroke, t }), pointAt(b, { stroke, t })]
        return Math.hypot(p.x - q.x, p.y - q.y)
      }),
    ),
  )
}

const placed = [0, 0.4, Math.PI / 2, 3].flatMap((rotationRad) =>
  [false, true].map((mirrored) => ({ rotationRad, mirrored, shift: { x: 700, y: -250 } })),
)

describe('a half', () => {
  test.each(placed)('drawn anywhere, either side up, either way round, comes to stand on its axis: %o', (place) => {
    for (const path of [transformPath(half, place), reversePath(transformPath(half, place))]) {
      const { bass, treble, lengthMm, widestMm, drawnAs } = read(path, false)
      expect(apartMm(bass, half)).toBeLessThan(1e-9)
      expect(treble).toBeNull()
      expect(drawnAs).toBe('half')
      expect(lengthMm).toBeCloseTo(490, 9)
      expect(widestMm).toBeCloseTo(380, 9)
    }
  })

  test('drawn with its centreline loses it', () => {
    for (const parts of [1, 3]) {
      const line: Path = {
        start: { x: 490, y: 0 },
        strokes: Array.from(
          { length: parts },
          (_, i): Stroke => ({ kind: 'line', to: { x: 490 - (490 * (i + 1)) / parts, y: 0 } }),
        ),
      }
      const outline = read(transformPath(joinPaths(half, line), placed[3]!), true)
      expect(outline.centrelineDropped).toBe(true)
      expect(apartMm(outline.bass, half)).toBeLessThan(1e-9)
    }
  })

  test('the tail is the wide end, or the other when turned', () => {
    const { bass, centreline } = read(half, false, { end: 'turned' })
    expect(bass.start).toEqual({ x: 0, y: 0 })
    expect(pathEnd(bass).x).toBeCloseTo(490, 9)
    expect(bass.strokes[0]!.to.y).toBeCloseTo(30, 9)
    expect(centreline.point.x).toBeCloseTo(490, 9)
    expect(Math.cos(centreline.headingRad)).toBeCloseTo(-1, 12)
  })

  test('in inches', () => {
    const inches = transformPath(half, { scale: 1 / 25.4 })
    expect(apartMm(read(inches, false, { mmPerUnit: 25.4 }).bass, half)).toBeLessThan(1e-9)
    expect(problemOf(inches, false)).toBe('tooSmall')
  })
})

describe('a whole outline', () => {
  test.each(placed)('symmetrical and drawn anywhere: its axis to 1e-4 mm: %o', (place) => {
    const outline = read(transformPath(whole, place), true, { symmetry: 'asDrawn' })
    expect(outline.drawnAs).toBe('whole')
    expect(outline.asymmetryMm).toBeLessThan(1e-4)
    expect(outline.lengthMm).toBeCloseTo(490, 4)
    expect(outline.widestMm).toBeCloseTo(380, 4)
    for (const side of [outline.bass, outline.treble!]) {
      const kept = side.strokes.length === half.strokes.length ? side : null
      expect(side.start).toEqual({ x: 0, y: 0 })
      expect(pathEnd(side).y).toBe(0)
      expect(pathLengthMm(side)).toBeCloseTo(pathLengthMm(half), 3)
      if (kept !== null) expect(apartMm(kept, half)).toBeLessThan(1e-4)
    }
  })

  test('an ellipse is taken along its long axis', () => {
    const [c, s] = [Math.cos(0.3), Math.sin(0.3)]
    const ellipse = { centre: { x: 9, y: 4 }, u: { x: 250 * c, y: 250 * s }, v: { x: -180 * s, y: 180 * c } }
    const outline = read(pathOfEllipse({ ...ellipse, fromRad: 1, sweepRad: 2 * Math.PI }, 0.0005), true)
    expect(outline.lengthMm).toBeCloseTo(500, 2)
    expect(outline.widestMm).toBeCloseTo(360, 2)
    expect(Math.abs(Math.sin(outline.centreline.headingRad - 0.3))).toBeLessThan(1e-5)
  })

  test('a circle of two arcs, cut where they meet, is halves of pi r', () => {
    const circle = pathOfEllipse(
      { centre: { x: 0, y: 0 }, u: { x: 100, y: 0 }, v: { x: 0, y: 100 }, fromRad: 0, sweepRad: 2 * Math.PI },
      0.0005,
    )
    const outline = read(circle, true, { axis: 'horizontal' })
    expect(outline.lengthMm).toBeCloseTo(200, 9)
    expect(pathLengthMm(outline.bass)).toBeCloseTo(100 * Math.PI, 6)
  })

  /** The upper (treble) side of the upper bout cut away: from the waist on, 40 mm below the other side, to the neck. */
  const cut: Path = joinPaths(
    {
      start: { x: 0, y: 0 },
      strokes: [
        ...half.strokes.slice(0, 2),
        { kind: 'cubic', control1: { x: 350, y: 115 }, control2: { x: 380, y: 100 }, to: { x: 400, y: 60 } },
        { kind: 'line', to: { x: 490, y: 30 } },
        { kind: 'line', to: { x: 490, y: 0 } },
      ],
    },
    reversePath(transformPath(half, { mirrored: true })),
  )

  test('with a cutaway has no axis of its own; along x its sides are those that were drawn', () => {
    expect(problemOf(cut, true)).toBe('noAxis')
    const outline = read(cut, true, { axis: 'horizontal', symmetry: 'asDrawn' })
    expect(apartMm(outline.bass, half)).toBeLessThan(1e-9)
    expect(outline.treble!.strokes[2]!.to).toEqual({ x: expect.closeTo(400, 9), y: expect.closeTo(60, 9) })
    expect(outline.asymmetryMm).toBeGreaterThan(50)
  })

  test('along y, tail down: seen with the tail to the left, what was left is up', () => {
    const upright = transformPath(cut, { rotationRad: Math.PI / 2 })
    const outline = read(upright, true, { axis: 'vertical', symmetry: 'asDrawn' })
    expect(apartMm(outline.bass, half)).toBeLessThan(1e-9)
  })

  test('the sides swap when they are drawn from behind, and one side can be both', () => {
    const swapped = read(cut, true, { axis: 'horizontal', symmetry: 'asDrawn', treble: 'swapped' })
    expect(apartMm(swapped.treble!, half)).toBeLessThan(1e-9)
    const both = read(cut, true, { axis: 'horizontal', symmetry: 'mirrorTreble', treble: 'swapped' })
    expect(apartMm(both.bass, half)).toBeLessThan(1e-9)
    expect(both.treble).toBeNull()
  })

  test('turned end for end in the drawing the treble side stays the treble side', () => {
    const outline = read(transformPath(cut, { rotationRad: Math.PI }), true, {
      axis: 'horizontal',
      symmetry: 'asDrawn',
    })
    expect(apartMm(outline.bass, half)).toBeLessThan(1e-9)
  })

  test('a small gap between its ends is closed and told', () => {
    const { strokes, start } = whole
    const open: Path = { start, strokes: [...strokes.slice(0, -1), { ...strokes.at(-1)!, to: { x: 0.3, y: 0 } }] }
    expect(read(open, false).gapMm).toBeCloseTo(0.3, 12)
  })
})

describe('what is no outline', () => {
  test('is told why', () => {
    const end = whole.strokes.length - 1
    const ends = { start: whole.strokes[4]!.to, strokes: [...whole.strokes.slice(5), ...whole.strokes.slice(0, 4)] }
    expect(problemOf(ends, false), 'a whole one left open at the neck').toBe('open')
    expect(problemOf({ start: { x: 0, y: 0 }, strokes: [] }, false)).toBe('nothing')
    expect(problemOf(half, false, { mmPerUnit: Number.NaN })).toBe('nothing')
    expect(problemOf(half, false, { mmPerUnit: 1000 })).toBe('tooLarge')
    expect(problemOf({ start: { x: 0, y: 0 }, strokes: [{ kind: 'line', to: { x: 400, y: 0 } }] }, false)).toBe(
      'tooSmall',
    )
    const snake: Path = {
      start: { x: 0, y: 0 },
      strokes: [{ kind: 'cubic', control1: { x: 150, y: 200 }, control2: { x: 250, y: -200 }, to: { x: 400, y: 0 } }],
    }
    expect(problemOf(snake, false)).toBe('crossesAxis')
    expect(end).toBeGreaterThan(0)
  })

  test('whatever is drawn, an answer comes back, and only finite numbers in it', () => {
    fc.assert(
      fc.property(
        anyPath,
        fc.boolean(),
        fc.constantFrom('found', 'horizontal', 'vertical'),
        fc.constantFrom('asDrawn', 'mirrorBass'),
        (path, isClosed, axis, symmetry) => {
          const result = outlineFromPath({ path, isClosed }, { ...READING, axis, symmetry })
          if (!result.ok) return
          const { lengthMm, widestMm, asymmetryMm, bass, treble } = result.value
          expect(Number.isFinite(lengthMm + widestMm + asymmetryMm)).toBe(true)
          for (const side of [bass, treble ?? bass]) {
            expect(side.start).toEqual({ x: 0, y: 0 })
            expect(pathEnd(side)).toEqual({ x: expect.closeTo(lengthMm, 6), y: 0 })
          }
        },
      ),
      { numRuns: 100, endOnFailure: true },
    )
  })
})

import svgpath from 'svgpath'
import { describe, expect, test } from 'vitest'
import type { Path } from '../../src/core/geometry/path.ts'
import { outlinePreview } from '../../src/drawing/outlinePreview.ts'

/** Where the pieces of a drawn path end, its arcs taken apart into cubics by another program. */
function ends(d: string): (readonly [number, number])[] {
  const found: (readonly [number, number])[] = []
  svgpath(d)
    .abs()
    .unarc()
    .iterate((segment) => {
      found.push([Number(segment.at(-2)), Number(segment.at(-1))])
    })
  return found
}
const highest = (d: string) => Math.min(...ends(d).map(([, y]) => y))
const lowest = (d: string) => Math.max(...ends(d).map(([, y]) => y))

/** Half a circle of 100 mm over (100, 0), in one arc. */
const dome: Path = { start: { x: 0, y: 0 }, strokes: [{ kind: 'arc', to: { x: 200, y: 0 }, bulge: -1 }] }
/** 240 degrees of a circle round (100, 50), standing on the centreline. */
const horseshoe: Path = {
  start: { x: 100 - 50 * Math.sqrt(3), y: 0 },
  strokes: [{ kind: 'arc', to: { x: 100 + 50 * Math.sqrt(3), y: 0 }, bulge: -Math.tan(Math.PI / 3) }],
}

describe('the outline as it would be taken', () => {
  test('has the bass side above the centreline and the treble side below', () => {
    const preview = outlinePreview(dome, null)
    expect(highest(preview.bass)).toBeCloseTo(-100, 2)
    expect(lowest(preview.bass)).toBeCloseTo(0, 2)
    expect(lowest(preview.treble)).toBeCloseTo(100, 2)
    expect(highest(preview.treble)).toBeCloseTo(0, 2)
    expect(preview.bassAt.y).toBeLessThan(0)
    expect(preview.trebleAt.y).toBeGreaterThan(0)
    expect(preview.tailAt.x).toBeLessThan(preview.neckAt.x)
    expect(preview.viewBox).toBe('-10 -110 220 220')
  })

  test('goes the long way round an arc of more than half a circle', () => {
    const preview = outlinePreview(horseshoe, dome)
    for (const [x, y] of ends(preview.bass)) expect(Math.hypot(x - 100, -y - 50)).toBeCloseTo(100, 1)
    expect(highest(preview.bass)).toBeLessThan(-120)
    expect(lowest(preview.treble)).toBeCloseTo(100, 2)
  })

  test('has curves and straights as they were drawn', () => {
    const half: Path = {
      start: { x: 0, y: 0 },
      strokes: [
        { kind: 'cubic', control1: { x: 0, y: 60 }, control2: { x: 20, y: 80 }, to: { x: 60, y: 80 } },
        { kind: 'line', to: { x: 90, y: 0 } },
      ],
    }
    expect(outlinePreview(half, null).bass).toBe('M0 0C0 -60 20 -80 60 -80L90 0')
  })
})

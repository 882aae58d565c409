import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { BRACE_SIDES, BRACE_STOPS } from '../../../../src/core/boxPlan.ts'
import { innerRimOf } from '../../../../src/core/instrument/brace/innerRim.ts'
import { placeBraces } from '../../../../src/core/instrument/brace/placedBrace.ts'
import { drawOutline } from '../../../../src/core/instrument/outline.ts'
import { STEEL_STRING } from '../../../generators/demoModels.ts'
import { withField } from '../../../generators/plans.ts'
import { real } from '../../../generators/real.ts'
import { traceChain } from '../../trace.ts'
import { expectWithin } from '../../within.ts'
import { atBrace, beyond, brace, codesOf, computed, end, here, rimAt } from './braceSamples.ts'
import { longestWithin, movedInward } from './clip.ts'

const plan = withField(STEEL_STRING.plan, 'bridge.plateMm', 0)
const t = plan.rim.sideThicknessMm
const inner = movedInward(traceChain(plan.outline.pieces, 0.1), t)
const whole = [...inner, ...inner.toReversed().map(({ x, y }) => ({ x, y: -y }))]

describe('lengths, against a general library of polygons', () => {
  test.each([
    ['across the lower bout', 137, -50, 137, 50],
    ['a leg of an X', 280, -20, 240, 30],
    ['aslant over the upper bout', 400, -60, 420, 70],
    ['nearly along', 100, 12, 300, -3],
  ])('%s', (_, x1, y1, x2, y2) => {
    const row = computed(plan, { a: brace(beyond(x1, y1), beyond(x2, y2)) }).numbers.braces[0]!
    const size = Math.hypot(x2 - x1, y2 - y1)
    const way = { x: (x2 - x1) / size, y: (y2 - y1) / size }
    const within = longestWithin(whole, { x: x1, y: y1 }, way)
    expectWithin(row.lengthMm, within.endMm - within.startMm, 1e-3)
    expectWithin(row.fromXMm, x1 + within.startMm * way.x, 1e-3)
    expectWithin(row.toAcrossMm, y1 + within.endMm * way.y, 1e-3)
    expectWithin(row.angleRad, Math.acos(Math.abs(way.x)), 1e-9)
    if (y1 * y2 < 0) expectWithin(row.crossesCentreAtMm, x1 - (y1 * (x2 - x1)) / (y2 - y1), 1e-9)
  })

  test('set at the rim on a side and at a distance from the tail', () => {
    const row = computed(plan, { a: brace(rimAt('bass', 150), rimAt('treble', 110)) }).numbers.braces[0]!
    const at = (x: number) => longestWithin(whole, { x, y: 0 }, { x: 0, y: 1 }).endMm
    expectWithin(row.fromAcrossMm, -at(150), 1e-3)
    expectWithin(row.toAcrossMm, at(110), 1e-3)
    expectWithin(row.lengthMm, Math.hypot(40, at(150) + at(110)), 2e-3)
  })
})

describe('stopping at another brace', () => {
  const bar = brace(here(200, -100), here(200, 100), { widthMm: 10 })

  test('it ends at the near flank: square, half its width before its middle', () => {
    const { braces } = computed(plan, { bar, a: brace(atBrace('bar', 190, 20), here(100, 20)) }).numbers
    expectWithin(braces[1]!.fromXMm, 195, 1e-9)
    expectWithin(braces[1]!.lengthMm, 95, 1e-9)
    expect(braces[1]!.fromAlongOuterMm).toBe('none')
    expect(braces[1]!.fromLetInMm).toBe(0)
  })

  test('aslant, so much more as the cut is longer; on or back to it', () => {
    for (const [x, y] of [
      [180, 60],
      [240, 120],
    ] as const) {
      const row = computed(plan, { a: brace(here(100, 0), atBrace('bar', x, y)), bar }).numbers.braces[0]!
      expectWithin(row.lengthMm, (95 * Math.hypot(x - 100, y)) / (x - 100), 1e-9)
      expectWithin(row.toXMm, 195, 1e-9)
    }
  })

  test('of two copies the one nearest to what was entered; twins stop at each their own', () => {
    const legs = brace(here(300, -60), here(100, 60), { twin: true, widthMm: 6 })
    const fingers = brace(atBrace('legs', 150, -30), here(150, -100), { twin: true })
    const { numbers, geometry } = computed(plan, { legs, fingers })
    const [one, two] = [geometry.bracing.placed[2]!, geometry.bracing.placed[3]!]
    expect(numbers.braces.map(({ number, half }) => [number, half])).toEqual([
      [1, 'bass'],
      [2, 'treble'],
      [3, 'bass'],
      [4, 'treble'],
    ])
    // The leg that comes down on the bass side begins on the treble one: it is the second of the two.
    expect([one.from.stopsAt, two.from.stopsAt]).toEqual([1, 0])
    expectWithin(one.from.point.y, -two.from.point.y, 1e-9)
  })

  test('what meets nothing, or stops at itself, or at a brace of the other plate, stays as entered and is told', () => {
    const cases = {
      past: atBrace('bar', 150, 130),
      none: atBrace(null, 150, 20),
      gone: atBrace('gone', 150, 20),
      self: atBrace('a', 150, 20),
      other: atBrace('back', 150, 20),
    }
    for (const [name, from] of Object.entries(cases)) {
      const braces = {
        bar: brace(here(200, -100), here(200, 100)),
        back: brace(here(140, -50), here(140, 50), { plate: 'back' }),
        a: brace(from, here(from.xMm - 60, from.yMm)),
      }
      expect(codesOf(plan, braces), name).toEqual(['braceMeetsNothing'])
      expectWithin(computed(plan, braces).numbers.braces[2]!.fromXMm, 150, 1e-12, name)
    }
  })

  test('in a circle: the first in order stays as entered, the others follow it', () => {
    const braces = {
      a: brace(here(100, 0), atBrace('b', 150, 0)),
      b: brace(here(160, -40), atBrace('c', 160, 30)),
      c: brace(here(220, 40), atBrace('a', 120, 40)),
    }
    const { numbers, findings } = computed(plan, braces)
    expect(findings.filter(({ code }) => code === 'braceMeetsNothing').map(({ values }) => values['brace'])).toEqual([
      1, 3,
    ])
    expectWithin(numbers.braces[0]!.toXMm, 150, 1e-12)
    expectWithin(numbers.braces[1]!.toAcrossMm, 40 - 4, 1e-9)
  })
})

describe('twins', () => {
  test('are each other seen in a mirror, whatever a mirrored body has', () => {
    const braces = {
      x: brace(beyond(330, -60), beyond(180, 90), { twin: true }),
      f: brace(atBrace('x', 190, -80), beyond(200, -120), { twin: true }),
      r: brace(rimAt('treble', 120), rimAt('bass', 60), { twin: true }),
    }
    const { braces: rows } = computed(plan, braces).numbers
    for (let i = 0; i < rows.length; i += 2) {
      const [bass, treble] = [rows[i]!, rows[i + 1]!]
      expect([bass.half, treble.half]).toEqual(['bass', 'treble'])
      expect(bass.fromAcrossMm).toBeLessThan(0)
      expectWithin(treble.lengthMm, bass.lengthMm, 1e-9)
      expectWithin(treble.fromAcrossMm, -bass.fromAcrossMm, 1e-9)
      expectWithin(treble.toXMm, bass.toXMm, 1e-9)
      expectWithin(treble.archRiseMm, bass.archRiseMm, 1e-9)
      expectWithin(treble.undersideRadiusMm, bass.undersideRadiusMm as number, 1e-4)
    }
  })

  test('on a body with a cutaway each goes to its own rim', () => {
    const cut = withField(plan, 'outline.cutaway.form', 'rounded')
    const { braces: rows } = computed(cut, { a: brace(here(440, -10), beyond(445, -60), { twin: true }) }).numbers
    expect(rows[1]!.lengthMm).toBeLessThan(rows[0]!.lengthMm - 5)
    expect(rows[0]!.toAlongOuterMm).not.toBe('none')
  })
})

test('outside of the sides, or with a stretch outside, or with no length, is told', () => {
  expect(codesOf(plan, { a: brace(here(100, 0), here(100, 260)) })).toEqual(['braceOutsideRim'])
  expect(codesOf(plan, { a: brace(here(100, 0), beyond(-10, 0)) })).toContain('braceOutsideRim')
  expect(codesOf(plan, { a: brace(rimAt('bass', 200), rimAt('bass', 400)) })).toEqual(['braceOutsideRim'])
  expect(codesOf(plan, { a: brace(here(100, 30), here(100, 30)) })).toEqual(['braceHasNoLength'])
  expect(codesOf(plan, { a: brace(here(100, -30), here(100, 30)) })).toEqual([])
})

const rim = innerRimOf(drawOutline(withField(plan, 'outline.cutaway.form', 'pointed').outline), 2.2)
const anyEnd = fc
  .record({
    stops: fc.constantFrom(...BRACE_STOPS),
    side: fc.constantFrom(...BRACE_SIDES),
    xMm: fc.oneof(real(-20, 820), fc.constantFrom(0, 2.2, 100, 496)),
    yMm: fc.oneof(real(-320, 320), fc.constantFrom(0, 50)),
    braceId: fc.constantFrom('a', 'b', 'c', 'd', null),
  })
  .map(end)

test('any braces whatever: finite, in their order, ends on their line, and the same every time', () => {
  fc.assert(
    fc.property(
      fc.array(
        fc
          .record({ from: anyEnd, to: anyEnd, twin: fc.boolean(), widthMm: real(1, 60) })
          .map((one) => brace(one.from, one.to, one)),
        { minLength: 1, maxLength: 4 },
      ),
      (list) => {
        const entries = list.map((one, i) => ({ id: 'abcd'[i]!, brace: one }))
        const placed = placeBraces(entries, rim)
        expect(placed.map(({ id }) => id)).toEqual(
          entries.flatMap(({ id, brace: { twin } }) => (twin ? [id, id] : [id])),
        )
        for (const one of placed) {
          const numbers = [one.lengthMm, ...one.corners.flatMap(({ x, y }) => [x, y]), one.way.x, one.way.y]
          expect(numbers.every(Number.isFinite)).toBe(true)
          expect(one.lengthMm).toBeGreaterThanOrEqual(0)
          const [dx, dy] = [one.to.point.x - one.from.point.x, one.to.point.y - one.from.point.y]
          expectWithin(dx * one.way.y - dy * one.way.x, 0, 1e-6)
        }
        expect(placeBraces(entries, rim)).toEqual(placed)
      },
    ),
    { numRuns: 400, seed: 20261127 },
  )
})

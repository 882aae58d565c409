import { describe, expect, it } from 'vitest'
import type { BraceEndPlan, BracePlan } from '../../../../src/core/boxPlan.ts'
import { insetPoint } from '../../../../src/core/geometry/curve.ts'
import type { Point } from '../../../../src/core/geometry/point.ts'
import { innerRimOf, isInsideRim } from '../../../../src/core/instrument/brace/innerRim.ts'
import { movedEnd } from '../../../../src/core/instrument/brace/movedEnd.ts'
import { placeBraces } from '../../../../src/core/instrument/brace/placedBrace.ts'
import { BRACE_END_RANGES } from '../../../../src/record/boxFields.ts'
import { STEEL_STRING } from '../../../generators/demoModels.ts'
import { atBrace, beyond, brace, computed, end, here, rimAt } from './braceSamples.ts'

const { outline, rimSite } = computed(STEEL_STRING.plan, {}).geometry
const rim = innerRimOf(outline, rimSite.sideThicknessMm)
const place = (braces: Readonly<Record<string, BracePlan>>) =>
  placeBraces(
    Object.entries(braces).map(([id, one]) => ({ id, brace: one })),
    rim,
  )
const away = (a: Point, b: Point) => Math.hypot(a.x - b.x, a.y - b.y)

/** The brace as it stands after an end of one copy was moved: that copy again. */
function after(one: BracePlan, copy: number, which: 'from' | 'to', to: Point) {
  const placed = place({ a: one })[copy]!
  const moved = movedEnd(one, placed, which, to, rim, BRACE_END_RANGES)
  const next = { ...one, from: { ...one.from, ...moved.from }, to: { ...one.to, ...moved.to } }
  return { before: placed, next, placed: place({ a: next })[copy]!, moved }
}

/** Points stepped along the inner face, bass side: the nearest of them by trying all. */
const FACE = Array.from({ length: 20001 }, (_, i) => {
  const { x, y } = insetPoint(outline.bass, (outline.bass.lengthMm * i) / 20000, rimSite.sideThicknessMm)
  return { x, y: -y }
})
const nearestOnFace = (to: Point) => FACE.reduce((best, one) => (away(one, to) < away(best, to) ? one : best))

/** A leg of an X: it runs through two points far from the rim. */
const leg = brace(beyond(311, -49), beyond(190, 88), { twin: true, lapped: true })

describe('an end moved by hand', () => {
  it('is entered to the half millimetre, of a mirrored copy for the other one', () => {
    expect(after(brace(here(100, 0), here(200, 40)), 0, 'to', { x: 210.26, y: -50.7 }).moved.to).toEqual({
      xMm: 210.5,
      yMm: -50.5,
    })
    const twin = brace(here(100, 20), here(200, 40), { twin: true })
    const copies = place({ a: twin })
    const mirrored = copies.findIndex(({ plan }) => plan !== twin)
    expect(after(twin, mirrored, 'to', { x: 210.26, y: -50.7 }).moved.to).toEqual({ xMm: 210.5, yMm: 50.5 })
  })

  it.each([
    [0, 'from', { x: 380, y: -110 }],
    [0, 'to', { x: 90, y: 120 }],
    [1, 'from', { x: 370, y: 120 }],
    [1, 'to', { x: 150, y: -150 }],
  ] as const)('of copy %d of an X: the other one stays at its place on the rim (%s)', (copy, which, to) => {
    const { before, placed } = after(leg, copy, which, to)
    const other = which === 'from' ? 'to' : 'from'
    expect(away(placed[which].point, before[which].point)).toBeGreaterThan(4)
    expect(away(placed[other].point, before[other].point)).toBeLessThan(0.3)
    expect(placed[other].at).toBe('rim')
    expect(placed.faults.outsideRim).toBe(false)
  })

  it('again and again: what was held once is not entered anew', () => {
    const first = after(leg, 0, 'from', { x: 380, y: -110 })
    const again = after(first.next, 0, 'from', { x: 350, y: -120 })
    expect(again.moved.to).toEqual({})
    expect(away(again.placed.to.point, first.before.to.point)).toBeLessThan(0.5)
  })

  it('leaves an end at another brace where it butts, however far off its point was', () => {
    const bar = brace(rimAt('bass', 150), rimAt('treble', 150))
    const one = brace(atBrace('bar', 100, 60), here(300, 20))
    const [, placed] = place({ bar, one })
    const moved = movedEnd(one, placed!, 'to', { x: 300, y: -60 }, rim, BRACE_END_RANGES)
    const [, again] = place({
      bar,
      one: { ...one, from: { ...one.from, ...moved.from }, to: { ...one.to, ...moved.to } },
    })
    expect(away(again!.from.point, placed!.from.point)).toBeLessThan(0.5)
  })

  it.each([
    ['rimBeyond', { stops: 'rimBeyond' }],
    ['here', { stops: 'here' }],
    ['rimAt', { stops: 'rimAt', side: 'treble' }],
  ] as const)('beyond the sides it comes to the nearest place at the rim: %s', (_, values: Partial<BraceEndPlan>) => {
    const one = brace(here(250, 0), end({ xMm: 120, yMm: 60, ...values }))
    for (const to of [
      { x: 180, y: -260 },
      { x: 40, y: -240 },
      { x: 390, y: -170 },
    ]) {
      const { placed, next } = after(one, 0, 'to', to)
      expect(away(placed.to.point, nearestOnFace(to))).toBeLessThan(1.2)
      expect(placed.faults.outsideRim).toBe(false)
      if (values.stops !== 'rimAt') expect(isInsideRim(rim, { x: next.to.xMm, y: next.to.yMm })).toBe(true)
    }
  })

  it('at the rim keeps to it: side and distance follow, and nothing beyond the body', () => {
    const one = brace(rimAt('bass', 200), rimAt('treble', 200))
    expect(after(one, 0, 'to', { x: 230.2, y: 40 }).moved).toEqual({ from: {}, to: { xMm: 230, side: 'treble' } })
    expect(after(one, 0, 'to', { x: 700, y: 10 }).moved.to.xMm).toBeLessThan(
      computed(STEEL_STRING.plan, {}).geometry.lengthMm,
    )
  })

  it('is held to what may be entered', () => {
    const narrow = { xMm: { minMm: 0, maxMm: 150 }, yMm: { minMm: -20, maxMm: 20 } }
    const one = brace(here(100, 0), here(120, 10))
    expect(movedEnd(one, place({ a: one })[0]!, 'to', { x: 300, y: -60 }, rim, narrow).to).toEqual({
      xMm: 150,
      yMm: -20,
    })
  })
})

import { describe, expect, test } from 'vitest'
import { areaUnderMm2, type Curve, curveAt, makeCurve, turningToRad } from '../../../src/core/geometry/curve.ts'
import { arc, straight } from '../../../src/core/geometry/piece.ts'
import { closeChain } from '../../../src/core/instrument/compassArcs.ts'
import { cutTreble, sidePieces, upToMm } from '../../../src/core/instrument/cutaway.ts'
import type { CutawayPlan } from '../../../src/core/plan.ts'
import { SMALL, STEEL_STRING } from '../../generators/demoModels.ts'
import { NYLON_STRING } from '../../generators/demoNylon.ts'
import { polylineLengthMm, shoelaceMm2, traceChain } from '../trace.ts'
import { DEG, expectWithin } from '../within.ts'

interface Dot {
  readonly x: number
  readonly y: number
}
const apart = (a: Dot, b: Dot) => Math.hypot(a.x - b.x, a.y - b.y)

const models = [STEEL_STRING, NYLON_STRING, SMALL].map(({ name, plan }) => {
  const { outline } = plan
  const lengthMm = outline.lengthMm!
  const bass = closeChain(outline.pieces, lengthMm).half
  return { name, bass, lengthMm, cutaway: outline.cutaway, pieces: outline.pieces }
})

/** The bass half as dots, up to the last of them before x. */
function tracedTo(model: (typeof models)[number], xMm: number): Dot[] {
  const dots = traceChain(model.pieces, 0.005)
  return dots.slice(0, dots.findLastIndex(({ x }) => x <= xMm) + 1)
}

/** Dots round a circle from one place to another, turning left or right, by the angle of the spoke. */
function dotsRound(centre: Dot, from: Dot, to: Dot, turn: 'left' | 'right'): Dot[] {
  const radius = apart(centre, from)
  const start = Math.atan2(from.y - centre.y, from.x - centre.x)
  let sweep = Math.atan2(to.y - centre.y, to.x - centre.x) - start
  if (turn === 'left' && sweep < 0) sweep += 2 * Math.PI
  if (turn === 'right' && sweep > 0) sweep -= 2 * Math.PI
  return Array.from({ length: 20001 }, (_, i) => {
    const at = start + (sweep * i) / 20000
    return { x: centre.x + radius * Math.cos(at), y: centre.y + radius * Math.sin(at) }
  })
}

/** The circle through three dots, from the two perpendicular bisectors. */
function circleThrough(a: Dot, b: Dot, c: Dot): { centre: Dot; radius: number } {
  const d = 2 * (a.x * (b.y - c.y) + b.x * (c.y - a.y) + c.x * (a.y - b.y))
  const [aa, bb, cc] = [a, b, c].map(({ x, y }) => x * x + y * y) as [number, number, number]
  const centre = {
    x: (aa * (b.y - c.y) + bb * (c.y - a.y) + cc * (a.y - b.y)) / d,
    y: (aa * (c.x - b.x) + bb * (a.x - c.x) + cc * (b.x - a.x)) / d,
  }
  return { centre, radius: apart(centre, a) }
}

const circleOf = (curve: Curve, from: number, to: number) => {
  const [a, b, c] = [0.1, 0.5, 0.9].map((part) => curveAt(curve, from + (to - from) * part).point)
  return circleThrough(a!, b!, c!)
}

const curveDots = (curve: Curve, count: number): Dot[] =>
  Array.from({ length: count + 1 }, (_, i) => curveAt(curve, (curve.lengthMm * i) / count).point)

describe.each(models)('a cutaway in $name', (model) => {
  const { bass, lengthMm, cutaway } = model
  const end = { x: lengthMm, y: cutaway.meetsNeckAtMm }

  test('none: the treble is the bass half', () => {
    const { treble, ...rest } = cutTreble(bass, cutaway, lengthMm)
    expect(treble).toBe(bass)
    expect(rest).toEqual({
      woodEndMm: bass.lengthMm,
      hornMm: null,
      fits: true,
      reason: 'none',
      hornAngleRad: null,
      angleAtNeckRad: null,
    })
    expect(sidePieces(treble, bass.lengthMm)).toEqual([{ fromMm: 0, toMm: bass.lengthMm }])
  })

  test('pointed: the bass half, one arc by its centre, and the line to the centreline', () => {
    const cut = cutTreble(bass, { ...cutaway, form: 'pointed' }, lengthMm)
    expect(cut.reason).toBe('none')
    const body = tracedTo(model, cutaway.leavesAtMm)
    const horn = body.at(-1)!
    // The centre stands on the perpendicular bisector of the chord, on the neck's side of it.
    const chord = apart(horn, end)
    const back = Math.sqrt(cutaway.hollowRadiusMm ** 2 - chord ** 2 / 4)
    const centre = {
      x: (horn.x + end.x) / 2 + (back * (horn.y - end.y)) / chord,
      y: (horn.y + end.y) / 2 + (back * (end.x - horn.x)) / chord,
    }
    const hollow = dotsRound(centre, horn, end, 'left')
    const wood = [...body, ...hollow.slice(1)]
    expectWithin(cut.hornMm, polylineLengthMm(body), 0.02, 'horn')
    expect(areaUnderMm2(cut.treble)).toBeLessThan(areaUnderMm2(bass))
    expectWithin(cut.woodEndMm, polylineLengthMm(wood), 0.03, 'end of the wood')
    expectWithin(cut.treble.lengthMm, polylineLengthMm([...wood, { x: lengthMm, y: 0 }]), 0.03, 'whole')
    expectWithin(areaUnderMm2(cut.treble), shoelaceMm2([...wood, { x: lengthMm, y: 0 }]), 3, 'area')
    // Wood angle at the horn, between the two ways out of it.
    const [p, q] = [body.at(-20)!, hollow[1]!]
    const cos = ((p.x - horn.x) * (q.x - horn.x) + (p.y - horn.y) * (q.y - horn.y)) / (apart(p, horn) * apart(q, horn))
    expectWithin(cut.hornAngleRad, Math.acos(cos), 0.003, 'angle at the horn')
    const before = hollow.at(-2)!
    expectWithin(cut.angleAtNeckRad, -Math.atan2(end.y - before.y, end.x - before.x), 0.001, 'angle at the neck')
    expect(sidePieces(cut.treble, cut.woodEndMm)).toEqual([
      { fromMm: 0, toMm: cut.hornMm },
      { fromMm: cut.hornMm, toMm: cut.woodEndMm },
    ])
  })

  test('rounded: horn and hollow as found by rolling the hollow round the horn', () => {
    const cut = cutTreble(bass, { ...cutaway, form: 'rounded' }, lengthMm)
    expect(cut.reason).toBe('none')
    const body = tracedTo(model, cutaway.leavesAtMm)
    const [from, near] = [body.at(-1)!, body.at(-2)!]
    const way = { x: (from.x - near.x) / apart(from, near), y: (from.y - near.y) / apart(from, near) }
    const [rh, rc] = [cutaway.hornRadiusMm, cutaway.hollowRadiusMm]
    const hornCentre = { x: from.x + rh * way.y, y: from.y - rh * way.x }
    // The hollow's circle is rolled round the horn from where the side leaves, until it first passes through the end from the far side.
    const start = Math.atan2(from.y - hornCentre.y, from.x - hornCentre.x)
    const spoke = (sweep: number, reach: number) => ({
      x: hornCentre.x + reach * Math.cos(start - sweep),
      y: hornCentre.y + reach * Math.sin(start - sweep),
    })
    const miss = (sweep: number) => apart(spoke(sweep, rh + rc), end) - rc
    let sweep = 0
    while (miss(sweep) > 0) sweep += 1e-4
    let [low, high] = [sweep - 1e-4, sweep]
    for (let i = 0; i < 60; i++) {
      const middle = (low + high) / 2
      if (miss(middle) > 0) low = middle
      else high = middle
    }
    const tangent = spoke(low, rh)
    const horn = dotsRound(hornCentre, from, tangent, 'right')
    const hollow = dotsRound(spoke(low, rh + rc), tangent, end, 'left')
    const wood = [...body, ...horn.slice(1), ...hollow.slice(1)]
    expectWithin(cut.woodEndMm, polylineLengthMm(wood), 0.05, 'end of the wood')
    expectWithin(areaUnderMm2(cut.treble), shoelaceMm2([...wood, { x: lengthMm, y: 0 }]), 4, 'area')
    const tip = horn.reduce((a, b) => (b.x > a.x ? b : a))
    const found = curveAt(cut.treble, cut.hornMm!).point
    expectWithin(apart(found, tip), 0, 0.05, 'tip of the horn')
    const before = hollow.at(-2)!
    expectWithin(cut.angleAtNeckRad, -Math.atan2(end.y - before.y, end.x - before.x), 0.001, 'angle at the neck')
    expect(cut.hornAngleRad).toBeNull()
    expect(sidePieces(cut.treble, cut.woodEndMm)).toEqual([{ fromMm: 0, toMm: cut.woodEndMm }])
  })

  test('rounded: the circles touch the side, each other and the end', () => {
    const { treble } = cutTreble(bass, { ...cutaway, form: 'rounded' }, lengthMm)
    const starts = treble.startsMm.slice(-4)
    const horn = circleOf(treble, starts[0]!, starts[1]!)
    const hollow = circleOf(treble, starts[1]!, starts[2]!)
    expectWithin(horn.radius, cutaway.hornRadiusMm, 1e-8)
    expectWithin(hollow.radius, cutaway.hollowRadiusMm, 1e-8)
    expectWithin(apart(horn.centre, hollow.centre), cutaway.hornRadiusMm + cutaway.hollowRadiusMm, 1e-8)
    expectWithin(apart(hollow.centre, end), cutaway.hollowRadiusMm, 1e-8)
    const leave = curveAt(bass, starts[0]!)
    expectWithin(leave.point.x, cutaway.leavesAtMm, 1e-9)
    expectWithin(apart(horn.centre, leave.point), cutaway.hornRadiusMm, 1e-8)
    expectWithin(
      (horn.centre.x - leave.point.x) * leave.normal.y - (horn.centre.y - leave.point.y) * leave.normal.x,
      0,
      1e-8,
    )
    expect(treble.corners).toHaveLength(1)
  })
})

describe('any cutaway', () => {
  const cuts = models.flatMap(({ name, bass, lengthMm }) =>
    (['pointed', 'rounded'] as const).flatMap((form) =>
      [0.1, 0.62, 0.75, 0.85, 0.93, 0.99, 1.2].flatMap((part) =>
        [8, 25, 60, 300].flatMap((hornRadiusMm) =>
          [15, 40, 70, 150, 2000].flatMap((hollowRadiusMm) =>
            [8, 35, 120].map((meetsNeckAtMm) => {
              const plan: CutawayPlan = {
                form,
                leavesAtMm: part * lengthMm,
                hornRadiusMm,
                hollowRadiusMm,
                meetsNeckAtMm,
              }
              return { name, plan, bass, lengthMm, ...cutTreble(bass, plan, lengthMm) }
            }),
          ),
        ),
      ),
    ),
  )

  test('ends at the neck on the centreline, square to it, having turned half round', () => {
    for (const { treble, bass, lengthMm, plan } of cuts) {
      if (treble === bass) continue
      const last = treble.places.at(-1)!
      expectWithin(last.point.x, lengthMm, 1e-9, JSON.stringify(plan))
      expectWithin(last.point.y, 0, 1e-9, JSON.stringify(plan))
      expectWithin(turningToRad(treble, treble.lengthMm), Math.PI, 1e-9, JSON.stringify(plan))
    }
  })

  test('every number is finite, and places come in order', () => {
    for (const { treble, woodEndMm, hornMm, hornAngleRad, angleAtNeckRad, fits, reason, plan } of cuts) {
      const all = [
        treble.lengthMm,
        woodEndMm,
        hornMm ?? 0,
        hornAngleRad ?? 0,
        angleAtNeckRad ?? 0,
        areaUnderMm2(treble),
      ]
      expect(all.every(Number.isFinite), JSON.stringify(plan)).toBe(true)
      expect(fits).toBe(reason === 'none')
      expect(woodEndMm).toBeLessThanOrEqual(treble.lengthMm)
      expect(hornMm ?? 0).toBeLessThanOrEqual(woodEndMm)
      if (fits && plan.form === 'pointed') expect(hornAngleRad! > 0 && hornAngleRad! < Math.PI).toBe(true)
    }
  })

  test('one that fits stays over the centreline, and short of the neck', () => {
    for (const { treble, lengthMm, fits, plan } of cuts) {
      if (!fits) continue
      const dots = curveDots(treble, 300)
      expect(Math.min(...dots.map(({ y }) => y)), JSON.stringify(plan)).toBeGreaterThan(-1e-6)
      expect(Math.max(...dots.map(({ x }) => x)), JSON.stringify(plan)).toBeLessThan(lengthMm + 1e-6)
    }
  })

  test('all that can be wrong is met, and so is what fits', () => {
    const met = new Set(cuts.map(({ reason }) => reason))
    expect([...met].sort()).toEqual(
      [
        'beyondNeck',
        'hollowTooTight',
        'hornTooWide',
        'intoSide',
        'leavesBeforeWaist',
        'leavesPastShoulder',
        'noHorn',
        'none',
      ].sort(),
    )
  })
})

describe('one way of not fitting each, on the steel-string', () => {
  const { bass, lengthMm, cutaway } = models[0]!
  const reasonOf = (change: Partial<CutawayPlan>) => cutTreble(bass, { ...cutaway, ...change }, lengthMm).reason

  test.each([
    ['leavesBeforeWaist', { form: 'rounded', leavesAtMm: 290 }],
    ['leavesPastShoulder', { form: 'rounded', leavesAtMm: 600 }],
    ['leavesPastShoulder', { form: 'pointed', leavesAtMm: 495.9, meetsNeckAtMm: 120 }],
    // The chord from (430, 142) to (496, 32) is 128: no circle of radius 63 has it, one of 65 does.
    ['hollowTooTight', { form: 'pointed', hollowRadiusMm: 63 }],
    ['none', { form: 'pointed', hollowRadiusMm: 65 }],
    ['hollowTooTight', { form: 'rounded', hollowRadiusMm: 30 }],
    ['hornTooWide', { form: 'rounded', hornRadiusMm: 120 }],
  ] as const)('%s: %j', (reason, change) => expect(reasonOf(change)).toBe(reason))
})

describe('side pieces', () => {
  const place = { point: { x: 0, y: 0 }, headingRad: Math.PI / 2 }
  test('only corners of more than 5 degrees part the wood, and none at its end', () => {
    const curve = makeCurve(
      place,
      [straight(10), straight(20), arc(30, 1), straight(5)],
      [0, 4 * DEG, -20 * DEG, 40 * DEG],
    )
    expect(sidePieces(curve, 60)).toEqual([
      { fromMm: 0, toMm: 30 },
      { fromMm: 30, toMm: 60 },
    ])
  })
  test('a curve cut short keeps its way and its corners, but not one at the cut', () => {
    const curve = makeCurve(place, [straight(10), arc(30, 1), straight(5)], [0, 0.5, 0.7])
    const cut = upToMm(curve, 25)
    expect(cut.lengthMm).toBe(25)
    expect(apart(cut.places.at(-1)!.point, curveAt(curve, 25).point)).toBeLessThan(1e-12)
    expect(cut.corners).toEqual([{ sMm: 10, turnRad: 0.5 }])
    expectWithin(upToMm(curve, 40).places.at(-1)!.headingRad, Math.PI / 2 - 1.5, 1e-12)
  })
})

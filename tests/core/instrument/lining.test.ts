import { describe, expect, test } from 'vitest'
import { curveAt, insetPoint, makeCurve } from '../../../src/core/geometry/curve.ts'
import { arc, straight } from '../../../src/core/geometry/piece.ts'
import { makeBack } from '../../../src/core/instrument/back.ts'
import { halfWidthAtMm } from '../../../src/core/instrument/body.ts'
import { closeChain } from '../../../src/core/instrument/compassArcs.ts'
import { cutTreble } from '../../../src/core/instrument/cutaway.ts'
import {
  coveredByBlock,
  innerLengthMm,
  ledgeLeftMm,
  liningLengths,
  liningProud,
  proudMm,
} from '../../../src/core/instrument/lining.ts'
import { makeTop } from '../../../src/core/instrument/top.ts'
import type { Plan } from '../../../src/core/plan.ts'
import { STEEL_STRING } from '../../generators/demoModels.ts'
import { marchSolids } from '../solids.ts'
import { polylineLengthMm, traceChain } from '../trace.ts'
import { DEG, expectWithin } from '../within.ts'

const { plan } = STEEL_STRING
const lengthMm = plan.outline.lengthMm!
const { half } = closeChain(plan.outline.pieces, lengthMm)
const t = plan.rim.sideThicknessMm
const start = { point: { x: 0, y: 0 }, headingRad: Math.PI / 2 }

const domesOf = (of: Plan) => ({
  top: makeTop(of.top, {
    lengthMm,
    saddleLineMm: 330,
    halfWidthAtMm: (x) => halfWidthAtMm(half, x),
    flatSlopeRad: () => of.top.flatSlopeDeg * DEG,
  }).rim,
  back: makeBack(of.back, lengthMm, of.rim.depthAtTailMm, of.rim.depthAtNeckMm).surface,
})

describe('how far a lining stands proud', () => {
  test.each([
    ['planed upper bout', plan],
    ['sphere to the rim', { ...plan, top: { ...plan.top, form: 'sphere' } } satisfies Plan],
  ])('%s: against solids met by upright rays, at dots moved inward', (_, of) => {
    const march = marchSolids(of, lengthMm, halfWidthAtMm(half, of.top.flatFromMm))
    const site = { curve: half, ...domesOf(of), sideThicknessMm: t, topWidthMm: 6.5, backWidthMm: 8 }
    const dots = traceChain(plan.outline.pieces, 0.05)
    let s = 0
    let checked = 0
    for (let i = 1; i + 1 < dots.length; i++) {
      const [a, here, b] = [dots[i - 1]!, dots[i]!, dots[i + 1]!]
      s += Math.hypot(here.x - a.x, here.y - a.y)
      if (i % 301 !== 0) continue
      const size = Math.hypot(b.x - a.x, b.y - a.y)
      const inset = (by: number) => ({ x: here.x + (by * (b.y - a.y)) / size, y: here.y - (by * (b.x - a.x)) / size })
      const [outer, arris, topCorner, backCorner] = [inset(0), inset(t), inset(t + 6.5), inset(t + 8)]
      const over = (heightMm: (x: number, y: number) => number, p: typeof outer, q: typeof outer) =>
        heightMm(q.x, q.y) - heightMm(p.x, p.y)
      // Near where the flat begins a hair decides which of the two counts.
      if ([outer, topCorner].some(({ x }) => Math.abs(x - of.top.flatFromMm) < 0.1)) continue
      const found = liningProud(site, s)
      expectWithin(found.topOverOuterMm, over(march.topMm, outer, topCorner), 1e-4, `top, outer, at ${s}`)
      expectWithin(found.topOverInnerMm, over(march.topMm, arris, topCorner), 1e-4, `top, inner, at ${s}`)
      expectWithin(found.backOverOuterMm, -over(march.backMm, outer, backCorner), 1e-4, `back, outer, at ${s}`)
      expectWithin(found.backOverInnerMm, -over(march.backMm, arris, backCorner), 1e-4, `back, inner, at ${s}`)
      checked++
    }
    expect(checked).toBeGreaterThan(40)
  })

  test('with the bevels of 1.26 and 4.96 degrees at tail and neck it is width x tan(bevel), less the bend', () => {
    const back = makeBack({ form: 'sphere', radiusMm: 4572 }, 496, 106, 90).surface
    const widthMm = t + 6.5
    const [atTail, atNeck] = [0, half.lengthMm].map((s) => proudMm(back, 'down', half, s, 0, widthMm))
    const bendMm = (widthMm * widthMm) / (2 * 4572)
    // Bevels to 0.005 degrees.
    expectWithin(atTail, widthMm * Math.tan(1.26 * DEG) - bendMm, 8e-4)
    expectWithin(atNeck, widthMm * Math.tan(4.96 * DEG) - bendMm, 9e-4)
    for (let s = 0; s <= half.lengthMm; s += 5) {
      const proud = proudMm(back, 'down', half, s, 0, widthMm)
      expect(proud).toBeGreaterThan(-0.4)
      expect(proud).toBeLessThan(0.8)
    }
  })

  test('nothing on a flat', () => {
    const back = makeBack({ form: 'flat', radiusMm: 4572 }, 496, 90, 90).surface
    expectWithin(proudMm(back, 'down', half, 200, 0, 9), 0, 1e-12)
  })
})

test('the ledge left is what binding and purfling do not take', () => {
  const measures = { sideThicknessMm: 2.2, liningWidthMm: 6.5, bindingThicknessMm: 2, purflingMm: 1.5 }
  expectWithin(ledgeLeftMm(measures), 5.2, 1e-12)
  expectWithin(ledgeLeftMm({ ...measures, bindingThicknessMm: 6, purflingMm: 5 }), -2.3, 1e-12)
})

describe('lengths on a box whose inner face is known', () => {
  // Ends 100 wide across, corners rounded to 50 outside, so 48 inside.
  const box = makeCurve(start, [
    straight(100),
    arc(50, Math.PI / 2),
    straight(300),
    arc(50, Math.PI / 2),
    straight(100),
  ])
  const run = { curve: box, woodEndMm: box.lengthMm }
  const lengths = liningLengths({
    bass: run,
    treble: run,
    sideThicknessMm: 2,
    tail: { widthMm: 80, thicknessMm: 20 },
    neck: { widthMm: 100, thicknessMm: 30 },
    wastePercent: 10,
  })
  test('inner face less half of each block', () => {
    const inner = 100 + 300 + 100 + 48 * Math.PI
    expectWithin(innerLengthMm(run, 2), inner, 1e-9)
    expectWithin(lengths.bassMm, inner - 40 - 50, 1e-8)
    expectWithin(lengths.trebleMm, inner - 40 - 50, 1e-8)
    expectWithin(lengths.edgeMm, 2 * (inner - 90), 1e-8)
    expectWithin(lengths.edgeWithWasteMm, 2.2 * (inner - 90), 1e-8)
  })
  test('a block wider than the straight follows the round until it is used up', () => {
    // 48 deep it would take the whole quarter; 10 deep it ends where the inner round has come 10 along.
    const { outerMm, innerMm } = coveredByBlock(run, 'tail', { widthMm: 400, thicknessMm: 10 }, 2)
    const turned = Math.acos((48 - 10) / 48)
    expectWithin(innerMm, 100 + 48 * turned, 1e-7)
    expectWithin(outerMm, 100 + 50 * turned, 1e-7)
  })
  test('two sharp corners, one out and one in, change the inner face by the mitre', () => {
    // Three straights with right angles: a step. Inside, the first is 2 shorter, the second 2 shorter and 2 longer, the third 2 longer.
    const step = makeCurve(start, [straight(100), straight(60), straight(40)], [0, Math.PI / 2, -Math.PI / 2])
    expectWithin(innerLengthMm({ curve: step, woodEndMm: 200 }, 2), 98 + 60 + 42, 1e-9)
  })
})

describe.each(['pointed', 'rounded'] as const)('the steel-string with a %s cutaway', (form) => {
  const cut = cutTreble(half, { ...plan.outline.cutaway, form }, lengthMm)
  const bass = { curve: half, woodEndMm: half.lengthMm }
  const treble = { curve: cut.treble, woodEndMm: cut.woodEndMm }
  const { tail, neck } = plan.blocks

  /** Dots of the inner face of one stretch, moved inward one by one. */
  const innerDots = (curve: typeof half, from: number, to: number) => {
    const count = 60000
    return Array.from({ length: count + 1 }, (_, i) =>
      insetPoint(curve, from + 1e-9 + ((to - from - 2e-9) * i) / count, t),
    )
  }

  test('what the neck block covers of the hollow lies beside its cheek, over its thickness', () => {
    expect(cut.fits).toBe(true)
    const dots = innerDots(cut.treble, cut.hornMm!, cut.woodEndMm)
    const fromX = lengthMm - t - neck.thicknessMm
    const first = dots.findLastIndex(({ x, y }) => x < fromX || y > neck.widthMm / 2)
    const { innerMm, outerMm } = coveredByBlock(treble, 'neck', neck, t)
    expectWithin(innerMm, polylineLengthMm(dots.slice(first + 1)), 0.01)
    const edge = insetPoint(cut.treble, cut.woodEndMm - outerMm, t)
    expect(Math.abs(edge.x - fromX) < 1e-7 || Math.abs(edge.y - neck.widthMm / 2) < 1e-7).toBe(true)
  })

  test('lining runs from block to block along the inner face', () => {
    const found = liningLengths({ bass, treble, sideThicknessMm: t, tail, neck, wastePercent: 10 })
    const whole = innerDots(half, 0, half.lengthMm)
    const bassFrom = whole.findIndex(({ y }) => y >= tail.widthMm / 2)
    const bassTo = whole.findLastIndex(({ y }) => y >= neck.widthMm / 2)
    expectWithin(found.bassMm, polylineLengthMm(whole.slice(bassFrom, bassTo + 1)), 0.03)

    const covered = coveredByBlock(treble, 'neck', neck, t).outerMm
    const [first, second] =
      form === 'pointed'
        ? [innerDots(cut.treble, 0, cut.hornMm!), innerDots(cut.treble, cut.hornMm!, cut.woodEndMm - covered)]
        : [innerDots(cut.treble, 0, cut.woodEndMm - covered), []]
    const from = first.findIndex(({ y }) => y >= tail.widthMm / 2)
    // At a pointed horn the two inner faces end where they cross.
    let [firstTo, secondFrom] = [first.length - 1, 0]
    if (form === 'pointed') {
      let least = Number.POSITIVE_INFINITY
      for (let i = first.length - 900; i < first.length; i++)
        for (let j = 0; j < 2500; j += 5) {
          const apart = Math.hypot(first[i]!.x - second[j]!.x, first[i]!.y - second[j]!.y)
          if (apart < least) [least, firstTo, secondFrom] = [apart, i, j]
        }
      expect(least).toBeLessThan(0.02)
    }
    const length = polylineLengthMm(first.slice(from, firstTo + 1)) + polylineLengthMm(second.slice(secondFrom))
    // The mitre is taken as between straights.
    expectWithin(found.trebleMm, length, form === 'pointed' ? 0.25 : 0.03)
    expectWithin(found.edgeMm, found.bassMm + found.trebleMm, 1e-12)
  })

  test('a half without sharp corners: inner face = outer less thickness x half a turn', () => {
    expectWithin(innerLengthMm(bass, t), half.lengthMm - t * Math.PI, 1e-6)
    expectWithin(curveAt(half, half.lengthMm).point.x, lengthMm, 1e-6)
  })
})

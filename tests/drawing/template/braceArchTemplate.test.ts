import { describe, expect, test } from 'vitest'
import type { BracePlan } from '../../../src/core/boxPlan.ts'
import { compute } from '../../../src/core/compute.ts'
import { halfWidthAtMm } from '../../../src/core/instrument/body.ts'
import type { Plan } from '../../../src/core/plan.ts'
import { braceArchTemplate } from '../../../src/drawing/template/braceArchTemplate.ts'
import { BRACED, BY_BRACES } from '../../core/bracedPlans.ts'
import { PLANED, withFields } from '../../core/everyForm.ts'
import { brace, here, withBraces } from '../../core/instrument/brace/braceSamples.ts'
import { marchSolids } from '../../core/solids.ts'
import { expectWithin } from '../../core/within.ts'
import { STEEL_STRING } from '../../generators/demoModels.ts'
import { readTable } from '../../tables/readTable.ts'
import { cornersOf, pathsOf, pointsOf } from './linesOf.ts'

/** Points of the line to saw between the two ends of the brace. */
const archOf = (plan: Plan, row: number, perStep = 3) => {
  const computed = compute(plan)
  const drawing = braceArchTemplate(computed, row)
  const [cut] = pathsOf(drawing, 'cut')
  const { lengthMm } = computed.geometry.bracing.placed[row]!
  return {
    computed,
    drawing,
    lengthMm,
    points: pointsOf(cut!, perStep).filter(({ x }) => x >= 0 && x <= lengthMm),
  }
}
const only = (values: Partial<BracePlan>, chordMm: number): Plan =>
  withBraces(STEEL_STRING.plan, { one: brace(here(200, -chordMm / 2), here(200, chordMm / 2), values) })

describe('an arch of its own', () => {
  const rows = readTable('sagitta.csv').filter((row) => row.number('R') >= 500 && row.number('chord') <= 400)
  test.each(rows.map((row) => [row.number('R'), row.number('chord'), row.number('sagitta')]))(
    'of %d over %d stands %d over its ends',
    (R, chord, sagitta) => {
      const { points, drawing } = archOf(only({ underside: 'own', archRadiusMm: R }, chord), 0, 64)
      expectWithin(-Math.min(...points.map(({ y }) => y)), sagitta, 1e-3)
      // Every point lies on the circle about the point R under the crown.
      for (const { x, y } of points) expectWithin(Math.hypot(x - chord / 2, y + sagitta - R), R, 1e-4)
      const [edge] = pathsOf(drawing, 'edge')
      const straight = cornersOf(edge!).slice(1, 3)
      expect(straight[0]!.y).toBe(straight[1]!.y)
      // The straight edge lies 40 to 60 mm behind the line between the ends.
      expect(straight[0]!.y).toBeGreaterThan(40)
      expect(straight[0]!.y).toBeLessThan(60)
    },
  )
})

describe('the section of the dome, against upright rays halved until they meet the solids', () => {
  const forms: readonly (readonly [string, Plan])[] = [
    ['sphere', withFields(BRACED, { 'top.form': 'sphere' })],
    ['planed', withFields(BRACED, PLANED)],
    ['sphere with a cutaway', BY_BRACES[3]!],
  ]
  test.each(forms)('%s', (_form, plan) => {
    const { numbers, geometry } = compute(plan)
    const march = marchSolids(plan, numbers.body.lengthMm, halfWidthAtMm(geometry.outline.bass, plan.top.flatFromMm))
    let seen = 0
    geometry.bracing.placed.forEach(({ from, way, lengthMm, plan: { plate, underside } }, row) => {
      if (underside !== 'dome' || lengthMm <= 0) return
      const [heightMm, out] = plate === 'top' ? [march.topMm, 1] : [march.backMm, -1]
      const z = (at: number) => out * heightMm(from.point.x + at * way.x, from.point.y + at * way.y)
      const [a, b] = [z(0), z(lengthMm)]
      const isStep = (at: number) =>
        plate === 'top' &&
        plan.top.form === 'flatUpperBout' &&
        Math.abs(from.point.x + at * way.x - plan.top.flatFromMm) < 1e-3
      for (const { x, y } of archOf(plan, row).points) {
        if (isStep(x)) continue
        expectWithin(-y, z(x) - a - ((b - a) * x) / lengthMm, 1.5e-3, `brace ${row + 1} at ${x}`)
        seen++
      }
    })
    expect(seen).toBeGreaterThan(1500)
  })
})

describe('marks on the strip', () => {
  test('at every eighth stands what the line has risen there', () => {
    const { drawing, points, lengthMm } = archOf(withFields(BRACED, { 'top.form': 'sphere' }), 0)
    const rises = drawing.shapes.flatMap((shape) => (shape.kind === 'ordinate' ? [shape] : []))
    expect(rises.map(({ at }) => at.x)).toEqual([1, 2, 3, 4, 5, 6, 7].map((n) => (lengthMm * n) / 8))
    for (const { at, figured } of rises) {
      expect(figured.key).toBe('braceArch[].riseMm')
      const there = points.find(({ x }) => Math.abs(x - at.x) < 1e-6)
      expectWithin(figured.value, -there!.y, 1e-6)
    }
  })

  test('a straight face has a straight line, a word for it, and no rises', () => {
    const { drawing, points } = archOf(only({ underside: 'flat' }, 300), 0)
    expect(points.every(({ y }) => y === 0)).toBe(true)
    expect(drawing.shapes.some((shape) => shape.kind === 'ordinate')).toBe(false)
    expect(drawing.shapes).toContainEqual(
      expect.objectContaining({ kind: 'label', word: 'straightEdge', isOptional: false }),
    )
  })

  test('the ends of a single brace are told by their sides; of twins, that share a strip, never', () => {
    const computed = compute(STEEL_STRING.plan)
    computed.geometry.bracing.placed.forEach(({ from, to, half, way, lengthMm }, row) => {
      const words = braceArchTemplate(computed, row).shapes.flatMap((shape) =>
        shape.kind === 'label' && ['bass', 'treble', 'tail', 'neck'].includes(shape.word) ? [shape] : [],
      )
      const wordAt = (x: number) => words.find(({ at }) => at.x === x)?.word
      if (half !== 'single') expect(words.some(({ word }) => word === 'bass' || word === 'treble')).toBe(false)
      if (Math.abs(way.y) > Math.abs(way.x) && half === 'single') {
        expect(wordAt(0)).toBe(from.point.y < to.point.y ? 'bass' : 'treble')
        expect(wordAt(lengthMm)).toBe(from.point.y < to.point.y ? 'treble' : 'bass')
      } else if (Math.abs(way.x) > 0.1) expect(wordAt(0)).toBe(from.point.x < to.point.x ? 'tail' : 'neck')
    })
  })

  test('a number no brace has gives an empty drawing', () => {
    for (const row of [-1, 999]) expect(braceArchTemplate(compute(BRACED), row).shapes).toEqual([])
  })
})

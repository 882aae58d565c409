import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { CATALOGUE } from '../../src/core/catalogue.ts'
import { type Computed, compute } from '../../src/core/compute.ts'
import type { Plan } from '../../src/core/plan.ts'
import { readNumbers } from '../../src/core/numbers.ts'
import { overlap } from '../../src/drawing/bounds.ts'
import type { Drawing } from '../../src/drawing/drawing.ts'
import { layDrawing } from '../../src/drawing/layDrawing.ts'
import { boxOf, type Laid } from '../../src/drawing/sheet.ts'
import { svgPath } from '../../src/drawing/svgPath.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { anyPlan, nearModel } from '../generators/plans.ts'
import { CUT_MODELS } from './cutModels.ts'
import { DESK, everyDrawing, everyView, PAPER } from './everyDrawing.ts'
import { pointsAlong } from './svgArc.ts'

/** Paths to numbers that are not finite. */
function unfit(value: unknown, path: string): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [path]
  if (value === null || typeof value !== 'object') return []
  return Object.entries(value).flatMap(([key, inner]) => unfit(inner, `${path}.${key}`))
}

const unfitIn = (plan: Plan, times: number): string[] =>
  everyView(compute(plan), plan, times).flatMap(([name, drawing]) => [
    ...unfit(drawing, name),
    ...[DESK, PAPER].flatMap((sheet) => unfit(layDrawing(drawing, sheet), `${name}, laid`)),
  ])

describe('any plan gives drawings of finite numbers', () => {
  test.each([
    ['near a model', nearModel],
    ['however little of a guitar it is', anyPlan],
  ])('%s', (_which, plans) => {
    fc.assert(
      fc.property(plans, fc.integer({ min: 1, max: 20 }), (plan, times) => {
        expect(unfitIn(plan, times)).toEqual([])
      }),
      { numRuns: 50 },
    )
  })
})

const computedOf = new Map<string, Computed>()
const MODELS = CUT_MODELS.flatMap(([name, plan]) => {
  const computed = compute(plan)
  computedOf.set(name, computed)
  return everyView(computed, plan).map(([view, drawing]) => [name, view, drawing] as const)
})

const figureBoxes = (laid: Laid) => [
  ...laid.dimensions.map(({ figure }) => figure),
  ...laid.stations.flatMap(({ number }) => number ?? []),
  ...laid.labels,
]

describe.each(MODELS)('%s, %s', (model, _name, drawing: Drawing) => {
  test.each([
    ['desk', DESK],
    ['paper', PAPER],
  ])('on the %s no two figures meet and all stand on the sheet', (_where, sheet) => {
    const laid = layDrawing(drawing, sheet)
    const texts = figureBoxes(laid)
    const meeting = texts.flatMap((a, i) =>
      texts
        .slice(i + 1)
        .filter((b) => overlap(boxOf(a), boxOf(b)))
        .map((b) => `${a.text} | ${b.text}`),
    )
    expect(meeting).toEqual([])
    const outside = [...texts, ...laid.marks]
      .map((text) => ({ text: text.text, box: boxOf(text) }))
      .filter(
        ({ box }) =>
          box.minX < laid.box.minX || box.minY < laid.box.minY || box.maxX > laid.box.maxX || box.maxY > laid.box.maxY,
      )
    expect(outside).toEqual([])
  })

  test('every figure is the number it says it is', () => {
    const { numbers } = computedOf.get(model)!
    for (const { figured } of layDrawing(drawing, DESK).dimensions) {
      expect(readNumbers(numbers, figured.key)).not.toHaveLength(0)
      expect(figured.value).toEqual(readNumbers(numbers, figured.key)[figured.row ?? 0])
      expect(figured.quantity).toBe(CATALOGUE[figured.key].quantity)
    }
  })

  test('is made of few enough parts to follow a typing hand', () => {
    const { dimensions, stations, labels } = layDrawing(drawing, DESK)
    const parts =
      drawing.shapes.filter(({ kind }) => kind === 'path').length +
      labels.length * 3 +
      stations.length * 5 +
      dimensions.reduce((sum, { ticks }) => sum + 7 + 2 * ticks.length, 0)
    expect(parts).toBeLessThan(700)
  })
})

describe('what is drawn is what was computed', () => {
  const computed = compute(STEEL_STRING.plan)
  const { numbers } = computed
  const drawings = everyDrawing(computed, 10)
  const paths = (drawing: Drawing, role: string) =>
    drawing.shapes.flatMap((shape) =>
      shape.kind === 'path' && shape.role === role ? [pointsAlong(svgPath(shape.commands))] : [],
    )

  test('a linear dimension spans the length it figures, in true plan', () => {
    for (const shape of drawings.plan.shapes) {
      if (shape.kind !== 'linear') continue
      const level = shape.side === 'above' || shape.side === 'below'
      const span = Math.abs(level ? shape.to.x - shape.from.x : shape.to.y - shape.from.y)
      expect(span).toBeCloseTo(shape.figured.value as number, 6)
    }
  })

  test('the top edge from the side stands ten times over the rim plane, at the heights of the table', () => {
    // Heights by the formula of a sphere through tail and neck, worked out here: z = sqrt(R^2 - d^2) - sqrt(R^2 - L^2/4).
    const [top] = paths(drawings.side, 'edge')
    const R = 8500
    const L = 496
    const { xMm, yMm } = numbers.places.find(({ place }) => place === 'lowerBout')!
    const z = Math.sqrt(R * R - (xMm - L / 2) ** 2 - yMm * yMm) - Math.sqrt(R * R - (L * L) / 4)
    const nearest = top!.reduce((a, b) => (Math.abs(b.x - xMm) < Math.abs(a.x - xMm) ? b : a))
    expect(-nearest.y / 10).toBeCloseTo(z, 1)
  })

  test('the gap of a section across is the sagitta of its chord, times the exaggeration', () => {
    const gap = drawings.domes.shapes.find(
      (shape) => shape.kind === 'linear' && shape.figured.key === 'back.gapAcrossLowerBoutMm',
    )
    const half = 196
    const [R, Dt, Dn, L] = [4600, 106, 90, 496]
    const c = Math.hypot(L, Dt - Dn)
    const axis = L / 2 - ((Dt - Dn) * Math.sqrt(R * R - (c * c) / 4)) / c
    const off = 137.3 - axis
    const r = Math.sqrt(R * R - off * off)
    const sagitta = r - Math.sqrt(r * r - half * half)
    expect(gap?.kind === 'linear' ? (gap.to.y - gap.from.y) / 10 : 0).toBeCloseTo(sagitta, 2)
  })

  test('the bass blank is the mirror of the treble one', () => {
    const treble = paths(drawings.blankTreble, 'cut')[0]!
    const bass = paths(drawings.blankBass, 'cut')[0]!
    treble.forEach((point, i) => {
      expect(bass[i]!.x).toBeCloseTo(-point.x, 3)
      expect(bass[i]!.y).toBeCloseTo(point.y, 3)
    })
    expect(drawings.blankTreble.marks).toEqual({ left: 'tail', right: 'neck' })
    expect(drawings.blankBass.marks).toEqual({ left: 'neck', right: 'tail' })
  })

  test('the cut line passes through the widths of the table', () => {
    const cut = paths(drawings.blankTreble, 'cut')[0]!
    for (const row of numbers.rim) {
      const x = row.alongBlankMm + 15
      const nearest = cut.reduce((a, b) => (Math.abs(b.x - x) < Math.abs(a.x - x) ? b : a))
      expect(nearest.y).toBeCloseTo(row.cutWidthMm, 1)
    }
  })

  test('treble lies below in plan, and is marked so', () => {
    expect(drawings.plan.marks.bottom).toBe('treble')
    const station = drawings.plan.shapes.find((shape) => shape.kind === 'station' && shape.row === 10)
    expect(station?.kind === 'station' ? station.numberAt.y : 0).toBeCloseTo(numbers.rim[10]!.yMm, 9)
  })
})

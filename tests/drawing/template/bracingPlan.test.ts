import { describe, expect, test } from 'vitest'
import { compute } from '../../../src/core/compute.ts'
import { asHanded } from '../../../src/drawing/handed.ts'
import { bracingPlan } from '../../../src/drawing/template/bracingPlan.ts'
import { brace, here, withBraces } from '../../core/instrument/brace/braceSamples.ts'
import { STEEL_STRING } from '../../generators/demoModels.ts'
import { withField } from '../../generators/plans.ts'
import { cornersOf, pathsOf, pointsOf } from './linesOf.ts'

/** One brace on the treble half of each plate. */
const LOPSIDED = withBraces(STEEL_STRING.plan, {
  top: brace(here(90, 60), here(130, 110)),
  back: brace(here(150, 80), here(300, 40), { plate: 'back' }),
})

describe.each([
  // As the plate lies before one: of a top the treble half is above, of a back below; a left hand changes both.
  ['top', 'right', -1, [90, 60, 130, 110]],
  ['top', 'left', 1, [90, 60, 130, 110]],
  ['back', 'right', 1, [150, 80, 300, 40]],
  ['back', 'left', -1, [150, 80, 300, 40]],
] as const)('%s, %s-handed', (plate, handed, trebleBelow, [x1, y1, x2, y2]) => {
  const plan = withField(LOPSIDED, 'handed', handed)
  const drawing = asHanded(bracingPlan(compute(plan), plan, plate), handed)
  const braces = drawing.shapes.flatMap((shape) => (shape.kind === 'path' && shape.covers === true ? [shape] : []))

  test('a brace on the treble half lies there, its ends where they were entered', () => {
    expect(braces).toHaveLength(1)
    const [a, b, c, d] = cornersOf(braces[0]!)
    const middle = (p: typeof a, q: typeof a) => [(p!.x + q!.x) / 2, (p!.y + q!.y) / 2]
    const ends = [middle(a, d), middle(b, c)]
    for (const [i, [x, y]] of [[x1, y1] as const, [x2, y2] as const].entries()) {
      expect(ends[i]![0]).toBeCloseTo(x, 9)
      expect(ends[i]![1]).toBeCloseTo(trebleBelow * y, 9)
    }
    expect(drawing.marks[trebleBelow > 0 ? 'bottom' : 'top']).toBe('treble')
    expect(drawing.seenFrom).toBe('inside')
  })

  test('it is scored; what is cut is the inner face of the sides, and the hole of a top', () => {
    expect(braces.map(({ role }) => role)).toEqual(['thin'])
    const cut = [...pathsOf(drawing, 'edge'), ...pathsOf(drawing, 'cut')].flatMap((path) => pointsOf(path))
    const { centreMm, radiusMm } = plan.soundhole
    const fromHole = cut.filter(({ x, y }) => Math.hypot(x - centreMm, y) < radiusMm + 1)
    expect(fromHole.length > 0).toBe(plate === 'top')
    for (const { x, y } of fromHole) expect(Math.hypot(x - centreMm, y)).toBeCloseTo(radiusMm, 6)
    const rim = cut.filter((point) => !fromHole.includes(point))
    const side = plan.rim.sideThicknessMm
    expect(Math.min(...rim.map(({ x }) => x))).toBeCloseTo(side, 1)
    expect(Math.max(...rim.map(({ x }) => x))).toBeCloseTo(compute(plan).numbers.body.lengthMm - side, 1)
  })
})

test('the grain is told, off the plate', () => {
  const drawing = bracingPlan(compute(LOPSIDED), LOPSIDED, 'back')
  const grain = drawing.shapes.find((shape) => shape.kind === 'label' && shape.word === 'grain')
  if (grain?.kind !== 'label') throw new Error('It is not there.')
  const near = pathsOf(drawing, 'edge')
    .flatMap((path) => pointsOf(path))
    .filter(({ x }) => Math.abs(x - grain.at.x) < 20)
  expect(Math.abs(grain.at.y)).toBeGreaterThan(Math.max(...near.map(({ y }) => Math.abs(y))) + 5)
})

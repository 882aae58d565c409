import { expect, it } from 'vitest'
import { compute } from '../../../../src/core/compute.ts'
import { endsStoppingAt } from '../../../../src/core/instrument/brace/looseEnds.ts'
import { STEEL_STRING } from '../../../generators/demoModels.ts'
import { atBrace, brace, here, rimAt, withBraces } from './braceSamples.ts'

it('ends at a brace are told by name, and where their wood ends: half the bar’s width before its middle', () => {
  const plan = withBraces(STEEL_STRING.plan, {
    bar: brace(rimAt('bass', 150), rimAt('treble', 150), { widthMm: 10 }),
    // Square to the bar, so that it ends 5 mm before its middle line.
    square: brace(here(250, 30), atBrace('bar', 150, 30)),
    twin: brace(atBrace('bar', 150, -60), here(90, -60), { twin: true }),
    free: brace(here(300, -20), here(300, 20)),
  })
  const { placed } = compute(plan).geometry.bracing
  expect(endsStoppingAt('bar', plan.bracing.braces, placed)).toEqual([
    { id: 'square', end: 'to', xMm: 155, yMm: 30 },
    { id: 'twin', end: 'from', xMm: 145, yMm: -60 },
  ])
  expect(endsStoppingAt('free', plan.bracing.braces, placed)).toEqual([])
})

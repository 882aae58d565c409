import { describe, expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import type { Plan } from '../../src/core/plan.ts'
import { overlap } from '../../src/drawing/bounds.ts'
import type { Drawing, NeckDrawingName, Ordinate } from '../../src/drawing/drawing.ts'
import { layDrawing } from '../../src/drawing/layDrawing.ts'
import { neckDrawingOf } from '../../src/drawing/neckDrawingOf.ts'
import { boxOf } from '../../src/drawing/sheet.ts'
import { STRING_SETS } from '../../src/record/patterns/stringSets.ts'
import { DEMO_MODELS, STEEL_STRING } from '../generators/demoModels.ts'
import { sheetOf } from './everyDrawing.ts'

/** The room a drawing has on a tablet, and no more than the bridge is given in height. */
const TABLET = sheetOf(744, 360, 16)
const FANNED: Plan = {
  ...STEEL_STRING.plan,
  scale: { ...STEEL_STRING.plan.scale, fan: 'fanned', lengthMm: 650, trebleLengthMm: 625, squareFret: 7 },
}
const TWELVE: Plan = {
  ...STEEL_STRING.plan,
  strings: { ...STEEL_STRING.plan.strings, set: STRING_SETS.twelveString },
}
const draw = (name: NeckDrawingName, plan: Plan): Drawing => neckDrawingOf(name, compute(plan), plan, 5)
const ordinates = (drawing: Drawing, key: string): Ordinate[] =>
  drawing.shapes.flatMap((shape) => (shape.kind === 'ordinate' && shape.figured.key === key ? [shape] : []))

describe('a fanned board', () => {
  const drawing = draw('fretboard', FANNED)
  const outline = drawing.shapes.find((shape) => shape.kind === 'path' && shape.role === 'edge')
  const corners =
    outline?.kind === 'path'
      ? outline.commands.flatMap((step) => (step[0] === 'M' || step[0] === 'L' ? [{ x: step[1], y: step[2] }] : []))
      : []
  const nut = (isBass: boolean) => corners.filter(({ y }) => y < 0 === isBass).toSorted((a, b) => b.x - a.x)[0]!

  test.each([
    ['frets[].bassEdgeMm', true],
    ['frets[].trebleEdgeMm', false],
  ] as const)('%s stands as far from the nut’s own corner as it says', (key, isBass) => {
    const places = ordinates(drawing, key)
    expect(places).toHaveLength(FANNED.scale.frets)
    for (const { at, figured } of places) expect(nut(isBass).x - at.x).toBeCloseTo(figured.value as number, 2)
  })

  test('the length from nut to joint lies on the centreline, and is as long as it says', () => {
    const shape = drawing.shapes.find((one) => one.kind === 'linear' && one.figured.key === 'board.nutToJointMm')
    if (shape?.kind !== 'linear') throw new Error('It is not drawn.')
    expect([shape.from.y, shape.to.y]).toEqual([0, 0])
    expect(Math.abs(shape.to.x - shape.from.x)).toBeCloseTo(shape.figured.value as number, 9)
    // Neither corner of a slanting nut is as far from the joint.
    for (const isBass of [true, false]) expect(Math.abs(nut(isBass).x - shape.to.x)).toBeGreaterThan(2)
  })
})

describe('a square board', () => {
  test('every fret has its place and its count, also where they stand close', () => {
    const laid = layDrawing(draw('fretboard', STEEL_STRING.plan), TABLET)
    const counts = laid.stations.flatMap(({ number }) => number?.text ?? [])
    expect(counts.map(Number).toSorted((a, b) => a - b)).toEqual(Array.from({ length: 20 }, (_, i) => i + 1))
    expect(laid.dimensions.filter(({ figured }) => figured.key === 'frets[].fromNutMm')).toHaveLength(20)
  })
})

describe('what lies on either side of the centreline', () => {
  test.each([
    ['head', 'tuners[].acrossMm'],
    ['bridge', 'pins[].acrossMm'],
    ['strings', 'strings[].saddleAcrossMm'],
  ] as const)('%s: the side is told by the place, and no figure has a sign', (name, key) => {
    const drawing = draw(name, STEEL_STRING.plan)
    const across = ordinates(drawing, key)
    expect(across.some(({ figured }) => (figured.value as number) < 0)).toBe(true)
    for (const { at, figured } of across)
      expect(Math.sign(name === 'strings' ? at.x : at.y)).toBe(Math.sign(figured.value as number))
    const texts = layDrawing(drawing, TABLET).dimensions.filter(({ figured }) => figured.key === key)
    expect(texts.length).toBeGreaterThan(0)
    for (const { figure, figured } of texts)
      expect(Number(figure.text)).toBeCloseTo(Math.abs(figured.value as number), 1)
  })

  test.each([
    ['head', ['tuners[].acrossMm', 'tuners[].fromNutMm']],
    ['bridge', ['pins[].acrossMm']],
  ] as const)('%s of twelve strings: no figure is left out, none lies under BASS or TREBLE', (name, keys) => {
    const laid = layDrawing(draw(name, TWELVE), TABLET)
    for (const key of keys)
      expect(
        laid.dimensions.filter(({ figured }) => figured.key === key),
        key,
      ).toHaveLength(12)
    const posts = laid.dimensions.map(({ figure }) => boxOf(figure))
    for (const mark of laid.marks) expect(posts.some((box) => overlap(box, boxOf(mark)))).toBe(false)
  })
})

describe('the neck set', () => {
  test.each(DEMO_MODELS.map(({ name, plan }) => [name, plan] as const))(
    '%s: the room under the board is figured under it, wherever the board lies',
    (_name, plan) => {
      const drawing = draw('neckSet', plan)
      const key = 'neckSet.gapAtEndMm'
      const shape = drawing.shapes.find((one) => one.kind === 'linear' && one.figured.key === key)
      if (shape?.kind !== 'linear') throw new Error('It is not drawn.')
      expect(shape.from.y).toBeGreaterThanOrEqual(shape.to.y)
      const laid = layDrawing(drawing, TABLET).dimensions.find(({ figured }) => figured.key === key)!
      expect(laid.figure.pivot.y + laid.figure.offset.y).toBeGreaterThan(shape.from.y)
    },
  )
})

import { describe, expect, test } from 'vitest'
import { compute } from '../../../src/core/compute.ts'
import type { Plan } from '../../../src/core/plan.ts'
import type { Drawing, PathShape } from '../../../src/drawing/drawing.ts'
import { asHanded } from '../../../src/drawing/handed.ts'
import { fretboardPlan } from '../../../src/drawing/template/fretboardPlan.ts'
import { slottingRuler } from '../../../src/drawing/template/slottingRuler.ts'
import { withFields } from '../../core/everyForm.ts'
import { expectWithin } from '../../core/within.ts'
import { STEEL_STRING } from '../../generators/demoModels.ts'
import { readTable } from '../../tables/readTable.ts'
import { cornersOf, crossingAt, pathsOf } from './linesOf.ts'

const scaled = (lengthMm: number): Plan =>
  withFields(STEEL_STRING.plan, { 'scale.lengthMm': lengthMm, 'scale.frets': 24 })
const fanned = withFields(STEEL_STRING.plan, {
  'scale.fan': 'fanned',
  'scale.lengthMm': 650,
  'scale.trebleLengthMm': 625,
  'scale.squareFret': 7,
})
/** Slots run across; the board's own outline is closed. */
const slotsOf = (drawing: Drawing): PathShape[] =>
  pathsOf(drawing, 'slot').filter(({ commands }) => commands.length === 2)
/** The nut's end on the centreline: of a ruler its square end, of a board the middle of its farther end. */
const nutOf = (drawing: Drawing): number => {
  const outline = [...pathsOf(drawing, 'cut'), ...pathsOf(drawing, 'edge')].find(({ commands }) => commands.length > 3)
  const [a, b] = cornersOf(outline!).toSorted((p, q) => q.x - p.x)
  return (a!.x + b!.x) / 2
}

describe.each([
  ['fretboardPlan', fretboardPlan],
  ['slottingRuler', slottingRuler],
] as const)('%s', (_name, draw) => {
  test.each(readTable('fret_positions.csv').map((row) => [row.number('scale_mm'), row] as const))(
    'of %d: every slot where the table of frets has it',
    (scale, row) => {
      const drawing = draw(compute(scaled(scale)))
      const nut = nutOf(drawing)
      const slots = slotsOf(drawing)
      expect(slots).toHaveLength(24)
      for (const fret of [1, 2, 3, 4, 5, 7, 9, 12, 14, 15, 19, 20, 24])
        expectWithin(nut - crossingAt(slots[fret - 1]!, 0), row.number(`x${fret}`), 6e-5, `fret ${fret}`)
    },
  )

  test.each(readTable('rule_of_18.csv').map((row) => [row.number('scale'), row.number('n'), row] as const))(
    'of %d: fret %d within 0.003 of one stepped off by 1 in 17.817',
    (scale, n, row) => {
      const drawing = draw(compute(scaled(scale)))
      expectWithin(nutOf(drawing) - crossingAt(slotsOf(drawing)[n - 1]!, 0), row.number('divisor_17.817'), 3.1e-3)
    },
  )

  test('fanned: on the way of either outer string every slot is where that string’s own scale asks', () => {
    const drawing = draw(compute(fanned))
    const all = slotsOf(drawing)
    const slots = all.slice(all.length - fanned.scale.frets)
    const { nutSpreadMm, saddleSpreadMm } = fanned.strings
    const square = slots[fanned.scale.squareFret - 1]!
    expectWithin(cornersOf(square)[0]!.x - cornersOf(square)[1]!.x, 0, 1e-9)
    const [x7] = [crossingAt(square, 0)]
    for (const [side, scale] of [
      [-1, 650],
      [1, 625],
    ] as const)
      slots.forEach((slot, i) => {
        const gone = 1 - 2 ** (-(i + 1) / 12)
        const y = (side * (nutSpreadMm + (saddleSpreadMm - nutSpreadMm) * gone)) / 2
        const fromSquare = scale * (2 ** (-(i + 1) / 12) - 2 ** (-7 / 12))
        expectWithin(crossingAt(slot, y), x7 + fromSquare, 1e-9, `fret ${i + 1}, side ${side}`)
      })
  })

  test('for the left hand the slots lean the other way', () => {
    const [right, left] = (['right', 'left'] as const).map(
      (hand) => slotsOf(asHanded(draw(compute(fanned)), hand)).at(-1)!,
    )
    expectWithin(crossingAt(left!, 10), crossingAt(right!, -10), 1e-9)
    expect(Math.abs(crossingAt(left!, 10) - crossingAt(right!, 10))).toBeGreaterThan(1)
  })
})

describe('the fingerboard', () => {
  test('unbound, a slot runs from edge to edge; bound, it stops the binding’s thickness short, measured along it', () => {
    const edges = slotsOf(fretboardPlan(compute(withFields(fanned, { 'board.bindingMm': 0 })))).map(cornersOf)
    const within = slotsOf(fretboardPlan(compute(withFields(fanned, { 'board.bindingMm': 2 })))).map(cornersOf)
    expect(edges).toHaveLength(fanned.scale.frets)
    edges.forEach((whole, i) => {
      for (const end of [0, 1])
        expectWithin(Math.hypot(whole[end]!.x - within[i]![end]!.x, whole[end]!.y - within[i]![end]!.y), 2, 1e-9)
    })
    // The widths at the nut and at fret 12 give the edge of a square board at every fret.
    const plan = withFields(STEEL_STRING.plan, { 'board.bindingMm': 0 })
    const { nutWidthMm: a, widthAtTwelfthMm: b } = plan.board
    slotsOf(fretboardPlan(compute(plan))).forEach((slot, i) => {
      const half = (a + (b - a) * 2 * (1 - 2 ** (-(i + 1) / 12))) / 2
      expect(cornersOf(slot).map(({ y }) => Number(y.toFixed(9)))).toEqual(
        [-half, half].map((y) => Number(y.toFixed(9))),
      )
    })
  })

  test('its outline is cut, its markers and joint are not, and no string is on it', () => {
    const drawing = fretboardPlan(compute(STEEL_STRING.plan))
    expect(pathsOf(drawing, 'cut').filter(({ commands }) => commands.at(-1)![0] === 'Z')).toHaveLength(1)
    expect(pathsOf(drawing, 'ghost')).toEqual([])
    const round = pathsOf(drawing, 'thin').filter(({ commands }) => commands.some(([step]) => step === 'A'))
    expect(round.length).toBeGreaterThanOrEqual(STEEL_STRING.plan.board.markersAt.length)
  })
})

test.each([
  ['a board', fretboardPlan(compute(STEEL_STRING.plan)), ['nut', 'referenceEdge']],
  ['a fanned board', fretboardPlan(compute(fanned)), ['nut', 'referenceEdge']],
  ['a ruler', slottingRuler(compute(STEEL_STRING.plan)), ['nut', 'referenceEdge']],
  // Its square end is laid to nothing: the nut's line lies aslant before it.
  ['a ruler for fanned frets', slottingRuler(compute(fanned)), ['nut']],
] as const)('%s says at its nut, and nowhere else, which end it is', (_, drawing, said) => {
  const words = drawing.shapes.flatMap((shape) =>
    shape.kind === 'label' && (shape.word === 'nut' || shape.word === 'referenceEdge') ? [shape] : [],
  )
  expect(words.map(({ word }) => word)).toEqual(said)
  for (const { isOptional, at, away } of words) {
    expect(isOptional).toBe(false)
    expect(away.x).toBeLessThan(0)
    // On the line of the nut itself, aslant or not: of all slots, or of the end that is cut, the one farthest to the neck.
    const ends = [...pathsOf(drawing, 'slot'), ...pathsOf(drawing, 'cut'), ...pathsOf(drawing, 'edge')]
      .flatMap((path) => {
        const corners = cornersOf(path)
        return corners.map((a, i) => [a, corners[(i + 1) % corners.length]!] as const)
      })
      .filter(([a, b]) => (a.y - at.y) * (b.y - at.y) < 0)
      .map(([a, b]) => a.x + ((b.x - a.x) * (at.y - a.y)) / (b.y - a.y))
    expect(Math.min(...ends.map((x) => Math.abs(x - at.x)))).toBeLessThan(1e-9)
    // Past it comes the strip's own end at most.
    expect(ends.filter((x) => x > at.x + 1e-9).length).toBeLessThanOrEqual(1)
  }
})

describe('the ruler', () => {
  test('its slots run over its whole height, and the saddle line stands a scale from its end', () => {
    const drawing = slottingRuler(compute(scaled(650)))
    const { minY, maxY, maxX } = drawing.bounds
    for (const slot of slotsOf(drawing)) expect(cornersOf(slot).map(({ y }) => y)).toEqual([minY, maxY])
    const [saddle] = pathsOf(drawing, 'thin')
    expectWithin(maxX - crossingAt(saddle!, 0), 650, 1e-9)
    expectWithin(maxX - nutOf(drawing), 0, 1e-9)
  })

  test('the figure of a slot stands on it, on its nut side', () => {
    const drawing = slottingRuler(compute(fanned))
    const slots = slotsOf(drawing).slice(-fanned.scale.frets)
    const figures = drawing.shapes.flatMap((shape) =>
      shape.kind === 'ordinate' && shape.figured.key === 'frets[].fromNutMm' ? [shape] : [],
    )
    expect(figures).toHaveLength(slots.length)
    figures.forEach(({ at, away, figured }, i) => {
      expectWithin(at.x, crossingAt(slots[i]!, at.y), 1e-9)
      expect(away.x).toBeGreaterThan(0)
      expectWithin(figured.value, 637.5 * (1 - 2 ** (-(i + 1) / 12)), 1e-9)
    })
  })

  test('for fanned frets it is wider than the board anywhere', () => {
    const { minY, maxY } = slottingRuler(compute(fanned)).bounds
    const board = fretboardPlan(compute(fanned)).shapes.find((shape) => shape.kind === 'path' && shape.role === 'cut')
    const ys = cornersOf(board as PathShape).map(({ y }) => y)
    expect(minY).toBeLessThan(Math.min(...ys))
    expect(maxY).toBeGreaterThan(Math.max(...ys))
  })
})

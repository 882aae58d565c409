import { readdirSync, readFileSync } from 'node:fs'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import type { Point } from '../../src/core/geometry/point.ts'
import type { Drawing, PathCommand } from '../../src/drawing/drawing.ts'
import { drawingOf } from '../../src/drawing/drawingOf.ts'
import { flipped } from '../../src/drawing/flipped.ts'
import { asHanded } from '../../src/drawing/handed.ts'
import { layDrawing } from '../../src/drawing/layDrawing.ts'
import { svgPath } from '../../src/drawing/svgPath.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { nearModel } from '../generators/plans.ts'
import { CUT_MODELS, withCutaway } from './cutModels.ts'
import { DESK, everyView } from './everyDrawing.ts'
import { pointsAlong } from './svgArc.ts'

const views = (hand: 'right' | 'left', form: 'none' | 'rounded' | 'pointed') => {
  const plan = { ...withCutaway(STEEL_STRING.plan, form), handed: hand }
  return new Map(everyView(compute(plan), plan, 5))
}
const ROUNDED = { right: views('right', 'rounded'), left: views('left', 'rounded') }
const NAMES = [...ROUNDED.right.keys()]

/** Angles come back to the last digit only. */
const rounded = (value: unknown): unknown =>
  JSON.parse(JSON.stringify(value, (_, v: unknown) => (typeof v === 'number' ? Number(v.toFixed(9)) + 0 : v)))

const points = (drawing: Drawing): Point[] =>
  drawing.shapes.flatMap((shape) =>
    shape.kind === 'path' && shape.isKept !== true ? pointsAlong(svgPath(shape.commands, 9)) : [],
  )

describe('turning a drawing over', () => {
  test.each(CUT_MODELS.filter(([name]) => name.endsWith('right')))('%s: twice gives the same', (_name, plan) => {
    for (const [, drawing] of everyView(compute(plan), plan))
      for (const axis of ['x', 'y'] as const)
        expect(rounded(flipped(flipped(drawing, axis), axis))).toEqual(rounded(drawing))
  })

  test('twice gives the same, whatever the plan', () => {
    fc.assert(
      fc.property(nearModel, fc.constantFrom('x' as const, 'y' as const), (plan, axis) => {
        for (const [, drawing] of everyView(compute(plan), plan))
          expect(rounded(flipped(flipped(drawing, axis), axis))).toEqual(rounded(drawing))
      }),
      { numRuns: 15 },
    )
  })

  test.each(NAMES)('%s: its lines are the points of the other hand, in the mirror', (name) => {
    const [right, left] = [ROUNDED.right.get(name)!, ROUNDED.left.get(name)!]
    const turned = points(left)
    const mirrored = points(right).map(mirrorOf(name))
    expect(turned).toHaveLength(mirrored.length)
    turned.forEach((point, i) => {
      expect(point.x).toBeCloseTo(mirrored[i]!.x, 6)
      expect(point.y).toBeCloseTo(mirrored[i]!.y, 6)
    })
  })

  test('an arc bends the same way in the mirror as its points do', () => {
    const arc: readonly PathCommand[] = [
      ['M', 10, 0],
      ['A', 10, 0, 1, 0, 10],
    ]
    const drawing: Drawing = {
      name: 'plan',
      seenFrom: 'front',
      bounds: { minX: 0, minY: 0, maxX: 10, maxY: 10 },
      heightsTimes: 1,
      marks: {},
      shapes: [{ kind: 'path', role: 'edge', commands: arc }],
    }
    // A quarter of the circle about the origin: its middle lies at 45 degrees, in the mirror at -45.
    const middle = points(flipped(drawing, 'y'))[7]!
    expect(middle.x).toBeCloseTo(10 * Math.SQRT1_2, 6)
    expect(middle.y).toBeCloseTo(-10 * Math.SQRT1_2, 6)
  })

  test('the same figures stand on it, and every lettering reads from below or from the right', () => {
    for (const name of NAMES) {
      const [right, left] = [ROUNDED.right, ROUNDED.left].map((hand) => layDrawing(hand.get(name)!, DESK))
      const told = (laid: typeof right) =>
        new Set(laid!.dimensions.map(({ figured }) => `${figured.key} ${figured.row}`))
      // Ordinates that are not urgent give way where they would meet another figure: another few may on either.
      const sure = ROUNDED.right
        .get(name)!
        .shapes.flatMap((shape) =>
          shape.kind === 'label' || shape.kind === 'path' || shape.kind === 'station'
            ? []
            : shape.kind === 'ordinate' && shape.urgency > 0
              ? []
              : [`${shape.figured.key} ${shape.figured.row}`],
        )
      expect(sure.filter((figure) => !told(right).has(figure) || !told(left).has(figure))).toEqual([])
      for (const { turnDeg } of [...left!.labels, ...left!.dimensions.map(({ figure }) => figure)])
        expect([0, -90]).toContain(turnDeg)
    }
  })
})

/** What is seen from the front turns about the centreline, what is seen from a side end for end; a cut along the middle stays. */
function mirrorOf(name: string): (point: Point) => Point {
  if (['section', 'neckSet', 'neckSide', 'bridgeSection', 'braceSide', 'edgeSection'].includes(name))
    return (point) => point
  const front = [
    'bracingTop',
    'bracingBack',
    'plan',
    'bevels',
    'rosette',
    'blockTail',
    'blockNeck',
    'fretboard',
    'bridge',
    'head',
  ].includes(name)
  return front ? ({ x, y }) => ({ x, y: -y }) : ({ x, y }) => ({ x: -x, y })
}

describe('bass and treble lie where they lie on the bench', () => {
  test('from the front with the neck to the right, treble is below for the right hand and above for the left', () => {
    expect(ROUNDED.right.get('plan')!.marks).toMatchObject({
      top: 'bass',
      bottom: 'treble',
      left: 'tail',
      right: 'neck',
    })
    expect(ROUNDED.left.get('plan')!.marks).toMatchObject({
      top: 'treble',
      bottom: 'bass',
      left: 'tail',
      right: 'neck',
    })
    // The cutaway is on the treble side: there the body is narrower beside the neck.
    const reachBesideNeck = (drawing: Drawing, sign: 1 | -1) =>
      Math.max(
        ...drawing.shapes
          .flatMap((shape) =>
            shape.kind === 'path' && shape.role === 'edge' ? pointsAlong(svgPath(shape.commands)) : [],
          )
          .filter(({ x, y }) => x > 470 && x < 490 && y * sign > 0)
          .map(({ y }) => Math.abs(y)),
      )
    const { right, left } = ROUNDED
    expect(reachBesideNeck(right.get('plan')!, 1)).toBeLessThan(reachBesideNeck(right.get('plan')!, -1) - 20)
    expect(reachBesideNeck(left.get('plan')!, -1)).toBeLessThan(reachBesideNeck(left.get('plan')!, 1) - 20)
  })

  test.each([
    // Seen from outside with the top up, a right-handed body has its tail to the left from the treble side; from inside it is the other way.
    ['side, treble', 'right', 'tail'],
    ['side, bass', 'right', 'neck'],
    ['side, treble', 'left', 'neck'],
    ['side, bass', 'left', 'tail'],
    ['inside, treble', 'right', 'neck'],
    ['inside, bass', 'right', 'tail'],
    ['inside, treble', 'left', 'tail'],
    ['inside, bass', 'left', 'neck'],
    ['blankTreble', 'right', 'tail'],
    ['blankBass', 'right', 'neck'],
    ['blankTreble', 'left', 'neck'],
    ['blankBass', 'left', 'tail'],
  ] as const)('%s, %s-handed: at the left end lies the %s', (name, hand, end) => {
    const drawing = ROUNDED[hand].get(name)!
    expect(drawing.marks.left).toBe(end)
    const last = drawing.shapes.findLast((shape) => shape.kind === 'station')
    const first = drawing.shapes.find((shape) => shape.kind === 'station')
    if (first?.kind === 'station' && last?.kind === 'station')
      expect(first.numberAt.x < last.numberAt.x).toBe(end === 'tail')
  })

  test.each(['right', 'left'] as const)(
    'a cut across of a %s-handed body has its treble on the narrower side',
    (hand) => {
      const plan = { ...withCutaway(STEEL_STRING.plan, 'rounded'), handed: hand }
      const domes = drawingOf('domes', compute(plan), plan, { heightsTimes: 5 })
      const at = (word: string) => {
        const label = domes.shapes.find((shape) => shape.kind === 'label' && shape.word === word)
        return label?.kind === 'label' ? label.at.x : Number.NaN
      }
      // The first column is the same strip for both: treble lies right of bass for the right hand.
      expect(at('treble') > at('bass')).toBe(hand === 'right')
    },
  )

  test('a left-handed treble blank of a mirrored body is the right-handed bass blank, line for line', () => {
    const [right, left] = [views('right', 'none'), views('left', 'none')]
    expect(rounded(left.get('blankTreble')!.shapes)).toEqual(rounded(right.get('blankBass')!.shapes))
  })

  test('the right hand is what a drawing is made for', () => {
    for (const drawing of ROUNDED.right.values()) expect(asHanded(drawing, 'right')).toBe(drawing)
  })
})

describe('in one place', () => {
  const files = (folder: string): string[] =>
    readdirSync(new URL(`../../${folder}/`, import.meta.url), { withFileTypes: true }).flatMap((entry) =>
      entry.isDirectory() ? files(`${folder}/${entry.name}`) : [`${folder}/${entry.name}`],
    )
  const sources = files('src').filter((file) => /\.tsx?$/.test(file))
  const textOf = (file: string) => readFileSync(new URL(`../../${file}`, import.meta.url), 'utf8')

  test('a drawing is handed where it is made, and nowhere else', () => {
    const using = sources.filter((file) => /\basHanded\(/.test(textOf(file)) && !file.endsWith('/handed.ts'))
    expect(using.toSorted()).toEqual([
      'src/drawing/boxDrawingOf.ts',
      'src/drawing/drawingOf.ts',
      'src/drawing/neckDrawingOf.ts',
      'src/drawing/planDrawingOf.ts',
      'src/drawing/templateDrawingOf.ts',
    ])
  })

  test('views and papers take every drawing from there', () => {
    const making = sources
      .filter((file) => /^src\/(views|papers|app|ui|files)\//.test(file))
      .filter((file) => /from '[./]+\/drawing\/\w+Drawing\.ts'/.test(textOf(file).replace(/.*\/layDrawing\.ts.*/g, '')))
    expect(making).toEqual([])
  })
})

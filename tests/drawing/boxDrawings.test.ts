import { describe, expect, it } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { insetPoint } from '../../src/core/geometry/curve.ts'
import { innerRimOf } from '../../src/core/instrument/brace/innerRim.ts'
import { boxDrawingOf } from '../../src/drawing/boxDrawingOf.ts'
import { acrossPlate, fittedCorners } from '../../src/drawing/box/bracingFrame.ts'
import type { Drawing, PathShape, Shape } from '../../src/drawing/drawing.ts'
import { DEMO_MODELS, STEEL_STRING } from '../generators/demoModels.ts'
import { withField } from '../generators/plans.ts'

const computed = compute(STEEL_STRING.plan)
const stations = ({ shapes }: Drawing) => shapes.filter((shape) => shape.kind === 'station')
const isCover = (shape: Shape): shape is PathShape => shape.kind === 'path' && shape.covers === true

describe.each([
  // Looking up at the top from inside, treble lies above; into the open back, below. A left hand changes both.
  ['bracingTop', 'right', -1],
  ['bracingTop', 'left', 1],
  ['bracingBack', 'right', 1],
  ['bracingBack', 'left', -1],
] as const)('%s for the %s hand', (name, handed, trebleBelow) => {
  const plate = name === 'bracingTop' ? 'top' : 'back'
  const plan = withField(STEEL_STRING.plan, 'handed', handed)
  const drawing = boxDrawingOf(name, computed, plan)
  const { placed } = computed.geometry.bracing

  it('says which side is which', () => {
    expect(drawing.marks[trebleBelow > 0 ? 'bottom' : 'top']).toBe('treble')
    expect(drawing.marks.left).toBe('tail')
    expect(drawing.seenFrom).toBe('inside')
  })

  it('shows every brace of its plate, and none of the other', () => {
    const own = placed.filter((brace) => brace.plan.plate === plate)
    expect(drawing.shapes.filter(isCover)).toHaveLength(own.length)
    expect(stations(drawing).map(({ row }) => row)).toEqual(
      placed.flatMap(({ plan: { plate: on } }, i) => (on === plate ? [i] : [])),
    )
  })

  it('has the treble twin of a brace on the treble side', () => {
    const own = placed.flatMap((brace, row) => (brace.plan.plate === plate ? [{ brace, row }] : []))
    const sides = own.map(({ brace, row }) => {
      const part = brace.half === 'single' ? 0.4 : 0.3
      const lean = brace.from.point.y + part * brace.lengthMm * brace.way.y
      const at = stations(drawing).find((one) => one.row === row)?.numberAt
      return Math.sign(at?.y ?? 0) === Math.sign(lean) * trebleBelow
    })
    expect(sides).toEqual(own.map(() => true))
  })

  it('leads from the sheet to the body and back', () => {
    const there = acrossPlate({ x: 120, y: 30 }, plate, handed)
    expect(there).toEqual({ x: 120, y: 30 * trebleBelow })
    expect(acrossPlate(there, plate, handed)).toEqual({ x: 120, y: 30 })
  })
})

describe('a brace drawn', () => {
  const { outline, rimSite, bracing } = computed.geometry
  const rim = innerRimOf(outline, rimSite.sideThicknessMm)

  it('ends on the inner face with both corners, as points stepped along that face say', () => {
    const face = Array.from({ length: 40001 }, (_, i) =>
      insetPoint(outline.bass, (outline.bass.lengthMm * i) / 40000, rimSite.sideThicknessMm),
    )
    const offMm = (x: number, y: number) =>
      face.reduce((best, point) => Math.min(best, Math.hypot(point.x - x, point.y - Math.abs(y))), Infinity)
    const [cross] = bracing.placed
    const { from, to } = cross!
    const whole = { ...cross!, from: { ...from, shortMm: 0 }, to: { ...to, shortMm: 0 } }
    for (const { x, y } of fittedCorners(whole, rim)) expect(offMm(x, y)).toBeLessThan(0.02)
    // And with its tips, short of it along the brace.
    const [a] = fittedCorners(cross!, rim)
    const [b] = fittedCorners(whole, rim)
    expect(Math.hypot(a!.x - b!.x, a!.y - b!.y)).toBeCloseTo(computed.numbers.braces[0]!.fromShortMm, 9)
  })

  it('keeps its width between the fitted corners', () => {
    for (const brace of bracing.placed) {
      const [a, , , d] = fittedCorners(brace, rim)
      const acrossMm = Math.abs((d!.x - a!.x) * brace.way.y - (d!.y - a!.y) * brace.way.x)
      expect(acrossMm).toBeCloseTo(brace.plan.widthMm, 6)
    }
  })

  it('is drawn from its side as high as it is, and risen as its arch says', () => {
    const row = computed.numbers.braces.findIndex(({ kind }) => kind === 'cross')
    const side = boxDrawingOf('braceSide', computed, STEEL_STRING.plan, { brace: row, heightsTimes: 4 })
    const brace = computed.numbers.braces[row]!
    const [wood] = side.shapes.filter((shape): shape is PathShape => shape.kind === 'path')
    const xs = wood!.commands.flatMap((command) => (command[0] === 'Z' ? [] : [command[1]]))
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(brace.finishedLengthMm, 6)
    expect(Math.min(...xs)).toBeCloseTo(brace.fromShortMm, 6)
    expect(-side.bounds.minY / 4).toBeCloseTo(brace.archRiseMm, 2)
  })
})

it.each(DEMO_MODELS.map(({ name, plan }) => [name, plan] as const))(
  'the edges of the %s are drawn at their sizes',
  (_, plan) => {
    const drawing = boxDrawingOf('edgeSection', compute(plan), plan, { place: 2 })
    const [, side] = drawing.shapes.filter((shape): shape is PathShape => shape.kind === 'path')
    const xs = side!.commands.flatMap((command) => (command[0] === 'Z' ? [] : [command[1]]))
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(plan.rim.sideThicknessMm, 9)
  },
)

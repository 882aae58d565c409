import type { Computed } from '../../core/compute.ts'
import { braceFace } from '../../core/instrument/brace/braceArch.ts'
import { braceHeightMm } from '../../core/instrument/brace/braceHeight.ts'
import { shapesBounds } from '../bounds.ts'
import { inPlace, ordinate, outside } from '../dimension.ts'
import type { Drawing, Shape } from '../drawing.ts'
import { figured, figuredRow } from '../figured.ts'
import { closed, drawn, through } from '../line.ts'

const STEPS = 64
const EIGHTHS = 8

/**
 * One brace from its side, its gluing face up as it is planed, from its first end: the arch over a straightedge from end to end, the ridge
 * with its tapers, let-in ends, and the rise at every eighth. Heights may be drawn larger.
 */
export function braceSideDrawing(computed: Computed, row: number, heightsTimes: number): Drawing {
  const { geometry, numbers } = computed
  const brace = geometry.bracing.placed[row]
  const empty: Drawing = {
    name: 'braceSide',
    seenFrom: 'section',
    bounds: { minX: 0, minY: 0, maxX: 1, maxY: 1 },
    heightsTimes,
    marks: {},
    shapes: [],
  }
  if (brace === undefined || brace.lengthMm <= 0) return empty
  const { plan, lengthMm } = brace
  const face = braceFace(
    brace,
    plan.plate === 'top'
      ? { surface: geometry.top.plate, outward: 'up' }
      : { surface: geometry.back.surface, outward: 'down' },
  )
  const own = numbers.braces[row]
  const places = [
    ...Array.from({ length: STEPS + 1 }, (_, i) => (lengthMm * i) / STEPS),
    own?.fromTaperMm ?? 0,
    lengthMm - (own?.toTaperMm ?? 0),
  ].sort((a, b) => a - b)
  const up = (along: number) => -heightsTimes * face.riseMm(along)
  const under = (along: number) => up(along) + heightsTimes * braceHeightMm(plan, lengthMm, along)
  const row8 = numbers.braceArch.flatMap((one, i) => (one.number === row + 1 ? [{ one, i }] : []))
  const letIn = (mm: number, along: number, way: 1 | -1): Shape[] =>
    mm <= 0
      ? []
      : [
          drawn(
            'thin',
            closed(
              through([
                { x: along, y: up(along) },
                { x: along + way * mm, y: up(along) },
                { x: along + way * mm, y: under(along) },
                { x: along, y: under(along) },
              ]),
            ),
          ),
        ]
  const shapes: Shape[] = [
    drawn(
      'edge',
      closed(
        through([
          ...places.map((along) => ({ x: along, y: up(along) })),
          ...places.toReversed().map((along) => ({ x: along, y: under(along) })),
        ]),
      ),
    ),
    drawn(
      'hidden',
      through([
        { x: 0, y: 0 },
        { x: lengthMm, y: 0 },
      ]),
    ),
    ...letIn(own?.fromLetInMm ?? 0, 0, -1),
    ...letIn(own?.toLetInMm ?? 0, lengthMm, 1),
  ]
  const bounds = shapesBounds(shapes)
  const middle = lengthMm / 2
  return {
    ...empty,
    bounds,
    shapes: [
      ...shapes,
      ...row8.map(({ one, i }, part) =>
        ordinate(
          figuredRow('braceArch[].riseMm', i, one.riseMm),
          { x: one.alongMm, y: bounds.minY },
          { x: 0, y: -1 },
          part === EIGHTHS / 2 ? 0 : part % 2 === 0 ? 1 : 2,
          true,
        ),
      ),
      outside(figured(numbers, 'braces[].lengthMm', row), 'below', bounds.maxY, { x: 0, y: 0 }, { x: lengthMm, y: 0 }),
      inPlace(
        figured(numbers, 'braces[].heightMm', row),
        'right',
        { x: middle, y: up(middle) },
        { x: middle, y: under(middle) },
      ),
    ],
  }
}

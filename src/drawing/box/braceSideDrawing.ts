import type { Computed } from '../../core/compute.ts'
import { faceOfBrace } from './faceOfBrace.ts'
import { placedHeightMm } from '../../core/instrument/brace/braceHeight.ts'
import { shapesBounds } from '../bounds.ts'
import { inPlace, ordinate, outside } from '../dimension.ts'
import type { Drawing, Shape } from '../drawing.ts'
import { figured, figuredRow } from '../figured.ts'
import { closed, drawn, through } from '../line.ts'

const STEPS = 64
const EIGHTHS = 8

/**
 * One brace from its side, its gluing face up as it is planed, from its first end: the arch over a straightedge from end to end, the wood from tip
 * to tip with its tapers, where the linings begin, and the rise at every eighth. Heights may be drawn larger.
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
  const { lengthMm } = brace
  const face = faceOfBrace(geometry, brace)
  const own = numbers.braces[row]
  const [firstMm, lastMm] = [brace.from.shortMm, Math.max(lengthMm - brace.to.shortMm, brace.from.shortMm)]
  const places = [
    firstMm,
    ...Array.from({ length: STEPS + 1 }, (_, i) => (lengthMm * i) / STEPS),
    firstMm + (own?.fromTaperMm ?? 0),
    lastMm - (own?.toTaperMm ?? 0),
    lastMm,
  ]
    .filter((along) => along >= firstMm && along <= lastMm)
    .sort((a, b) => a - b)
  const up = (along: number) => -heightsTimes * face.riseMm(along)
  const under = (along: number) => up(along) + heightsTimes * placedHeightMm(brace, along)
  const row8 = numbers.braceArch.flatMap((one, i) => (one.number === row + 1 ? [{ one, i }] : []))
  /** The inner edge of the lining, where the pocket begins. */
  const lining = (along: number): Shape[] =>
    along <= firstMm || along >= lastMm
      ? []
      : [
          drawn(
            'thin',
            through([
              { x: along, y: up(along) },
              { x: along, y: under(along) },
            ]),
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
    ...lining(brace.from.liningMm),
    ...lining(lengthMm - brace.to.liningMm),
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
      outside(
        figured(numbers, 'braces[].finishedLengthMm', row),
        'below',
        bounds.maxY,
        { x: firstMm, y: 0 },
        { x: lastMm, y: 0 },
      ),
      inPlace(
        figured(numbers, 'braces[].heightMm', row),
        'right',
        { x: middle, y: up(middle) },
        { x: middle, y: under(middle) },
      ),
    ],
  }
}

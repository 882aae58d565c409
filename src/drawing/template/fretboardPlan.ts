import type { Computed } from '../../core/compute.ts'
import { crossingMm, type Fretboard } from '../../core/instrument/neck/fretboard.ts'
import { label } from '../dimension.ts'
import type { Drawing, PathCommand, PathShape, Shape } from '../drawing.ts'
import { drawn } from '../line.ts'
import { fretboardDrawing } from '../neck/fretboardDrawing.ts'
import { grainArrow } from './grain.ts'

/** The arrow between nut and first fret, in parts of their distance and of the half-width there. */
const ARROW_LENGTH = 0.6
const ARROW_MOST_MM = 30
const ARROW_ACROSS = 0.5
/** What the nut's end is called stands inside it, in parts of the half-width. */
const NUT_AT = 0.8
const EDGE_AT = 0.42

/**
 * The fingerboard at full size: its edges and its slots to be sawn, centreline, markers, joint, and the grain. Slots are as long as they are sawn,
 * within the binding of a bound board; strings are left out.
 */
export function fretboardPlan(computed: Computed): Drawing {
  const { numbers, geometry } = computed
  const { shape } = geometry.neck
  const drawing = fretboardDrawing(computed)
  let fret = 0
  const shapes = drawing.shapes.flatMap((one): Shape[] => {
    // A count on a slot would be sawn through: beside it, toward the nut.
    if (one.kind === 'station' && one.away.x === 0 && one.away.y === 0) return [{ ...one, away: { x: 1, y: 0 } }]
    if (one.kind === 'label' && one.word === 'nut') return nutWords(shape)
    if (one.kind !== 'path') return [one]
    if (one.role === 'ghost') return []
    if (one.role === 'edge') return [{ ...one, role: 'cut' }]
    if (!isFret(one)) return [one]
    return slot(one, numbers.frets[fret++]?.slotMm ?? 0)
  })
  const firstMm = numbers.frets[0]?.fromNutMm ?? 0
  const middle = { x: shape.nutMm - firstMm / 2, y: -ARROW_ACROSS * shape.halfWidthAtMm(shape.nutMm) }
  return {
    ...drawing,
    shapes: [...shapes, ...grainArrow(middle, Math.min(ARROW_LENGTH * firstMm, ARROW_MOST_MM))],
  }
}

/** The end every slot is measured from, named where it is cut. */
const nutWords = (shape: Fretboard): Shape[] =>
  [['nut', NUT_AT] as const, ['referenceEdge', EDGE_AT] as const].map(([word, part]) => {
    const y = part * shape.halfWidthAtMm(shape.nutMm)
    return { ...label(word, { x: crossingMm(shape.fretLine(0), y), y }, { x: -1, y: 0 }), isOptional: false }
  })

/** Of the fine lines of a board those are frets that run straight; markers are round. */
const isFret = ({ role, commands }: PathShape): boolean =>
  role === 'thin' && commands.every(([step]) => step === 'M' || step === 'L')

/** A line kept to a length about its middle. */
function slot({ commands }: PathShape, lengthMm: number): PathShape[] {
  const [from, to] = commands
  if (from?.[0] !== 'M' || to?.[0] !== 'L' || lengthMm <= 0) return []
  const [dx, dy] = [to[1] - from[1], to[2] - from[2]]
  const leave = Math.max(1 - lengthMm / Math.max(Math.hypot(dx, dy), 1e-9), 0) / 2
  const within: PathCommand[] = [
    ['M', from[1] + leave * dx, from[2] + leave * dy],
    ['L', to[1] - leave * dx, to[2] - leave * dy],
  ]
  return [drawn('slot', within)]
}

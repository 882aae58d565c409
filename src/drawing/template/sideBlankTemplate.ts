import type { Computed } from '../../core/compute.ts'
import { heightOf, widthOf } from '../bounds.ts'
import { blankDrawing } from '../blankDrawing.ts'
import type { Drawing, Shape } from '../drawing.ts'
import { flipped } from '../flipped.ts'
import type { HalfName } from '../innerFace.ts'
import { grainArrow } from './grain.ts'
import { widestRoom } from './titleRoom.ts'

const ARROW_MM = 60
/** Of the words that stand on a blank, along it from where they are set. */
const WORD_MM = 30
const OFF_CUT_MM = 14
/** Of the arrow, and of the title under it, from the straight edge. */
const ARROW_AT_MM = 17
const TITLE_AT_MM = 24

/**
 * One blank of a side to be sawn at full size: the flat blank as drawn, show face up, with its grain along it and room for a title between the
 * straight edge and the line to saw.
 */
export function sideBlankTemplate(computed: Computed, side: HalfName, piece = 0): Drawing {
  const blank = blankDrawing(computed, side, piece)
  const lengthMm = widthOf(blank.bounds)
  const widthMm = heightOf(blank.bounds)
  // A bass blank lies end for end: what is added is placed as on a treble one and turned with it.
  const isTurned = side === 'bass'
  const from = (x: number) => (isTurned ? -x : x)
  const taken = blank.shapes.flatMap((shape) => {
    if (shape.kind !== 'label' || shape.word === 'straightEdge') return []
    const x = from(shape.at.x)
    return [{ fromMm: x - WORD_MM / 2, toMm: x + (shape.word === 'waistMark' ? WORD_MM : WORD_MM / 2) }]
  })
  const cutWidths = blank.shapes.flatMap((shape) =>
    shape.kind === 'station' ? shape.ticks.slice(1).map(({ from: { x, y } }) => ({ x: from(x), y })) : [],
  )
  const trimMm = Math.min(lengthMm, ...cutWidths.map(({ x }) => x))
  const room = widestRoom(
    [
      { fromMm: Number.NEGATIVE_INFINITY, toMm: trimMm },
      ...taken,
      { fromMm: lengthMm - trimMm, toMm: Number.POSITIVE_INFINITY },
    ],
    (fromMm, toMm) => {
      const over = cutWidths.filter(({ x }) => x > fromMm - WORD_MM && x < toMm + WORD_MM).map(({ y }) => y)
      return { minY: TITLE_AT_MM, maxY: Math.min(widthMm, ...over) - OFF_CUT_MM }
    },
  )
  const own: Drawing = {
    ...blank,
    marks: {},
    shapes: grainArrow({ x: lengthMm * 0.29, y: ARROW_AT_MM }, Math.min(ARROW_MM, lengthMm / 4)),
    ...(room === null ? {} : { titleRoom: room }),
  }
  const { shapes, titleRoom } = isTurned ? flipped(own, 'x') : own
  return {
    ...blank,
    shapes: [...blank.shapes.map(scored), ...shapes],
    ...(titleRoom === undefined ? {} : { titleRoom }),
  }
}

/** The waist is a mark across the blank: drawn wide elsewhere, it must not be taken for an edge to cut. */
function scored(shape: Shape): Shape {
  if (shape.kind !== 'path' || shape.role !== 'edge') return shape
  const xs = shape.commands.flatMap((command) => (command[0] === 'M' || command[0] === 'L' ? [command[1]] : []))
  return xs.every((x) => x === xs[0]) ? { ...shape, role: 'thin' } : shape
}

import type { Computed } from '../../core/compute.ts'
import { type CrossLine, crossingMm } from '../../core/instrument/neck/fretboard.ts'
import type { Point } from '../../core/geometry/point.ts'
import { shapesBounds } from '../bounds.ts'
import { label, ordinate } from '../dimension.ts'
import type { Drawing, Shape } from '../drawing.ts'
import { figured, figuredRow } from '../figured.ts'
import { drawn, rectangle, through } from '../line.ts'

const HALF_MM = 20
/** What a ruler for fanned frets is wider than the board, on either side. */
const OVER_EDGE_MM = 3
const PAST_SADDLE_MM = 12
/** Where figures and counts stand across the strip, in parts of its half. */
const FIGURE_AT = -0.5
const COUNT_AT = 0.55
const WORD_AT = 0.85
/** Between what stands beside a slot, or by the saddle line, and the room for the title. */
const BESIDE_MM = 12

/**
 * A strip with every fret slot across it, its square end at the nut; for fanned frets it is as wide as the board at its end, its slots lie as
 * aslant as on the board, and the nut's own line is among them. Every place is told from the nut on the centreline, the uncompensated saddle line
 * too. Neck to the right.
 */
export function slottingRuler({ numbers, geometry }: Computed): Drawing {
  const { shape } = geometry.neck
  const { nutMm, jointMm, lastFret, saddleLine } = shape
  const nut = shape.fretLine(0)
  const isFanned = shape.bassScaleMm !== shape.trebleScaleMm
  const halfMm = isFanned ? Math.max(shape.halfWidthAtMm(shape.endMm) + OVER_EDGE_MM, HALF_MM) : HALF_MM
  const reachMm = (line: CrossLine) => Math.abs(line.slant) * halfMm
  const endX = nutMm + reachMm(nut)
  const tailX = Math.min(saddleLine.xMm - reachMm(saddleLine) - PAST_SADDLE_MM, endX - 1)
  const at = (line: CrossLine, part: number): Point => ({ x: crossingMm(line, part * halfMm), y: part * halfMm })
  const across = (line: CrossLine) => through([at(line, -1), at(line, 1)])
  const frets = numbers.frets.map((row, i) => ({ row, i, line: shape.fretLine(row.number) }))
  const last = frets.at(-1)?.line ?? nut
  // The fret of the joint is one of the slots; a joint past the last fret has a line of its own.
  const joint = frets.find(({ line }) => Math.abs(line.xMm - jointMm) < 1e-6)?.line ?? { xMm: jointMm, slant: 0 }
  const isJointPast = jointMm < last.xMm - 1e-6
  const shapes: Shape[] = [
    drawn('edge', rectangle(tailX, -halfMm, endX, halfMm)),
    ...(isFanned ? [drawn('slot', across(nut))] : []),
    ...frets.map(({ line }) => drawn('slot', across(line))),
    ...(isJointPast ? [drawn('thin', across(joint))] : []),
    drawn('thin', across(saddleLine)),
    drawn(
      'centre',
      through([
        { x: last.xMm, y: 0 },
        { x: endX, y: 0 },
      ]),
    ),
  ]
  const place = (shown: Parameters<typeof ordinate>[0], line: CrossLine, urgency: number) =>
    ordinate(shown, at(line, FIGURE_AT), { x: 1, y: 0 }, urgency, true)
  const word = (one: 'nut' | 'joint' | 'saddleLine' | 'referenceEdge', where: Point, way: 1 | -1): Shape => ({
    ...label(one, where, { x: way, y: 0 }),
    isOptional: false,
  })
  const bounds = shapesBounds(shapes)
  return {
    name: 'slottingRuler',
    seenFrom: 'front',
    bounds,
    heightsTimes: 1,
    marks: isFanned ? { top: 'bass', bottom: 'treble' } : {},
    shapes: [
      ...shapes,
      ...frets.flatMap(({ row, i, line }): Shape[] => [
        place(figuredRow('frets[].fromNutMm', i, row.fromNutMm), line, 1),
        {
          kind: 'station',
          list: 'frets',
          row: i,
          number: row.number,
          ticks: [],
          numberAt: at(line, COUNT_AT),
          away: { x: 1, y: 0 },
          urgency: row.number === 12 || row.number === lastFret ? 1 : 2,
        },
      ]),
      ...(isJointPast ? [place(figured(numbers, 'board.nutToJointMm'), joint, 0)] : []),
      place(figured(numbers, 'scale.lengthMm'), saddleLine, 0),
      word('nut', at(nut, WORD_AT), -1),
      // The square end of a strip for fanned frets is not what is laid to the nut: its nut's line is.
      ...(isFanned ? [] : [word('referenceEdge', at(nut, -WORD_AT), -1)]),
      word('joint', at(joint, WORD_AT), 1),
      word('saddleLine', at(saddleLine, WORD_AT), 1),
    ],
    titleRoom: {
      minX: saddleLine.xMm + reachMm(saddleLine) + BESIDE_MM,
      maxX: Math.max(Math.min(last.xMm, jointMm) - reachMm(last) - 2, saddleLine.xMm + reachMm(saddleLine) + BESIDE_MM),
      minY: 2 - halfMm,
      maxY: halfMm - 2,
    },
  }
}

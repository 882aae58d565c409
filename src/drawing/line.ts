import type { Point } from '../core/geometry/point.ts'
import type { LineRole, PathCommand, PathShape } from './drawing.ts'

/** Straight lines through points. */
export const through = (points: readonly Point[]): PathCommand[] =>
  points.map(({ x, y }, i) => [i === 0 ? 'M' : 'L', x, y] as const)

export const closed = (commands: readonly PathCommand[]): PathCommand[] => [...commands, ['Z']]

export const rectangle = (minX: number, minY: number, maxX: number, maxY: number): PathCommand[] =>
  closed(
    through([
      { x: minX, y: minY },
      { x: maxX, y: minY },
      { x: maxX, y: maxY },
      { x: minX, y: maxY },
    ]),
  )

export const circle = ({ x, y }: Point, radiusMm: number): PathCommand[] => [
  ['M', x + radiusMm, y],
  ['A', radiusMm, 0, 1, x - radiusMm, y],
  ['A', radiusMm, 0, 1, x + radiusMm, y],
  ['Z'],
]

/** An arc clockwise on the sheet from one direction to another, less than a whole turn. */
export function arcAbout({ x, y }: Point, radiusMm: number, fromRad: number, toRad: number): PathCommand[] {
  return [
    ['M', x + radiusMm * Math.cos(fromRad), y + radiusMm * Math.sin(fromRad)],
    [
      'A',
      radiusMm,
      toRad - fromRad > Math.PI ? 1 : 0,
      1,
      x + radiusMm * Math.cos(toRad),
      y + radiusMm * Math.sin(toRad),
    ],
  ]
}

export const drawn = (role: LineRole, commands: readonly PathCommand[]): PathShape => ({ kind: 'path', role, commands })

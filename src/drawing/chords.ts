import type { Point } from '../core/geometry/point.ts'
import { arcCubics } from './arcCubics.ts'
import { cubicSteps } from './cubicSteps.ts'
import type { Bounds, PathCommand } from './drawing.ts'

export interface Chord {
  readonly from: Point
  readonly to: Point
}

/** How far a chord may stand off its curve. */
export const CHORD_MM = 0.02

/** Straight lines that keep within 0.02 mm of a path: to ask where it runs, not to draw it. */
export function chordsOf(commands: readonly PathCommand[]): Chord[] {
  const chords: Chord[] = []
  let at: Point = { x: 0, y: 0 }
  let start = at
  const goTo = (to: Point) => {
    chords.push({ from: at, to })
    at = to
  }
  for (const command of arcCubics(commands)) {
    switch (command[0]) {
      case 'M':
        at = { x: command[1], y: command[2] }
        start = at
        break
      case 'L':
        goTo({ x: command[1], y: command[2] })
        break
      case 'C': {
        const [, bx, by, cx, cy, dx, dy] = command
        for (const to of cubicSteps([at, { x: bx, y: by }, { x: cx, y: cy }, { x: dx, y: dy }], CHORD_MM)) goTo(to)
        break
      }
      case 'Z':
        goTo(start)
        break
    }
  }
  return chords
}

/** Whether a straight line passes through a box, its edges included (Liang and Barsky 1984). */
export function crosses({ from, to }: Chord, { minX, minY, maxX, maxY }: Bounds): boolean {
  let [enter, leave] = [0, 1]
  const [dx, dy] = [to.x - from.x, to.y - from.y]
  for (const [step, room] of [
    [-dx, from.x - minX],
    [dx, maxX - from.x],
    [-dy, from.y - minY],
    [dy, maxY - from.y],
  ] as const) {
    if (step === 0) {
      if (room < 0) return false
    } else if (step < 0) enter = Math.max(enter, room / step)
    else leave = Math.min(leave, room / step)
  }
  return enter <= leave
}

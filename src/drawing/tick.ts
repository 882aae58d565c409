import type { PathCommand } from './drawing.ts'
import { circle } from './line.ts'
import type { Tick } from './sheet.ts'

const ORIGIN = 0.22

/** What ends a dimension line, drawn along +x about its place, in parts of the figures' size. */
export const TICK_LINES: Readonly<Record<Tick['mark'], readonly PathCommand[]>> = {
  stroke: [
    ['M', -0.3, 0],
    ['L', 0.3, 0],
  ],
  origin: circle({ x: 0, y: 0 }, ORIGIN),
  arrow: [
    ['M', -0.55, -0.18],
    ['L', 0, 0],
    ['L', -0.55, 0.18],
  ],
}

/** How far it is turned there, clockwise on the sheet: a stroke lies oblique to its line (ISO 129-1). */
export const tickTurnDeg = ({ mark, alongDeg }: Tick): number => (mark === 'stroke' ? alongDeg - 45 : alongDeg)

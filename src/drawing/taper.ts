import type { Computed } from '../core/compute.ts'
import type { Shape } from './drawing.ts'
import { drawn, through } from './line.ts'
import type { Base } from './profile.ts'

/** The straight line from the back edge at the tail to the back edge at the neck, as dished. */
export function taperOf({ numbers, geometry }: Computed): Base {
  const { depthAtTailMm, depthAtNeckMm } = numbers.sides
  return { atZeroMm: -depthAtTailMm, rise: (depthAtTailMm - depthAtNeckMm) / geometry.lengthMm }
}

/** What heights are drawn about, seen from the side: the rim plane, a little past both ends, and the taper. */
export const baseLines = (lengthMm: number, taper: Base): readonly Shape[] => [
  drawn(
    'centre',
    through([
      { x: -10, y: 0 },
      { x: lengthMm + 10, y: 0 },
    ]),
  ),
  drawn(
    'ghost',
    through([
      { x: 0, y: -taper.atZeroMm },
      { x: lengthMm, y: -(taper.atZeroMm + taper.rise * lengthMm) },
    ]),
  ),
]

import type { BridgePlan } from '../core/neckPlan.ts'
import type { PathCommand } from './drawing.ts'
import { closed, through } from './line.ts'

type PlatePlan = Pick<BridgePlan, 'plateFromMm' | 'plateToMm' | 'plateTailWidthMm' | 'plateNeckWidthMm'>

/** The plate under the bridge in the frame of the body: straight edges between its widths at tail and neck edge. */
export function bridgePlateOutline(plate: PlatePlan): PathCommand[] {
  const [tail, neck] = [plate.plateTailWidthMm / 2, plate.plateNeckWidthMm / 2]
  return closed(
    through([
      { x: plate.plateFromMm, y: -tail },
      { x: plate.plateToMm, y: -neck },
      { x: plate.plateToMm, y: neck },
      { x: plate.plateFromMm, y: tail },
    ]),
  )
}

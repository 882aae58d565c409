import type { Block } from '../page.ts'
import { level, LINE, upright } from '../pen.ts'
import type { TileOnPage } from './tileOnPage.ts'

const OFF_MM = 1
const REACH_MM = 6
/** Under a tile there is only the gap above the strip. */
const REACH_BELOW_MM = 2.6

/** Two short lines outside each corner of a tile, where a knife along the frame enters the sheet. */
export function cropMarks({ area }: TileOnPage): Block[] {
  const { xMm, yMm, widthMm, heightMm } = area
  const corners = [
    { x: xMm, y: yMm, right: -1, down: -1, reach: REACH_MM },
    { x: xMm + widthMm, y: yMm, right: 1, down: -1, reach: REACH_MM },
    { x: xMm, y: yMm + heightMm, right: -1, down: 1, reach: REACH_BELOW_MM },
    { x: xMm + widthMm, y: yMm + heightMm, right: 1, down: 1, reach: REACH_BELOW_MM },
  ]
  return corners.map(({ x, y, right, down, reach }) => ({
    kind: 'cropMarks',
    area: {
      xMm: right < 0 ? x - REACH_MM : x,
      yMm: down < 0 ? y - reach : y,
      widthMm: REACH_MM,
      heightMm: reach,
    },
    stage: null,
    marks: [
      level(x + right * OFF_MM, x + right * REACH_MM, y, LINE.hairMm),
      upright(x, y + down * OFF_MM, y + down * reach, LINE.hairMm),
    ],
  }))
}

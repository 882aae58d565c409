import type { BOARD_TITLES } from '../stageTitles.ts'
import type { StageLines } from './stageWords.ts'

/** Board and bridge. */
export const BOARD_LINES: Readonly<Record<keyof typeof BOARD_TITLES, StageLines>> = {
  makeBoard: {
    lines: [
      'Thickness it, square one end; every slot is laid off from the nut, never from the slot before.',
      'Square frets: saw along one scale, on the centreline.',
      'Fanned frets: lay off both edges’ figures parallel to the centreline, join each pair, saw along the line.',
      'Taper, radius if wanted, then clear the slots to depth.',
      'Markers in before the final scrape.',
    ],
  },
  bindBoard: {
    lines: [
      'Take the board’s edges in by the binding’s thickness first: the widths below are over the bindings.',
      'Glue side and end strips with mitres at the corners, straps from the middle outward.',
      'Side markers go into the binding or its line with the board. Open the slots again to it, not through it.',
    ],
  },
  glueBoard: {
    lines: [
      'Pin it so that it cannot swim; the joint’s fret lies over the edge of the body.',
      'Clamp through a stiff caul from the middle outward.',
      'Let water leave the glue before planing anything.',
    ],
  },
  fretBoard: {
    lines: [
      'Level along the string paths, with the fall-off past the joint.',
      'Press or hammer with the neck supported; check each fret seats end to end.',
      'Dress the ends until a cloth runs past them.',
    ],
  },
  makeBridge: {
    lines: [
      'Shape the underside to the top it will stand on, and prove it with chalk.',
      'Slot, holes and wings follow; keep the saddle slot square to the base.',
      'Weigh it and write the weight down.',
    ],
  },
}

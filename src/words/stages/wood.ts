import type { WOOD_TITLES } from '../stageTitles.ts'
import type { StageLines } from './stageWords.ts'

/** Wood, and sides until they have settled. */
export const WOOD_LINES: Readonly<Record<keyof typeof WOOD_TITLES, StageLines>> = {
  chooseWood: {
    lines: [
      'Lay out top, back, sides, neck and board together in daylight and turn them once.',
      'Look along every edge for run-out, shakes, worm and pitch; knock for dead places.',
      'Write the instrument’s number on each piece where it will be cut away last.',
      'Keep invoice and species papers with this instrument.',
    ],
  },
  settleWood: {
    lines: [
      'Saw oversize, stack on stickers with air on both faces, weight on top.',
      'Weigh one piece of each kind now and every few days; write weight and shop humidity side by side.',
      'Go on when the weight has stopped moving and the shop is at its building humidity.',
    ],
  },
  weighWood: {
    lines: [
      'Weigh and measure every plate and each stick of brace stock; write both on the wood.',
      'Hold it at its quiet point, tap, and note the pitch; or load it over two supports and read how far it gives.',
      'Light and stiff: go to the thin side of the target. Heavy or limp: stay above it.',
      'The targets below are the plan’s. Write down what you mean to aim at instead.',
    ],
  },
  thicknessSides: {
    lines: [
      'Take both sides down together, the show faces last and lightly.',
      'Measure at both edges and the middle, every hand’s breadth; the waist must not be the thick place.',
      'Scrape out cross scratches now: they open in the bend.',
    ],
  },
  markBlanks: {
    lines: [
      'Shoot one edge dead straight: it is the top edge, and everything is measured from it.',
      'Lay the sides as a mirrored pair. Mark show face, BASS and TREBLE, tail and neck on both.',
      'Square the tail line across: station 0. Leave the trim outside it; waist and stations are measured from it.',
    ],
  },
  profileBlanks: {
    lines: [
      'Measure along the straight edge from the tail line, not from the blank’s end; square off each width from that edge.',
      'Join the points with a springy batten and look along it before sawing: the line has no bumps.',
      'Saw outside the line, then true to it. The allowance is already in these widths.',
    ],
  },
  bendSides: {
    lines: [
      'Bend the waist first, on the mark, then the upper bout, then the lower.',
      'Check the show face is outside and the two are mirrored before heat touches them.',
      'Let them cool and dry in the form; do not hurry them out.',
      'Hold each to the outline. Correct at the iron, never by clamping.',
    ],
  },
  settleInMould: {
    lines: [
      'Clamp each side with its waist mark on the mould’s.',
      'Trim to the centre lines at tail and neck; both joints close with finger pressure.',
      'Spread the waist and the bouts. Light shows nowhere between side and mould.',
      'Leave it overnight and look again.',
    ],
  },
}

import type { StageKey } from '../../record/patterns/stages.ts'
import type { StageWords } from './stageWords.ts'

/** Wood, sides and rim. */
export const RIM_STAGE_WORDS = {
  chooseWood: {
    title: 'Choose the wood',
    lines: [
      'Lay out top, back, sides, neck and board together in daylight and turn them once.',
      'Look along every edge for run-out, shakes, worm and pitch; knock for dead places.',
      'Write the instrument’s number on each piece where it will be cut away last.',
      'Keep invoice and species papers with this instrument.',
    ],
  },
  settleWood: {
    title: 'Rough out and let it settle',
    lines: [
      'Saw oversize, stack on stickers with air on both faces, weight on top.',
      'Weigh one piece of each kind now and every few days; write weight and shop humidity side by side.',
      'Go on when the weight has stopped moving and the shop is at its building humidity.',
    ],
  },
  weighWood: {
    title: 'Weigh and tap the plates and braces',
    lines: [
      'Weigh and measure every plate and each stick of brace stock; write both on the wood.',
      'Hold it at its quiet point, tap, and note the pitch; or load it over two supports and read how far it gives.',
      'Light and stiff: go to the thin side of the target. Heavy or limp: stay above it.',
      'The targets below are the plan’s. Write down what you mean to aim at instead.',
    ],
  },
  thicknessSides: {
    title: 'Thickness the sides',
    lines: [
      'Take both sides down together, the show faces last and lightly.',
      'Measure at both edges and the middle, every hand’s breadth; the waist must not be the thick place.',
      'Scrape out cross scratches now: they open in the bend.',
    ],
  },
  markBlanks: {
    title: 'Mark the side blanks',
    lines: [
      'Shoot one edge dead straight: it is the top edge, and everything is measured from it.',
      'Lay the sides as a mirrored pair. Mark show face, BASS and TREBLE, tail and neck on both.',
      'Square the tail line across: station 0. Leave the trim outside it; waist and stations are measured from it.',
    ],
  },
  profileBlanks: {
    title: 'Saw the back profile on the blanks',
    lines: [
      'Measure along the straight edge from the tail line, not from the blank’s end; square off each width from that edge.',
      'Join the points with a springy batten and look along it before sawing: the line has no bumps.',
      'Saw outside the line, then true to it. The allowance is already in these widths.',
    ],
  },
  bendSides: {
    title: 'Bend both sides',
    lines: [
      'Bend the waist first, on the mark, then the upper bout, then the lower.',
      'Check the show face is outside and the two are mirrored before heat touches them.',
      'Let them cool and dry in the form; do not hurry them out.',
      'Hold each to the outline. Correct at the iron, never by clamping.',
    ],
  },
  settleInMould: {
    title: 'Trim the ends and settle in the mould',
    lines: [
      'Clamp each side with its waist mark on the mould’s.',
      'Trim to the centre lines at tail and neck; both joints close with finger pressure.',
      'Spread the waist and the bouts. Light shows nowhere between side and mould.',
      'Leave it overnight and look again.',
    ],
  },
  makeBlocks: {
    title: 'Make the blocks',
    lines: [
      'Saw to width and thickness with the grain as the drawing has it, and leave length to trim.',
      'Shape the glue face to its contour; check along the full height, not at one end only.',
      'The small table gives the true face: how far it falls back from the middle as you go outward.',
      'Mark top, back and the centre line on each.',
    ],
  },
  glueBlocks: {
    title: 'Glue the blocks',
    lines: [
      'Dry-clamp first: centre line on centre line, no light at the face.',
      'Square the neck block to the rim plane, not to the dished edge.',
      'Leave both ends proud of the side by the allowance: heights and slopes below are cut and read with the trued rim.',
      'Check the squeeze-out on the inside before it sets.',
    ],
  },
  braceSides: {
    title: 'Brace or tape the sides',
    lines: [
      'Keep clear of the linings’ ledge, top and back, or notch them in later.',
      'Fit each to the curve where it stands; a strip that rocks will print through.',
      'Clamp lightly with a soft caul outside.',
    ],
  },
  radiusRim: {
    title: 'Bring the bare rim to its depths',
    lines: [
      'Back edge first, then top. Turn the dish, not the rim; chalk shows where it still touches.',
      'Measure depths square to the rim plane, without plates.',
      'Stations run round the outside of the bent side, from the tail; read bass and treble.',
      'Stop at these depths: what the second round takes off, with the linings on, still stands in them.',
    ],
  },
  makeLinings: {
    title: 'Make the linings',
    lines: [
      'Saw strips with the grain standing upright in the box, and one spare for each edge.',
      'Kerf to an even web and break one on purpose: it should bend to the waist before it cracks. Solid strips are bent at the iron.',
      'Lengths below run from block to block; cut a little over and fit at the second block.',
    ],
  },
  glueLinings: {
    title: 'Glue the linings',
    lines: [
      'Let the lining stand proud by what the bevel takes away, and no more.',
      'Start at the blocks and let the joints fall clear of the waist.',
      'Clip every finger’s width and wipe the inside corner.',
    ],
  },
  trueRim: {
    title: 'True the rim with its linings',
    lines: [
      'Over the dish again, back then top, until the chalk goes all round.',
      'Where the plan has a flat upper bout: plane rim and neck block to it, straightedge on both sides.',
      'Set the rim down and press opposite corners: it must not rock.',
      'Measure rim and blocks when nothing more comes off. These are the depths the box is closed on.',
    ],
  },
  cutBlockJoint: {
    title: 'Cut the joint in the neck block',
    lines: [
      'Set out from the centre mark on the block, not from the width of the side.',
      'Cut square to the rim plane; try a scrap of the tenon’s width before the full depth.',
      'Drill the bolts square to the face, from outside in, on a line under the top’s edge.',
      'Read width, depth and what is left behind: the tenon is made to these.',
    ],
  },
} as const satisfies Partial<Record<StageKey, StageWords>>

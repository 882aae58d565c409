import type { RIM_TITLES } from '../stageTitles.ts'
import type { StageLines } from './stageWords.ts'

/** The rim. */
export const RIM_LINES: Readonly<Record<keyof typeof RIM_TITLES, StageLines>> = {
  makeBlocks: {
    lines: [
      'Saw to width and thickness with the grain as the drawing has it, and leave length to trim.',
      'Shape the glue face to its contour; check along the full height, not at one end only.',
      'The small table gives the true face: how far it falls back from the middle as you go outward.',
      'Mark top, back and the centre line on each.',
    ],
  },
  glueBlocks: {
    lines: [
      'Dry-clamp first: centre line on centre line, no light at the face.',
      'Square the neck block to the rim plane, not to the dished edge.',
      'Leave both ends proud of the side by the allowance: heights and slopes below are cut and read with the trued rim.',
      'Check the squeeze-out on the inside before it sets.',
    ],
  },
  braceSides: {
    lines: [
      'Keep clear of the linings’ ledge, top and back, or notch them in later.',
      'Fit each to the curve where it stands; a strip that rocks will print through.',
      'Clamp lightly with a soft caul outside.',
    ],
  },
  radiusRim: {
    lines: [
      'Back edge first, then top. Turn the dish, not the rim; chalk shows where it still touches.',
      'Measure depths square to the rim plane, without plates.',
      'Stations run round the outside of the bent side, from the tail; read bass and treble.',
      'Stop at these depths: what the second round takes off, with the linings on, still stands in them.',
    ],
  },
  makeLinings: {
    lines: [
      'Saw strips with the grain standing upright in the box, and one spare for each edge.',
      'Kerf to an even web and break one on purpose: it should bend to the waist before it cracks. Solid strips are bent at the iron.',
      'Lengths below run from block to block; cut a little over and fit at the second block.',
    ],
  },
  glueLinings: {
    lines: [
      'Let the lining stand proud by what the bevel takes away, and no more.',
      'Start at the blocks and let the joints fall clear of the waist.',
      'Clip every finger’s width and wipe the inside corner.',
    ],
  },
  trueRim: {
    lines: [
      'Over the dish again, back then top, until the chalk goes all round.',
      'Where the plan has a flat upper bout: plane rim and neck block to it, straightedge on both sides.',
      'Set the rim down and press opposite corners: it must not rock.',
      'Measure rim and blocks when nothing more comes off. These are the depths the box is closed on.',
    ],
  },
  cutBlockJoint: {
    lines: [
      'Set out from the centre mark on the block, not from the width of the side.',
      'Cut square to the rim plane; try a scrap of the tenon’s width before the full depth.',
      'Drill the bolts square to the face, from outside in, on a line under the top’s edge.',
      'Read width, depth and what is left behind: the tenon is made to these.',
    ],
  },
}

import type { StageKey } from '../../record/patterns/stages.ts'
import type { NeckStage } from './neck.ts'
import type { StageWords } from './stageWords.ts'

/** Wood, rim, plates and box. */
export type BodyStage = Exclude<StageKey, NeckStage>

export const BODY_STAGE_WORDS: Readonly<Record<BodyStage, StageWords>> = {
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
  joinTop: {
    title: 'Join the top',
    lines: [
      'Open the halves like a book, tight grain to the middle unless the client wanted otherwise.',
      'Shoot both edges in one stroke and hold them to the light.',
      'Glue flat, and mark show face and tail end before it leaves the board.',
    ],
  },
  thicknessTop: {
    title: 'Thickness the top',
    lines: [
      'Bring it even, and leave enough for levelling the rosette.',
      'Measure on a grid and write the readings on the waste.',
    ],
  },
  inlayRosette: {
    title: 'Cut the channel and lay the rosette',
    lines: [
      'Drill the centre pin on the joint, square to the top; every circle runs from it.',
      'Try each wall on a scrap of the same wood first. Cut the two walls, then clear between.',
      'Fit dry. An open gap goes under the board, never elsewhere.',
      'Glue, press flat, and level only when it has dried through.',
    ],
  },
  cutSoundhole: {
    title: 'Cut the soundhole',
    lines: [
      'Same pin as the rosette. Set the cutter to its circle and try it on scrap.',
      'Go down in small steps from the show face, the plate backed up.',
      'Leave the last paper’s thickness for a knife, then ease both edges.',
    ],
  },
  braceTop: {
    title: 'Brace the top',
    lines: [
      'Work on the inside face: bass and treble are swapped from what the player sees. Mark both.',
      'Plane each blank to its arch: the rise is over a straightedge from end to end. Chalk-fit it to the plate in the dish.',
      'Lap what crosses by half, dry, before any glue; measure both laps from the same end.',
      'Glue in the dish, main braces first, the small ones when those have set.',
    ],
  },
  carveTop: {
    title: 'Carve the top braces',
    lines: [
      'Take the ends down to what is let into the lining.',
      'Carve in rounds, both sides alike, and tap or press between rounds.',
      'A straightedge across the outside, middle on the centre line, shows by its gaps at the rim lines whether the dome has held.',
      'Stop early: wood comes off the closed box only from outside.',
    ],
  },
  joinBack: {
    title: 'Join and thickness the back',
    lines: [
      'Bookmatch, shoot, glue with the centre inlay if one is ordered.',
      'Thickness, saw oversize, and mark tail end and show face.',
      'Oily woods: scrape or wipe the glue edge just before gluing and let it flash off.',
    ],
  },
  braceBack: {
    title: 'Brace the back',
    lines: [
      'Lay the centre strip, cut through for each brace and for the label.',
      'Arch the braces to the back’s dish, glue them in it, and carve when set.',
      'Keep the strip clear of both blocks.',
    ],
  },
  fitTop: {
    title: 'Fit the top to the rim',
    lines: [
      'Centre line of the plate on the centre marks of both blocks; pin it there.',
      'Trim the brace ends, notch the linings for them, and try until it lies down under its own weight.',
      'Check hole and saddle line from the tail before anything is glued.',
    ],
  },
  glueTop: {
    title: 'Glue the top to the rim',
    lines: [
      'Rehearse with every clamp and caul in place and count them.',
      'Pins in, glue on the rim, clamp from the blocks outward.',
      'Look inside with a lamp and wipe what runs.',
    ],
  },
  fitBack: {
    title: 'Fit the back, sign and label',
    lines: [
      'Clear dust and glue from the inside: nobody gets there again.',
      'Trim the brace ends, notch the linings, check the back lies on the rim all round.',
      'Sign, label, number, and take the photographs of the inside.',
    ],
  },
  closeBox: {
    title: 'Close the box and check its depths',
    lines: [
      'Glue the back as the top: centre line first, then outward both ways.',
      'When it has set, measure the body with its plates on, square to the rim plane.',
      'Straightedge along the centre line outside, touching half-way: read the gap at tail and neck and take the mean.',
      'What stands here is what the neck is set to.',
    ],
  },
  trimPlates: {
    title: 'Trim the plates flush',
    lines: [
      'Work quarter by quarter, each in the direction in which the grain cannot tear into the box.',
      'Leave a hair and scrape it to the side. Then inlay the end wedge if there is one.',
    ],
  },
  cutLedges: {
    title: 'Cut the binding ledges',
    lines: [
      'Guide the cutter on the side, not on the domed plate: where it rides on the dome, set it place by place from the table.',
      'Shallow passes, quarter by quarter as for the plates.',
      'Gauge height and depth at tail, bouts, waist and neck; clean the corners with a chisel.',
    ],
  },
  bindBox: {
    title: 'Bend, fit and glue the bindings',
    lines: [
      'Bend on the iron to the box as it is, not to the plan.',
      'Mitre dry from the tail joint round; tape every finger’s width when gluing.',
      'Let it dry through, then scrape flush: mind the thickness left at the edge of the top.',
    ],
  },
}

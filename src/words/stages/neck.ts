import type { NECK_TITLES } from '../stageTitles.ts'
import type { StageLines } from './stageWords.ts'

/** The neck. */
export const NECK_LINES: Readonly<Record<keyof typeof NECK_TITLES, StageLines>> = {
  makeNeckBlank: {
    lines: [
      'Scarf the head, stack or laminate the heel, one glue-up at a time.',
      'True the face and square one side; the centre line comes from these two.',
      'Leave it to rest after gluing: true it again when it has stopped moving.',
    ],
    whole: [
      'Scarf the head, stack or laminate the heel, one glue-up at a time.',
      'True the face and square one side; the centre line comes from these two.',
      'Cut the channel for rod or bars before anything is tapered.',
    ],
  },
  cutRodChannel: {
    lines: [
      'Cut the channel for rod or bars before anything is tapered, on the centre line, both walls from one fence.',
      'Try the rod: it goes in by hand, does not rattle, and its nut can be reached.',
      'Plane the face flat after the cut; a straightedge lies down without light from nut to joint.',
      'Read what wood is left under and beside the channel.',
    ],
  },
  veneerHead: {
    lines: [
      'True the head’s face, square across, and bring the core to thickness first.',
      'Face veneer over the nut’s line, so that it can be trimmed to it; a back veneer runs out into the shaft.',
      'Cauls on both faces, pins at the corners: veneer swims.',
      'Plane to final thickness when it has set: the tuners’ posts ask for it.',
    ],
  },
  shapeHead: {
    lines: [
      'Have the tuners on the bench: measure their posts and bushings, not the catalogue’s.',
      'Drill the tuner holes from the face onto a backing board; then saw the outline.',
      'Stretch a thread from the nut to each post: nothing is in its way.',
      'Lay the inlay last and level it with the veneer.',
    ],
    whole: [
      'Glue the veneers, plane to final thickness, saw the outline.',
      'Drill the tuner holes from the face onto a backing board.',
      'Lay the inlay last and level it with the veneer.',
    ],
  },
  cutNeckJoint: {
    lines: [
      'Take angle and depth from the closed box as measured, not from the plan.',
      'Saw the tenon full to the block as cut; cheeks close before the shoulder does.',
      'Hollow the cheeks, so that they bear at their edges.',
      'Inserts or dowels for the bolts go in square to the tenon’s end.',
    ],
    whole: [
      'Take angle and depth from the closed box as measured, not from the plan.',
      'Cut the block’s half first, then the neck to it; cheeks close before the shoulder does.',
      'Drill for the bolts square to the face.',
    ],
  },
  slotSides: {
    lines: [
      'Saw both slots at the neck line, mirrored, from a centre line on the heel.',
      'A side goes in by hand without forcing; a wedge takes up the rest.',
      'Check neck and body lie on one centre line on the board.',
    ],
  },
  carveNeck: {
    lines: [
      'Carve thickness at two frets first, then join them along the shaft.',
      'Facet, then round; check with the template at each fret marked.',
      'Cap the heel level with the back.',
    ],
  },
  fitNeck: {
    lines: [
      'Long straightedge on the board, to the saddle line: height there and side to side.',
      'Take wood off the cheeks in strips of paper’s thickness, evenly, and try again.',
      'The board’s end lies down on the top without a gap and without being pulled.',
    ],
  },
}

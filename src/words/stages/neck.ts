import type { StageKey } from '../../record/patterns/stages.ts'
import type { StageWords } from './stageWords.ts'

/** Neck, board, bridge, finish and setting up. */
export const NECK_STAGE_WORDS = {
  makeNeckBlank: {
    title: 'Make the neck blank',
    lines: [
      'Scarf the head, stack or laminate the heel, one glue-up at a time.',
      'True the face and square one side; the centre line comes from these two.',
      'Cut the channel for rod or bars before anything is tapered.',
    ],
  },
  shapeHead: {
    title: 'Shape the head',
    lines: [
      'Glue the veneers, plane to final thickness, saw the outline.',
      'Drill the tuner holes from the face onto a backing board.',
      'Lay the inlay last and level it with the veneer.',
    ],
  },
  cutNeckJoint: {
    title: 'Cut the neck joint',
    lines: [
      'Take angle and depth from the closed box as measured, not from the plan.',
      'Cut the block’s half first, then the neck to it; cheeks close before the shoulder does.',
      'Drill for the bolts square to the face.',
    ],
  },
  slotSides: {
    title: 'Slot the heel for the sides',
    lines: [
      'Saw both slots at the neck line, mirrored, from a centre line on the heel.',
      'A side goes in by hand without forcing; a wedge takes up the rest.',
      'Check neck and body lie on one centre line on the board.',
    ],
  },
  makeBoard: {
    title: 'Make the fingerboard',
    lines: [
      'Thickness it, square one end; every slot is laid off from the nut, never from the slot before.',
      'Square frets: saw along one scale, on the centreline.',
      'Fanned frets: lay off both edges’ figures parallel to the centreline, join each pair, saw along the line.',
      'Taper, radius if wanted, then clear the slots to depth.',
      'Markers in before the final scrape; bindings if ordered.',
    ],
  },
  glueBoard: {
    title: 'Glue the board to the neck',
    lines: [
      'Pin it so that it cannot swim; the joint’s fret lies over the edge of the body.',
      'Clamp through a stiff caul from the middle outward.',
      'Let water leave the glue before planing anything.',
    ],
  },
  carveNeck: {
    title: 'Carve neck and heel',
    lines: [
      'Carve thickness at two frets first, then join them along the shaft.',
      'Facet, then round; check with the template at each fret marked.',
      'Cap the heel level with the back.',
    ],
  },
  fitNeck: {
    title: 'Fit the neck to the box',
    lines: [
      'Long straightedge on the board, to the saddle line: height there and side to side.',
      'Take wood off the cheeks in strips of paper’s thickness, evenly, and try again.',
      'The board’s end lies down on the top without a gap and without being pulled.',
    ],
  },
  fretBoard: {
    title: 'True the board and fret it',
    lines: [
      'Level along the string paths, with the fall-off past the joint.',
      'Press or hammer with the neck supported; check each fret seats end to end.',
      'Dress the ends until a cloth runs past them.',
    ],
  },
  makeBridge: {
    title: 'Make the bridge',
    lines: [
      'Shape the underside to the top it will stand on, and prove it with chalk.',
      'Slot, holes and wings follow; keep the saddle slot square to the base.',
      'Weigh it and write the weight down.',
    ],
  },
  sandAndFill: {
    title: 'Sand, mask and fill',
    lines: [
      'Finish each grit with the light low, and vacuum between grits.',
      'Mask the bridge’s place and the board’s, each a little inside the line.',
      'Fill the pores if the wood has them; let it dry before levelling.',
    ],
  },
  finish: {
    title: 'Build the finish and let it cure',
    lines: [
      'Number the coats as they go on, with date and wait, by the maker’s label.',
      'Level between coats only when it powders.',
      'The cure is part of the work: press a thumbnail where the bridge will hide it.',
    ],
  },
  polish: {
    title: 'Level and polish',
    lines: [
      'Level with the least that works, and look out for thin places on edges.',
      'Polish in one direction per grade; keep the surface cool.',
    ],
  },
  glueBridge: {
    title: 'Place and glue the bridge',
    lines: [
      'Find the saddle line from the real fret 12, then add the compensation.',
      'Stretch two threads for the outer strings to set it side to side.',
      'Clear the finish inside the outline to bare wood; pin, glue, clamp with cauls inside.',
    ],
  },
  makeNutAndSaddle: {
    title: 'Level the frets, make nut and saddle',
    lines: [
      'Level, crown and polish the frets with the neck straight.',
      'Space the nut by gaps between strings, not by centres; slots down in small steps.',
      'Saddle fits its slot without wobble and comes out by hand.',
    ],
  },
  stringUp: {
    title: 'Fit hardware, string to pitch',
    lines: [
      'Ream, fit tuners and end pin, and check nothing splits.',
      'Bring up slowly, both outer strings together, and watch the bridge.',
      'Read relief, action and how far the top has risen; leave it hanging at pitch.',
    ],
  },
  settleSetUp: {
    title: 'Set up again when it has settled',
    lines: [
      'Same readings as at first stringing, and the same tuning.',
      'Relief first, then saddle, then nut, then intonation at fret 12.',
      'Write down what moved since the first time.',
    ],
  },
  inspect: {
    title: 'Inspect and write down as built',
    lines: [
      'Go over it in daylight with the client’s wishes in hand.',
      'Measure what stands below and note where it left the plan.',
      'Photographs: front, back, both sides, head, inside.',
    ],
  },
  deliver: {
    title: 'Pack and hand over',
    lines: [
      'Slacken the strings for a journey, pad the head, humidity pack in the case.',
      'Put papers, care sheet and species list in the case pocket.',
      'Shipping abroad: have the permits in hand before it leaves.',
    ],
  },
  ownWork: {
    title: 'Work of your own',
    lines: ['Write down what there is to do, and what to measure.'],
  },
} as const satisfies Partial<Record<StageKey, StageWords>>
export type NeckStage = keyof typeof NECK_STAGE_WORDS

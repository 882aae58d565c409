import type { StageKey } from '../../record/patterns/stages.ts'
import type { StageWords } from './stageWords.ts'

/** Finish, setting up and what follows. */
export const FINISH_STAGE_WORDS = {
  sandAndFill: {
    title: 'Sand, mask and fill',
    lines: [
      'Finish each grit with the light low, and vacuum between grits.',
      'Mask the bridge’s place and the board’s, each a little inside the line; a polish rubbed on needs no mask.',
      'Fill the pores if the wood has them; let it dry before levelling.',
    ],
  },
  finish: {
    title: 'Build the finish',
    lines: [
      'Number the coats as they go on, with date and wait, by the maker’s label.',
      'Same temperature and damp for wood, finish and room before the first coat.',
      'Level between coats only when it powders.',
      'Rubbed on by hand: many thin sittings instead of a few coats, each left alone as long as the label asks.',
    ],
    whole: [
      'Number the coats as they go on, with date and wait, by the maker’s label.',
      'Level between coats only when it powders.',
      'The cure is part of the work: press a thumbnail where the bridge will hide it.',
    ],
  },
  cure: {
    title: 'Let the finish cure',
    lines: [
      'The cure is part of the work: write down the last coat’s day, and count from it by the label.',
      'Hang it in still, dry air, out of the sun, nothing touching it.',
      'Smell it, then press a thumbnail where the bridge will hide it: no print, no smell, it is through.',
    ],
  },
  polish: {
    title: 'Level and polish',
    lines: [
      'Level with the least that works, and look out for thin places on edges.',
      'Polish in one direction per grade; keep the surface cool.',
    ],
  },
  setNeck: {
    title: 'Set the neck for good',
    lines: [
      'Scrape finish from every face that is glued, and dry-fit once more.',
      'Long straightedge to the saddle line before anything holds: height there and side to side.',
      'Bolts up to snug, or glue and one clamp through the block; the board’s end is glued down flat.',
      'Read the height again when it has set. It decides the saddle.',
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
  levelFrets: {
    title: 'Level, crown and polish the frets',
    lines: [
      'Neck straight under a straightedge, board masked. Ink every crown.',
      'Level along the string paths until the ink is just gone on each; keep the fall-off past the joint.',
      'Crown to a thin line in the middle, soften the ends, polish through the grits.',
      'Rock a short straightedge over each three: nothing rocks.',
    ],
  },
  makeNutAndSaddle: {
    title: 'Make nut and saddle',
    lines: [
      'Space the nut by gaps between strings, not by centres; slots down in small steps.',
      'Saddle fits its slot without wobble and comes out by hand.',
      'Break each string over a clear edge at the front of the nut and at the crown of the saddle.',
    ],
    whole: [
      'Level, crown and polish the frets with the neck straight.',
      'Space the nut by gaps between strings, not by centres; slots down in small steps.',
      'Saddle fits its slot without wobble and comes out by hand.',
    ],
  },
  fitHardware: {
    title: 'Fit tuners and hardware',
    lines: [
      'Ream finish out of the holes by hand; a post turns freely, a bushing goes in without a hammer.',
      'Pilot every screw and wax it, and check that nothing splits.',
      'End pin or pickup, strap button and guard plate as ordered. Write down what was fitted.',
    ],
  },
  stringUp: {
    title: 'String to pitch',
    lines: [
      'Bring up slowly, both outer strings together, and watch the bridge.',
      'Read relief, action and how far the top has risen.',
      'Leave it hanging at pitch until the top stops moving.',
    ],
    whole: [
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
} as const satisfies Partial<Record<StageKey, StageWords>>

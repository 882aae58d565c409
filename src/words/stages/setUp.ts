import type { SET_UP_TITLES } from '../stageTitles.ts'
import type { StageLines } from './stageWords.ts'

/** Setting up and what follows. */
export const SET_UP_LINES: Readonly<Record<keyof typeof SET_UP_TITLES, StageLines>> = {
  levelFrets: {
    lines: [
      'Neck straight under a straightedge, board masked. Ink every crown.',
      'Level along the string paths until the ink is just gone on each; keep the fall-off past the joint.',
      'Crown to a thin line in the middle, soften the ends, polish through the grits.',
      'Rock a short straightedge over each three: nothing rocks.',
    ],
  },
  makeNutAndSaddle: {
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
    lines: [
      'Ream finish out of the holes by hand; a post turns freely, a bushing goes in without a hammer.',
      'Pilot every screw and wax it, and check that nothing splits.',
      'End pin or pickup, strap button and guard plate as ordered. Write down what was fitted.',
    ],
  },
  stringUp: {
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
    lines: [
      'Same readings as at first stringing, and the same tuning.',
      'Relief first, then saddle, then nut, then intonation at fret 12.',
      'Write down what moved since the first time.',
    ],
  },
  inspect: {
    lines: [
      'Go over it in daylight with the client’s wishes in hand.',
      'Measure what stands below and note where it left the plan.',
      'Photographs: front, back, both sides, head, inside.',
    ],
  },
  deliver: {
    lines: [
      'Slacken the strings for a journey, pad the head, humidity pack in the case.',
      'Put papers, care sheet and species list in the case pocket.',
      'Shipping abroad: have the permits in hand before it leaves.',
    ],
  },
  ownWork: {
    lines: [
      'Write down what there is to do, and what to measure.',
      'Say how long it takes, and what it must wait for.',
    ],
  },
}

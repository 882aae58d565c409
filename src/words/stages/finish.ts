import type { FINISH_TITLES } from '../stageTitles.ts'
import type { StageLines } from './stageWords.ts'

/** Finish, and what is glued to it. */
export const FINISH_LINES: Readonly<Record<keyof typeof FINISH_TITLES, StageLines>> = {
  sandAndFill: {
    lines: [
      'Finish each grit with the light low, and vacuum between grits.',
      'Mask the bridge’s place and the board’s, each a little inside the line; a polish rubbed on needs no mask.',
      'Fill the pores if the wood has them; let it dry before levelling.',
    ],
  },
  finish: {
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
    lines: [
      'The cure is part of the work: write down the last coat’s day, and count from it by the label.',
      'Hang it in still, dry air, out of the sun, nothing touching it.',
      'Smell it, then press a thumbnail where the bridge will hide it: no print, no smell, it is through.',
    ],
  },
  polish: {
    lines: [
      'Level with the least that works, and look out for thin places on edges.',
      'Polish in one direction per grade; keep the surface cool.',
    ],
  },
  setNeck: {
    lines: [
      'Scrape finish from every face that is glued, and dry-fit once more.',
      'Long straightedge to the saddle line before anything holds: height there and side to side.',
      'Bolts up to snug, or glue and one clamp through the block; the board’s end is glued down flat.',
      'Read the height again when it has set. It decides the saddle.',
    ],
  },
  glueBridge: {
    lines: [
      'Find the saddle line from the real fret 12, then add the compensation.',
      'Stretch two threads for the outer strings to set it side to side.',
      'Clear the finish inside the outline to bare wood; pin, glue, clamp with cauls inside.',
    ],
  },
}

import type { BOX_TITLES } from '../stageTitles.ts'
import type { StageLines } from './stageWords.ts'

/** Closing and binding the box. */
export const BOX_LINES: Readonly<Record<keyof typeof BOX_TITLES, StageLines>> = {
  fitTop: {
    lines: [
      'Centre line of the plate on the centre marks of both blocks; pin it there.',
      'Trim the brace ends, notch the linings for them, and try until it lies down under its own weight.',
      'Check hole and saddle line from the tail before anything is glued.',
    ],
  },
  glueTop: {
    lines: [
      'Rehearse with every clamp and caul in place and count them.',
      'Pins in, glue on the rim, clamp from the blocks outward.',
      'Look inside with a lamp and wipe what runs.',
    ],
  },
  fitBack: {
    lines: [
      'Clear dust and glue from the inside: nobody gets there again.',
      'Trim the brace ends, notch the linings, check the back lies on the rim all round.',
      'Sign, label, number, and take the photographs of the inside.',
    ],
  },
  closeBox: {
    lines: [
      'Glue the back as the top: centre line first, then outward both ways.',
      'When it has set, measure the body with its plates on, square to the rim plane.',
      'Straightedge along the centre line outside, touching half-way: read the gap at tail and neck and take the mean.',
      'What stands here is what the neck is set to.',
    ],
  },
  trimPlates: {
    lines: [
      'Work quarter by quarter, each in the direction in which the grain cannot tear into the box.',
      'Leave a hair and scrape it to the side.',
      'Look for gaps between lining and plate now, while glue can still be run in.',
    ],
  },
  inlayEndWedge: {
    lines: [
      'Scribe both flanks from the centre line of the joint, through plates and side.',
      'Saw and chop just into the tail block; the wedge is driven in from the wide end and closes both lines.',
      'Purfling at its flanks goes in with it. Read the widths at top and back before the ledges are cut.',
    ],
  },
  cutLedges: {
    lines: [
      'Guide the cutter on the side, not on the domed plate: where it rides on the dome, set it place by place from the table.',
      'Shallow passes, quarter by quarter as for the plates.',
      'Gauge height and depth at tail, bouts, waist and neck; clean the corners with a chisel.',
    ],
  },
  bendBindings: {
    lines: [
      'Tape the strips for each side together, show edges the same way, and bend them as one.',
      'Bend to the box as it is, not to the plan; tightest place first, wetted least.',
      'Leave them in the form until they are cold and dry.',
      'Cut lengths stand below, with what goes in the mitres. Bend a spare.',
    ],
  },
  bindBox: {
    lines: [
      'Mitre dry from the tail joint round; the ends meet at the neck, under the board.',
      'Touch up at the iron what does not lie in its ledge by finger pressure.',
      'Glue a hand’s breadth at a time, and tape every finger’s width.',
      'Let it dry through before anything is scraped.',
    ],
    whole: [
      'Bend on the iron to the box as it is, not to the plan.',
      'Mitre dry from the tail joint round; tape every finger’s width when gluing.',
      'Let it dry through, then scrape flush: mind the thickness left at the edge of the top.',
    ],
  },
  scrapeBox: {
    lines: [
      'Scrape down to plate and side, never across the top’s grain; stop when the glue line is gone.',
      'Mind what the ledges left at the edge of each plate: it stands below, and there is no more.',
      'Sand sides and plates through the first grits with a flat block, in low light.',
      'Fill no gap yet: mark it, and fill it with dust of the same wood when the box is clean.',
    ],
  },
}

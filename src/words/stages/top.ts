import type { TOP_TITLES } from '../stageTitles.ts'
import type { StageLines } from './stageWords.ts'

/** The top, until it goes on the rim. */
export const TOP_LINES: Readonly<Record<keyof typeof TOP_TITLES, StageLines>> = {
  joinTop: {
    lines: [
      'Open the halves like a book, tight grain to the middle unless the client wanted otherwise.',
      'Shoot both edges in one stroke and hold them to the light.',
      'Glue flat, and mark show face and tail end before it leaves the board.',
    ],
  },
  thicknessTop: {
    lines: [
      'Bring it even, and leave enough over the target for levelling the rosette.',
      'Measure on a grid and write the readings on the waste.',
    ],
  },
  inlayRosette: {
    lines: [
      'Drill the centre pin on the joint, square to the top; every circle runs from it.',
      'Try each wall on a scrap of the same wood first. Cut the two walls, then clear between.',
      'Fit dry. An open gap goes under the board, never elsewhere.',
      'Glue, press flat under caul and weight, and leave it until it has dried through.',
    ],
  },
  levelRosette: {
    lines: [
      'Scrape from the ring outward, so that no fibre is lifted at its edge; stop when knife lines have closed.',
      'Take the inside down to the target; the show face only as far as it has to be.',
      'Read the grid again and write down thickest, thinnest and the mean.',
      'Hold it to a lamp: thin places show before a gauge finds them.',
    ],
  },
  cutSoundhole: {
    lines: [
      'Saw the top outside its line, with the overhang all round, before the hole weakens it.',
      'Same pin as the rosette. Set the cutter to its circle and try it on scrap.',
      'Go down in small steps from the show face, the plate backed up.',
      'Leave the last paper’s thickness for a knife, then ease both edges.',
    ],
  },
  archTopBraces: {
    lines: [
      'Split the stock along its grain first; saw it to size only from a split face.',
      'Grain stands upright in every stick. Number each at its tail end, and mark which edge is glued.',
      'Plane each to its arch: the rise is over a straightedge from end to end.',
      'Chalk the dish and rub: the mark runs from end to end before it is good.',
    ],
  },
  patchTop: {
    lines: [
      'Work on the inside face: bass and treble are swapped from what the player sees. Mark both.',
      'Place the bridge plate by its distance from the tail and by the centre line, not by the hole.',
      'Turn the grain as the drawing has it; ease the edges that a finger will meet.',
      'Glue in the dish. Keep glue off the lines of the braces.',
    ],
  },
  braceTop: {
    lines: [
      'Work on the inside face: bass and treble are swapped from what the player sees. Mark both.',
      'Lap what crosses by half, dry, before any glue; measure both laps from the same end.',
      'Lay out both ends of each by the table, and pencil round it where it will stand.',
      'Glue in the dish, from the crossing outward; pull the squeeze-out before it skins.',
    ],
    whole: [
      'Work on the inside face: bass and treble are swapped from what the player sees. Mark both.',
      'Plane each blank to its arch: the rise is over a straightedge from end to end. Chalk-fit it to the plate in the dish.',
      'Lap what crosses by half, dry, before any glue; measure both laps from the same end.',
      'Glue in the dish, main braces first, the small ones when those have set.',
    ],
  },
  braceTopFine: {
    lines: [
      'Tone bars, fingers and what runs across: fit each against the brace it meets before it is glued.',
      'Both ends by the table; an end that stops at another brace closes there without a gap.',
      'Cap the crossing last, when both legs have set.',
      'Look along the outside when the deck is off: no brace shows through.',
    ],
  },
  carveTop: {
    lines: [
      'Take the ends down to what is let into the lining.',
      'Carve in rounds, both sides alike, and tap or press between rounds.',
      'A straightedge across the outside, middle on the centre line, shows by its gaps at the rim lines whether the dome has held.',
      'Stop early: wood comes off the closed box only from outside.',
    ],
  },
}

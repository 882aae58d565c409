import type { DrawingName } from '../drawing/drawing.ts'
import { type DrawingTold, PLAN_TOLD } from './drawing.ts'

/** What each drawing shows. */
export const DRAWING_WORDS: Record<DrawingName, DrawingTold> = {
  plan: PLAN_TOLD,
  side: {
    name: 'Side elevation',
    description:
      'Top edge and back edge of the rim over the length of the body, with rim depths at tail, bouts, waist and neck.',
  },
  section: {
    name: 'Long section',
    description: 'The body cut open along the centreline: both plates, both blocks and the gap of the soundhole.',
  },
  domes: {
    name: 'Sections across',
    description:
      'Top and back cut across at lower bout, waist and upper bout, each with a straightedge from rim to rim and the gap under it.',
  },
  inside: {
    name: 'Side from the inside',
    description:
      'The inner face of one side laid along its length, seen from inside the body: linings, side braces with their places and lengths, and where the blocks are glued.',
  },
  blankTreble: {
    name: 'Treble side, flat blank',
    description:
      'The treble side laid flat with its straight edge, the line to saw, trim, stations with cut widths, and the waist mark.',
  },
  blankHorn: {
    name: 'Treble side from the horn on, flat blank',
    description:
      'The piece of the treble side from the horn to the neck laid flat, with its straight edge, the line to saw, trim, and stations with cut widths.',
  },
  blankBass: {
    name: 'Bass side, flat blank',
    description:
      'The bass side laid flat, the other way round than the treble one, with its straight edge, the line to saw, trim, stations with cut widths, and the waist mark.',
  },
  bevels: {
    name: 'Bevels round the rim',
    description:
      'The outline with a ray at each station, as long as the bevel there is wide: the back edge on one half, the top edge on the other; where the two sides differ, both edges on both halves, side by side.',
  },
  blockTail: {
    name: 'Tail block',
    description:
      'The tail block from above with the curve of its glue face, and from the side with its heights and the slopes of its ends.',
  },
  blockNeck: {
    name: 'Neck block',
    description:
      'The neck block from above with the curve of its glue face, and from the side with its heights and the slopes of its ends.',
  },
  bracingTop: {
    name: 'Braces of the top',
    description:
      'The top from the inside as it lies on the bench, neck to the right and treble above: the inner face of the sides, blocks, hole, the plates and every brace with its number.',
  },
  bracingBack: {
    name: 'Braces of the back',
    description:
      'The back from the inside, neck to the right and treble below: the inner face of the sides, blocks, the strip over the joint and every brace with its number.',
  },
  braceSide: {
    name: 'Brace from its side',
    description:
      'One brace with its gluing face up: the arch over a straightedge from end to end, its rise at every eighth, the ridge with its tapers, and what is let in.',
  },
  edgeSection: {
    name: 'Edges cut across',
    description:
      'The top’s edge over the back’s at one place of the rim, outside to the left: side, lining, plate at its bevel, binding and purfling at their sizes.',
  },
  fretboard: {
    name: 'Fingerboard',
    description:
      'The fingerboard from above, nut to the right: every fret with its number and its place from the nut, strings, markers, and where it lies over the joint.',
  },
  strings: {
    name: 'Nut and saddle',
    description:
      'Nut and saddle cut across, seen from the tail: every string at its place and thickness, the board under the nut, the bridge under the saddle.',
  },
  neckSet: {
    name: 'Neck set',
    description:
      'Top, bridge and board in the plane of the centreline, before stringing, with the plane of the frets carried on to the saddle and the room under the board.',
  },
  bridge: {
    name: 'Bridge from above',
    description:
      'The bridge with its slanted saddle slot behind the uncompensated line, pins or tie holes, strings, and the plate under it.',
  },
  bridgeSection: {
    name: 'Bridge cut along',
    description: 'Bridge, saddle and string in the plane of the centreline, with the top and the plate under them.',
  },
  neckSide: {
    name: 'Neck from the side',
    description:
      'Shaft, heel and head with the board on: thicknesses at two frets, the cheek at the neck angle, what enters the block, bolts and the rod’s channel.',
  },
  head: {
    name: 'Head from above',
    description: 'Tuner holes and the way of every string from its slot in the nut to its post.',
  },
  plank: {
    name: 'Plank',
    description:
      'One plank on its face, its grain along it: every piece that is sawn out with its number, and dashed what is left over.',
  },
  outlineTemplate: {
    name: 'Outline template',
    description: 'The outer face of the sides at full size, with centreline, stations, bouts, waist and joint.',
  },
  formLine: {
    name: 'Line of a form',
    description: 'The line a mould, a bending form or a caul is sawn to, beside the outer face of the sides.',
  },
  contourBoard: {
    name: 'Contour board',
    description: 'One line that parts a convex board from a hollow one: the curve of the block’s glue face.',
  },
  archTemplate: {
    name: 'Arch template',
    description: 'An arch over a straight reference edge, with its rise at every eighth.',
  },
  slottingRuler: {
    name: 'Slotting ruler',
    description: 'A strip with every fret slot at its place from the nut.',
  },
  bridgeGauge: {
    name: 'Bridge place gauge',
    description: 'A strip from the end of the board to the bridge, with the front edge of the bridge and its centre.',
  },
  neckSetGauge: {
    name: 'Neck-set gauge',
    description: 'A straightedge over the frets with a foot that touches the top at the saddle when the neck is set.',
  },
  bindingGauge: {
    name: 'Binding height gauge',
    description: 'Steps with the heights and depths of the ledges at each place of the rim.',
  },
  rosette: {
    name: 'Soundhole and rosette',
    description:
      'The hole and the rings with their radii, the circles the cutter runs on, and the angle of each ring that the board hides.',
  },
}

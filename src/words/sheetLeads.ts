import type { Sheet } from './sheets.ts'

/** What is said under the question of a sheet; it comes with the sheets, not with the overview that lists their questions. */
export const SHEET_LEADS: Record<Sheet, string> = {
  outline: 'The outline is the outer face of the sides. Bouts and waist are found on the curve.',
  sides: 'Tap a place in the drawing or the table, or type how far away it is.',
  domes: 'Gaps are what shows under a straightedge laid from rim to rim on the dished plate.',
  blocks: 'The glue faces follow the inner face of the sides.',
  linings:
    'A lining follows the dome, so its inner corner stands prouder than the side. What stands proud is dished off.',
  rosette: 'The middle of the cutter runs on the cutter circles.',
  bracing: 'Seen from inside, so bass and treble change sides. Drag an end, or type where it goes.',
  edges: 'The cutter’s guide stays square to the side. A guide that rides on the dome is off by what the table says.',
  air: 'A band, not a note: no wall is rigid, and every body gives way in its own measure.',
  cutting: 'Every piece of wood, finished and as it is sawn out, by the wood it comes from.',
  frets: 'Saw every slot from the nut, never from the slot before: small errors would add up.',
  strings: 'Gaps between strings are equal, not their middles. Masses of wound strings are their maker’s to state.',
  neckSet: 'Lay a straightedge on the frets and measure at the saddle line, before the bridge is glued.',
  bridge: 'Measured from the real fret 12. Prove the compensation there once it is strung.',
  neck: 'Thicknesses at fret 1 and 10 count the board. What collides, or grows thin, is said below.',
  numbers: 'Tap a name to see what it is and how it is measured.',
}

export const FINDINGS_WORDS = { goTo: 'Go to', heading: 'What does not fit' } as const

import type { BACK_FORMS, OutlinePiece, RingPlan, TOP_FORMS } from '../core/plan.ts'
import type { PlanField } from '../core/planFields.ts'
import { BOX_WORDS } from './fields/box.ts'
import type { FieldWords } from './fields/fieldWords.ts'
import { INSIDE_FIELDS } from './fields/inside.ts'
import { BOARD_FIELDS, NECK_FIELDS } from './fields/neck.ts'
import { OUTLINE_FIELDS } from './fields/outline.ts'
import { RIM_FIELDS } from './fields/rim.ts'

/** Name and hint of every field of the plan; one that has none does not compile. */
export const FIELD_WORDS: Record<PlanField, FieldWords> = {
  ...OUTLINE_FIELDS,
  ...RIM_FIELDS,
  'back.form': { name: 'Form of the back', hint: 'What the back is dished to.' },
  'back.radiusMm': { name: 'Dome of the back', hint: 'Radius of the dish.' },
  'top.form': { name: 'Form of the top', hint: 'What the rim and the plate are brought to.' },
  'top.radiusMm': { name: 'Dome of the top', hint: 'Radius of the dish.' },
  'top.flatFromMm': {
    name: 'Flat begins at',
    hint: 'From the tail, often at the upper cross brace.',
  },
  'top.flatSlope': { name: 'The flat falls', hint: 'So that the board lies on it, or by a figure of your own.' },
  'top.flatSlopeDeg': { name: 'Fall of the flat', hint: 'Toward the neck, against the rim plane.' },
  'top.riseAtSaddleMm': { name: 'Rise at the saddle', hint: 'Crown of the plate over the flat rim.' },
  'plates.topMm': { name: 'Top thickness', hint: 'Of the plate.' },
  'plates.backMm': { name: 'Back thickness', hint: 'Of the plate.' },
  'blocks.tail.widthMm': { name: 'Tail block, width', hint: 'Across the body.' },
  'blocks.tail.thicknessMm': { name: 'Tail block, thickness', hint: 'Along the centreline.' },
  'blocks.neck.widthMm': { name: 'Neck block, width', hint: 'Across the body.' },
  'blocks.neck.thicknessMm': { name: 'Neck block, thickness', hint: 'Along the centreline.' },
  ...INSIDE_FIELDS,
  ...BOX_WORDS,
  ...BOARD_FIELDS,
  ...NECK_FIELDS,
  'soundhole.centreMm': { name: 'Centre of the hole', hint: 'From the tail.' },
  'soundhole.radiusMm': { name: 'Radius of the hole', hint: 'Of the finished hole.' },
  'soundhole.cutterMm': { name: 'Cutter for the hole', hint: 'Diameter.' },
  'rosette.rings': { name: 'Rings', hint: 'Radii from the centre of the hole.' },
  'rosette.inlayMm': { name: 'Inlay thickness', hint: 'Strips and tiles as glued in.' },
  'rosette.standsProudMm': { name: 'Inlay stands proud by', hint: 'What is scraped off afterward.' },
  'rosette.cutterMm': { name: 'Cutter for the channels', hint: 'Diameter.' },
  'rosette.passOverlapMm': { name: 'Overlap of passes', hint: 'Of one cutter circle on the next.' },
  'rosette.gapMarginMm': { name: 'Hidden margin', hint: 'On both sides of a ring’s gap.' },
}

type PieceField = 'kind' | 'bend' | 'radiusMm' | 'sweepDeg' | 'lengthMm'
/** The fields of one compass piece. */
export const PIECE_WORDS: Record<PieceField, FieldWords> = {
  kind: { name: 'Piece', hint: 'An arc of the compass, or a straight.' },
  bend: { name: 'Bend', hint: 'Round bulges out of the body, hollow bends into it.' },
  radiusMm: { name: 'Radius', hint: 'On the outer face. May be left open.' },
  sweepDeg: { name: 'Sweep', hint: 'How far the arc turns, in degrees. May be left open.' },
  lengthMm: { name: 'Length', hint: 'Of the straight. May be left open.' },
}

/** The fields of one rosette ring. */
export const RING_WORDS: Record<Exclude<keyof RingPlan, 'order'>, FieldWords> = {
  innerRadiusMm: { name: 'Inner radius', hint: 'From the centre of the hole.' },
  outerRadiusMm: { name: 'Outer radius', hint: 'From the centre of the hole.' },
  join: { name: 'Ends of the ring', hint: 'Where the strip begins and ends.' },
  gapMm: {
    name: 'Gap wanted',
    hint: 'Along the middle of the ring. Left open: all the board hides, less the margins.',
  },
  tileCount: { name: 'Tiles round it', hint: 'How many tiles or wedges. Left open: one plain strip.' },
}

export const BACK_FORM_WORDS: Record<(typeof BACK_FORMS)[number], string> = {
  sphere: 'Domed, from a dish',
  across: 'Arched across only',
  flat: 'Flat',
}
export const TOP_FORM_WORDS: Record<(typeof TOP_FORMS)[number], string> = {
  sphere: 'Domed to the rim',
  flatUpperBout: 'Domed, upper bout flat',
  flatRim: 'Flat rim, domed plate',
  flat: 'Flat',
}
export const PIECE_KIND_WORDS: Record<OutlinePiece['kind'], string> = { arc: 'Arc', straight: 'Straight' }
export const BEND_WORDS: Record<Extract<OutlinePiece, { kind: 'arc' }>['bend'], string> = {
  convex: 'Round',
  concave: 'Hollow',
}
export const JOIN_WORDS: Record<RingPlan['join'], string> = {
  closed: 'Closed all round',
  openUnderBoard: 'Open under the board',
}

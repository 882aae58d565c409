import type { CUTAWAY_FORMS, HANDS, OUTLINE_KINDS } from '../../core/plan.ts'
import type { FieldsUnder, FieldWords } from './fieldWords.ts'

const END_RADIUS_HINT = 'A radius, or flat. Left open: as fair as it comes.'
const TAIL_RADIUS: FieldWords = { name: 'Radius at the tail', hint: END_RADIUS_HINT }
const NECK_FLAT: FieldWords = { name: 'Flat at the neck', hint: 'Whole width of the flat; 0 for none.' }
const NECK_RADIUS: FieldWords = {
  name: 'Radius at the neck',
  hint: `Used where there is no flat. ${END_RADIUS_HINT}`,
}

export const OUTLINE_FIELDS: Record<FieldsUnder<'outline'> | 'handed', FieldWords> = {
  handed: {
    name: 'Hand it is played with',
    hint: 'Left: drawings are mirrored; numbers say bass and treble and stay.',
  },
  'outline.lengthMm': {
    name: 'Body length',
    hint: 'Tail to neck joint on the centreline. With compass arcs it may be left open; the arcs then give it.',
  },
  'outline.kind': { name: 'Outline drawn by', hint: 'The way not in use keeps its values.' },
  'outline.pieces': {
    name: 'Compass pieces',
    hint: 'Half the outline, from the tail to the neck. Up to three values may be left open.',
  },
  'outline.keyWidths.lowerBoutMm': { name: 'Lower bout', hint: 'Whole width.' },
  'outline.keyWidths.lowerBoutAtMm': { name: 'Lower bout stands at', hint: 'From the tail.' },
  'outline.keyWidths.waistMm': { name: 'Waist', hint: 'Whole width.' },
  'outline.keyWidths.waistAtMm': { name: 'Waist stands at', hint: 'From the tail.' },
  'outline.keyWidths.upperBoutMm': { name: 'Upper bout', hint: 'Whole width.' },
  'outline.keyWidths.upperBoutAtMm': { name: 'Upper bout stands at', hint: 'From the tail.' },
  'outline.keyWidths.tailRadiusMm': TAIL_RADIUS,
  'outline.keyWidths.neckFlatMm': NECK_FLAT,
  'outline.keyWidths.neckRadiusMm': NECK_RADIUS,
  'outline.halfWidths.rows': {
    name: 'Half-width readings',
    hint: 'How far from the tail, and how far out from the centreline there. Closer together where it bends more.',
  },
  'outline.halfWidths.tailRows': {
    name: 'Readings at the tail end',
    hint: 'Read the other way, where the outline runs across the body: at a half-width, how far from the tail.',
  },
  'outline.halfWidths.neckRows': {
    name: 'Readings at the neck end',
    hint: 'Read the other way, where the outline runs across the body: at a half-width, how far from the tail.',
  },
  'outline.halfWidths.readToMm': {
    name: 'Read to within',
    hint: 'How closely the table was read. The curve stays that near to every reading.',
  },
  'outline.halfWidths.tailRadiusMm': TAIL_RADIUS,
  'outline.halfWidths.neckFlatMm': NECK_FLAT,
  'outline.halfWidths.neckRadiusMm': NECK_RADIUS,
  'outline.drawnPath': { name: 'Drawn path', hint: 'Half the outline or all of it, taken from an SVG or DXF file.' },
  'outline.cutaway.form': { name: 'Cutaway', hint: 'On the treble side of the upper bout.' },
  'outline.cutaway.leavesAtMm': {
    name: 'Cutaway begins at',
    hint: 'From the tail along the centreline, where the side leaves the mirrored bass side.',
  },
  'outline.cutaway.hornRadiusMm': { name: 'Radius of the horn', hint: 'Round, on the outer face.' },
  'outline.cutaway.hollowRadiusMm': { name: 'Radius of the hollow', hint: 'Hollow, from the horn to the neck.' },
  'outline.cutaway.meetsNeckAtMm': {
    name: 'Hollow meets the neck at',
    hint: 'Out from the centreline, on the line of the neck joint.',
  },
}

export const HAND_WORDS: Record<(typeof HANDS)[number], string> = { right: 'Right hand', left: 'Left hand' }
export const OUTLINE_KIND_WORDS: Record<(typeof OUTLINE_KINDS)[number], string> = {
  compassArcs: 'Compass arcs',
  keyWidths: 'Key widths',
  halfWidths: 'Measured half-widths',
  drawnPath: 'A drawn path',
}
export const CUTAWAY_FORM_WORDS: Record<(typeof CUTAWAY_FORMS)[number], string> = {
  none: 'None',
  rounded: 'Rounded horn',
  pointed: 'Pointed horn',
}

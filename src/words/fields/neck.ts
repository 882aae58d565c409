import type {
  BOARD_SURFACES,
  COMPENSATIONS,
  FRET_FANS,
  NECK_JOINTS,
  PIN_RUNS,
  RODS,
  STRING_HOLDS,
  StringMaterial,
  StringPlan,
  TUNER_SIDES,
} from '../../core/neckPlan.ts'
import type { FLAT_SLOPES } from '../../core/plan.ts'
import type { FieldsUnder, FieldWords } from './fieldWords.ts'

/** Scale, board, frets and strings. */
export const BOARD_FIELDS: Record<FieldsUnder<'scale' | 'board' | 'frets' | 'strings' | 'setup'>, FieldWords> = {
  'scale.lengthMm': { name: 'Scale length', hint: 'Nut to saddle line, uncompensated. Fanned: of the bass string.' },
  'scale.jointFret': { name: 'Fret at the joint', hint: 'Over the edge of the body.' },
  'scale.fan': { name: 'Frets run', hint: 'Fanned: the outer strings have scales of their own.' },
  'scale.trebleLengthMm': { name: 'Scale of the treble string', hint: 'Nut to saddle line, uncompensated.' },
  'scale.squareFret': { name: 'Square fret', hint: 'The one that runs square across; 0 is the nut.' },
  'scale.frets': { name: 'Frets', hint: 'How many the board has.' },
  'board.nutWidthMm': { name: 'Width at the nut', hint: 'Of the board.' },
  'board.widthAtTwelfthMm': { name: 'Width at fret 12', hint: 'The edges run straight through both widths.' },
  'board.endBeyondLastFretMm': { name: 'End beyond the last fret', hint: 'To the board’s square end.' },
  'board.thicknessMm': { name: 'Board thickness', hint: 'At the crest.' },
  'board.surface': { name: 'Surface of the board', hint: 'Across the strings.' },
  'board.radiusMm': { name: 'Board radius', hint: 'At the nut; everywhere on a single radius.' },
  'board.endRadiusMm': { name: 'Board radius at its end', hint: 'It changes evenly from nut to end.' },
  'board.fallOffMm': { name: 'Fall-off at the end', hint: 'Under the plane of the frets; begins at the joint.' },
  'board.bindingMm': { name: 'Board binding', hint: 'Thickness on either long edge; 0 for none.' },
  'board.markersAt': { name: 'Markers', hint: 'Marked frets. Those at octaves stand in pairs.' },
  'frets.crownMm': { name: 'Fret crown', hint: 'Height over the board.' },
  'frets.tangMm': { name: 'Fret tang', hint: 'Depth under the board.' },
  'frets.slotWidthMm': { name: 'Slot width', hint: 'What the saw leaves.' },
  'frets.slotDepthMm': { name: 'Slot depth', hint: 'At the crest; its bottom runs straight across.' },
  'frets.overhangMm': { name: 'Wire overhang', hint: 'Left at each end until the ends are dressed.' },
  'strings.set': { name: 'Strings', hint: 'From bass to treble.' },
  'strings.nutSpreadMm': { name: 'Spread at the nut', hint: 'Middle to middle of the outer strings.' },
  'strings.saddleSpreadMm': { name: 'Spread at the saddle', hint: 'Middle to middle of the outer strings.' },
  'strings.pairGapMm': { name: 'Gap in a pair', hint: 'Edge to edge, strings of one course.' },
  'strings.pitchHz': { name: 'Pitch of the A', hint: 'The one over middle C.' },
  'strings.otherNotes': { name: 'Another tuning', hint: 'To compare with; it changes nothing that is built.' },
  'strings.otherScaleMm': { name: 'Another scale', hint: 'To compare with; it changes nothing that is built.' },
  'setup.actionBassMm': { name: 'Action, bass', hint: 'Under the string at fret 12.' },
  'setup.actionTrebleMm': { name: 'Action, treble', hint: 'Under the string at fret 12.' },
  'setup.nutBassMm': { name: 'Nut slot, bass', hint: 'Bottom of the slot over the plane of the frets.' },
  'setup.nutTrebleMm': { name: 'Nut slot, treble', hint: 'Bottom of the slot over the plane of the frets.' },
  'setup.reliefMm': { name: 'Relief', hint: 'Hollow of the neck under strings, about fret 7.' },
  'setup.riseMm': {
    name: 'Rise under strings',
    hint: 'Top and neck together, at the saddle. Usual: 0.5 to 1 on steel, 0.1 to 0.4 on nylon; better your own once measured.',
  },
}

/** Bridge, neck and head. */
export const NECK_FIELDS: Record<FieldsUnder<'bridge' | 'neck' | 'head'>, FieldWords> = {
  'bridge.lengthMm': { name: 'Bridge length', hint: 'Across the body.' },
  'bridge.widthMm': { name: 'Bridge width', hint: 'Along the centreline.' },
  'bridge.thicknessMm': { name: 'Bridge thickness', hint: 'In the middle.' },
  'bridge.saddleWidthMm': { name: 'Saddle slot, width', hint: 'And so of the saddle.' },
  'bridge.saddleLengthMm': { name: 'Saddle length', hint: 'Along its slot.' },
  'bridge.slotDepthMm': { name: 'Saddle slot, depth', hint: 'From the bridge’s top.' },
  'bridge.saddleShowingMm': { name: 'Saddle showing', hint: 'Crown over the bridge, in the middle.' },
  'bridge.saddleTiltDeg': { name: 'Saddle leans back', hint: 'Toward the tail, from upright.' },
  'bridge.saddleFromFrontMm': { name: 'Front edge to saddle', hint: 'To the middle of the crown.' },
  'bridge.holds': { name: 'Strings are held', hint: 'Behind the saddle.' },
  'bridge.holdsBehindMm': { name: 'Saddle to pins or holes', hint: 'On the centreline.' },
  'bridge.pinRun': { name: 'Line of pins or holes', hint: 'How it lies.' },
  'bridge.pinSpreadMm': { name: 'Spread of the pins', hint: 'Middle to middle of the outer ones.' },
  'bridge.tieHoleOverTopMm': { name: 'Tie holes over the top', hint: 'Where strings leave the block.' },
  'bridge.compensation': { name: 'Compensation', hint: 'Estimated from the strings, or as entered.' },
  'bridge.compensationBassMm': { name: 'Compensation, bass', hint: 'Saddle behind its line, outer string.' },
  'bridge.compensationTrebleMm': { name: 'Compensation, treble', hint: 'Saddle behind its line, outer string.' },
  'bridge.plateMm': { name: 'Bridge plate, thickness', hint: 'Inside, under the bridge; 0 for none.' },
  'bridge.plateFromMm': { name: 'Bridge plate begins at', hint: 'From the tail.' },
  'bridge.plateToMm': { name: 'Bridge plate ends at', hint: 'From the tail.' },
  'bridge.plateTailWidthMm': { name: 'Bridge plate, width toward the tail', hint: 'Whole width, across the body.' },
  'bridge.plateNeckWidthMm': { name: 'Bridge plate, width toward the neck', hint: 'Whole width, across the body.' },
  'neck.joint': { name: 'Joint of neck and body', hint: 'How the heel is held.' },
  'neck.heelCapMm': { name: 'Heel, width at its cap', hint: 'At the back of the body.' },
  'neck.tenonWidthMm': { name: 'Tenon, width', hint: 'Across.' },
  'neck.tenonDepthMm': { name: 'Tenon, depth', hint: 'Into the neck block.' },
  'neck.boltsAtMm': { name: 'Bolts or dowels at', hint: 'Middle of each, under the top’s face.' },
  'neck.boltMm': { name: 'Bolt diameter', hint: 'Or of the dowel.' },
  'neck.thicknessAtFirstMm': { name: 'Neck at fret 1', hint: 'Thickness with the board.' },
  'neck.thicknessAtTenthMm': { name: 'Neck at fret 10', hint: 'Thickness with the board.' },
  'neck.stockMm': { name: 'Shaft stock', hint: 'Thickness of the blank at the head, before the board.' },
  'neck.rod': { name: 'Rod', hint: 'In a channel under the board.' },
  'neck.rodLengthMm': { name: 'Rod channel, length', hint: 'End to end.' },
  'neck.rodWidthMm': { name: 'Rod channel, width', hint: 'Across.' },
  'neck.rodDepthMm': { name: 'Rod channel, depth', hint: 'From the face under the board.' },
  'neck.rodFromNutMm': { name: 'Rod channel begins', hint: 'Behind the nut’s front edge; negative: in the head.' },
  'head.angleDeg': { name: 'Head angle', hint: 'Against the neck’s face.' },
  'head.lengthMm': { name: 'Head length', hint: 'From the nut, along its face.' },
  'head.thicknessMm': { name: 'Head thickness', hint: 'With its veneers.' },
  'head.faceVeneerMm': { name: 'Veneer on the face', hint: '0 for none.' },
  'head.backVeneerMm': { name: 'Veneer on the back', hint: '0 for none.' },
  'head.tuners': { name: 'Tuners', hint: 'How they stand.' },
  'head.firstPostMm': { name: 'Nut to the nearest post', hint: 'Along the face.' },
  'head.postSpacingMm': { name: 'Post to post', hint: 'Along the face.' },
  'head.firstAcrossMm': { name: 'Nearest post, across', hint: 'Centreline to its middle.' },
  'head.lastAcrossMm': { name: 'Furthest post, across', hint: 'Centreline to its middle.' },
  'head.postMm': { name: 'Post diameter', hint: 'Where the string winds; 0 for rollers in a slot.' },
  'head.holeMm': { name: 'Tuner hole', hint: 'Diameter.' },
  'head.stringOverFaceMm': { name: 'String at the post', hint: 'Over the face of the head; negative in a slot.' },
}

export const FLAT_SLOPE_WORDS: Record<(typeof FLAT_SLOPES)[number], string> = {
  neckSet: 'As the neck set asks',
  entered: 'As entered',
}
export const FRET_FAN_WORDS: Record<(typeof FRET_FANS)[number], string> = { square: 'Square across', fanned: 'Fanned' }
export const BOARD_SURFACE_WORDS: Record<(typeof BOARD_SURFACES)[number], string> = {
  flat: 'Flat',
  single: 'One radius',
  compound: 'Compound radius',
}
export const HOLD_WORDS: Record<(typeof STRING_HOLDS)[number], string> = { pins: 'By pins', tie: 'Tied to a block' }
export const PIN_RUN_WORDS: Record<(typeof PIN_RUNS)[number], string> = {
  square: 'Square across',
  withSaddle: 'Along the saddle',
}
export const COMPENSATION_WORDS: Record<(typeof COMPENSATIONS)[number], string> = {
  entered: 'As entered',
  estimated: 'Estimated from the strings',
}
export const JOINT_WORDS: Record<(typeof NECK_JOINTS)[number], string> = {
  boltedTenon: 'Tenon, bolted',
  dovetail: 'Dovetail',
  butt: 'Butted, bolts or dowels',
  sidesInHeel: 'Sides let into the heel',
}
export const ROD_WORDS: Record<(typeof RODS)[number], string> = { none: 'None', fitted: 'Fitted' }
export const TUNER_SIDE_WORDS: Record<(typeof TUNER_SIDES)[number], string> = {
  bothSides: 'On both sides',
  bassSide: 'All on the bass side',
}
export const MATERIAL_WORDS: Record<StringMaterial, string> = {
  steel: 'Plain steel',
  nylon: 'Plain nylon',
  fluorocarbon: 'Plain fluorocarbon',
  woundOnSteel: 'Wound on steel',
  woundOnNylon: 'Wound on nylon',
}

/** The fields of one string. */
export const STRING_WORDS: Record<keyof StringPlan, FieldWords> = {
  material: { name: 'Material', hint: 'Of the string, or of its core.' },
  diameterMm: { name: 'Diameter', hint: 'Outside.' },
  coreMm: { name: 'Core', hint: 'Diameter of a wound string’s core. Left open: its compensation is not estimated.' },
  massGPerM: {
    name: 'Mass',
    hint: 'As the string’s maker states it. Left open: by diameter and density, plain strings only.',
  },
  note: { name: 'Note', hint: 'What it is tuned to: E2, A2 … E4.' },
  pairedWithNext: { name: 'Pair', hint: 'One course with the next string.' },
}

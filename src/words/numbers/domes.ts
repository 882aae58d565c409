import type { KeysUnder, NumberWords } from './numberWords.ts'

export const DOME_WORDS: Record<KeysUnder<'top' | 'back'>, NumberWords> = {
  'top.radiusMm': {
    name: 'Dome of the top',
    what: 'Radius of the dish the top is worked in.',
    how: 'Straightedge across the dish, gap in the middle; the chord and the gap give the radius.',
  },
  'top.flatFromMm': {
    name: 'Flat begins at',
    what: 'Where the flat of the upper bout begins, from the tail along the centreline.',
    how: 'Rule along the centreline from the tail.',
  },
  'top.flatSlopeRad': {
    name: 'Fall of the flat',
    what: 'How steeply the flat of the upper bout falls toward the neck, against the rim plane.',
    how: 'Bevel gauge on the neck end of the rim, against the rim plane.',
  },
  'top.neckEdgeMm': {
    name: 'Top edge at the neck',
    what: 'Height of the rim’s top edge over the rim plane at the neck centre; minus where it is planed below.',
    how: 'Straightedge from the tail over the neck edge, gap beneath it.',
  },
  'top.riseAtSaddleMm': {
    name: 'Rise at the saddle',
    what: 'How high the crown of the plate stands over the flat rim at the saddle line, as wanted.',
    how: 'Straightedge from rim to rim at the saddle line, gap at the ends.',
  },
  'top.heightAtSaddleMm': {
    name: 'Top over the rim plane at the saddle',
    what: 'Height of the top over the rim plane, on the centreline at the saddle line.',
    how: null,
  },
  'top.gapAcrossLowerBoutMm': {
    name: 'Top, gap across the lower bout',
    what: 'Rise of the dished top over a straight line from rim to rim at the lower bout.',
    how: 'Straightedge across the inside of the dished top at the lower bout, gap in the middle.',
  },
  'top.gapAcrossWaistMm': {
    name: 'Top, gap across the waist',
    what: 'Rise of the dished top over a straight line from rim to rim at the waist.',
    how: 'Straightedge across the inside of the dished top at the waist, gap in the middle.',
  },
  'top.gapAcrossUpperBoutMm': {
    name: 'Top, gap across the upper bout',
    what: 'Rise of the dished top over a straight line from rim to rim at the upper bout; nothing where it is flat.',
    how: 'Straightedge across the inside of the dished top at the upper bout, gap in the middle.',
  },
  'top.gapAlongMm': {
    name: 'Top, gap along the body',
    what: 'Rise of the dished top over a straight line from tail to neck, half-way along.',
    how: 'Straightedge along the centreline, tail to neck, gap half-way.',
  },
  'back.radiusMm': {
    name: 'Dome of the back',
    what: 'Radius of the dish the back is worked in.',
    how: 'Straightedge across the dish, gap in the middle; the chord and the gap give the radius.',
  },
  'back.axisAtMm': {
    name: 'Axis of the back stands at',
    what: 'Where the upright axis of the spherical back crosses the centreline, from the tail. With taper it moves toward the tail, even past it.',
    how: null,
  },
  'back.lowestAtMm': {
    name: 'Lowest place of the back',
    what: 'Where on the centreline, from the tail, the back lies furthest under the rim plane.',
    how: null,
  },
  'back.lowestUnderRimPlaneMm': {
    name: 'Back under the rim plane',
    what: 'How far the inside of the back lies under the rim plane at its lowest place.',
    how: null,
  },
  'back.gapAcrossLowerBoutMm': {
    name: 'Back, gap across the lower bout',
    what: 'Hollow of the dished back under a straight line from rim to rim at the lower bout.',
    how: 'Straightedge across the inside of the back at the lower bout, gap in the middle.',
  },
  'back.gapAcrossWaistMm': {
    name: 'Back, gap across the waist',
    what: 'Hollow of the dished back under a straight line from rim to rim at the waist.',
    how: 'Straightedge across the inside of the back at the waist, gap in the middle.',
  },
  'back.gapAcrossUpperBoutMm': {
    name: 'Back, gap across the upper bout',
    what: 'Hollow of the dished back under a straight line from rim to rim at the upper bout.',
    how: 'Straightedge across the inside of the back at the upper bout, gap in the middle.',
  },
  'back.gapAlongMm': {
    name: 'Back, gap along the body',
    what: 'Hollow of the dished back under a straight line from tail to neck, half-way along.',
    how: 'Straightedge along the inside of the back on the centreline, gap half-way.',
  },
}

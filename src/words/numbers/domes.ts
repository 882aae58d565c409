import { ENTERED, type KeysUnder, type NumberTexts } from './numberWords.ts'

const plate = (name: 'top' | 'back'): NumberTexts => ({
  what: `Thickness the ${name} is worked to before anything is glued to it; the same all over.`,
  how: 'Thickness caliper at the middle and round the edge.',
  ...ENTERED,
})

export const DOME_WORDS: Record<KeysUnder<'plates' | 'top' | 'back'>, NumberTexts> = {
  'plates.topMm': plate('top'),
  'plates.backMm': plate('back'),
  'top.radiusMm': {
    what: 'Radius of the dish the top is worked in.',
    how: 'Straightedge across the dish, gap in the middle; the chord and the gap give the radius.',
    formula: 'As entered. A flat top has none.',
    from: 'Entered, not computed.',
  },
  'top.flatFromMm': {
    what: 'Where the flat of the upper bout begins, from the tail along the centreline.',
    how: 'Rule along the centreline from the tail.',
    formula: 'As entered, held between tail and neck.',
    from: 'Entered, not computed.',
  },
  'top.flatSlopeRad': {
    what: 'How steeply the flat of the upper bout falls toward the neck, against the rim plane.',
    how: 'Bevel gauge on the neck end of the rim, against the rim plane.',
    formula: 'As entered, or the neck angle to build to.',
    from: 'Entered, or from the neck set; derived.',
  },
  'top.neckEdgeMm': {
    what: 'Height of the rim’s top edge over the rim plane at the neck centre; minus where it is planed below.',
    how: 'Straightedge from the tail over the neck edge, gap beneath it.',
    formula:
      'z0 − (L − x0) × tan f, never over 0: z0 dish at the rim where the flat begins, x0 that place, L body length, f fall of the flat. Nothing planed: 0.',
    from: 'The flat through both rim edges where it begins; derived.',
  },
  'top.riseAtSaddleMm': {
    what: 'How high the crown of the plate stands over the flat rim at the saddle line, as wanted.',
    how: 'Straightedge from rim to rim at the saddle line, gap at the ends.',
    ...ENTERED,
  },
  'top.heightAtSaddleMm': {
    what: 'Height of the top over the rim plane, on the centreline at the saddle line.',
    how: null,
    formula:
      '√(R² − a²) − √(R² − L²/4): R dish radius, a from half-way to the saddle line, L body length. Flat rim: the rise as entered. Flat top: 0.',
    from: 'Pythagoras on the section through the dome’s axis; derived.',
  },
  'top.gapAcrossLowerBoutMm': {
    what: 'Rise of the dished top over a straight line from rim to rim at the lower bout.',
    how: 'Straightedge across the outside of the top at the lower bout, middle on the centreline; gap at the rim lines.',
    formula:
      'Plate at the centreline less plate at the rim. On a sphere Q − √(Q² − y²), Q = √(R² − a²): R dish radius, y half-width, a along from its axis.',
    from: 'Pythagoras on the section through the dome’s axis; derived.',
  },
  'top.gapAcrossWaistMm': {
    what: 'Rise of the dished top over a straight line from rim to rim at the waist.',
    how: 'Straightedge across the outside of the top at the waist, middle on the centreline; gap at the rim lines.',
    formula:
      'Plate at the centreline less plate at the rim. On a sphere Q − √(Q² − y²), Q = √(R² − a²): R dish radius, y half-width, a along from its axis.',
    from: 'Pythagoras on the section through the dome’s axis; derived.',
  },
  'top.gapAcrossUpperBoutMm': {
    what: 'Rise of the dished top over a straight line from rim to rim at the upper bout; nothing where it is flat.',
    how: 'Straightedge across the outside of the top at the upper bout, middle on the centreline; gap at the rim lines.',
    formula:
      'Plate at the centreline less plate at the rim. On a sphere Q − √(Q² − y²), Q = √(R² − a²): R dish radius, y half-width, a along from its axis; flat: 0.',
    from: 'Pythagoras on the section through the dome’s axis; derived.',
  },
  'top.gapAlongMm': {
    what: 'Rise of the dished top over a straight line from tail to neck, half-way along.',
    how: 'Straightedge along the outside of the top on the centreline, touching half-way; mean of the gaps at tail and neck.',
    formula:
      'Plate half-way along less the mean of both ends. Sphere to the rim: R − √(R² − L²/4), R dish radius, L body length.',
    from: 'Pythagoras on the section through the dome’s axis; derived.',
  },
  'back.radiusMm': {
    what: 'Radius of the dish the back is worked in.',
    how: 'Straightedge across the dish, gap in the middle; the chord and the gap give the radius.',
    formula: 'As entered. A flat back has none.',
    from: 'Entered, not computed.',
  },
  'back.axisAtMm': {
    what: 'Where the upright axis of the spherical back crosses the centreline, from the tail. With taper it moves toward the tail, even past it.',
    how: null,
    formula:
      'L/2 − (T − N) × √(R² − c²/4) ÷ c, c = √(L² + (T − N)²): L body length, T and N rim depths at tail and neck, R dish radius.',
    from: 'Square through the middle of the slanted line from tail to neck; derived.',
  },
  'back.lowestAtMm': {
    what: 'Where on the centreline, from the tail, the back lies furthest under the rim plane.',
    how: null,
    formula: 'At the axis of the sphere, held between tail and neck. Not dished along: at the deeper end.',
    from: 'The foot of the upright axis is the lowest place of a sphere; derived.',
  },
  'back.lowestUnderRimPlaneMm': {
    what: 'How far the inside of the back lies under the rim plane at its lowest place.',
    how: null,
    formula:
      'T + R − √(R² − a²): T rim depth at the tail, R dish radius, a the axis from the tail. Axis off the body, or not dished along: depth at the deeper end.',
    from: 'Pythagoras on the section through the dome’s axis; derived.',
  },
  'back.gapAcrossLowerBoutMm': {
    what: 'Hollow of the dished back under a straight line from rim to rim at the lower bout.',
    how: 'Straightedge across the outside of the back at the lower bout, middle on the centreline; gap at the rim lines.',
    formula:
      'Sphere: Q − √(Q² − y²), Q = √(R² − a²): R dish radius, y half-width, a along from its axis. Arched across: (R − √(R² − y²)) ÷ cos of its taper. Flat: 0.',
    from: 'Pythagoras on the section through the dome’s axis; derived.',
  },
  'back.gapAcrossWaistMm': {
    what: 'Hollow of the dished back under a straight line from rim to rim at the waist.',
    how: 'Straightedge across the outside of the back at the waist, middle on the centreline; gap at the rim lines.',
    formula:
      'Sphere: Q − √(Q² − y²), Q = √(R² − a²): R dish radius, y half-width, a along from its axis. Arched across: (R − √(R² − y²)) ÷ cos of its taper. Flat: 0.',
    from: 'Pythagoras on the section through the dome’s axis; derived.',
  },
  'back.gapAcrossUpperBoutMm': {
    what: 'Hollow of the dished back under a straight line from rim to rim at the upper bout.',
    how: 'Straightedge across the outside of the back at the upper bout, middle on the centreline; gap at the rim lines.',
    formula:
      'Sphere: Q − √(Q² − y²), Q = √(R² − a²): R dish radius, y half-width, a along from its axis. Arched across: (R − √(R² − y²)) ÷ cos of its taper. Flat: 0.',
    from: 'Pythagoras on the section through the dome’s axis; derived.',
  },
  'back.gapAlongMm': {
    what: 'Hollow of the dished back under a straight line from tail to neck, half-way along.',
    how: 'Straightedge along the outside of the back on the centreline, touching half-way; mean of the gaps at tail and neck.',
    formula:
      '√(R² − u²) − √(R² − u² − c²/4): R dish radius, u from half-way to the axis, c tail to neck along the taper. Not dished along: 0.',
    from: 'Pythagoras on the section through the dome’s axis; derived.',
  },
}

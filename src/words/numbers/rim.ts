import type { KeysUnder, NumberTexts } from './numberWords.ts'

type RowName = KeysUnder<'rim'> extends `rim[].${infer Name}` ? Name : never

/** The same columns stand for every station round the rim and for the named places, on either side. */
const ROW_WORDS: Record<RowName, NumberTexts> = {
  alongOuterMm: {
    what: 'Where the station stands on the bent side: along its outer face, from the tail.',
    how: null,
    formula:
      'A whole number of steps from the tail, the last at the neck. Named places stand where the curve has them.',
    from: 'Arc length; derived.',
  },
  alongBlankMm: {
    what: 'Where the same station stands on the flat blank: from its tail line, trim left out, at mid-thickness.',
    how: null,
    formula: 's − t/2 × turn: s round the outside, t side thickness, turn of the outline from the tail, in radians.',
    from: 'Length of a parallel curve; derived. That wood keeps its length at mid-thickness is common practice.',
  },
  xMm: {
    what: 'Where the station stands along the body, from the tail.',
    how: null,
    formula:
      'Sum of cos h × ds from the tail: h the angle between outline and centreline, ds a short step round the outside.',
    from: 'Closed form on arcs and straights, Gauss’s rule on fair pieces; derived.',
  },
  yMm: {
    what: 'From the centreline to the outer face of the side.',
    how: null,
    formula:
      'Sum of sin h × ds from the tail: h the angle between outline and centreline, ds a short step round the outside.',
    from: 'Closed form on arcs and straights, Gauss’s rule on fair pieces; derived.',
  },
  topEdgeMm: {
    what: 'Height of the side’s top edge over the rim plane.',
    how: null,
    formula:
      '√(R² − d²) − √(R² − L²/4): R dish radius, d in plan from half-way, L body length. Planed, if lower: z0 − u × tan f, z0 where it starts, u on from there, f its fall. Flat rim: 0.',
    from: 'Pythagoras on the section through the dome’s axis; derived.',
  },
  backEdgeMm: {
    what: 'Height of the side’s back edge over the rim plane: minus, since the back lies below.',
    how: null,
    formula:
      'Sphere: √(R² − a²) − √(R² − d²) − T: R dish radius, a and d from its axis to tail and here, T depth at tail. Else the line tail to neck; arched across, plus the gap across.',
    from: 'Pythagoras on the section through the dome’s axis; derived.',
  },
  depthMm: {
    what: 'Depth of the bare side, top edge to back edge, square to the rim plane.',
    how: 'Rule on the outer face, square to the rim plane.',
    formula: 'z − b: z the top edge, b the back edge, both over the rim plane.',
    from: 'Difference of the two edges; derived.',
  },
  topBevelRad: {
    what: 'Slope across the top edge; plus where the inner corner stands prouder than the outer.',
    how: 'Bevel gauge, stock on the outer face, blade across the edge.',
    formula:
      'atan of the top’s fall outward, square to the outline. On a sphere p ÷ √(R² − d²): R dish radius, d in plan from its axis, p the part of d square to the outline.',
    from: 'Slope of the surface along the outline’s normal; derived.',
  },
  backBevelRad: {
    what: 'Slope across the back edge; plus where the inner corner stands prouder than the outer.',
    how: 'Bevel gauge, stock on the outer face, blade across the edge.',
    formula:
      'atan of the back’s climb outward, square to the outline. On a sphere p ÷ √(R² − d²): R dish radius, d in plan from its axis, p the part of d square to the outline.',
    from: 'Slope of the surface along the outline’s normal; derived.',
  },
  cutWidthMm: {
    what: 'From the straight edge of the blank to the line to saw, with the back allowance in it.',
    how: 'Rule square from the straight edge of the blank.',
    formula: 'r − b + a: r straight edge over the rim plane, b back edge over it (minus), a back allowance.',
    from: 'Plain sum; derived. The highest top edge in it is read at the stations.',
  },
  firstDepthMm: {
    what: 'Depth of the bare side after the first dishing, without linings: what the second one takes off still stands.',
    how: 'Rule on the outer face, square to the rim plane, before the linings go in.',
    formula: 'D + u + v: D the rim depth here, u and v what the first dishing leaves on top edge and back edge.',
    from: 'Plain sum; derived.',
  },
  topProudOuterMm: {
    what: 'How far the lining’s inner corner stands prouder than the outer corner of the side’s top edge; minus where it lies lower.',
    how: 'Straightedge level on the lining, out over the edge; gap at the outer corner.',
    formula:
      'z(t + w) − z(0): z height of the top over the rim plane, so far in from the outer face; t side thickness, w lining width.',
    from: 'The same surface at two insets, square to the outline; derived.',
  },
  topProudInnerMm: {
    what: 'How far the lining’s inner corner stands prouder than the inner corner of the bevelled side’s top edge; minus where it lies lower.',
    how: 'Straightedge level on the lining, out over the edge; gap at the side’s inner corner.',
    formula:
      'z(t + w) − z(t): z height of the top over the rim plane, so far in from the outer face; t side thickness, w lining width.',
    from: 'The same surface at two insets, square to the outline; derived.',
  },
  backProudOuterMm: {
    what: 'How far the lining’s inner corner stands prouder than the outer corner of the side’s back edge; minus where it lies lower.',
    how: 'Straightedge level on the lining, out over the edge; gap at the outer corner.',
    formula:
      'b(0) − b(t + w): b height of the back over the rim plane, so far in from the outer face; t side thickness, w lining width.',
    from: 'The same surface at two insets, square to the outline; derived.',
  },
  backProudInnerMm: {
    what: 'How far the lining’s inner corner stands prouder than the inner corner of the bevelled side’s back edge; minus where it lies lower.',
    how: 'Straightedge level on the lining, out over the edge; gap at the side’s inner corner.',
    formula:
      'b(t) − b(t + w): b height of the back over the rim plane, so far in from the outer face; t side thickness, w lining width.',
    from: 'The same surface at two insets, square to the outline; derived.',
  },
}

type List = 'rim' | 'trebleRim' | 'places' | 'treblePlaces'
type Under<Rows extends List> = { [Name in RowName as `${Rows}[].${Name}`]: NumberTexts }
const under = <Rows extends List>(rows: Rows): Under<Rows> =>
  Object.fromEntries(Object.entries(ROW_WORDS).map(([name, words]) => [`${rows}[].${name}`, words])) as Under<Rows>

export const RIM_WORDS: Record<KeysUnder<List>, NumberTexts> = {
  ...under('rim'),
  ...under('trebleRim'),
  'trebleRim[].blank': {
    what: 'Which blank of the treble side the station lies on, counted from the tail: past the corner of a pointed horn it is the second.',
    how: null,
    formula: 'One, and one more for every sharp corner of the treble outline between the tail and the station.',
    from: 'A corner over 5° counts as sharp; derived.',
  },
  ...under('places'),
  ...under('treblePlaces'),
}

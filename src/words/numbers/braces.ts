import type { KeysUnder, NumberTexts } from './numberWords.ts'

type BraceName = KeysUnder<'braces'> extends infer Key ? (Key extends `braces[].${infer Name}` ? Name : never) : never

const ENTERED_SOURCE = 'Entered, not computed.'
const STRAIGHT =
  'A straight line in plan, cut with the inner face of the sides; derived. Found by steps to a millionth of a mm.'
const ONE_LINE =
  'The straight line through both entered places, to the rim, to another brace’s flank, or to the place itself.'

/** What is the same at both ends. */
const endWords = (end: 'First' | 'Second') => ({
  x: {
    what: `${end} end: middle of the gluing face, from the tail along the centreline.`,
    how: 'Rule along the centreline from the tail, squared across.',
    formula: ONE_LINE,
    from: STRAIGHT,
  },
  across: {
    what: `${end} end: middle of the gluing face, from the centreline; the bass side is negative.`,
    how: 'Rule square across from the centreline.',
    formula: ONE_LINE,
    from: STRAIGHT,
  },
  alongOuter: {
    what: `${end} end, where it is at the rim: round the outside of its side from the tail; none where it is not.`,
    how: 'Tape round the outside from the tail centre.',
    formula: 'Place on the outer face square over the inner one the end stands at.',
    from: 'Parallel of the outer face; derived.',
  },
  letIn: {
    what: `${end} end: how far it runs into a pocket of the lining, along the brace from the lining’s inner edge toward the side; nothing where it is not at the rim.`,
    how: 'Rule in the pocket of the lining, along the brace.',
    formula: 'As entered for an end at the rim.',
    from: ENTERED_SOURCE,
  },
  short: {
    what: `${end} end: how far its tip stays short of the inner face of the side, along the brace; nothing where it is not at the rim.`,
    how: 'Rule on the plate, from the line of the side to the tip.',
    formula: 'w − d, never under 0: w the lining along the brace, d how far it is let in.',
    from: 'Straight line cut with the lining’s inner edge; derived. That ends are let into the lining is common practice.',
  },
  height: {
    what: `${end} end: what is left of the height over the plate at the tip. The pocket of an end that is let in is as deep.`,
    how: 'Caliper over plate and end, less the plate.',
    formula: 'As entered where it is tapered, at most the whole height; the whole height where it is not.',
    from: ENTERED_SOURCE,
  },
  taper: {
    what: `${end} end: how long the taper is on the gluing face, from the tip; nothing where there is none.`,
    how: 'Rule along the gluing face.',
    formula: 'As entered.',
    from: ENTERED_SOURCE,
  },
})
const [first, second] = [endWords('First'), endWords('Second')]

const BRACES: Record<BraceName, NumberTexts> = {
  number: {
    what: 'Braces are counted in the order they are kept; of two that mirror each other the bass one comes first.',
    how: null,
    formula: 'Counted.',
    from: 'Entered order, not computed.',
  },
  lengthMm: {
    what: 'From end to end in plan: between the inner faces of the sides, or from flank to flank of other braces. The arch and its eighths are laid off along it.',
    how: 'Rule along the middle of the gluing face.',
    formula: '√(a² + b²): a how far the ends lie apart along the centreline, b across.',
    from: STRAIGHT,
  },
  finishedLengthMm: {
    what: 'To cut the brace to, from tip to tip. An end at the rim stops in its pocket of the lining, so this is never more than the length between the sides.',
    how: 'Rule along the middle of the gluing face.',
    formula: 'L − both tips short of the side: L the length between the sides.',
    from: 'Plain difference; derived.',
  },
  angleRad: {
    what: 'To the centreline: 0 runs along it, 90° square across.',
    how: 'Protractor on the drawing or on the plate.',
    formula: 'atan(b ÷ a): a how far the ends lie apart along the centreline, b across.',
    from: STRAIGHT,
  },
  crossesCentreAtMm: {
    what: 'Where its middle crosses the centreline, from the tail; none where it does not.',
    how: 'Rule along the centreline from the tail.',
    formula: 'Where the straight line between its ends stands over the centreline.',
    from: STRAIGHT,
  },
  fromXMm: first.x,
  fromAcrossMm: first.across,
  toXMm: second.x,
  toAcrossMm: second.across,
  fromAlongOuterMm: first.alongOuter,
  toAlongOuterMm: second.alongOuter,
  fromLetInMm: first.letIn,
  toLetInMm: second.letIn,
  fromShortMm: first.short,
  toShortMm: second.short,
  fromHeightMm: first.height,
  toHeightMm: second.height,
  fromTaperMm: first.taper,
  toTaperMm: second.taper,
  heightMm: {
    what: 'Over the plate, where it is not tapered.',
    how: 'Caliper over brace and plate, less the plate.',
    formula: 'As entered for this brace.',
    from: ENTERED_SOURCE,
  },
  widthMm: {
    what: 'Across its gluing face.',
    how: 'Caliper across the brace.',
    formula: 'As entered for this brace.',
    from: ENTERED_SOURCE,
  },
  undersideRadiusMm: {
    what: 'Radius its gluing face is shaped to; minus where that face is hollow, flat where it is straight. None where the plate kinks under it and no one arc keeps within 0.05 mm: shape it by its ordinates.',
    how: null,
    formula:
      'Circle through both ends and the middle on the plate; on a sphere √(R² − d²): R dish radius, d from its axis to the brace.',
    from: 'Section of the plate by an upright plane; derived. An arch of its own is as entered.',
  },
  archRiseMm: {
    what: 'The most the gluing face stands over a straight line between its ends, of all its eighths; in the middle, but for a plate that kinks. Minus where it is hollow.',
    how: 'Straightedge from end to end of the gluing face, the greatest gap of a hollow dish or template.',
    formula:
      'Plate in the middle − mean of the plate at both ends; over a kink the greatest ordinate. Of its own arch: R − √(R² − L² ÷ 4), R its radius, L its length.',
    from: 'Sagitta of a chord; derived.',
  },
  springMm: {
    what: 'How far the ends of an arch of its own stand off the plate before they are pulled down; minus where the middle does.',
    how: 'Feeler gauge under the ends, its middle held on the dish.',
    formula: 'Rise of its own arch − rise of the plate over the same length.',
    from: 'Difference of two sagittas; derived.',
  },
  blankLengthMm: {
    what: 'To cut the blank to, before the ends are trimmed.',
    how: null,
    formula: 't + 2 × e: t the length from tip to tip, e what the blank is longer beyond each tip.',
    from: 'Plain sum; derived.',
  },
  blankHeightMm: {
    what: 'To plane the blank to, before its gluing face is arched.',
    how: null,
    formula: 'Height + a + what the blank is higher: a from the lowest ordinate of the arch to the highest.',
    from: 'Plain sum; derived.',
  },
  blankWidthMm: {
    what: 'To saw the blank to, before it is planed.',
    how: null,
    formula: 'Width + what the blank is wider.',
    from: 'Plain sum; derived.',
  },
}

export const BRACE_NUMBER_WORDS = Object.fromEntries(
  Object.entries(BRACES).map(([name, words]) => [`braces[].${name}`, words]),
) as Record<`braces[].${BraceName}`, NumberTexts>

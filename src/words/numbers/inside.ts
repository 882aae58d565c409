import type { KeysUnder, NumberTexts } from './numberWords.ts'

type LiningName =
  KeysUnder<'linings'> extends infer Key ? (Key extends `linings.top.${infer Name}` ? Name : never) : never
type BraceName =
  KeysUnder<'sideBraces'> extends infer Key ? (Key extends `sideBraces[].${infer Name}` ? Name : never) : never

const liningWords = (plate: 'top' | 'back'): Record<LiningName, NumberTexts> => ({
  ledgeMm: {
    what: `Width of side and lining left to glue the ${plate} to, once binding and purfling are let in.`,
    how: 'Caliper across the edge, from the wall of the channel in to the lining’s inner face.',
    formula: 't + w − b − p: t side thickness, w lining width, b binding thickness, p purfling of this plate.',
    from: 'Plain sum; derived.',
  },
  lengthMm: {
    what: `Lining under the ${plate}, both sides together, along the inner face from block to block.`,
    how: null,
    formula:
      's − t × turn on each side, less what the blocks cover: s round the outside, t side thickness, turn in radians. A corner is mitred.',
    from: 'Length of a parallel curve; derived. Where a block ends is found by steps.',
  },
})

/** Both sides have the same columns. */
const BRACES: Record<BraceName, NumberTexts> = {
  alongOuterMm: {
    what: 'Where the middle of the brace stands on the bent side: along its outer face, from the tail.',
    how: 'Tape round the outside from the tail centre.',
    formula: 'As entered. Spaced evenly: from block to block in equal steps, the widest not over the spacing.',
    from: 'Entered, or derived from the spacing.',
  },
  xMm: {
    what: 'Where the middle of the brace stands along the body, from the tail.',
    how: null,
    formula: 'x of the outer face, so far round it from the tail.',
    from: 'Closed form on arcs and straights, Gauss’s rule on fair pieces; derived.',
  },
  lengthMm: {
    what: 'Length of the brace at its middle, on the inner face of the side: edge to edge of the rim, or lining to lining.',
    how: 'Caliper along the gluing face, at its middle.',
    formula:
      'z − b, less the heights of both linings where it ends at them: z the top, b the back over the rim plane, one side thickness in.',
    from: 'Difference of the two surfaces; derived.',
  },
  faceRadiusMm: {
    what: 'Radius its gluing face is shaped to; plus where that face is round, minus where it is hollow. Flat where the side is straight.',
    how: 'Contour board held to the gluing face.',
    formula:
      'Circle through three places of the side’s inner face: the middle of the brace, and both edges of its width.',
    from: 'Parallel of the outer face; derived.',
  },
  faceRiseMm: {
    what: 'How far the edges of the gluing face fall back from its middle; minus where they stand before it.',
    how: 'Straightedge across the gluing face, gap at the edges or in the middle.',
    formula: 'Distance of the middle of the face from the straight line between its two edges.',
    from: 'Three places of the parallel of the outer face; derived.',
  },
  spacingMm: {
    what: 'Way round the outside from the brace before, middle to middle; none for the first.',
    how: null,
    formula: 'Difference of the two places round the outside.',
    from: 'Plain difference; derived.',
  },
}

type Prefixed<Prefix extends string, Name extends string> = { [Own in Name as `${Prefix}${Own}`]: NumberTexts }
const prefixed = <Prefix extends string, Name extends string>(prefix: Prefix, words: Record<Name, NumberTexts>) =>
  Object.fromEntries(Object.entries(words).map(([name, about]) => [`${prefix}${name}`, about])) as Prefixed<
    Prefix,
    Name
  >

export const INSIDE_WORDS: Record<KeysUnder<'linings' | 'sideBraces' | 'trebleBraces' | 'caul'>, NumberTexts> = {
  ...prefixed('linings.top.', liningWords('top')),
  ...prefixed('linings.back.', liningWords('back')),
  'linings.toBuyMm': {
    what: 'Lining for top and back of both sides, with waste.',
    how: null,
    formula: 'Both lengths glued × (1 + p ÷ 100): p the waste in percent.',
    from: 'Plain sum; derived.',
  },
  ...prefixed('sideBraces[].', BRACES),
  ...prefixed('trebleBraces[].', BRACES),
  'caul.bumpMm': {
    what: 'How far the middle of the caul stands out, falling evenly to nothing at the clamps: with both clamps down it lies straight.',
    how: 'Straightedge on the bump, even on both sides: gap at the clamps.',
    formula:
      'F L³ ÷ (48 E I), I = b h³ ÷ 12: F the force wanted, L between the clamps, E the stiffness of the wood, b width, h height.',
    from: 'An estimate: wood varies. Slender beam resting at both ends, Euler and Bernoulli; from memory.',
  },
  'caul.clampForceN': {
    what: 'What each of the two clamps carries when the middle of the joint is pressed as wanted.',
    how: null,
    formula: 'F ÷ 2: F the force wanted at the middle.',
    from: 'An estimate: both clamps as far from the middle. Slender beam resting at both ends; from memory.',
  },
  'caul.stressMPa': {
    what: 'Greatest stress in the wood of the caul once it is clamped straight, at its faces half-way between the clamps.',
    how: null,
    formula: '(F L ÷ 4) ÷ (b h² ÷ 6): F the force wanted, L between the clamps, b width, h height of the caul.',
    from: 'An estimate: wood varies. Slender beam resting at both ends, Euler and Bernoulli; from memory.',
  },
}

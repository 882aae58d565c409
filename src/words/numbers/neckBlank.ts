import { ENTERED, type KeysUnder, type NumberTexts } from './numberWords.ts'

const DIFFERENCE = 'Plain difference; derived.'
const POST = 'Even spacing of posts; which string goes where is common practice.'

export const NECK_BLANK_WORDS: Record<KeysUnder<'neck' | 'head' | 'tuners'>, NumberTexts> = {
  'neck.heelDepthMm': {
    what: 'Of the finished heel: the side at the neck with both plates.',
    how: 'Caliper over the closed box at the neck.',
    formula: 'Side at the neck, planed + top + back.',
    from: 'Plain sum; derived.',
  },
  'neck.heelStockMm': {
    what: 'Before the upper bout is planed: what the blank has to give.',
    how: 'Caliper on the blank.',
    formula: 'Rim depth at the neck + top + back.',
    from: 'Plain sum; derived.',
  },
  'neck.heelWidthMm': {
    what: 'As wide as the board over the joint.',
    how: 'Caliper across the heel.',
    formula: 'Width of the board at the joint.',
    from: 'Straight edges; derived.',
  },
  'neck.heelCapMm': { what: 'At the back.', how: 'Caliper across the cap.', ...ENTERED },
  'neck.cheekRad': {
    what: 'Of the cheeks against square to the neck’s face: positive takes wood off the heel’s lower end.',
    how: 'Bevel gauge on the face and a cheek.',
    formula: 'The neck angle to build to, where the block’s face stands square to the rim plane.',
    from: 'Sides square to the rim plane; derived.',
  },
  'neck.cheekHollowMm': {
    what: 'How far the outline falls away under the heel’s edges: hollow the cheeks by it, or flatten the rim.',
    how: 'Straightedge over the rim at the neck.',
    formula: 'Fall of the outline at half the heel’s width; found by steps.',
    from: 'From the outline; derived.',
  },
  'neck.woodAtFirstMm': {
    what: 'What the shaft is carved to, board not counted.',
    how: 'Caliper at fret 1, off the board.',
    formula: 'Thickness at fret 1 − board.',
    from: DIFFERENCE,
  },
  'neck.woodAtTenthMm': {
    what: 'What the shaft is carved to, board not counted.',
    how: 'Caliper at fret 10, off the board.',
    formula: 'Thickness at fret 10 − board.',
    from: DIFFERENCE,
  },
  'neck.stockLengthMm': {
    what: 'Head, shaft and what enters the block, end to end; saw kerf and trim are yours to add.',
    how: null,
    formula: 'Nut to joint + tenon depth or block + head length; where the nut slants, from its end nearer the head.',
    from: 'Plain sum; derived.',
  },
  'neck.woodBehindRodMm': {
    what: 'The least neck left under the rod’s channel, between its beginning and fret 10.',
    how: null,
    formula: 'Neck under the board − channel depth, the shaft straight from fret 1 to 10.',
    from: 'Plain difference; derived. That 5 mm should stay is common practice.',
  },
  'neck.rodEndsBeforeJointMm': {
    what: 'Minus: it runs on past the joint.',
    how: 'Rule along the neck’s face.',
    formula: 'Nut to joint − (beginning + length of the channel).',
    from: DIFFERENCE,
  },
  'neck.rodToBoltMm': {
    what: 'Wood between the channel’s bottom and the bolt; none where the channel ends before the bolt. Into a butted heel a bolt is taken to reach 40 mm.',
    how: null,
    formula: 'b − d/2 − r: b first bolt under the top, d its diameter, r channel depth.',
    from: 'Plain difference; derived. How far a bolt reaches is common practice.',
  },
  'neck.besideRodMm': {
    what: 'At the nut, on either side of the channel.',
    how: null,
    formula: '(Width at the nut − channel width) ÷ 2.',
    from: DIFFERENCE,
  },
  'neck.blockBehindTenonMm': {
    what: 'Neck block left behind the mortise.',
    how: null,
    formula: 'Block thickness − tenon depth.',
    from: DIFFERENCE,
  },
  'neck.blockBesideTenonMm': {
    what: 'Neck block left on either side of the mortise.',
    how: null,
    formula: '(Block width − tenon width) ÷ 2.',
    from: DIFFERENCE,
  },
  'neck.boltToHeelEndMm': {
    what: 'Wood between the lowest bolt and the back.',
    how: null,
    formula: 'h − b − d/2: h heel depth, b lowest bolt under the top, d its diameter.',
    from: DIFFERENCE,
  },
  'neck.scarfMm': {
    what: 'Length of the sloping face the head is glued on by.',
    how: 'Rule along the sawn face.',
    formula: 't ÷ sin w: t stock thickness, w head angle.',
    from: 'A right triangle; derived.',
  },
  'neck.stockMm': {
    what: 'Of the blank at the head, before board and veneers.',
    how: 'Caliper on the blank.',
    ...ENTERED,
  },
  'neck.thicknessAtFirstMm': { what: 'Finished thickness.', how: 'Caliper at fret 1.', ...ENTERED },
  'neck.thicknessAtTenthMm': { what: 'Finished thickness.', how: 'Caliper at fret 10.', ...ENTERED },
  'neck.rodLengthMm': { what: 'End to end.', how: 'Rule along the channel.', ...ENTERED },
  'neck.rodWidthMm': { what: 'Across.', how: 'Caliper in the channel.', ...ENTERED },
  'neck.rodDepthMm': { what: 'From the face under the board.', how: 'Depth gauge in the channel.', ...ENTERED },
  'neck.rodFromNutMm': {
    what: 'Behind the nut’s front edge; negative in the head.',
    how: 'Rule from the nut line.',
    ...ENTERED,
  },
  'neck.tenonWidthMm': { what: 'Across.', how: 'Caliper across the tenon.', ...ENTERED },
  'neck.tenonDepthMm': { what: 'Into the neck block.', how: 'Depth gauge from the cheek.', ...ENTERED },
  'neck.boltMm': { what: 'Of each.', how: 'Caliper across it.', ...ENTERED },
  'neck.bolts[].underTopMm': {
    what: 'Middle of the bolt or dowel, under the top’s face.',
    how: 'Rule from the top along the heel.',
    ...ENTERED,
  },
  'head.angleRad': {
    what: 'Against the neck’s face.',
    how: 'Bevel gauge on face and head.',
    ...ENTERED,
  },
  'head.lengthMm': {
    what: 'From the nut along its face.',
    how: 'Rule along the face.',
    ...ENTERED,
  },
  'head.thicknessMm': {
    what: 'With its veneers.',
    how: 'Caliper at three places.',
    ...ENTERED,
  },
  'head.coreMm': {
    what: 'Neck wood between the veneers.',
    how: null,
    formula: 'Head thickness − both veneers.',
    from: DIFFERENCE,
  },
  'head.dropMm': {
    what: 'How far the head’s end lies under the line of the neck’s face: what a blank in one piece has to give.',
    how: null,
    formula: 'l × sin w: l head length, w head angle.',
    from: 'A right triangle; derived.',
  },
  'head.holeMm': { what: 'Diameter.', how: 'Caliper in the hole.', ...ENTERED },
  'tuners[].fromNutMm': {
    what: 'Along the head’s face, in the order of the strings.',
    how: 'Rule along the face.',
    formula: 'f + i × p: f nearest post, p post to post, i posts before it on its side.',
    from: POST,
  },
  'tuners[].acrossMm': {
    what: 'Middle of the post from the centreline; bass side negative.',
    how: 'Rule across the head.',
    formula: 'Evenly from the nearest post’s to the furthest’s.',
    from: POST,
  },
  'tuners[].sideRad': {
    what: 'How much the string turns at the nut, positive outward. Less than about 10° is usual.',
    how: null,
    formula: 'Direction to the post’s inner flank − direction over the board.',
    from: 'Straight lines in plan; derived.',
  },
  'tuners[].overNutRad': {
    what: 'Downward. 7° to 15° is usual, more where rollers lie in slots.',
    how: null,
    formula:
      'w + atan((h − p) ÷ d): w head angle, h slot over the head’s face, p string over it at the post, d along it.',
    from: 'Straight lines in elevation; derived.',
  },
}

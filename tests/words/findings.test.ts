import { describe, expect, it } from 'vitest'
import { FINDING_CODES, type Finding, type FindingCode } from '../../src/core/findings.ts'
import { CUTAWAY_MISFITS } from '../../src/core/instrument/cutaway.ts'
import { STARTING_UNITS } from '../../src/core/quantity.ts'
import { figureText } from '../../src/format/figure.ts'
import { formatQuantity } from '../../src/format/formatQuantity.ts'
import { FIELD_WORDS } from '../../src/words/fields.ts'
import { findingSentence } from '../../src/words/findings.ts'
import type { Say } from '../../src/words/findings/findingWords.ts'

const say: Say = (value, quantity) => figureText(formatQuantity(value, quantity, STARTING_UNITS))

/** Values as the list of codes promises them, and a field each finding leads to. */
const SAMPLES: Record<FindingCode, Pick<Finding, 'fields' | 'values'>> = {
  outlineTooManyOpen: { fields: ['outline.pieces'], values: { open: 5 } },
  outlineDoesNotClose: { fields: ['outline.pieces', 'outline.lengthMm'], values: { alongMm: 1.25, acrossMm: -3.5 } },
  outlineHasCorner: { fields: ['outline.pieces'], values: { cornerRad: 0.05 } },
  outlineCrossesItself: { fields: ['outline.pieces', 'outline.lengthMm'], values: {} },
  keyWidthsNeedLength: { fields: ['outline.lengthMm'], values: {} },
  keyWidthsOutOfOrder: { fields: ['outline.keyWidths.waistAtMm'], values: {} },
  keyWidthsNotFair: { fields: ['outline.keyWidths.waistMm'], values: { missMm: 4.2, which: 1 } },
  boardCoversHole: { fields: ['scale.frets'], values: { overHoleMm: 30 } },
  keyWidthsNoWaist: { fields: ['outline.keyWidths.waistMm'], values: {} },
  keyWidthNotWidest: {
    fields: ['outline.keyWidths.lowerBoutAtMm'],
    values: { which: 0, foundMm: 401.2, foundAtMm: 142.4, wantedMm: 400 },
  },
  drawnPathMissing: { fields: ['outline.drawnPath'], values: {} },
  readingsNeedLength: { fields: ['outline.lengthMm'], values: {} },
  readingsTooFew: { fields: ['outline.halfWidths.rows'], values: { count: 2, least: 5 } },
  readingsNotFair: {
    fields: ['outline.halfWidths.rows', 'outline.halfWidths.readToMm'],
    values: { fromTailMm: 240, halfWidthMm: 131.5, byMm: 2.1, readToMm: 0.5 },
  },
  cutawayOnOwnTreble: { fields: ['outline.cutaway.form'], values: {} },
  cutawayDoesNotFit: {
    fields: ['outline.cutaway.leavesAtMm', 'outline.cutaway.hollowRadiusMm', 'outline.cutaway.hornRadiusMm'],
    values: { reason: 3 },
  },
  ledgeTooNarrow: { fields: ['linings.back.widthMm', 'binding.thicknessMm'], values: { plate: 1, ledgeMm: 2.4 } },
  liningsMeet: { fields: ['linings.top.heightMm', 'linings.back.heightMm'], values: { byMm: 4.5 } },
  caulTooThin: { fields: ['caul.heightMm', 'caul.forceN', 'caul.spanMm'], values: {} },
  sidesTooTightToBend: {
    fields: ['rim.sideThicknessMm'],
    values: { radiusMm: 28, atMm: 420, thicknessMm: 2.2, times: 12.7, bendableMm: 1.87 },
  },
  sidesTightToBend: {
    fields: ['rim.sideThicknessMm'],
    values: { radiusMm: 45, atMm: 420, thicknessMm: 2.2, times: 20.5, easyMm: 1.8 },
  },
  topTooTight: { fields: ['top.radiusMm'], values: { radiusMm: 500, reachMm: 300 } },
  backTooTight: { fields: ['back.radiusMm'], values: { radiusMm: 500, reachMm: 300 } },
  flatAboveDome: { fields: ['top.flatSlopeDeg'], values: { byMm: 0.4 } },
  flatOutsideBody: { fields: ['top.flatFromMm'], values: { fromMm: 600, lengthMm: 496 } },
  plateRiseTooGreat: { fields: ['top.riseAtSaddleMm'], values: { reachMm: 220, halfWidthMm: 180 } },
  sideTooShallow: { fields: ['rim.depthAtNeckMm'], values: { depthMm: 9, atMm: 700 } },
  blockWiderThanBody: { fields: ['blocks.neck.widthMm'], values: { end: 1 } },
  holeOffBody: { fields: ['soundhole.centreMm'], values: { clearMm: -2 } },
  holeRingTooClose: { fields: ['soundhole.radiusMm'], values: { clearMm: 1.5 } },
  ringInsideOut: { fields: ['rosette.rings'], values: { ring: 2 } },
  ringsOverlap: { fields: ['rosette.rings'], values: { ring: 1, other: 2, byMm: 0.5 } },
  ringGapShows: { fields: ['board.endBeyondLastFretMm'], values: { ring: 1, gapMm: 40, hiddenMm: 32, marginMm: 3 } },
  ringCutterTooWide: { fields: ['rosette.cutterMm'], values: { ring: 3, widthMm: 1.2, cutterMm: 3.17 } },
  ringPassesDoNotAdvance: { fields: ['rosette.passOverlapMm'], values: { ring: 1 } },
  channelTooDeep: { fields: ['rosette.inlayMm'], values: { depthMm: 2.6, plateMm: 2.8 } },
  ringProudOfInlay: { fields: ['rosette.standsProudMm'], values: {} },
  soundholeCutterTooWide: { fields: ['soundhole.cutterMm'], values: { radiusMm: 5, cutterMm: 6 } },
  boardEndsBeforeJoint: { fields: ['scale.frets'], values: { byMm: 12 } },
  slotTooDeep: { fields: ['frets.slotDepthMm'], values: { leftMm: 0.8 } },
  fretPastBoardEnd: { fields: ['board.endBeyondLastFretMm', 'scale.squareFret'], values: { byMm: 2.6, side: 0 } },
  nutSlants: { fields: ['scale.squareFret'], values: { byMm: 11.8, side: 1 } },
  tangDeeperAtEdge: { fields: ['frets.slotDepthMm'], values: { tangMm: 1.6, slotMm: 1.2 } },
  tangDeeperThanSlot: { fields: ['frets.tangMm'], values: { tangMm: 1.6, slotMm: 1.2 } },
  boardEdgeThin: { fields: ['board.thicknessMm'], values: { edgeMm: 2.4 } },
  stringsOffBoard: { fields: ['strings.nutSpreadMm'], values: { leastMm: -0.4 } },
  stringsTooClose: { fields: ['strings.nutSpreadMm'], values: { gapMm: 1.1 } },
  stringMassUnknown: { fields: ['strings.set'], values: { count: 2, string: 1 } },
  stringSlack: { fields: ['strings.set'], values: { string: 6, tensionN: 18 } },
  stringOverstressed: { fields: ['strings.set'], values: { string: 4, stressMPa: 2150 } },
  flatTooNearSaddle: { fields: ['top.flatFromMm'], values: { leverMm: 22, leastMm: 40 } },
  neckTooSteep: { fields: ['bridge.thicknessMm'], values: { angleRad: 0.149 } },
  boardStandsInTop: { fields: ['top.flatFromMm'], values: { byMm: 0.67, fromJointMm: 90.2 } },
  boardStandsFree: { fields: ['board.thicknessMm'], values: { gapMm: 2.1, fromJointMm: 90.2 } },
  saddleTooLow: { fields: ['bridge.saddleShowingMm'], values: { string: 6, showingMm: 0.9 } },
  breakAngleSmall: { fields: ['bridge.holdsBehindMm'], values: { string: 6, breakRad: 0.09 } },
  breakAngleGreat: { fields: ['bridge.holdsBehindMm'], values: { string: 1, breakRad: 1.2 } },
  holdsInSlot: { fields: ['bridge.holdsBehindMm', 'bridge.pinRun'], values: { string: 1, woodMm: 1.1 } },
  slotSlantsOnBridge: { fields: ['bridge.widthMm', 'scale.squareFret'], values: { slantRad: 0.14, differMm: 10.4 } },
  saddleSlotTooDeep: { fields: ['bridge.slotDepthMm'], values: { leftMm: 0.7 } },
  saddleOffBridge: { fields: ['bridge.widthMm'], values: { byMm: 1.5 } },
  octaveOutOfReach: { fields: ['strings.set', 'setup.actionBassMm'], values: { string: 1 } },
  saddleTooNarrow: { fields: ['bridge.saddleWidthMm'], values: { string: 5, byMm: 3.4, halfMm: 1.5 } },
  holdsOffBridge: { fields: ['bridge.holdsBehindMm'], values: { byMm: 1 } },
  plateMissesBridge: { fields: ['bridge.plateFromMm'], values: { behindMm: -2, beforeMm: 14 } },
  rodTooDeep: { fields: ['neck.rodDepthMm'], values: { woodMm: 3.8 } },
  rodMeetsBolt: { fields: ['neck.boltsAtMm'], values: { clearMm: -1 } },
  rodEntersBody: { fields: ['neck.rodLengthMm'], values: { byMm: 14 } },
  rodTooShort: { fields: ['neck.rodLengthMm'], values: { byMm: 42 } },
  tenonTooDeep: { fields: ['neck.tenonDepthMm'], values: { leftMm: 2 } },
  tenonTooWide: { fields: ['neck.tenonWidthMm'], values: { leftMm: 6 } },
  boltOffHeel: { fields: ['neck.boltsAtMm'], values: { leftMm: -3 } },
  headTooThin: { fields: ['head.thicknessMm'], values: { coreMm: 7 } },
  postOffHead: { fields: ['head.lengthMm'], values: { string: 2, leftMm: 3 } },
  nutAngleUnusual: { fields: ['head.angleDeg'], values: { string: 3, overNutRad: 0.33 } },
  stringBendsAtNut: { fields: ['head.lastAcrossMm'], values: { string: 3, sideRad: 0.24 } },
  braceHasNoLength: { fields: ['bracing.braces'], values: { brace: 3 } },
  braceOutsideRim: { fields: ['bracing.braces'], values: { brace: 3 } },
  braceMeetsNothing: { fields: ['bracing.braces'], values: { brace: 3 } },
  bracesCollide: { fields: ['bracing.braces'], values: { brace: 3, other: 5, byMm: 2.5 } },
  braceLetInTooDeep: {
    fields: ['bracing.braces', 'linings.top.widthMm'],
    values: { brace: 3, end: 1, letInMm: 9, liningMm: 6.5 },
  },
  braceEndTooHigh: { fields: ['bracing.braces'], values: { brace: 3, end: 0, endMm: 20, heightMm: 16 } },
  braceEndBeyondBody: { fields: ['bracing.braces'], values: { brace: 3, end: 0, wantedMm: 700, foundMm: 493 } },
  braceOverHoleRing: {
    fields: ['bracing.holeRingMm', 'bracing.braces'],
    values: { brace: 3, count: 2, byMm: 4, innerMm: 50, outerMm: 65 },
  },
  braceThroughHole: { fields: ['bracing.braces', 'soundhole.centreMm'], values: { brace: 3, byMm: 6 } },
  braceTooTallInside: { fields: ['bracing.braces'], values: { brace: 3, heightMm: 40, insideMm: 36 } },
  braceUnderBlock: { fields: ['bracing.braces', 'blocks.tail.thicknessMm'], values: { brace: 3, end: 0, byMm: 4 } },
  rodOrBoltMeetsBrace: { fields: ['bracing.braces', 'neck.rodLengthMm'], values: { brace: 3, which: 0 } },
  plateMissesFeet: { fields: ['bridge.plateTailWidthMm', 'bridge.pinSpreadMm'], values: { byMm: 4 } },
  plateOverBrace: { fields: ['bridge.plateTailWidthMm', 'bracing.braces'], values: { brace: 3, byMm: 4 } },
  noAirLeft: { fields: ['rim.depthAtTailMm', 'rim.depthAtNeckMm'], values: { grossMm3: 1e5, takenUpMm3: 2e5 } },
  noFreeHole: { fields: ['scale.frets', 'soundhole.centreMm'], values: {} },
  heardUnlikely: { fields: ['air.heardHz'], values: { heardHz: 190, rigidHz: 126, lowHz: 88.2, highHz: 110.9 } },
  bindingsMeet: { fields: ['binding.heightMm'], values: { byMm: 2 } },
  bindingTooLow: { fields: ['binding.heightMm', 'plates.topMm'], values: { heightMm: 2, plateMm: 2.8 } },
  bindingThroughSide: { fields: ['binding.thicknessMm'], values: { throughMm: 0.3, belowMm: 1.2 } },
  bindingTight: {
    fields: ['binding.thicknessMm', 'outline.pieces'],
    values: { radiusMm: 33, atMm: 690, thicknessMm: 2, times: 16.5, isHard: 0 },
  },
  purflingTooDeep: { fields: ['edges.purflingDepthMm', 'plates.topMm'], values: { plate: 0, leftMm: 0.4 } },
  wedgeThroughSide: { fields: ['edges.wedgeDepthMm'], values: { leftMm: 8, intoMm: 14 } },
  wedgeWiderThanBlock: { fields: ['edges.wedgeTopMm', 'blocks.tail.widthMm'], values: { byMm: 4 } },
  wedgeAllPurfling: { fields: ['edges.wedgePurflingMm', 'edges.wedgeTopMm'], values: { purflingMm: 5 } },
  backStripTooDeep: { fields: ['edges.backStripDepthMm'], values: { leftMm: 0.6, isHeld: 1 } },
}

describe.each(FINDING_CODES)('%s', (code) => {
  const finding: Finding = { code, weight: 'cannot', ...SAMPLES[code] }
  const text = findingSentence(finding, say)
  const whole = `${text.title} ${text.sentence} ${text.mend}`

  it('says what does not fit and what to do, naming a field', () => {
    expect(text.title).toMatch(/^[A-Z].*[^.]$/)
    expect(text.sentence).toMatch(/^[A-Z\d].*\.$/)
    expect(text.mend).toMatch(/^[A-Z].*\.$/)
    const names = finding.fields.map((field) => FIELD_WORDS[field].name.toLowerCase())
    expect(names.filter((name) => text.mend.toLowerCase().includes(name))).not.toEqual([])
    expect(whole).not.toMatch(/!|undefined|null|NaN|Infinity/)
  })

  it('quotes every length it is given', () => {
    const bare = findingSentence(finding, (value, quantity) => `<${value} ${quantity}>`)
    const said = `${bare.title} ${bare.sentence} ${bare.mend}`
    for (const [name, value] of Object.entries(finding.values).filter(([key]) => key.endsWith('Mm')))
      expect(`${name}: ${said}`).toContain(`<${Math.abs(value)} `)
  })

  it('stays a sentence when a value is missing or no number', () => {
    const broken = Object.fromEntries(Object.keys(finding.values).map((key) => [key, Number.NaN]))
    for (const values of [broken, {}]) {
      const { title, sentence, mend } = findingSentence({ ...finding, values }, say)
      expect(`${title} ${sentence} ${mend}`).not.toMatch(/NaN|undefined|null|Infinity| {2}/)
    }
  })
})

it('quotes the flat that stands above the dome to the hundredth', () => {
  const finding: Finding = { code: 'flatAboveDome', weight: 'cannot', ...SAMPLES.flatAboveDome }
  expect(findingSentence(finding, say).sentence).toContain('0.4 mm')
})

it('tells a hole over the edge from one that is only near it', () => {
  const off: Finding = { code: 'holeOffBody', weight: 'cannot', ...SAMPLES.holeOffBody }
  expect(findingSentence(off, say).sentence).toContain('over the edge by 2.0 mm')
  expect(findingSentence({ ...off, values: { clearMm: 3 } }, say).sentence).toContain('Only 3.0 mm')
})

describe('a cutaway that does not fit', () => {
  const fields = SAMPLES.cutawayDoesNotFit.fields
  const reasons = CUTAWAY_MISFITS.filter((reason) => reason !== 'none')

  it.each(reasons)('says why and names a field: %s', (reason) => {
    const values = { reason: CUTAWAY_MISFITS.indexOf(reason) }
    const { sentence, mend } = findingSentence({ code: 'cutawayDoesNotFit', weight: 'cannot', fields, values }, say)
    expect(sentence).toMatch(/^[A-Z].*\.$/)
    expect(fields.some((field) => mend.includes(FIELD_WORDS[field].name))).toBe(true)
  })

  it('tells every reason in words of its own', () => {
    const told = reasons.map((reason) => {
      const values = { reason: CUTAWAY_MISFITS.indexOf(reason) }
      return findingSentence({ code: 'cutawayDoesNotFit', weight: 'cannot', fields, values }, say).sentence
    })
    expect(new Set(told).size).toBe(reasons.length)
  })
})

it('tells a ledge that is cut through from one that is narrow', () => {
  const narrow: Finding = { code: 'ledgeTooNarrow', weight: 'care', ...SAMPLES.ledgeTooNarrow }
  expect(findingSentence(narrow, say).sentence).toContain('only 2.4 mm wide')
  const through = findingSentence({ ...narrow, weight: 'cannot', values: { plate: 0, ledgeMm: -0.5 } }, say)
  expect(through.sentence).toContain('0.5 mm further in')
  expect(through.title).toContain('the top')
})

it.each([
  ['outline.pieces', /^Compass pieces/],
  ['outline.drawnPath', /^Drawn path/],
  ['outline.halfWidths.rows', /^Half-width readings/],
  ['outline.keyWidths.waistMm', /Waist/],
] as const)('sends a crossing outline to what drew it: %s', (field, mend) => {
  const text = findingSentence({ code: 'outlineCrossesItself', weight: 'cannot', fields: [field], values: {} }, say)
  expect(text.mend).toMatch(mend)
})

it.each([
  ['slotTooDeep', { leftMm: -0.3 }, 'deeper than the board'],
  ['boardEdgeThin', { edgeMm: -0.4 }, 'lower than the board is thick'],
  ['stringsOffBoard', { leastMm: -0.4 }, 'beyond the board’s edge'],
  ['stringsTooClose', { gapMm: -0.2 }, 'over each other'],
  ['saddleTooLow', { string: 1, showingMm: -0.6 }, 'below the bridge’s top'],
  ['saddleSlotTooDeep', { leftMm: -1 }, 'deeper than the bridge'],
  ['holdsOffBridge', { byMm: -2 }, 'behind the bridge’s back edge'],
  ['holdsInSlot', { string: 6, woodMm: -1.6 }, 'past the slot’s back wall'],
  ['postOffHead', { string: 2, leftMm: -62 }, 'beyond the head’s end'],
  ['plateMissesBridge', { behindMm: -2, beforeMm: 14 }, 'falls short by'],
  ['plateMissesFeet', { byMm: -4 }, 'falls short of'],
  ['rodTooDeep', { woodMm: -0.5 }, 'beyond the neck’s back'],
  ['rodMeetsBolt', { clearMm: -1 }, 'into the first bolt’s way'],
  ['tenonTooDeep', { leftMm: -3 }, 'longer than the block is thick'],
  ['tenonTooWide', { leftMm: -3 }, 'beyond the block'],
  ['boltOffHeel', { leftMm: -3 }, 'past the heel’s end'],
  ['headTooThin', { coreMm: -0.5 }, 'thicker than the head'],
  ['neckTooSteep', { angleRad: -0.149 }, 'lean forward'],
  ['stringBendsAtNut', { string: 1, sideRad: -0.24 }, 'turns inward'],
  ['purflingTooDeep', { plate: 1, leftMm: -0.4 }, 'deeper than the back'],
  ['wedgeThroughSide', { leftMm: -2, intoMm: 24 }, 'deeper than that is thick'],
  ['backStripTooDeep', { leftMm: -0.3, isHeld: 1 }, 'deeper than the back'],
] as const)('never calls what is missing something left over: %s', (code, values, words) => {
  const { fields } = SAMPLES[code]
  const { sentence } = findingSentence({ code, weight: 'cannot', fields, values }, say)
  expect(sentence).toContain(words)
  expect(sentence).not.toMatch(/\u2212\d|-\d|\bleft\b/)
  const turned = Object.fromEntries(Object.entries(values).map(([name, value]) => [name, Math.abs(value)]))
  expect(findingSentence({ code, weight: 'cannot', fields, values: turned }, say).sentence).not.toContain(words)
})

it('mends a flat above the dome where its fall comes from', () => {
  const values = SAMPLES.flatAboveDome.values
  const entered: Finding = { code: 'flatAboveDome', weight: 'cannot', fields: ['top.flatSlopeDeg'], values }
  expect(findingSentence(entered, say).mend).toMatch(/^Fall of the flat/)
  const followed = findingSentence({ ...entered, fields: ['top.flatFromMm', 'bridge.thicknessMm'] }, say).mend
  expect(followed).toContain('neck set')
  expect(followed).toContain(FIELD_WORDS['bridge.thicknessMm'].name)
  expect(followed).not.toContain('Fall of the flat')
})

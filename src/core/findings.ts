import type { PlanField } from './planFields.ts'

/**
 * What does not fit, as data: the words say it, the fields say where to mend it.
 * 'cannot' cannot be built as planned; 'care' can, and a maker would want to know.
 */
export interface Finding {
  readonly code: FindingCode
  readonly weight: 'cannot' | 'care'
  readonly fields: readonly PlanField[]
  /** Lengths in mm, angles in rad, counts: what the sentence quotes. */
  readonly values: Readonly<Record<string, number>>
}

/** How many of them keep the instrument from being built as planned. */
export const countCannot = (findings: readonly Finding[]): number =>
  findings.filter(({ weight }) => weight === 'cannot').length

export const FINDING_CODES = [
  'outlineTooManyOpen', // values: open
  'outlineDoesNotClose', // values: alongMm, acrossMm
  'outlineHasCorner', // values: cornerRad
  'outlineCrossesItself',
  'keyWidthsNeedLength',
  'keyWidthsOutOfOrder',
  'keyWidthsNotFair', // values: missMm, which (0 lower bout, 1 waist, 2 upper bout)
  'keyWidthsNoWaist',
  'keyWidthNotWidest', // values: which, foundMm, foundAtMm, wantedMm
  'drawnPathMissing',
  'readingsNeedLength',
  'readingsTooFew', // values: count, least
  'readingsNotFair', // values: fromTailMm, halfWidthMm, byMm, readToMm
  'cutawayOnOwnTreble',
  'cutawayDoesNotFit', // values: reason (place in CUTAWAY_MISFITS)
  'sidesTooTightToBend', // values: radiusMm, atMm, thicknessMm, times, bendableMm
  'sidesTightToBend', // the same with easyMm
  'topTooTight', // values: radiusMm, reachMm
  'backTooTight',
  'flatAboveDome', // values: byMm
  'flatOutsideBody', // values: fromMm, lengthMm
  'plateRiseTooGreat', // values: reachMm, halfWidthMm
  'sideTooShallow', // values: depthMm, atMm
  'blockWiderThanBody', // values: end (0 tail, 1 neck)
  'ledgeTooNarrow', // values: plate (0 top, 1 back), ledgeMm
  'liningsMeet', // values: byMm
  'caulTooThin',
  'holeOffBody', // values: clearMm
  'holeRingTooClose', // values: clearMm
  'ringInsideOut', // values: ring
  'ringsOverlap', // values: ring, other, byMm
  'ringGapShows', // values: ring, gapMm, hiddenMm, marginMm
  'ringCutterTooWide', // values: ring, widthMm, cutterMm
  'ringPassesDoNotAdvance', // values: ring
  'channelTooDeep', // values: depthMm, plateMm
  'ringProudOfInlay',
  'boardCoversHole', // values: overHoleMm
  'soundholeCutterTooWide', // values: cutterMm, radiusMm
  'boardEndsBeforeJoint', // values: byMm
  'slotTooDeep', // values: leftMm
  'fretPastBoardEnd', // values: byMm, side (0 bass, 1 treble)
  'nutSlants', // values: byMm, side (0 bass, 1 treble)
  'tangDeeperThanSlot', // values: tangMm, slotMm
  'tangDeeperAtEdge', // the same
  'boardEdgeThin', // values: edgeMm
  'stringsOffBoard', // values: leastMm
  'stringsTooClose', // values: gapMm
  'stringMassUnknown', // values: count, string (the first of them)
  'stringSlack', // values: string, tensionN
  'stringOverstressed', // values: string, stressMPa
  'flatTooNearSaddle', // values: leverMm, leastMm
  'neckTooSteep', // values: angleRad
  'boardStandsInTop', // values: byMm, fromJointMm
  'boardStandsFree', // values: gapMm, fromJointMm
  'saddleTooLow', // values: string, showingMm
  'breakAngleSmall', // values: string, breakRad
  'breakAngleGreat', // values: string, breakRad
  'holdsInSlot', // values: string, woodMm
  'slotSlantsOnBridge', // values: slantRad, differMm
  'saddleSlotTooDeep', // values: leftMm
  'saddleOffBridge', // values: byMm
  'octaveOutOfReach', // values: string
  'saddleTooNarrow', // values: string, byMm, halfMm
  'holdsOffBridge', // values: byMm
  'plateMissesBridge', // values: behindMm, beforeMm
  'rodTooDeep', // values: woodMm
  'rodMeetsBolt', // values: clearMm
  'rodEntersBody', // values: byMm
  'rodTooShort', // values: byMm
  'tenonTooDeep', // values: leftMm
  'tenonTooWide', // values: leftMm
  'boltOffHeel', // values: leftMm
  'headTooThin', // values: coreMm
  'postOffHead', // values: string, leftMm
  'nutAngleUnusual', // values: string, overNutRad
  'stringBendsAtNut', // values: string, sideRad
  'braceHasNoLength', // values: brace (its number, here and below)
  'braceOutsideRim', // values: brace
  'braceMeetsNothing', // values: brace
  'bracesCollide', // values: brace, other, byMm, and crossMm where they cross
  'braceLetInTooDeep', // values: brace, end (0 first, 1 second, here and below), letInMm, liningMm
  'braceEndTooHigh', // values: brace, end, endMm, heightMm
  'braceEndBeyondBody', // values: brace, end, wantedMm, foundMm
  'braceThroughHole', // values: brace, byMm
  'braceOverHoleRing', // values: brace (the one furthest over it), count (of them), byMm, innerMm, outerMm
  'braceTooTallInside', // values: brace, heightMm, insideMm
  'braceUnderBlock', // values: brace, end (0 tail, 1 neck), byMm
  'rodOrBoltMeetsBrace', // values: brace, which (0 rod, 1 bolt)
  'plateMissesFeet', // values: byMm
  'plateOverBrace', // values: brace, byMm
  'bindingsMeet', // values: byMm
  'bindingTooLow', // values: heightMm, plateMm
  'bindingThroughSide', // values: throughMm, and belowMm where the box stands open under the lining
  'bindingTight', // values: radiusMm, atMm, thicknessMm, times, isHard (1 under 15 times)
  'purflingTooDeep', // values: plate (0 top, 1 back), leftMm
  'wedgeThroughSide', // values: leftMm, intoMm
  'wedgeWiderThanBlock', // values: byMm
  'wedgeAllPurfling', // values: purflingMm
  'backStripTooDeep', // values: leftMm, isHeld (1 by the strip inside)
  'noAirLeft', // values: grossMm3, takenUpMm3
  'noFreeHole',
  'heardUnlikely', // values: heardHz, rigidHz, lowHz, highHz
] as const
export type FindingCode = (typeof FINDING_CODES)[number]

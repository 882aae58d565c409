import type { KeysUnder } from '../numbers/numberWords.ts'
import { under } from './under.ts'

type BracingKey = KeysUnder<'braces' | 'braceArch' | 'braceCrossings' | 'patches' | 'jointStrip' | 'bridgePlate'>

export const BRACING_NAMES: Record<BracingKey, string> = {
  ...under('braces[].', {
    number: 'Brace',
    lengthMm: 'Length',
    angleRad: 'Angle to the centreline',
    crossesCentreAtMm: 'Crosses the centreline at',
    fromXMm: 'First end, along the centreline',
    fromAcrossMm: 'First end, across',
    toXMm: 'Second end, along the centreline',
    toAcrossMm: 'Second end, across',
    fromAlongOuterMm: 'First end, round the outside',
    toAlongOuterMm: 'Second end, round the outside',
    fromLetInMm: 'First end, let in',
    toLetInMm: 'Second end, let in',
    fromHeightMm: 'First end, height',
    toHeightMm: 'Second end, height',
    fromTaperMm: 'First end, taper',
    toTaperMm: 'Second end, taper',
    heightMm: 'Brace height',
    widthMm: 'Brace width',
    undersideRadiusMm: 'Radius of the gluing face',
    archRiseMm: 'Rise of the arch',
    springMm: 'Spring of its own arch',
    blankLengthMm: 'Brace blank, length',
    blankHeightMm: 'Brace blank, height',
    blankWidthMm: 'Brace blank, width',
  }),
  ...under('braceArch[].', {
    number: 'Brace',
    alongMm: 'Along the brace',
    riseMm: 'Rise of the gluing face',
    heightMm: 'Height over the gluing face',
  }),
  ...under('braceCrossings[].', {
    number: 'One brace',
    otherNumber: 'Other brace',
    xMm: 'Crossing, along the centreline',
    acrossMm: 'Crossing, across',
    alongMm: 'Along the one',
    otherAlongMm: 'Along the other',
    angleRad: 'Angle between them',
    lapMm: 'Lap, deep in each',
  }),
  ...under('patches.holeRing.', {
    innerRadiusMm: 'Ring inside, inner radius',
    outerRadiusMm: 'Ring inside, outer radius',
    thicknessMm: 'Ring inside, thickness',
  }),
  ...under('patches.cross.', {
    count: 'Crossing patches',
    sideMm: 'Crossing patch, each side',
    thicknessMm: 'Crossing patch, thickness',
  }),
  ...under('patches.strip.', {
    widthMm: 'Strip inside, width',
    thicknessMm: 'Strip inside, thickness',
    lengthMm: 'Strip inside, all pieces',
  }),
  ...under('jointStrip[].', {
    fromMm: 'Piece begins at',
    toMm: 'Piece ends at',
    lengthMm: 'Piece, length',
  }),
  ...under('bridgePlate.', {
    lengthMm: 'Bridge plate, along the centreline',
    tailWidthMm: 'Bridge plate, width toward the tail',
    neckWidthMm: 'Bridge plate, width toward the neck',
    thicknessMm: 'Bridge plate, thickness',
    wingsBeyondMm: 'Bridge’s wings beyond the plate',
    besidePinsMm: 'Bridge plate beside the pins',
    toBraceMm: 'Bridge plate to the nearest brace',
  }),
}

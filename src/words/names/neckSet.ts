import type { KeysUnder } from '../numbers/numberWords.ts'

export const NECK_SET_NAMES: Record<KeysUnder<'neckSet'>, string> = {
  'neckSet.angleRad': 'Neck angle, to build to',
  'neckSet.angleStrungRad': 'Neck angle, no rise',
  'neckSet.angleToTopRad': 'Neck angle to the top',
  'neckSet.fretPlaneOverTopMm': 'Frets’ plane over the top',
  'neckSet.fretPlaneOverTopStrungMm': 'Frets’ plane over the top, strung',
  'neckSet.fretPlaneOverBridgeMm': 'Frets’ plane over the bridge',
  'neckSet.fretPlaneOverBridgeStrungMm': 'Frets’ plane over the bridge, strung',
  'neckSet.faceAtNutMm': 'Neck’s face at the nut',
  'neckSet.stringsOverTopMm': 'Strings over the top',
  'neckSet.wedgePerMm': 'Off the heel for each mm, box as it is',
  'neckSet.gapAtEndMm': 'Room under the board’s end',
  'neckSet.widestGapMm': 'Most room under the board',
  'neckSet.gaps[].fromJointMm': 'From the joint',
  'neckSet.gaps[].gapMm': 'Room under the board',
  'neckSet.changes[].actionMm': 'Action, neck as it is',
  'neckSet.changes[].angleRad': 'Angle, action as it is',
  'neckSet.changes[].wedgeMm': 'Off the heel, box planned anew',
}

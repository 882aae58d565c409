import type { KeysUnder } from '../numbers/numberWords.ts'
import { under } from './under.ts'

type RowName = KeysUnder<'edgePlaces'> extends `edgePlaces[].${infer Name}` ? Name : never

/** The same columns stand for the places of either side. */
const ROWS: Record<RowName, string> = {
  alongOuterMm: 'Round the outside',
  topBevelRad: 'Top, bevel',
  backBevelRad: 'Back, bevel',
  topFootMm: 'Top, foot rises per 10 mm',
  backFootMm: 'Back, foot rises per 10 mm',
  topBindingOffMm: 'Top binding, off on the dome',
  backBindingOffMm: 'Back binding, off on the dome',
  topPurflingOffMm: 'Top purfling, floor higher on the dome',
  backPurflingOffMm: 'Back purfling, floor higher on the dome',
  topBindingSetMm: 'Top binding, set on the dome',
  backBindingSetMm: 'Back binding, set on the dome',
  topPurflingSetMm: 'Top purfling, set square to the side',
  backPurflingSetMm: 'Back purfling, set square to the side',
  betweenMm: 'Side between the bindings',
}

export const EDGE_NAMES: Record<
  KeysUnder<'edges' | 'edgePlaces' | 'trebleEdgePlaces' | 'edgeStrips' | 'endWedge' | 'backStrip'>,
  string
> = {
  'edges.ledgeMm': 'Binding ledge, down the side',
  'edges.ledgeInMm': 'Binding ledge, into the side',
  'edges.sideLeftMm': 'Side behind the binding',
  'edges.topPurflingMm': 'Top purfling, width',
  'edges.backPurflingMm': 'Back purfling, width',
  'edges.purflingDownMm': 'Purfling, depth',
  'edges.topLeftMm': 'Top left under the purfling',
  'edges.backLeftMm': 'Back left under the purfling',
  'edges.bindingToBuyMm': 'Binding to buy',
  'edges.purflingToBuyMm': 'Purfling to buy',
  'edges.tightestRadiusMm': 'Tightest bend of the binding',
  'edges.tightestAtMm': 'Tightest bend lies at',
  ...under('edgePlaces[].', ROWS),
  ...under('trebleEdgePlaces[].', ROWS),
  'edgeStrips[].bindingMm': 'Binding, fitted',
  'edgeStrips[].bindingCutMm': 'Binding, to cut',
  'edgeStrips[].purflingMm': 'Purfling, fitted',
  'edgeStrips[].purflingCutMm': 'Purfling, to cut',
  'edgeStrips[].mitreRad': 'Mitre at the end toward the neck',
  'endWedge.fullMm': 'End wedge, full length',
  'endWedge.betweenMm': 'End wedge, between the bindings',
  'endWedge.taperRad': 'End wedge, taper of each edge',
  'endWedge.topMm': 'End wedge, width at the top binding',
  'endWedge.backMm': 'End wedge, width at the back binding',
  'endWedge.woodTopMm': 'End wedge, wood at the top',
  'endWedge.woodBackMm': 'End wedge, wood at the back',
  'endWedge.intoSideMm': 'End wedge, depth',
  'endWedge.edgeMm': 'End wedge, width of its purfling',
  'endWedge.purflingMm': 'End wedge, purfling of an edge',
  'endWedge.purflingCutMm': 'End wedge, purfling to cut',
  'endWedge.mitreTopRad': 'End wedge, mitre at the top',
  'endWedge.mitreBackRad': 'End wedge, mitre at the back',
  'endWedge.intoBlockMm': 'End wedge, into the tail block',
  'endWedge.blockLeftMm': 'Tail block behind the wedge',
  'endWedge.besideMm': 'Tail block beside the wedge',
  'backStrip.widthMm': 'Back strip, width',
  'backStrip.downMm': 'Back strip, depth',
  'backStrip.chordMm': 'Back strip, straight across',
  'backStrip.arcMm': 'Back strip, along the dome',
  'backStrip.cutMm': 'Back strip, to cut',
  'backStrip.leftMm': 'Back left under the strip',
}

import { setting, span, work } from './stagePattern.ts'

const OVERNIGHT = span(4, 12, 24)
const SHORT_SET = span(2, 4, 12)

/** What plates and box take. */
export const BOX_WORK = {
  joinTop: work(span(1, 1.5, 2.5), ['settleWood'], {
    waitH: OVERNIGHT,
    fixtures: setting('joiningBoard'),
    inHumidity: true,
    oneSitting: true,
  }),
  thicknessTop: work(span(0.75, 1.25, 2), ['weighWood', 'joinTop']),
  inlayRosette: work(span(2, 4, 8), ['thicknessTop'], {
    waitH: OVERNIGHT,
    fixtures: setting('caul'),
    parts: ['rosetteStrips'],
    inHumidity: true,
  }),
  levelRosette: work(span(0.75, 1.25, 2), ['inlayRosette']),
  cutSoundhole: work(span(0.5, 0.75, 1), ['levelRosette']),
  archTopBraces: work(span(1, 1.5, 2.5), ['weighWood']),
  patchTop: work(span(0.75, 1, 2), ['cutSoundhole'], {
    waitH: SHORT_SET,
    fixtures: setting('topDish', 'deck'),
    inHumidity: true,
  }),
  braceTop: work(span(1, 1.5, 2.5), ['archTopBraces', 'patchTop'], {
    waitH: OVERNIGHT,
    fixtures: setting('topDish', 'deck'),
    inHumidity: true,
    oneSitting: true,
  }),
  braceTopFine: work(span(0.75, 1.25, 2), ['braceTop'], {
    waitH: OVERNIGHT,
    fixtures: setting('topDish', 'deck'),
    inHumidity: true,
  }),
  carveTop: work(span(2, 4, 8), ['braceTopFine'], { inHumidity: true }),
  joinBack: work(span(1, 1.75, 3), ['settleWood'], {
    waitH: OVERNIGHT,
    fixtures: setting('joiningBoard'),
    inHumidity: true,
    oneSitting: true,
  }),
  thicknessBack: work(span(0.75, 1.25, 2), ['joinBack']),
  stripBack: work(span(0.4, 0.6, 1), ['thicknessBack'], {
    waitH: SHORT_SET,
    fixtures: setting('backDish', 'deck'),
    inHumidity: true,
  }),
  archBackBraces: work(span(0.5, 1, 1.5), ['weighWood']),
  braceBack: work(span(0.75, 1.25, 2), ['archBackBraces', 'stripBack'], {
    waitH: OVERNIGHT,
    fixtures: setting('backDish', 'deck'),
    inHumidity: true,
    oneSitting: true,
  }),
  carveBack: work(span(0.75, 1.5, 3), ['braceBack']),
  fitTop: work(span(0.75, 1.25, 2.5), ['trueRim', 'carveTop'], { inHumidity: true }),
  glueTop: work(span(0.5, 0.75, 1.25), ['fitTop'], {
    waitH: OVERNIGHT,
    fixtures: setting('deck'),
    inHumidity: true,
    oneSitting: true,
  }),
  fitBack: work(span(1, 1.75, 3), ['carveBack', 'glueTop'], { parts: ['label'], inHumidity: true }),
  closeBox: work(span(0.5, 0.75, 1.25), ['fitBack'], {
    waitH: OVERNIGHT,
    fixtures: setting('deck'),
    inHumidity: true,
    oneSitting: true,
  }),
  trimPlates: work(span(0.5, 0.75, 1), ['closeBox']),
  inlayEndWedge: work(span(0.5, 1, 2), ['trimPlates'], { waitH: SHORT_SET }),
  cutLedges: work(span(1, 1.5, 3), ['inlayEndWedge'], { oneSitting: true }),
  bendBindings: work(span(0.75, 1.25, 2.5), ['settleWood'], {
    waitH: span(12, 24, 48),
    fixtures: setting('bendingForm'),
    parts: ['bindings'],
  }),
  bindBox: work(span(3, 5, 9), ['cutLedges', 'bendBindings'], {
    waitH: span(8, 24, 48),
    fixtures: setting('straps'),
    inHumidity: true,
  }),
  scrapeBox: work(span(2, 3, 5), ['bindBox']),
}

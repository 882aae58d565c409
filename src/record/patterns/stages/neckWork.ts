import { held, setting, span, work, working } from './stagePattern.ts'

const OVERNIGHT = span(4, 12, 24)

/** What neck, finish and set-up take. */
export const NECK_WORK = {
  makeNeckBlank: work(span(1, 2, 3), ['settleWood'], { waitH: span(8, 24, 48), fixtures: setting('clamps') }),
  cutRodChannel: work(span(0.75, 1, 2), ['makeNeckBlank'], { parts: ['truss'] }),
  veneerHead: work(span(0.5, 1, 2), ['makeNeckBlank'], {
    waitH: OVERNIGHT,
    fixtures: setting('clamps'),
  }),
  shapeHead: work(span(1, 2.5, 6), ['veneerHead'], { parts: ['tuners'] }),
  cutNeckJoint: work(span(1.5, 2.5, 5), ['cutBlockJoint', 'scrapeBox', 'cutRodChannel'], { parts: ['neckBolts'] }),
  slotSides: work(span(1, 1.5, 2.5), ['makeNeckBlank']),
  makeBoard: work(span(2, 3.5, 8), ['settleWood'], { parts: ['markers'], inHumidity: true }),
  bindBoard: work(span(0.75, 1.5, 3), ['makeBoard'], {
    waitH: OVERNIGHT,
    fixtures: setting('straps'),
    parts: ['boardBindings'],
  }),
  glueBoard: work(span(0.5, 0.75, 1), ['cutRodChannel', 'shapeHead', 'bindBoard'], {
    waitH: span(12, 24, 48),
    fixtures: setting('clamps', 'caul'),
    inHumidity: true,
    oneSitting: true,
  }),
  carveNeck: work(span(4, 6, 10), ['cutNeckJoint', 'glueBoard']),
  fitNeck: work(span(1.5, 3, 6), ['scrapeBox', 'carveNeck'], { inHumidity: true }),
  fretBoard: work(span(3, 4.5, 7), ['fitNeck'], { parts: ['fretWire'], inHumidity: true }),
  makeBridge: work(span(2, 3, 5), ['settleWood'], { parts: ['bridgePins'] }),
  sandAndFill: work(span(3, 5, 8), ['fitNeck', 'fretBoard'], {
    waitH: span(24, 48, 96),
    fixtures: [held('dryingRack', 'cure')],
    parts: ['filler'],
  }),
  // Eight coats: each its share of hours and days.
  finish: work(span(0.5, 0.75, 1.5), ['sandAndFill'], {
    times: 8,
    waitH: span(9, 15, 30),
    fixtures: working('sprayRoom'),
    parts: ['finish'],
    inHumidity: true,
  }),
  cure: work(span(0, 0.1, 0.1), ['finish'], { waitH: span(168, 336, 720) }),
  polish: work(span(3, 5, 9), ['cure']),
  setNeck: work(span(0.5, 1, 1.5), ['polish'], {
    waitH: span(12, 24, 24),
    fixtures: setting('clamps'),
    parts: ['neckBolts'],
    oneSitting: true,
  }),
  glueBridge: work(span(1, 1.5, 2.5), ['makeBridge', 'setNeck'], {
    waitH: span(12, 24, 48),
    fixtures: setting('bridgeClamps'),
    inHumidity: true,
    oneSitting: true,
  }),
  levelFrets: work(span(1.5, 2.5, 4), ['setNeck']),
  makeNutAndSaddle: work(span(1.5, 2.5, 4), ['glueBridge', 'levelFrets'], { parts: ['nutAndSaddle'] }),
  fitHardware: work(span(0.75, 1.5, 3), ['polish', 'glueBridge'], {
    parts: ['tuners', 'endPin', 'guardPlate'],
  }),
  stringUp: work(span(1, 1.5, 2.5), ['makeNutAndSaddle', 'fitHardware'], {
    waitH: span(48, 168, 336),
    fixtures: [held('hangingPlace', 'settleSetUp')],
    parts: ['strings'],
    inHumidity: true,
  }),
  settleSetUp: work(span(0.75, 1.5, 2.5), ['stringUp'], { inHumidity: true }),
  inspect: work(span(1.5, 2.5, 4), ['settleSetUp']),
  deliver: work(span(0.75, 1.25, 3), ['inspect'], { parts: ['case'] }),
  // Nobody knows beforehand: the maker says how long.
  ownWork: work(span(0, 0, 0), []),
}

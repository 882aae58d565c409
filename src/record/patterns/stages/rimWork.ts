import { held, setting, span, work, working } from './stagePattern.ts'

const OVERNIGHT = span(4, 12, 24)

/** What wood, sides and rim take. */
export const RIM_WORK = {
  chooseWood: work(span(1, 1.5, 3), []),
  settleWood: work(span(0.5, 1, 2), ['chooseWood'], {
    waitH: span(336, 672, 2016),
    fixtures: setting('dryingShelf'),
    inHumidity: true,
  }),
  weighWood: work(span(0.5, 1, 2), ['settleWood'], { inHumidity: true }),
  thicknessSides: work(span(1, 1.5, 3), ['settleWood']),
  markBlanks: work(span(0.25, 0.5, 0.75), ['thicknessSides']),
  profileBlanks: work(span(0.25, 0.5, 0.75), ['markBlanks']),
  bendSides: work(span(1.5, 2.5, 5), ['profileBlanks'], {
    waitH: span(12, 24, 48),
    fixtures: [held('bendingForm', 'settleInMould'), ...working('bendingIron')],
  }),
  settleInMould: work(span(0.75, 1, 2), ['bendSides'], {
    waitH: span(12, 24, 72),
    fixtures: [held('mould', 'closeBox')],
  }),
  makeBlocks: work(span(0.75, 1.5, 2.5), ['settleWood']),
  glueBlocks: work(span(0.75, 1, 1.5), ['settleInMould', 'makeBlocks'], {
    waitH: OVERNIGHT,
    fixtures: setting('blockClamps'),
    oneSitting: true,
  }),
  braceSides: work(span(1, 1.5, 3), ['settleInMould'], { waitH: span(2, 4, 12), fixtures: setting('smallClamps') }),
  radiusRim: work(span(1, 1.5, 3), ['glueBlocks', 'braceSides'], { fixtures: working('backDish', 'topDish') }),
  makeLinings: work(span(0.5, 1.5, 3), ['settleWood']),
  glueLinings: work(span(1, 1.5, 2.5), ['radiusRim', 'makeLinings'], { waitH: OVERNIGHT, fixtures: setting('clips') }),
  trueRim: work(span(1, 1.5, 2.5), ['glueLinings'], { fixtures: working('backDish', 'topDish') }),
  cutBlockJoint: work(span(0.5, 1, 2), ['glueBlocks'], { parts: ['neckBolts'] }),
}

import type { FindingCode } from '../../core/findings.ts'
import type { FindingWriter, WritersFor } from './findingWords.ts'

type PlateCode = Extract<
  FindingCode,
  'topTooTight' | 'backTooTight' | 'flatAboveDome' | 'flatOutsideBody' | 'plateRiseTooGreat'
>

const tooTight =
  (plate: 'top' | 'back'): FindingWriter =>
  ({ value }) => ({
    title: `The dome of the ${plate} is too tight for this body`,
    sentence: `With a radius of ${value('radiusMm', 'domeRadius') ?? 'this size'} it must reach ${value('reachMm', 'bodyLength') ?? 'far'} out from its axis; the rim would slope too steeply there.`,
    mend: `Dome of the ${plate}: take a larger radius.`,
  })

export const PLATE_FINDINGS: WritersFor<PlateCode> = {
  topTooTight: tooTight('top'),
  backTooTight: tooTight('back'),
  flatAboveDome: ({ value, leadsTo }) => ({
    title: 'The flat would stand above the dome',
    sentence: `Toward the neck the flat of the upper bout stands up to ${value('byMm', 'thickness') ?? 'a little'} over the dished rim; there is no wood there to plane.`,
    mend: leadsTo('top.flatSlopeDeg')
      ? 'Fall of the flat: make it steeper. Or move “Flat begins at” toward the neck.'
      : 'Flat begins at: move it toward the neck. Or have the neck set ask for more fall: more Bridge thickness or Saddle showing, less Board thickness. Or give “The flat falls” a figure of your own.',
  }),
  flatOutsideBody: ({ value }) => ({
    title: 'The flat begins beyond the neck',
    sentence: `It begins at ${value('fromMm', 'bodyLength') ?? 'a place'} from the tail; the body is ${value('lengthMm', 'bodyLength') ?? 'shorter'} long.`,
    mend: 'Flat begins at: bring it back onto the body.',
  }),
  plateRiseTooGreat: ({ value }) => ({
    title: 'The crown is wider than the body',
    sentence: `A dome with this rise reaches ${value('reachMm', 'bodyLength') ?? 'far'} from its crown, but the rim is ${value('halfWidthMm', 'bodyLength') ?? 'nearer'} away at the saddle line; the plate would not lie on the flat rim.`,
    mend: 'Rise at the saddle: make it less. Or take a smaller radius for the Dome of the top.',
  }),
}

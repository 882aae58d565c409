import type { FindingCode } from '../../core/findings.ts'
import type { WritersFor } from './findingWords.ts'

type BodyCode = Extract<FindingCode, `side${string}` | `block${string}`>

export const BODY_FINDINGS: WritersFor<BodyCode> = {
  sidesTooTightToBend: ({ value }) => ({
    title: 'A bend is too tight for the side',
    sentence: `At ${value('atMm', 'bodyLength') ?? 'one place'} round from the tail the radius is ${value('radiusMm', 'bodyLength') ?? 'too small'}; a side of ${value('thicknessMm', 'thickness') ?? 'this thickness'} is likely to break there.`,
    mend: `Side thickness: ${thinTo(value('bendableMm', 'thickness'))}. Or ease that bend of the outline.`,
  }),
  sidesTightToBend: ({ value }) => ({
    title: 'A bend is tight for the side',
    sentence: `At ${value('atMm', 'bodyLength') ?? 'one place'} round from the tail the radius is ${value('radiusMm', 'bodyLength') ?? 'small'}; a side of ${value('thicknessMm', 'thickness') ?? 'this thickness'} takes care there.`,
    mend: `Side thickness: ${thinTo(value('easyMm', 'thickness'))} for an easy bend. Or bend slowly, with a slat behind.`,
  }),
  sideTooShallow: ({ value }) => ({
    title: 'The side is too shallow',
    sentence: `At ${value('atMm', 'bodyLength') ?? 'one place'} round from the tail only ${value('depthMm', 'bodyLength') ?? 'a little'} of side is left between the domes.`,
    mend: 'Rim depth at the tail or Rim depth at the neck: raise it. Or take a larger radius for a dome.',
  }),
  blockWiderThanBody: ({ number }) => {
    const end = number('end') === 1 ? 'neck' : 'tail'
    const name = end === 'neck' ? 'Neck block, width' : 'Tail block, width'
    return {
      title: `The ${end} block is too wide`,
      sentence: 'It reaches round the bout, where the side no longer lies across the body.',
      mend: `${name}: make it narrower.`,
    }
  },
}

const thinTo = (thickness: string | null) => (thickness === null ? 'make it thinner' : `${thickness} or less`)

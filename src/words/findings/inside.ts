import type { FindingCode } from '../../core/findings.ts'
import type { WritersFor } from './findingWords.ts'

type InsideCode = Extract<FindingCode, `ledge${string}` | `linings${string}` | `caul${string}`>

export const INSIDE_FINDINGS: WritersFor<InsideCode> = {
  ledgeTooNarrow: ({ size, value, number }) => {
    const plate = number('plate') === 1 ? 'back' : 'top'
    const isCutThrough = (number('ledgeMm') ?? 1) <= 0
    return {
      title: isCutThrough ? `Nothing is left to glue the ${plate} to` : `Little is left to glue the ${plate} to`,
      sentence: isCutThrough
        ? `Binding and purfling go ${size('ledgeMm', 'thickness') ?? 'a little'} further in than side and lining.`
        : `Once binding and purfling are let in, the ledge on side and lining is only ${value('ledgeMm', 'thickness') ?? 'narrow'} wide.`,
      mend: `${plate === 'top' ? 'Top' : 'Back'} lining, width: make it wider. Or take less Binding, thickness or Purfling of the ${plate}.`,
    }
  },
  liningsMeet: ({ value }) => ({
    title: 'The two linings meet',
    sentence: `Where the side is shallowest, top and back lining together are ${value('byMm', 'bodyLength') ?? 'a little'} too tall for it.`,
    mend: 'Top lining, height or Back lining, height: make it less, so that some of the side stays bare between them.',
  }),
  caulTooThin: () => ({
    title: 'The caul is too thin for that force',
    sentence: 'Clamped straight, its wood would be bent further than a hardwood bears: it takes a set, or it breaks.',
    mend: 'Caul, height: make it taller. Or ask for less Caul, force wanted, or set the clamps closer.',
  }),
}

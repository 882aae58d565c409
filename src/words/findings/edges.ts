import type { FindingCode } from '../../core/findings.ts'
import type { WritersFor } from './findingWords.ts'

type EdgeCode = Extract<FindingCode, `binding${string}` | `purfling${string}` | `wedge${string}` | `backStrip${string}`>

export const EDGE_FINDINGS: WritersFor<EdgeCode> = {
  bindingsMeet: ({ value }) => ({
    title: 'The two bindings meet',
    sentence: `Where the side is shallowest, the bindings of top and back together are ${value('byMm', 'bodyLength') ?? 'a little'} too tall for it.`,
    mend: 'Binding, height: make it less, so that some of the side shows between them.',
  }),
  bindingTooLow: ({ value }) => ({
    title: 'The binding does not cover the plate',
    sentence: `It is ${value('heightMm', 'thickness') ?? 'less'} tall on a plate of ${value('plateMm', 'thickness') ?? 'more'}: the plate’s edge shows under it.`,
    mend: 'Binding, height: make it taller than the plate is thick.',
  }),
  bindingThroughSide: ({ size, number }) => {
    const below = size('belowMm', 'thickness')
    const isFlush = (number('throughMm') ?? 1) === 0
    return {
      title: below === null ? 'The binding goes through the side' : 'The binding opens the box',
      sentence:
        below !== null
          ? `Its ledge goes ${size('throughMm', 'thickness') ?? 'a little'} further in than the side, and ${below} below the lining: there the box stands open.`
          : isFlush
            ? 'Its ledge takes the whole thickness of the side: behind it there is lining alone.'
            : `Its ledge goes ${size('throughMm', 'thickness') ?? 'a little'} further in than the side: behind it there is lining alone.`,
      mend:
        below === null
          ? 'Binding, thickness: make it less than the side’s. Or glue the linings without a gap.'
          : 'Binding, thickness: make it less than the side’s. Or make Binding, height less, so that it ends on the lining.',
    }
  },
  bindingTight: ({ value, number }) => ({
    title: number('isHard') === 1 ? 'A bend is hard for a wooden binding' : 'A bend is tight for a wooden binding',
    sentence: `At ${value('atMm', 'bodyLength') ?? 'one place'} round from the tail its inner face has a radius of ${value('radiusMm', 'bodyLength') ?? 'little'}; a strip of ${value('thicknessMm', 'thickness') ?? 'this thickness'} ${number('isHard') === 1 ? 'is likely to break there' : 'takes care there'}.`,
    mend: 'Binding, thickness: make it thinner. Or bend it hot with a slat behind, or laminate it; what gives when warmed bends as it is.',
  }),
  purflingTooDeep: ({ size, number, value }) => {
    const plate = number('plate') === 1 ? 'back' : 'top'
    const isThrough = (number('leftMm') ?? 1) <= 0
    return {
      title: isThrough ? `The purfling goes through the ${plate}` : `Little of the ${plate} is left under the purfling`,
      sentence: isThrough
        ? `Its channel is ${deeper(number('leftMm'), size('leftMm', 'thickness'))} the ${plate} is thick.`
        : `Its channel leaves only ${value('leftMm', 'thickness') ?? 'a little'} of the ${plate}.`,
      mend: 'Purfling ledge, depth: make it less.',
    }
  },
  wedgeThroughSide: ({ size, number, value }) => {
    const isThrough = (number('leftMm') ?? 1) <= 0
    const into = size('intoMm', 'thickness') ?? 'far'
    return {
      title: isThrough ? 'The end wedge goes through the tail block' : 'The end wedge goes deep into the tail block',
      sentence: isThrough
        ? `It goes ${into} into the block, ${deeper(number('leftMm'), size('leftMm', 'thickness'))} that is thick.`
        : `It goes ${into} into the block and leaves ${value('leftMm', 'thickness') ?? 'less than half'} of it.`,
      mend: 'End wedge, depth: make it less; the thickness of the side is enough.',
    }
  },
  wedgeWiderThanBlock: ({ size }) => ({
    title: 'The end wedge is wider than the tail block',
    sentence: `It is ${size('byMm', 'bodyLength') ?? 'a little'} wider, so its edges have no block behind them.`,
    mend: 'End wedge at the top or End wedge at the back: make it narrower. Or make Tail block, width more.',
  }),
  wedgeAllPurfling: ({ value }) => ({
    title: 'The end wedge is nothing but purfling',
    sentence: `Two purflings of ${value('purflingMm', 'thickness') ?? 'this width'} leave no wood between them.`,
    mend: 'End wedge, purfling: make it narrower. Or make End wedge at the top wider.',
  }),
  backStripTooDeep: ({ size, number, value }) => {
    const isThrough = (number('leftMm') ?? 1) <= 0
    const isHeld = number('isHeld') === 1
    return {
      title: isThrough ? 'The back strip goes through the back' : 'Little of the back is left under the strip',
      sentence: isThrough
        ? `Its channel is ${deeper(number('leftMm'), size('leftMm', 'thickness'))} the back is thick: ${isHeld ? 'the strip inside alone holds the joint' : 'no strip inside is wide enough to hold the joint'}.`
        : `Its channel leaves only ${value('leftMm', 'thickness') ?? 'a little'} of the back.`,
      mend:
        isThrough && !isHeld
          ? 'Back strip, depth: make it less. Or make Strip on the back’s joint wider than the channel.'
          : 'Back strip, depth: make it less.',
    }
  },
}

/** What goes right through, or just as far as there is wood. */
const deeper = (leftMm: number | null, by: string | null): string =>
  leftMm === 0 ? 'as deep as' : `${by ?? 'a little'} deeper than`

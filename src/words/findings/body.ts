import type { FindingCode } from '../../core/findings.ts'
import type { WritersFor } from './findingWords.ts'

type BodyCode = Extract<FindingCode, `outline${string}` | `keyWidth${string}` | `side${string}` | `block${string}`>

const WIDTHS = ['Lower bout', 'Waist', 'Upper bout'] as const
const widthName = (which: number | null) => WIDTHS[which ?? 1] ?? 'Waist'

export const BODY_FINDINGS: WritersFor<BodyCode> = {
  outlineTooManyOpen: ({ number }) => ({
    title: 'Too many values left open',
    sentence: `${number('open') ?? 'More than three'} values of the compass pieces are open; the outline can be closed with three at most.`,
    mend: 'Compass pieces: type a radius, sweep or length you know, until three or fewer are open.',
  }),
  outlineDoesNotClose: ({ size }) => ({
    title: 'The outline does not close',
    sentence: `At the neck the half outline misses its end by ${size('alongMm', 'thickness') ?? 'some way'} along the body and ${size('acrossMm', 'thickness') ?? 'some way'} across it.`,
    mend: 'Compass pieces: leave up to three values open and they are worked out so that it closes. Or change the Body length.',
  }),
  outlineHasCorner: ({ size }) => ({
    title: 'The halves meet in a corner',
    sentence: `At the neck the half outline is ${size('cornerRad', 'angle') ?? 'some way'} off square to the centreline, so the two halves make a corner.`,
    mend: 'Compass pieces: leave one more sweep open, or change the sweeps until the sum fits.',
  }),
  outlineCrossesItself: () => ({
    title: 'The outline crosses itself',
    sentence: 'No side can be bent to an outline that runs over its own line.',
    mend: 'Compass pieces or Body length: look for an arc that turns too far, or the wrong way.',
  }),
  keyWidthsNeedLength: () => ({
    title: 'Key widths need a body length',
    sentence: 'Only compass arcs can give the length themselves; until one is typed, a usual one is drawn.',
    mend: 'Body length: type it.',
  }),
  keyWidthsOutOfOrder: () => ({
    title: 'The places are out of order',
    sentence:
      'From the tail there must come the lower bout, then the waist, then the upper bout, all short of the neck.',
    mend: 'Change “Lower bout stands at”, “Waist stands at” or “Upper bout stands at”.',
  }),
  keyWidthsNotFair: ({ value, number }) => ({
    title: 'No fair curve meets these widths',
    sentence: `The nearest fair curve misses half the width by ${value('missMm', 'thickness') ?? 'some way'}; the ${widthName(number('which')).toLowerCase()} is what it fights with.`,
    mend: `${widthName(number('which'))}: change the width or move its place a little, or free the Radius at the tail and neck.`,
  }),
  keyWidthsNoWaist: () => ({
    title: 'The body has no waist',
    sentence: 'The fair curve through these widths is nowhere narrower between the bouts than beside them.',
    mend: 'Waist: make it narrower than both bouts. Or keep it, if a body without a waist is wanted.',
  }),
  keyWidthNotWidest: ({ value, number }) => {
    const name = widthName(number('which'))
    const extreme = name === 'Waist' ? 'narrowest' : 'widest'
    return {
      title: `${name}: the curve is ${extreme} elsewhere`,
      sentence: `It is ${extreme} at ${value('foundAtMm', 'bodyLength') ?? 'another place'} from the tail, with ${value('foundMm', 'bodyLength') ?? 'another width'} where ${value('wantedMm', 'bodyLength') ?? 'another'} was wanted.`,
      mend: `Change “${name} stands at” to that place, or keep it if the width where you put it is what counts.`,
    }
  },
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

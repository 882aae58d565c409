import type { FindingCode } from '../../core/findings.ts'
import { CUTAWAY_MISFITS, type CutawayMisfit } from '../../core/instrument/cutaway.ts'
import type { Values, WritersFor } from './findingWords.ts'

type OutlineCode = Extract<
  FindingCode,
  `outline${string}` | `keyWidth${string}` | `drawnPath${string}` | `readings${string}` | `cutaway${string}`
>

const WIDTHS = ['Lower bout', 'Waist', 'Upper bout'] as const
const widthName = (which: number | null) => WIDTHS[which ?? 1] ?? 'Waist'

/** Why a cutaway cannot be drawn, and what would be taken. */
const CUT_WORDS: Record<Exclude<CutawayMisfit, 'none'>, { readonly sentence: string; readonly mend: string }> = {
  leavesBeforeWaist: {
    sentence: 'It would begin on the tail side of the waist, or of the widest place where there is no waist.',
    mend: 'Cutaway begins at: take a place on the upper bout, past the waist.',
  },
  leavesPastShoulder: {
    sentence: 'Where it begins, the side already stands no wider than the hollow is to meet the neck.',
    mend: 'Cutaway begins at: take a place nearer to the tail. Or let the Hollow meet the neck at less.',
  },
  hollowTooTight: {
    sentence: 'The arc of the hollow is too small to reach from the horn to the neck.',
    mend: 'Radius of the hollow: take a larger one. Or move “Cutaway begins at” toward the neck.',
  },
  hornTooWide: {
    sentence: 'The round of the horn already covers the place where the hollow is to meet the neck.',
    mend: 'Radius of the horn: take a smaller one. Or move “Cutaway begins at” toward the tail.',
  },
  noHorn: {
    sentence: 'The side would have to turn outward into the hollow, or go more than half round the horn.',
    mend: 'Cutaway begins at: move it toward the tail. Or change the Radius of the hollow.',
  },
  beyondNeck: {
    sentence: 'Horn or hollow would stand out past the line of the neck joint.',
    mend: 'Cutaway begins at: move it toward the tail. Or take a larger Radius of the hollow.',
  },
  intoSide: {
    sentence: 'The hollow would run under the centreline, or over the line of the side.',
    mend: 'Radius of the hollow: take a larger one. Or let the Hollow meet the neck at more.',
  },
}
const CUT_UNKNOWN = {
  sentence: 'Horn and hollow do not come to the neck as entered.',
  mend: 'Cutaway begins at: try another place, or other radii.',
}

function cutWords(reason: number | null): { readonly sentence: string; readonly mend: string } {
  const misfit = reason === null ? undefined : CUTAWAY_MISFITS[reason]
  return misfit === undefined || misfit === 'none' ? CUT_UNKNOWN : CUT_WORDS[misfit]
}

function crossingMend(leadsTo: Values['leadsTo']): string {
  if (leadsTo('outline.drawnPath')) return 'Drawn path: take one that runs once round the body.'
  if (leadsTo('outline.halfWidths.rows'))
    return 'Half-width readings or Body length: look for a reading that is mistyped.'
  if (leadsTo('outline.pieces'))
    return 'Compass pieces or Body length: look for an arc that turns too far, or the wrong way.'
  return 'Lower bout, Waist, Upper bout or Body length: look for one that is mistyped.'
}

export const OUTLINE_FINDINGS: WritersFor<OutlineCode> = {
  outlineTooManyOpen: ({ number }) => ({
    title: 'Too many values left open',
    sentence: `${number('open') ?? 'More than three'} values of the compass pieces are open; the outline can be closed with three at most.`,
    mend: 'Compass pieces: type a radius, sweep or length you know, until three or fewer are open.',
  }),
  outlineDoesNotClose: ({ size, leadsTo }) => ({
    title: 'The outline does not close',
    sentence: `At the neck the half outline misses its end by ${size('alongMm', 'thickness') ?? 'some way'} along the body and ${size('acrossMm', 'thickness') ?? 'some way'} across it.`,
    mend: leadsTo('outline.drawnPath')
      ? 'Drawn path: take one of which each half begins and ends on the centreline.'
      : 'Compass pieces: leave up to three values open and they are worked out so that it closes. Or change the Body length.',
  }),
  outlineHasCorner: ({ size, leadsTo }) => ({
    title: 'The halves meet in a corner',
    sentence: `At the neck the half outline is ${size('cornerRad', 'angle') ?? 'some way'} off square to the centreline, so the two halves make a corner.`,
    mend: leadsTo('outline.drawnPath')
      ? 'Drawn path: take one that crosses the centreline square.'
      : 'Compass pieces: leave one more sweep open, or change the sweeps until the sum fits.',
  }),
  outlineCrossesItself: ({ leadsTo }) => ({
    title: 'The outline crosses itself',
    sentence: 'No side can be bent to an outline that runs over its own line.',
    mend: crossingMend(leadsTo),
  }),
  keyWidthsNeedLength: () => ({
    title: 'Key widths need a body length',
    sentence: 'Key widths do not say how long the body is; until that is typed, a usual length is drawn.',
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
  drawnPathMissing: () => ({
    title: 'There is no drawn path yet',
    sentence: 'The outline is to come from a drawing, but none was taken in; until then the key widths are drawn.',
    mend: 'Drawn path: open an SVG or DXF file. Or choose another way to draw the outline.',
  }),
  readingsNeedLength: () => ({
    title: 'Readings need a body length',
    sentence:
      'They do not say where the neck joint is; until a length is typed, one a little past the last reading is drawn.',
    mend: 'Body length: type it.',
  }),
  readingsTooFew: ({ number }) => ({
    title: 'Too few readings',
    sentence: `There ${said(number('count'))} of half-width; it takes ${number('least') ?? 'more'} to say anything of a body.`,
    mend: `Half-width readings: enter ${number('least') === null ? 'more' : `${number('least')} or more`}, closer together where the outline bends more.`,
  }),
  readingsNotFair: ({ value }) => ({
    title: 'No fair curve stays with these readings',
    sentence: `The half-width of ${value('halfWidthMm', 'bodyLength') ?? 'some size'} at ${value('fromTailMm', 'bodyLength') ?? 'one place'} from the tail lies ${value('byMm', 'thickness') ?? 'too far'} off the curve; within ${value('readToMm', 'thickness') ?? 'less'} it would be taken.`,
    mend: 'Half-width readings: read that one again. Or raise “Read to within” to what the table was truly read to.',
  }),
  cutawayOnOwnTreble: () => ({
    title: 'The cutaway is not drawn',
    sentence: 'The drawn path has a treble half of its own, and that is taken as it is.',
    mend: 'Cutaway: choose none. Or take in a path of the bass half alone.',
  }),
  cutawayDoesNotFit: ({ number }) => ({ title: 'The cutaway does not fit', ...cutWords(number('reason')) }),
}

const said = (count: number | null) =>
  count === null ? 'are only a few readings' : count === 1 ? 'is one reading' : `are ${count} readings`

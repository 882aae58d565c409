import type { Plan } from '../plan.ts'
import { type CuttingAllowances, withAllowances } from './cutting.ts'
import { type CutPart, cutPart, type PartDraft } from './part.ts'
import { lengthOrNone, type WoodNumbers } from './woodNumbers.ts'

type EdgeStrip = WoodNumbers['edgeStrips'][number]

/** What closes the edges of the box: bindings, purflings and the wedge at the tail. Their lengths carry the plan's own trim; nothing is added to them. */
export function edgeParts(plan: Plan, numbers: WoodNumbers, cutting: CuttingAllowances): readonly CutPart[] {
  const { binding, edges } = plan
  const strips = (['top', 'back'] as const).flatMap((plate) => {
    const rows = numbers.edgeStrips.filter((row) => row.plate === plate)
    return [
      ...alikeTwice(rows, (row) => ({
        key: plate === 'top' ? 'topBinding' : 'backBinding',
        ...strip(row.bindingMm, row.bindingCutMm, binding.heightMm, binding.thicknessMm, cutting),
      })),
      ...alikeTwice(rows, (row) => ({
        key: plate === 'top' ? 'topPurfling' : 'backPurfling',
        ...strip(
          row.purflingMm,
          row.purflingCutMm,
          edges.purflingDepthMm,
          plate === 'top' ? binding.topPurflingMm : binding.backPurflingMm,
          cutting,
        ),
      })),
    ]
  })
  return [...strips, ...wedge(plan, numbers, cutting)]
}

function strip(
  lengthMm: EdgeStrip['bindingMm'],
  cutMm: EdgeStrip['bindingCutMm'],
  widthMm: number,
  thicknessMm: number,
  cutting: CuttingAllowances,
): Pick<PartDraft, 'finished' | 'rough'> {
  const finished = { lengthMm: lengthOrNone(lengthMm), widthMm, thicknessMm }
  return { finished, rough: { ...withAllowances(finished, cutting), lengthMm: lengthOrNone(cutMm) } }
}

/** Rows of both halves, one by one; where each of the treble half is as long as its fellow of the bass half they are one row, twice. */
function alikeTwice(rows: readonly EdgeStrip[], draftOf: (row: EdgeStrip) => PartDraft): readonly CutPart[] {
  const of = (half: 'bass' | 'treble') => rows.filter((row) => row.half === half).map(draftOf)
  const [bass, treble] = [of('bass'), of('treble')]
  const numbered = (drafts: readonly PartDraft[], more: Pick<PartDraft, 'half' | 'quantity'>) =>
    drafts.map((draft, i) => cutPart({ ...draft, ...more, ...(drafts.length > 1 ? { row: i + 1 } : {}) }))
  const isAlike =
    bass.length === treble.length && bass.every(({ rough }, i) => rough.lengthMm === treble[i]!.rough.lengthMm)
  return isAlike
    ? numbered(bass, { half: 'either', quantity: 2 })
    : [...numbered(bass, { half: 'bass' }), ...numbered(treble, { half: 'treble' })]
}

/** The wedge from plate to plate, as wide as its wider end, and a purfling along each of its long edges. */
function wedge(plan: Plan, { endWedge }: WoodNumbers, cutting: CuttingAllowances): CutPart[] {
  const { wedgeDepthMm, wedgePurflingMm } = plan.edges
  const finished = {
    lengthMm: lengthOrNone(endWedge.fullMm),
    widthMm: Math.max(lengthOrNone(endWedge.woodTopMm), lengthOrNone(endWedge.woodBackMm)),
    thicknessMm: wedgeDepthMm,
  }
  return [
    cutPart({ key: 'endWedge', finished, rough: withAllowances(finished, cutting) }),
    cutPart({
      key: 'wedgePurfling',
      quantity: 2,
      ...strip(endWedge.purflingMm, endWedge.purflingCutMm, wedgeDepthMm, wedgePurflingMm, cutting),
    }),
  ]
}

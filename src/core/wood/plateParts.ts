import type { Plan } from '../plan.ts'
import { type CuttingAllowances, withAllowances } from './cutting.ts'
import { type CutPart, cutPart } from './part.ts'
import { lengthOrNone, type WoodNumbers } from './woodNumbers.ts'

/**
 * No board is as wide as a body is long, so a strip with its grain across is glued in pieces no longer than this, mm. Common practice.
 */
const LONGEST_CROSS_GRAINED_MM = 120

/**
 * Top and back in two bookmatched halves, and what is glued to them, mm.
 *
 *   half: length = body + 2 margins; width = the wider half + one margin + the width allowance, for the joint
 *   thickness = the plate + the thickness allowance
 *
 * A domed plate is longer over its arch than in plan by less than a millimetre; the margin takes that up. Derived.
 */
export function plateParts(plan: Plan, numbers: WoodNumbers, cutting: CuttingAllowances): readonly CutPart[] {
  const rows = [...numbers.rim, ...numbers.trebleRim, ...numbers.places, ...numbers.treblePlaces]
  const lengthMm =
    Math.max(numbers.body.lengthMm, ...rows.map(({ xMm }) => xMm)) - Math.min(0, ...rows.map(({ xMm }) => xMm))
  const halfWidthMm = Math.max(0, ...rows.map(({ yMm }) => yMm))
  const marginMm = Math.max(cutting.plateMarginMm, 0)
  const half = (key: 'topHalf' | 'backHalf', thicknessMm: number): CutPart => {
    const finished = { lengthMm, widthMm: halfWidthMm, thicknessMm }
    const rough = withAllowances(finished, cutting)
    return cutPart({
      key,
      quantity: 2,
      finished,
      rough: { ...rough, lengthMm: lengthMm + 2 * marginMm, widthMm: rough.widthMm + marginMm },
      isBookmatched: true,
    })
  }
  return [
    half('topHalf', plan.plates.topMm),
    ...onTop(plan, numbers, cutting),
    half('backHalf', plan.plates.backMm),
    ...onBack(plan, numbers, cutting),
  ]
}

/** The ring round the hole, sawn from a square, and a patch for every lapped crossing. */
function onTop(plan: Plan, numbers: WoodNumbers, cutting: CuttingAllowances): CutPart[] {
  const { holeRingMm, holeRingSetBackMm, holeRingThicknessMm, crossPatchMm, crossPatchThicknessMm } = plan.bracing
  const acrossMm = holeRingMm > 0 ? 2 * (numbers.soundhole.radiusMm + holeRingSetBackMm + holeRingMm) : 0
  const ring = { lengthMm: acrossMm, widthMm: acrossMm, thicknessMm: holeRingThicknessMm }
  const patch = { lengthMm: crossPatchMm, widthMm: crossPatchMm, thicknessMm: crossPatchThicknessMm }
  return [
    cutPart({ key: 'holeRing', finished: ring, rough: withAllowances(ring, cutting) }),
    cutPart({
      key: 'crossPatch',
      quantity: numbers.patches.cross.count,
      finished: patch,
      rough: withAllowances(patch, cutting),
    }),
  ]
}

/** The strip inside with its grain across, every stretch of it in equal pieces, and the one let in outside, which carries its own trim. */
function onBack(plan: Plan, numbers: WoodNumbers, cutting: CuttingAllowances): CutPart[] {
  const inner = numbers.jointStrip.map((stretch, i) => {
    const pieces = Math.max(Math.ceil(stretch.lengthMm / LONGEST_CROSS_GRAINED_MM - 1e-9), 1)
    const finished = {
      lengthMm: stretch.lengthMm / pieces,
      widthMm: plan.bracing.stripWidthMm,
      thicknessMm: plan.bracing.stripThicknessMm,
    }
    const rough = withAllowances(finished, cutting)
    return cutPart({ key: 'innerBackStrip', row: i + 1, quantity: pieces, finished, rough, grain: 'acrossLength' })
  })
  const outer = {
    lengthMm: lengthOrNone(numbers.backStrip.arcMm),
    widthMm: plan.edges.backStripMm,
    thicknessMm: plan.edges.backStripDepthMm,
  }
  const rough = { ...withAllowances(outer, cutting), lengthMm: lengthOrNone(numbers.backStrip.cutMm) }
  return [...inner, cutPart({ key: 'outerBackStrip', finished: outer, rough })]
}

/** Braces as their blanks are sawn: these carry allowances of their own. Their height stands upright in the board, as its rings do when it is quartered. */
export const braceParts = (numbers: WoodNumbers): readonly CutPart[] =>
  numbers.braces.map((brace) =>
    cutPart({
      key: brace.plate === 'top' ? 'topBrace' : 'backBrace',
      row: brace.number,
      finished: { lengthMm: brace.finishedLengthMm, widthMm: brace.widthMm, thicknessMm: brace.heightMm },
      rough: {
        lengthMm: brace.blankLengthMm,
        widthMm: brace.blankWidthMm,
        thicknessMm: brace.blankHeightMm,
      },
    }),
  )

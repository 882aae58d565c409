import type { Plan } from '../plan.ts'
import { type CuttingAllowances, withAllowances } from './cutting.ts'
import { type CutPart, cutPart } from './part.ts'
import type { WoodNumbers } from './woodNumbers.ts'

/** One length of side wood: what runs along it is made in pieces as long as it. */
interface SideWood {
  readonly half: CutPart['half']
  readonly row: number | undefined
  /** How many are alike. */
  readonly count: number
  readonly outerLengthMm: number
  readonly flatLengthMm: number
  readonly blankLengthMm: number
  readonly blankWidthMm: number
  readonly deepestMm: number
}

const isMirrored = ({ cutaway }: WoodNumbers): boolean => cutaway.trebleLengthMm === 'none'

/** The side woods of a body: one, twice, where its halves are alike; else each by itself. */
function sideWoods(numbers: WoodNumbers): readonly SideWood[] {
  const { blanks, rim, trebleRim } = numbers
  const [bass, ...treble] = blanks
  const deepest = (rows: readonly { readonly depthMm: number }[]) => Math.max(0, ...rows.map(({ depthMm }) => depthMm))
  if (bass === undefined) return []
  if (isMirrored(numbers)) return [{ ...bass, half: 'either', row: undefined, count: 2, deepestMm: deepest(rim) }]
  return [
    { ...bass, half: 'bass', row: undefined, count: 1, deepestMm: deepest(rim) },
    ...treble.map((blank, i) => ({
      ...blank,
      half: 'treble' as const,
      row: treble.length > 1 ? i + 1 : undefined,
      count: 1,
      deepestMm: deepest(trebleRim.filter((row) => row.blank === i + 1)),
    })),
  ]
}

const named = ({ half, row }: SideWood) => (row === undefined ? { half } : { half, row })

/**
 * Sides: blanks as `blanks` has them, which carry trim and edge allowances, with the thickness allowance alone added. Two in one piece each
 * are sawn as a bookmatched pair, both as large as the larger asks; a treble side in two pieces is listed piece by piece.
 */
function sides(plan: Plan, woods: readonly SideWood[], cutting: CuttingAllowances): CutPart[] {
  const most = (of: (wood: SideWood) => number) => Math.max(...woods.map(of))
  const isPair = woods.length <= 2
  const rows: readonly SideWood[] =
    isPair && woods.length > 0
      ? [
          {
            half: 'either',
            row: undefined,
            count: 2,
            outerLengthMm: most((wood) => wood.outerLengthMm),
            flatLengthMm: most((wood) => wood.flatLengthMm),
            blankLengthMm: most((wood) => wood.blankLengthMm),
            blankWidthMm: most((wood) => wood.blankWidthMm),
            deepestMm: most((wood) => wood.deepestMm),
          },
        ]
      : woods
  return rows.map((wood) => {
    const finished = {
      lengthMm: wood.flatLengthMm,
      widthMm: wood.deepestMm,
      thicknessMm: plan.rim.sideThicknessMm,
    }
    return cutPart({
      key: 'side',
      ...named(wood),
      quantity: wood.count,
      finished,
      rough: {
        lengthMm: wood.blankLengthMm,
        widthMm: wood.blankWidthMm,
        thicknessMm: withAllowances(finished, cutting).thicknessMm,
      },
      isBookmatched: isPair,
    })
  })
}

/** Linings: the length along each edge shared out as the outer faces of the side woods are long; their waste stands for the length allowance. */
function linings(plan: Plan, numbers: WoodNumbers, woods: readonly SideWood[], cutting: CuttingAllowances): CutPart[] {
  const aroundMm = woods.reduce((sum, { outerLengthMm, count }) => sum + outerLengthMm * count, 0)
  return (['top', 'back'] as const).flatMap((edge) =>
    woods.map((wood) => {
      const { heightMm, widthMm } = plan.linings[edge]
      const lengthMm = aroundMm > 0 ? (numbers.linings[edge].lengthMm * wood.outerLengthMm) / aroundMm : 0
      const finished = { lengthMm, widthMm: heightMm, thicknessMm: widthMm }
      return cutPart({
        key: edge === 'top' ? 'topLining' : 'backLining',
        ...named(wood),
        quantity: wood.count,
        finished,
        rough: {
          ...withAllowances(finished, cutting),
          lengthMm: lengthMm * (1 + plan.linings.wastePercent / 100),
        },
      })
    }),
  )
}

/** Side braces of wood, one row for each place. */
function sideBraces(plan: Plan, numbers: WoodNumbers, cutting: CuttingAllowances): CutPart[] {
  if (plan.sideBraces.form !== 'wood') return []
  const alike = isMirrored(numbers)
  const halves = [
    { half: alike ? ('either' as const) : ('bass' as const), braces: numbers.sideBraces },
    { half: 'treble' as const, braces: alike ? [] : numbers.trebleBraces },
  ]
  return halves.flatMap(({ half, braces }) =>
    braces.map((brace, i) => {
      const finished = {
        lengthMm: brace.lengthMm,
        widthMm: plan.sideBraces.widthMm,
        thicknessMm: plan.sideBraces.thicknessMm,
      }
      return cutPart({
        key: 'sideBrace',
        half,
        row: i + 1,
        quantity: alike ? 2 : 1,
        finished,
        rough: withAllowances(finished, cutting),
      })
    }),
  )
}

/**
 * Blocks: as high as their higher face; as thick as planned and what a hollow glue face stands before its middle. Their grain lies across
 * the body, so that sides and plates are glued to long grain; common practice, and some shops stand it upright.
 */
function blocks(numbers: WoodNumbers, cutting: CuttingAllowances): CutPart[] {
  return (['tail', 'neck'] as const).map((end) => {
    const block = numbers.blocks[end]
    const proudMm = Math.max(0, ...block.contour.map(({ fallsBackMm }) => -fallsBackMm))
    const finished = {
      lengthMm: Math.max(block.heightAtFaceMm, block.heightInsideMm),
      widthMm: block.widthMm,
      thicknessMm: block.thicknessMm + proudMm,
    }
    return cutPart({
      key: end === 'tail' ? 'tailBlock' : 'neckBlock',
      finished,
      rough: withAllowances(finished, cutting),
      grain: 'acrossLength',
    })
  })
}

/** The rim: sides, what is glued to them inside, and blocks. A heel that holds the sides has no neck block of its own. */
export function rimParts(plan: Plan, numbers: WoodNumbers, cutting: CuttingAllowances): readonly CutPart[] {
  const woods = sideWoods(numbers)
  const hasFoot = plan.neck.joint === 'sidesInHeel'
  return [
    ...sides(plan, woods, cutting),
    ...sideBraces(plan, numbers, cutting),
    ...linings(plan, numbers, woods, cutting),
    ...blocks(numbers, cutting).filter(({ key }) => !(hasFoot && key === 'neckBlock')),
  ]
}

import type { Computed } from './compute.ts'
import type { Figure } from './figure.ts'
import type { Fixture, Fixtures } from './fixture.ts'
import type { ContourRow } from './instrument/block.ts'
import { type BoardGap, boardGap } from './instrument/boardGap.ts'
import { bodySpanMm } from './instrument/bodySpan.ts'
import { type DishGap, dishGap } from './instrument/dishGap.ts'
import { type Halves, type MouldGap, mouldGap } from './instrument/mouldGap.ts'
import { drawOutline } from './instrument/outline.ts'
import type { Radius } from './plan.ts'

/** What an instrument may want of a shop's fixtures. */
export const WANTED = ['tailBlock', 'neckBlock', 'backDish', 'topDish', 'mould', 'bendingForm'] as const
export type Wanted = (typeof WANTED)[number]

interface Named {
  readonly id: string
  readonly name: string
}
export interface BoardFit extends Named, BoardGap {
  readonly radiusMm: Radius
}
export interface DishFit extends Named, DishGap {
  readonly radiusMm: number
  readonly diameterMm: number
}
export interface MouldFit extends Named, MouldGap {
  /** How far inside the outline its surface stands. */
  readonly insetMm: number
}

type For<Each extends Wanted, Found> = Each extends Wanted ? { readonly wanted: Each } & Found : never

export type BlockBoards = For<
  'tailBlock' | 'neckBlock',
  { readonly wantedRadiusMm: Figure; readonly fits: readonly BoardFit[] }
>
export type DomeDishes = For<
  'backDish' | 'topDish',
  {
    readonly wantedRadiusMm: Figure
    /** What the dish has to be wide enough for, and over which the gap is taken. */
    readonly spanMm: number
    readonly fits: readonly DishFit[]
  }
>
type OutlineForms = For<
  'mould' | 'bendingForm',
  { readonly wantedRadiusMm: 'none'; readonly fits: readonly MouldFit[] }
>
/** Everything of the shop that could serve for one thing wanted, best first. */
export type FixtureFit = BlockBoards | DomeDishes | OutlineForms

interface DishSite {
  readonly radiusMm: number
  readonly spanMm: number
}
interface BlockSite {
  readonly radiusMm: Figure
  readonly face: readonly ContourRow[]
}

/** The few shapes of an instrument that a shop's fixtures are held against. */
interface FixtureSite {
  readonly halves: Halves
  readonly tailBlock: BlockSite
  readonly neckBlock: BlockSite
  /** null: no dish is wanted there. */
  readonly backDish: () => DishSite | null
  readonly topDish: () => DishSite | null
}

/** The one place that knows where an instrument's numbers and shapes lie. */
function siteOf({ numbers, geometry }: Computed): FixtureSite {
  const { outline: halves, top, back } = geometry
  const block = ({ contourRadiusMm, contour }: Computed['numbers']['blocks']['tail']): BlockSite => ({
    radiusMm: contourRadiusMm,
    face: contour,
  })
  return {
    halves,
    tailBlock: block(numbers.blocks.tail),
    neckBlock: block(numbers.blocks.neck),
    // A back arched across only is no part of a sphere: no dish has its shape.
    backDish: () =>
      back.form === 'sphere' && back.radiusMm !== 'flat'
        ? { radiusMm: back.radiusMm, spanMm: bodySpanMm(halves) }
        : null,
    topDish: () => {
      const { radiusMm, riseAtSaddleMm: riseMm } = top
      if (radiusMm === 'flat') return null
      const spanMm = bodySpanMm(halves)
      if (typeof riseMm !== 'number') return { radiusMm, spanMm }
      // On a flat rim the dome ends where it meets the plane of the rim: c = 2 sqrt(2 R h - h^2).
      return { radiusMm, spanMm: Math.min(spanMm, 2 * Math.sqrt(Math.max(2 * radiusMm * riseMm - riseMm * riseMm, 0))) }
    },
  }
}

/**
 * For each thing an instrument wants of its shop's fixtures (or those asked for) all that could serve, with the largest gap each leaves, mm.
 * Best first: dishes wide enough before others, then by gap, ties by name, then id. What is not wanted on this instrument has no row.
 */
export function fixtureFits(
  computed: Computed,
  fixtures: Fixtures,
  asked: readonly Wanted[] = WANTED,
): readonly FixtureFit[] {
  const site = siteOf(computed)
  return asked.flatMap((wanted): FixtureFit[] => {
    switch (wanted) {
      case 'tailBlock':
      case 'neckBlock': {
        const { radiusMm, face } = site[wanted]
        return [{ wanted, wantedRadiusMm: radiusMm, fits: boardFits(face, fixtures) }]
      }
      case 'backDish':
      case 'topDish': {
        const dish = site[wanted]()
        if (dish === null) return []
        return [{ wanted, wantedRadiusMm: dish.radiusMm, spanMm: dish.spanMm, fits: dishFits(dish, fixtures) }]
      }
      default:
        return [{ wanted, wantedRadiusMm: 'none', fits: mouldFits(wanted, site.halves, fixtures) }]
    }
  })
}

/** The best fixture for each thing wanted, by id, as far as the shop has one. */
export const fixturesUsed = (fits: readonly FixtureFit[]): ReadonlySet<string> =>
  new Set(fits.flatMap(({ fits: [best] }) => (best === undefined ? [] : [best.id])))

function ofKind<Kind extends Fixture['kind']>(fixtures: Fixtures, kind: Kind) {
  return Object.entries(fixtures).flatMap(([id, fixture]) =>
    fixture.kind === kind ? [{ id, ...(fixture as Extract<Fixture, { kind: Kind }>) }] : [],
  )
}

const boardFits = (face: readonly ContourRow[], fixtures: Fixtures): BoardFit[] =>
  ofKind(fixtures, 'contourBoard')
    .map(({ id, name, radiusMm }) => ({ id, name, radiusMm, ...boardGap(face, radiusMm) }))
    .sort(byGap)

const dishFits = ({ radiusMm: wantedMm, spanMm }: DishSite, fixtures: Fixtures): DishFit[] =>
  ofKind(fixtures, 'dish')
    .map(({ id, name, radiusMm, diameterMm }) => {
      const gap = dishGap(wantedMm, { radiusMm, diameterMm }, spanMm)
      return { id, name, radiusMm, diameterMm, ...gap }
    })
    .sort((a, b) => Number(b.isWideEnough) - Number(a.isWideEnough) || byGap(a, b))

const mouldFits = (kind: 'mould' | 'bendingForm', halves: Halves, fixtures: Fixtures): MouldFit[] =>
  ofKind(fixtures, kind)
    .map((fixture) => {
      const insetMm = fixture.kind === 'bendingForm' ? fixture.insetMm : 0
      const { id, name, outline } = fixture
      return { id, name, insetMm, ...mouldGap(halves, drawOutline(outline), insetMm) }
    })
    .sort(byGap)

function byGap(a: Named & { readonly gapMm: number }, b: Named & { readonly gapMm: number }): number {
  if (a.gapMm !== b.gapMm) return a.gapMm - b.gapMm
  if (a.name !== b.name) return a.name < b.name ? -1 : 1
  return a.id < b.id ? -1 : 1
}

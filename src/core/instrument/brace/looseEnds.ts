import type { BracePlan } from '../../boxPlan.ts'
import type { BraceEndName } from './movedEnd.ts'
import type { PlacedBrace } from './placedBrace.ts'

/** An end of a brace, and the point to enter for it so that it stays where it stands. */
export interface LooseEnd {
  readonly id: string
  readonly end: BraceEndName
  readonly xMm: number
  readonly yMm: number
}

const tenth = (mm: number): number => Math.round(mm * 10) / 10 + 0

/**
 * The ends that stop at a brace, and where they stand, to the tenth of a millimetre: what is to be entered for them when that brace is taken
 * away. Of twins, for the one that is entered.
 */
export function endsStoppingAt(
  id: string,
  braces: { readonly [id: string]: BracePlan },
  placed: readonly PlacedBrace[],
): LooseEnd[] {
  return placed.flatMap((brace) =>
    brace.plan !== braces[brace.id]
      ? []
      : (['from', 'to'] as const).flatMap((end): LooseEnd[] => {
          const { stops, braceId } = brace.plan[end]
          const { x, y } = brace[end].point
          return stops === 'brace' && braceId === id && brace.id !== id
            ? [{ id: brace.id, end, xMm: tenth(x), yMm: tenth(y) }]
            : []
        }),
  )
}

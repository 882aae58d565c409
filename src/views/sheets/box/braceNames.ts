import type { BracePlan, PlateSide } from '../../../core/boxPlan.ts'
import type { BraceRow } from '../../../core/instrument/brace/braceRow.ts'
import { inOrder } from '../../../record/order.ts'
import { braceName, twinsName } from '../../../words/box/bracing.ts'
import type { SheetBench } from '../sheetBench.ts'

export interface NamedBrace {
  readonly id: string
  readonly brace: BracePlan
  /** As it is numbered among the instrument's braces, and called; twins by both numbers. */
  readonly name: string
  /** Of twins, the one whose figures are entered. */
  readonly entered: 'bass' | 'treble' | null
}

/** The braces of one plate in the maker's order. */
export function bracesOfPlate(
  { plan, computed }: Pick<SheetBench, 'plan' | 'computed'>,
  plate: PlateSide,
): NamedBrace[] {
  const rows = computed.numbers.braces
  const { placed } = computed.geometry.bracing
  return inOrder(plan.bracing.braces)
    .filter(([, brace]) => brace.plate === plate)
    .map(([id, brace]) => {
      const [first, second] = rows.filter((row) => row.id === id)
      const number = first?.number ?? 0
      const half = placed.find((one) => one.plan === brace)?.half ?? 'single'
      return {
        id,
        brace,
        name:
          second === undefined ? braceName(number, brace.kind, 'single') : twinsName(number, second.number, brace.kind),
        entered: half === 'single' ? null : half,
      }
    })
}

/** The brace a maker has chosen, and which copy of it; null: the first. It stays in hand while others come and go. */
export interface BraceInHand {
  readonly id: string
  readonly half: BraceRow['half'] | null
}

/** Its place among all braces; null where it is gone. */
export function rowInHand(rows: readonly BraceRow[], { id, half }: BraceInHand): number | null {
  const copy = rows.findIndex((row) => row.id === id && row.half === half)
  const at = copy < 0 ? rows.findIndex((row) => row.id === id) : copy
  return at < 0 ? null : at
}

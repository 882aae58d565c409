import type { BRACE_KINDS } from '../core/boxPlan.ts'
import type { StageKey } from '../record/patterns/stages.ts'

type BraceKind = (typeof BRACE_KINDS)[number]
/** Braces of the top that carry it, and are glued apart from the lighter ones where the order has a stage for those. */
const MAIN_BRACES: ReadonlySet<BraceKind> = new Set(['cross', 'fan', 'ladder', 'other'])

/** Which braces a stage is about: of the two that glue those of the top each its own, of any other stage all. `building`: the stages of the instrument. */
export function gluedAt(building: readonly StageKey[], stage: StageKey): (kind: BraceKind | undefined) => boolean {
  const areApart = building.includes('braceTop') && building.includes('braceTopFine')
  if (!areApart || (stage !== 'braceTop' && stage !== 'braceTopFine')) return () => true
  return (kind) => kind !== undefined && MAIN_BRACES.has(kind) === (stage === 'braceTop')
}

import type { NumberKey, Numbers } from '../core/numbers.ts'
import type { RimPlan } from '../core/plan.ts'
import type { StageKey } from '../record/patterns/stages.ts'

/** Said by the list of the blanks, row by row. */
const SAID_BY_BLANKS: ReadonlySet<NumberKey> = new Set(['sides.blankLengthMm', 'sides.blankWidthMm'])
/** Says something of its own only beside a cutaway; else it is half the block's width. */
const BESIDE_CUTAWAY: NumberKey = 'blocks.neck.trebleReachMm'

/** Square frets are sawn by one place each, fanned ones by a place on either edge. */
const ALONG_MIDDLE: ReadonlySet<NumberKey> = new Set(['frets[].fromNutMm'])
const ALONG_EDGES: ReadonlySet<NumberKey> = new Set(['frets[].bassEdgeMm', 'frets[].trebleEdgeMm', 'frets[].slantRad'])

/** Whether a stage goes without its stations: the profile is not sawn on the flat blank but brought to on the bent rim. */
export const sawsNoProfile = (stage: StageKey, method: RimPlan['method']): boolean =>
  stage === 'profileBlanks' && method === 'onTheRim'

/**
 * Of the numbers a stage prints those of this instrument, in their order: stations for the rim method chosen, nothing twice (work without a
 * pattern has no list of blanks to say it).
 */
export function stageNumbers(
  stage: StageKey,
  keys: readonly NumberKey[],
  method: RimPlan['method'],
  numbers: Numbers,
): readonly NumberKey[] {
  if (sawsNoProfile(stage, method)) return []
  const isFanned = numbers.scale.bassMm !== numbers.scale.trebleMm
  const hasCutaway = numbers.blocks.neck.flank.length > 0
  return keys.filter(
    (key) =>
      (stage === 'ownWork' || !SAID_BY_BLANKS.has(key)) &&
      (hasCutaway || key !== BESIDE_CUTAWAY) &&
      !(isFanned ? ALONG_MIDDLE : ALONG_EDGES).has(key),
  )
}

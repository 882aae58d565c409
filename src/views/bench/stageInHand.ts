import type { CautionKey } from '../../record/patterns/cautions.ts'
import type { NumberKey, Numbers } from '../../core/numbers.ts'
import type { RimPlan } from '../../core/plan.ts'
import { figuresOfStage, getsBox } from '../../record/patterns/figuresOfStage.ts'
import { STAGES } from '../../record/patterns/stagePatterns.ts'
import type { Family, StageDrawing, StageKey } from '../../record/patterns/stages.ts'
import { isCoarse } from '../../record/patterns/workWithin.ts'
import type { OwnStage, StageEntry } from '../../record/stageSchema.ts'
import { gluedAt } from '../../papers/gluedAt.ts'
import { stageNumbers } from '../../papers/stageNumbers.ts'
import { isAboutPlate } from '../../papers/taperNote.ts'
import { STAGE_WORDS } from '../../words/stages.ts'

/** One stage as its maker works on it: the pattern's, where the maker has nothing of his own. */
export interface StageInHand {
  readonly id: string
  readonly key: StageKey
  /** What the maker has said otherwise than the pattern. */
  readonly own: OwnStage
  readonly title: string
  readonly lines: readonly string[]
  readonly cautions: readonly CautionKey[]
  readonly numbers: readonly NumberKey[]
  readonly drawings: readonly StageDrawing[]
  /** Whether the stage waits for a reading of a number. */
  readonly isRead: (key: NumberKey) => boolean
  /** Whether it is about a brace. */
  readonly isAbout: (brace: Pick<Numbers['braces'][number], 'plate' | 'kind'>) => boolean
}

/** What a stage stands among. */
export interface StageSite {
  readonly family: Family
  /** The stages of the instrument. */
  readonly present: readonly StageKey[]
  readonly method: RimPlan['method']
  readonly numbers: Numbers
}

export function stageInHand(
  id: string,
  { key, own }: StageEntry,
  { family, present, method, numbers }: StageSite,
): StageInHand {
  const { cautions, drawings } = STAGES[key]
  const figures = figuresOfStage(key, present, own)
  const isGlued = gluedAt(present, key)
  const note = own?.note?.split('\n').filter((line) => line.trim() !== '')
  const { lookUp } = figures
  return {
    id,
    key,
    own: own ?? {},
    title: own?.title ?? STAGE_WORDS[key].title,
    lines: note ?? linesOf(key, present, family),
    cautions: own?.cautions ?? cautions,
    numbers: stageNumbers(key, figures.numbers, method, numbers),
    drawings,
    isRead: (number) => getsBox({ lookUp }, number),
    isAbout: (brace) => isAboutPlate(key, brace.plate) && isGlued(brace.kind),
  }
}

/** What there is to do; with the work of finer stages where those of this family are not in the building order. */
function linesOf(key: StageKey, present: readonly StageKey[], family: Family): readonly string[] {
  const { lines, whole = lines } = STAGE_WORDS[key]
  return isCoarse(key, present, family) ? whole : lines
}

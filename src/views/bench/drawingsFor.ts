import type { NumberKey } from '../../core/numbers.ts'
import type { StageDrawing } from '../../record/patterns/stages.ts'
import type { StageInHand } from './stageInHand.ts'

/** Where numbers stand that a stage asks for without showing them: its own drawing is of something else, or it has none. */
const ELSEWHERE: readonly { readonly keys: RegExp; readonly drawing: StageDrawing }[] = [
  { keys: /^(?:rim|trebleRim)\[\]\.(?:cutWidthMm|alongBlankMm)$/u, drawing: 'blankTreble' },
  { keys: /^(?:rim|trebleRim)\[\]\.(?:depthMm|firstDepthMm)$/u, drawing: 'plan' },
  { keys: /^(?:(?:places|treblePlaces)\[\]\.depthMm$|sides\.depth)/u, drawing: 'side' },
  { keys: /^(?:sideBraces|trebleBraces)\[\]/u, drawing: 'side' },
]

const drawn = new WeakMap<StageInHand, Map<StageDrawing | null, readonly StageDrawing[]>>()

/** The drawings beside a number of a stage: its own, and before them the one the number belongs to, where that is another. The same list for the same answer. */
export function drawingsFor(stage: StageInHand, key: NumberKey): readonly StageDrawing[] {
  const other = ELSEWHERE.find(({ keys }) => keys.test(key))?.drawing ?? null
  const known = drawn.get(stage) ?? new Map<StageDrawing | null, readonly StageDrawing[]>()
  drawn.set(stage, known)
  const names =
    known.get(other) ?? (other === null || stage.drawings.includes(other) ? stage.drawings : [other, ...stage.drawings])
  known.set(other, names)
  return names
}

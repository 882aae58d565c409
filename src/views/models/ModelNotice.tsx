import { useCallback } from 'react'
import { Notice } from '../../ui/Notice.tsx'
import { MODEL_ACTION_SENTENCES, MODELS_WORDS } from '../../words/models.ts'
import { problemSentence } from '../../words/problems.ts'
import { useModels, useWorkshop } from '../workshop.ts'

/** What was last done to a model, and the way back; or why it was not done. */
export function ModelNotice() {
  const { models } = useWorkshop()
  const action = useModels((state) => state.lastAction)
  const problem = useModels((state) => state.problem)
  const close = useCallback(() => models.dismiss(), [models])
  if (problem !== null)
    return <Notice notice={{ id: problem.code, sentence: problemSentence(problem), offer: null }} onClose={close} />
  if (action === null) return <Notice notice={null} onClose={close} />
  return (
    <Notice
      notice={{
        id: `${action.kind} ${action.id} ${action.label}`,
        sentence: MODEL_ACTION_SENTENCES[action.kind](action.label),
        offer: { word: MODELS_WORDS.undo, act: () => void models.undo() },
      }}
      onClose={close}
    />
  )
}

import { useCallback } from 'react'
import { Notice } from '../../ui/Notice.tsx'
import { ACTION_SENTENCES, BENCH_WORDS, demoStays } from '../../words/bench.ts'
import { problemSentence } from '../../words/problems.ts'
import { useList, useWorkshop } from '../workshop.ts'

/** What was last done to the list, and the way back; or why it was not done. */
export function ListNotice() {
  const { list } = useWorkshop()
  const action = useList((state) => state.lastAction)
  const problem = useList((state) => state.problem)
  const close = useCallback(() => list.dismiss(), [list])
  if (problem !== null)
    return <Notice notice={{ id: problem.code, sentence: problemSentence(problem), offer: null }} onClose={close} />
  if (action === null) return <Notice notice={null} onClose={close} />
  const staying = action.staying ?? 0
  return (
    <Notice
      notice={{
        id: `${action.kind} ${action.ids.join(' ')}`,
        sentence: staying > 0 ? demoStays(staying) : ACTION_SENTENCES[action.kind](action.label),
        offer: { word: BENCH_WORDS.undo, act: () => void list.undo() },
      }}
      onClose={close}
    />
  )
}

import './safe.css'
import type { SaveStatus } from '../state/keeper.ts'
import { TITLE_BLOCK_WORDS } from '../words/instrument.ts'
import { type AnyProblem, problemSentence } from '../words/problems.ts'

interface Props {
  readonly save: SaveStatus
  readonly problem: AnyProblem | null
  readonly retry: (() => void) | null
  readonly saveCopy: () => void
}

/** Saved or not, in words. "Saved" stands here only when the last edit is in the store. */
export function SafeCell({ save, problem, retry, saveCopy }: Props) {
  const words = TITLE_BLOCK_WORDS
  return (
    <span className="safe" data-save={save}>
      <output>{words[save]}</output>
      {save === 'unsaved' && (
        <span className="safe-trouble">
          {problem !== null && <span>{problemSentence(problem)}</span>}
          {retry !== null && (
            <button className="button" type="button" onClick={retry}>
              {words.retry}
            </button>
          )}
          <button className="button" type="button" onClick={saveCopy}>
            {words.saveCopy}
          </button>
        </span>
      )}
    </span>
  )
}

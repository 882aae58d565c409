import { useEffect, useState } from 'react'
import type { Family, StageKey } from '../../record/patterns/stages.ts'
import { isCoarse } from '../../record/patterns/workWithin.ts'
import { fetchStageLines } from '../../words/someStageLines.ts'
import type { StageLines as Lines } from '../../words/stages/stageWords.ts'

interface Props {
  readonly stage: StageKey
  /** What there is to do in the maker's words. */
  readonly note: string | undefined
  /** The stages of the instrument. */
  readonly present: readonly StageKey[]
  readonly family: Family
}

const NO_LINES: Lines = { lines: [] }

/** What there is to do at a stage; with the work of finer stages where those of this family are not in the building order. */
export function StageLines({ stage, note, present, family }: Props) {
  const [said, setSaid] = useState<(Lines & { readonly of: StageKey }) | null>(null)
  useEffect(() => {
    let isAsked = true
    const take = async (): Promise<void> => {
      const fetched = await fetchStageLines(stage)
      if (isAsked) setSaid({ ...fetched, of: stage })
    }
    void take()
    return () => {
      isAsked = false
    }
  }, [stage])
  if (note === undefined && said?.of !== stage) return null
  const { lines, whole = lines } = note === undefined ? (said ?? NO_LINES) : { lines: note.split('\n') }
  return (
    <ul className="overview-lines">
      {(isCoarse(stage, present, family) ? whole : lines).map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  )
}

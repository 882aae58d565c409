import { type Dispatch, useCallback, useRef, useState } from 'react'

const MOST = 40

/** What is typed on the pad. `now` is what stands there at once, whatever has been painted: a caliper types faster. */
export interface PadText {
  readonly text: string
  readonly now: () => string
  readonly set: Dispatch<string>
  readonly add: Dispatch<string>
  readonly rubOut: () => void
}

export function usePadText(): PadText {
  const [text, show] = useState('')
  const current = useRef('')
  const set = useCallback((next: string) => {
    current.current = next
    show(next)
  }, [])
  const add = useCallback(
    (signs: string) => {
      const next = `${current.current}${signs}`
      if (next.length <= MOST) set(next)
    },
    [set],
  )
  const rubOut = useCallback(() => set(current.current.slice(0, -1)), [set])
  const now = useCallback(() => current.current, [])
  return { text, now, set, add, rubOut }
}

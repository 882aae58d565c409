import { useEffect, useMemo, useState } from 'react'
import { lastPrints } from '../../record/printed.ts'
import { usePressOrder } from '../fullSize/usePressRun.ts'
import { usePress } from '../press.ts'
import { useCommission } from '../workshop.ts'

/** One paper that left: when, with which revision, and whether it shows what is so now. */
export interface PaperStanding {
  readonly paper: string
  readonly at: string
  readonly revision: string
  readonly holds: 'yes' | 'no' | 'gone'
}

export interface PaperStandings {
  /** True while what left is being compared with what would leave now. */
  readonly isChecking: boolean
  readonly standings: ReadonlyMap<string, PaperStanding>
}

/** What would leave now, and of which record. */
interface Compared {
  readonly doc: unknown
  readonly shop: unknown
  readonly marks: ReadonlyMap<string, string>
}

/** Every paper that left, compared with what it would show if it were made now. */
export function usePaperStandings(): PaperStandings {
  const press = usePress()
  const facts = useCommission((state) => state.facts)
  const order = usePressOrder()
  const left = useMemo(() => lastPrints(facts), [facts])
  const [now, setNow] = useState<Compared | null>(null)
  const doc = order?.doc ?? null
  const shop = order?.shop ?? null
  useEffect(() => {
    if (order === null || left.size === 0) return
    const run = press.marks(order, [...left.keys()])
    run.answer.then(
      (prints) =>
        prints !== null && setNow({ doc, shop, marks: new Map(prints.map(({ paper, print }) => [paper, print])) }),
      () => setNow(null),
    )
    return run.cancel
    // The order is made anew at every render; what it is made from is what counts.
    // oxlint-disable-next-line react-hooks/exhaustive-deps
  }, [press, left, doc, shop])
  const isChecking = left.size > 0 && (now?.doc !== doc || now.shop !== shop)
  return useMemo(() => {
    const standings = new Map<string, PaperStanding>()
    if (now !== null && !isChecking) {
      for (const { paper, print, at, revision } of left.values()) {
        const mark = now.marks.get(paper)
        standings.set(paper, {
          paper,
          at,
          revision,
          holds: mark === undefined ? 'gone' : mark === print ? 'yes' : 'no',
        })
      }
    }
    return { isChecking, standings }
  }, [now, isChecking, left])
}

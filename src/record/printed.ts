import type { CommissionRecord, Fact } from './commission.ts'
import { headOfFact } from './facts.ts'
import type { EditMeta } from './edit.ts'

export type Printed = Extract<Fact, { kind: 'printed' }>

/** One paper as it left: which, and a short mark of everything it showed. */
export interface PaperPrint {
  readonly paper: string
  readonly print: string
}

/** Papers that left as a file or went to the printer, with the revision they carry. */
export function recordPrint(
  row: CommissionRecord,
  revision: string,
  papers: readonly PaperPrint[],
  meta: EditMeta,
): Printed {
  return { kind: 'printed', ...headOfFact(row, meta), revision, papers: papers.map((paper) => ({ ...paper })) }
}

/** The last time each paper left, by the paper. `facts` in the order of the log. */
export function lastPrints(facts: readonly Fact[]): ReadonlyMap<string, PaperPrint & Pick<Printed, 'at' | 'revision'>> {
  const last = new Map<string, PaperPrint & Pick<Printed, 'at' | 'revision'>>()
  for (const fact of facts) {
    if (fact.kind !== 'printed') continue
    const { at, revision } = fact
    for (const { paper, print } of fact.papers) last.set(paper, { paper, print, at, revision })
  }
  return last
}

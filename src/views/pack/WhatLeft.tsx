import { formatMoment } from '../../format/formatMoment.ts'
import { PACK_WORDS } from '../../words/press.ts'
import type { PaperStanding, PaperStandings } from './usePaperStandings.ts'

const words = PACK_WORDS
/** What no longer holds comes first. */
const RANK: Readonly<Record<PaperStanding['holds'], number>> = { no: 0, gone: 1, yes: 2 }

/** Every paper that left, and whether it still shows what is so. */
export function WhatLeft({
  standings: { isChecking, standings },
  nameOf,
}: {
  readonly standings: PaperStandings
  readonly nameOf: (paper: string) => string
}) {
  const rows = [...standings.values()].toSorted((a, b) => RANK[a.holds] - RANK[b.holds])
  const stale = rows.filter(({ holds }) => holds === 'no').length
  return (
    <section className="what-left" aria-labelledby="what-left">
      <h2 id="what-left">{words.left}</h2>
      <output>{isChecking ? words.checking : rows.length === 0 ? words.leftNone : words.staleCount(stale)}</output>
      {rows.length > 0 && (
        <table className="table">
          <thead>
            <tr>
              {(['paper', 'at', 'revision', 'holds'] as const).map((column) => (
                <th key={column} scope="col">
                  {words.columns[column]}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ paper, at, revision, holds }) => (
              <tr key={paper} data-holds={holds}>
                <th scope="row">{nameOf(paper)}</th>
                <td>{formatMoment(at)}</td>
                <td>{revision}</td>
                <td>{words.holds[holds]}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  )
}

import { formatMoment } from '../../format/formatMoment.ts'
import { parsePaperId } from '../../papers/paperId.ts'
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
  const all = [...standings.values()].toSorted((a, b) => RANK[a.holds] - RANK[b.holds])
  const stale = all.filter(({ holds }) => holds === 'no').length
  const rows = [...all.filter((one) => !isStageThatHolds(one)).map(rowOf(nameOf)), ...stagesThatHold(all)]
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
            {rows.map(({ key, name, at, revision, holds }) => (
              <tr key={key} data-holds={holds}>
                <th scope="row">{name}</th>
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

interface Row extends Pick<PaperStanding, 'at' | 'revision' | 'holds'> {
  readonly key: string
  readonly name: string
}

const rowOf =
  (nameOf: (paper: string) => string) =>
  ({ paper, at, revision, holds }: PaperStanding): Row => ({ key: paper, name: nameOf(paper), at, revision, holds })

const isStageThatHolds = ({ paper, holds }: PaperStanding): boolean =>
  holds === 'yes' && parsePaperId(paper)?.kind === 'stage'

/** Stage sheets that still hold, one row for each revision they carry: there are dozens, and nothing is to be done about them. */
function stagesThatHold(all: readonly PaperStanding[]): Row[] {
  const holding = all.filter(isStageThatHolds)
  return [...new Set(holding.map(({ revision }) => revision))].map((revision) => {
    const same = holding.filter((one) => one.revision === revision)
    const at = same.reduce((last, one) => (one.at > last ? one.at : last), '')
    return { key: `stages ${revision}`, name: words.stages(same.length), at, revision, holds: 'yes' }
  })
}

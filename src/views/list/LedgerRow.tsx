import { useId } from 'react'
import { Link } from 'wouter'
import { saveFile } from '../../device/saveFile.ts'
import { COMMISSION_MIME, commissionFileName } from '../../files/commissionFile.ts'
import { daysUntil } from '../../format/daysUntil.ts'
import { formatDate } from '../../format/formatDate.ts'
import type { Head } from '../../record/commission.ts'
import { BENCH_WORDS, daysLeft } from '../../words/bench.ts'
import { useWorkshop } from '../workshop.ts'
import { StageThread } from './StageThread.tsx'

/** One instrument in the ledger. */
export function LedgerRow({ head, today }: { readonly head: Head; readonly today: string }) {
  const days = head.promisedOn === null ? null : daysUntil(head.promisedOn, today)
  return (
    <li className="ledger-row" data-archived={head.archivedOn !== null}>
      <Link className="ledger-link" href={`/i/${head.id}`}>
        <span className="ledger-number">{head.number}</span>
        <span className="ledger-what">
          <span className="ledger-client">{head.client === '' ? BENCH_WORDS.forStock : head.client}</span>
          <span className="second">
            {head.title}
            {head.demo && ` (${BENCH_WORDS.demo})`}
          </span>
        </span>
      </Link>
      <StageThread head={head} />
      <p className="ledger-promised">
        {head.promisedOn === null ? (
          <span className="second">{BENCH_WORDS.notPromised}</span>
        ) : (
          <>
            <span>{formatDate(head.promisedOn)}</span>
            {days !== null && <span className={days < 0 ? 'ledger-late' : 'second'}>{daysLeft(days)}</span>}
          </>
        )}
      </p>
      <RowMenu head={head} />
    </li>
  )
}

function RowMenu({ head }: { readonly head: Head }) {
  const { list, fileOf } = useWorkshop()
  const panelId = useId()
  const label = `${head.number} ${head.title}`.trim()
  const save = async (): Promise<void> => {
    const text = await fileOf(head.id)
    if (text !== null) saveFile(commissionFileName(head), text, COMMISSION_MIME)
  }
  const isAway = head.archivedOn !== null
  const acts = [
    { word: BENCH_WORDS.duplicate, act: () => list.duplicate(head.id) },
    { word: BENCH_WORDS.duplicateBuilt, act: () => list.duplicate(head.id, { plan: 'asBuilt' }) },
    { word: BENCH_WORDS.saveFile, act: save },
    isAway
      ? { word: BENCH_WORDS.unarchive, act: () => list.unarchive(head.id) }
      : { word: BENCH_WORDS.archive, act: () => list.archive(head.id) },
    { word: BENCH_WORDS.remove, act: () => list.remove(head.id) },
  ]
  return (
    <div className="ledger-menu">
      <button
        className="button button-plain"
        type="button"
        popoverTarget={panelId}
        aria-label={BENCH_WORDS.more(label)}
      >
        {BENCH_WORDS.moreShort}
      </button>
      <div className="ledger-panel" id={panelId} popover="auto">
        <h2>{label}</h2>
        {acts.map(({ word, act }) => (
          <button
            className="button"
            type="button"
            key={word}
            popoverTarget={panelId}
            popoverTargetAction="hide"
            onClick={() => void act()}
          >
            {word}
          </button>
        ))}
      </div>
    </div>
  )
}

import { lazy, Suspense, useEffect, useId, useState } from 'react'
import { pickFile } from '../device/pickFile.ts'
import { todayHere } from '../device/today.ts'
import { fetchDemoCommissions } from '../files/packedFiles.ts'
import type { Head } from '../record/commission.ts'
import { searchHeads } from '../state/searchHeads.ts'
import { BENCH_WORDS } from '../words/bench.ts'
import { problemSentence } from '../words/problems.ts'
import { EmptyBench } from './list/EmptyBench.tsx'
import { LedgerRow } from './list/LedgerRow.tsx'
import { ListNotice } from './list/ListNotice.tsx'
import { NewInstrument } from './list/NewInstrument.tsx'
import { useImport, useList, useWorkshop } from './workshop.ts'
import './list/list.css'

/** Only once a file was opened: it brings the words for every field. */
const ImportDialog = lazy(async () => ({ default: (await import('./ImportDialog.tsx')).ImportDialog }))

/** What is on the bench: every instrument in hand, where it stands, what comes next, and when it is promised. */
export function ListView() {
  const { importer } = useWorkshop()
  const heads = useList((state) => state.heads)
  const unreadable = useList((state) => state.unreadable)
  const isOpening = useImport((state) => state.kind !== 'idle')
  const [query, setQuery] = useState('')
  const [showsArchived, setShowsArchived] = useState(false)
  const [isBeginning, setBeginning] = useState(false)
  const [isDemoOffered, setDemoOffered] = useDemoOffer()
  const searchId = useId()
  const here = heads.filter((head) => head.deletedAt === null)
  const away = here.filter((head) => head.archivedOn !== null)
  const found = searchHeads(showsArchived ? here : here.filter((head) => head.archivedOn === null), query)
  const openFile = async (): Promise<void> => {
    const file = await pickFile('.json,application/json')
    if (file !== null) await importer.openFile(file)
  }
  const begin = (isNext: boolean) => (
    <div className="commands">
      <button className={isNext ? 'button button-next' : 'button'} type="button" onClick={() => setBeginning(true)}>
        {BENCH_WORDS.new}
      </button>
      <button className="button" type="button" onClick={() => void openFile()}>
        {BENCH_WORDS.open}
      </button>
    </div>
  )
  return (
    <>
      <header className="ledger-head">
        <h1>{BENCH_WORDS.title}</h1>
        {here.length > 0 && (
          <div className="ledger-tools">
            <div className="ledger-search">
              <label className="field-label" htmlFor={searchId}>
                {BENCH_WORDS.search}
              </label>
              <input
                className="field-input"
                id={searchId}
                type="search"
                value={query}
                onChange={(event) => setQuery(event.target.value)}
              />
            </div>
            {begin(true)}
          </div>
        )}
      </header>
      {here.length === 0 && (
        <EmptyBench>
          {isDemoOffered && <DemoOffer onAnswered={() => setDemoOffered(false)} />}
          {begin(!isDemoOffered)}
        </EmptyBench>
      )}
      {here.length > 0 && (
        <>
          <div className="ledger-columns" aria-hidden="true">
            <span>{BENCH_WORDS.columns.what}</span>
            <span>{BENCH_WORDS.columns.stands}</span>
            <span>{BENCH_WORDS.columns.promised}</span>
          </div>
          <ul>
            {inLedgerOrder(found).map((head) => (
              <LedgerRow key={head.id} head={head} today={todayHere()} />
            ))}
          </ul>
          {found.length === 0 && <p className="ledger-foot">{BENCH_WORDS.nothingFound}</p>}
        </>
      )}
      {unreadable.map(({ id, problem }) => (
        <p key={id} className="ledger-foot">
          {id}: {BENCH_WORDS.unreadable}. {problemSentence(problem)}
        </p>
      ))}
      <div className="commands ledger-foot">
        {away.length > 0 && (
          <button
            className="button button-plain"
            type="button"
            aria-pressed={showsArchived}
            onClick={() => setShowsArchived(!showsArchived)}
          >
            {showsArchived ? BENCH_WORDS.hideArchived : BENCH_WORDS.showArchived(away.length)}
          </button>
        )}
        <RemoveDemo />
      </div>
      {isBeginning && <NewInstrument onClose={() => setBeginning(false)} />}
      {isOpening && (
        <Suspense fallback={null}>
          <ImportDialog />
        </Suspense>
      )}
      <ListNotice />
    </>
  )
}

/** Promised days first, the earliest on top; then by number. */
function inLedgerOrder(heads: readonly Head[]): readonly Head[] {
  const day = (head: Head): string => head.promisedOn ?? '9999'
  return heads.toSorted((a, b) =>
    day(a) === day(b) ? a.number.localeCompare(b.number, 'en', { numeric: true }) : day(a) < day(b) ? -1 : 1,
  )
}

/** Whether the demo is still to be offered on this device. */
function useDemoOffer(): readonly [boolean, (isOffered: boolean) => void] {
  const { demo } = useWorkshop()
  const [isOffered, setOffered] = useState(false)
  useEffect(() => {
    let isHere = true
    const ask = async (): Promise<void> => {
      const isUnanswered = await demo.isUnanswered()
      if (isHere) setOffered(isUnanswered)
    }
    void ask()
    return () => {
      isHere = false
    }
  }, [demo])
  return [isOffered, setOffered]
}

function DemoOffer({ onAnswered }: { readonly onAnswered: () => void }) {
  const { demo } = useWorkshop()
  const [trouble, setTrouble] = useState<string | null>(null)
  const take = async (): Promise<void> => {
    const done = await demo.install(await fetchDemoCommissions())
    if (done.ok) onAnswered()
    else setTrouble(problemSentence(done.problem))
  }
  const decline = async (): Promise<void> => {
    await demo.decline()
    onAnswered()
  }
  return (
    <div className="offer">
      <p>{BENCH_WORDS.demoOffer}</p>
      <div className="commands">
        <button className="button button-next" type="button" onClick={() => void take()}>
          {BENCH_WORDS.takeDemo}
        </button>
        <button className="button" type="button" onClick={() => void decline()}>
          {BENCH_WORDS.declineDemo}
        </button>
      </div>
      {trouble !== null && <p role="alert">{trouble}</p>}
    </div>
  )
}

function RemoveDemo() {
  const { list } = useWorkshop()
  const hasDemo = useList((state) => state.heads.some((head) => head.demo && head.deletedAt === null))
  if (!hasDemo) return null
  return (
    <button className="button button-plain" type="button" onClick={() => void list.removeDemo()}>
      {BENCH_WORDS.removeDemo}
    </button>
  )
}

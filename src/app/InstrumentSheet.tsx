import {
  lazy,
  memo,
  type ReactNode,
  Suspense,
  useCallback,
  useDeferredValue,
  useEffect,
  useMemo,
  useState,
} from 'react'
import { Link } from 'wouter'
import { countCannot } from '../core/findings.ts'
import { revisionCode } from '../record/revisionCode.ts'
import { type SheetFacts, SheetFactsContext } from '../ui/sheetFacts.ts'
import { TitleBlock } from '../ui/TitleBlock.tsx'
import { FitNotice } from '../views/fit/FitNotice.tsx'
import { useCommission, useShop, useWorkshop } from '../views/workshop.ts'
import { BENCH_WORDS } from '../words/bench.ts'
import { OVERVIEW_WORDS, TITLE_BLOCK_WORDS } from '../words/instrument.ts'
import { warmEngine } from './engine.ts'
import { saveEverything } from './faults.ts'
import { RevisionPanel } from './RevisionPanel.tsx'
import { addressOf, INSTRUMENT_ROUTES, type RouteGroup, ROUTES, type RouteRow, rowsOfGroup } from './routes.ts'
import { SafeCell } from './SafeCell.tsx'
import { SheetFrame } from './SheetFrame.tsx'
import { UndoButtons } from './UndoButtons.tsx'
import { UnitPanel, useUnitName } from './UnitPanel.tsx'
import { useUndoKeys } from './useUndoKeys.ts'

const RefusedReason = lazy(async () => ({ default: (await import('./RefusedReason.tsx')).RefusedReason }))

/** The bench is no sheet to turn to: the overview and the stages lead to it. */
const REGISTERED = INSTRUMENT_ROUTES.filter(({ view }) => view !== 'bench')
const UNIT_PANEL = 'instrument-units'
const REVISION_PANEL = 'instrument-revision'

interface Props {
  readonly row: RouteRow
  readonly id: string
  readonly children: ReactNode
}

/** A sheet about one instrument: opens its record, shows the view once it is there, and keeps the title block alive at its foot. */
export function InstrumentSheet({ row, id, children }: Props) {
  const { commission } = useWorkshop()
  const openId = useCommission((state) => state.id)
  const status = useCommission((state) => state.status)
  const problem = useCommission((state) => state.problem)
  const isElsewhere = useCommission((state) => state.readOnly !== null)
  const number = useCommission((state) => state.record?.doc.number ?? null)
  const [facts, setFacts] = useState<SheetFacts>({})
  const tell = useCallback((next: SheetFacts) => setFacts(next), [])
  const isOpen = status === 'open' && openId === id
  // The bench has a frame of its own: nothing on it that is not worked with.
  const isBench = row.view === 'bench'
  // The view may still have to be fetched: until it stands, the sheet says that it is opening.
  const hasView = useDeferredValue(isOpen) && isOpen
  useUndoKeys(isOpen)

  useEffect(() => {
    void commission.open(id)
    return () => void commission.close()
  }, [commission, id])

  useEffect(() => {
    const { record } = commission.store.getState()
    return isOpen && record !== null ? warmEngine(record.doc.plan) : undefined
  }, [commission, isOpen])

  const windowTitle = number === null || !isOpen ? row.title : `${number} ${row.title}`
  return (
    <SheetFactsContext value={tell}>
      <SheetFrame
        windowTitle={`${windowTitle} · Ribwright`}
        place={`${id} ${row.path}`}
        isBare={isBench}
        banner={
          isOpen && (
            <>
              {isElsewhere && <output className="banner">{OVERVIEW_WORDS.readOnly}</output>}
              <MisfitBanner id={id} />
              {isBench && <UnsavedBanner />}
              {row.view !== 'fit' && !isBench && <FitNotice id={id} />}
            </>
          )
        }
        foot={
          isBench ? null : isOpen && number !== null ? <InstrumentFoot row={row} id={id} facts={facts} /> : <ListLink />
        }
      >
        {hasView && children}
        {(status === 'opening' || (isOpen && !hasView)) && <p className="second">{OVERVIEW_WORDS.opening}</p>}
        {status === 'refused' && problem !== null && (
          <div className="fault" role="alert">
            <h1>
              <Suspense fallback={null}>
                <RefusedReason problem={problem} />
              </Suspense>
            </h1>
            <button className="button" type="button" onClick={() => void saveEverything()}>
              {TITLE_BLOCK_WORDS.saveCopy}
            </button>
          </div>
        )}
      </SheetFrame>
    </SheetFactsContext>
  )
}

/** What cannot be built is said on every sheet, not only where its fields stand. */
function MisfitBanner({ id }: { readonly id: string }) {
  const count = useCommission((state) => countCannot(state.computed?.findings ?? []))
  if (count === 0) return null
  return (
    <output className="banner">
      {OVERVIEW_WORDS.cannot(count)} <Link href={`/i/${id}`}>{OVERVIEW_WORDS.seeMisfits}</Link>
    </output>
  )
}

/** A sheet without a title block still says what could not be written, and what can be done about it. */
function UnsavedBanner() {
  const { commission } = useWorkshop()
  const save = useCommission((state) => state.save)
  const problem = useCommission((state) => state.saveProblem)
  if (save !== 'unsaved') return null
  return (
    <div className="banner">
      <SafeCell
        save={save}
        problem={problem}
        retry={() => void commission.flush()}
        saveCopy={() => void saveEverything()}
      />
    </div>
  )
}

function ListLink() {
  return (
    <nav className="register" aria-label="Sheets of the shop">
      <Link href={ROUTES[0].path}>
        <span>{ROUTES[0].name}</span>
      </Link>
    </nav>
  )
}

function InstrumentFoot({ row, id, facts }: Omit<Props, 'children'> & { readonly facts: SheetFacts }) {
  const { commission } = useWorkshop()
  const latest = useCommission((state) => state.record?.doc ?? null)
  // The code takes the whole document in, and nobody reads it between two strokes: the title block follows what is drawn.
  const doc = useDeferredValue(latest)
  const save = useCommission((state) => state.save)
  const saveProblem = useCommission((state) => state.saveProblem)
  const isElsewhere = useCommission((state) => state.readOnly !== null)
  const shopName = useShop((state) => state.shop.name)
  const unit = useUnitName()
  const words = TITLE_BLOCK_WORDS
  const code = useMemo(() => (doc === null ? '' : revisionCode(doc)), [doc])
  if (doc === null) return null
  const seenFrom = (facts.seenFrom ?? row.seenFrom).replace(/^Seen from /u, '')
  const isDrawn = seenFrom !== ''
  const wide = isDrawn ? {} : ({ span: 2 } as const)
  return (
    <>
      <Registers row={row} id={id} number={doc.number} />
      <TitleBlock
        label={words.label}
        cells={[
          { name: 'number', caption: words.number, value: <strong>{doc.number}</strong> },
          {
            name: 'instrument',
            caption: doc.brief.client === '' ? BENCH_WORDS.forStock : doc.brief.client,
            value: doc.title === '' ? shopName : doc.title,
            span: 3,
          },
          { name: 'sheet', caption: words.sheet, value: row.name },
          // A sheet without a drawing is seen from nowhere and has no scale.
          ...(isDrawn ? [{ name: 'seenFrom', caption: words.seenFrom, value: seenFrom }] : []),
          {
            name: 'unit',
            caption: words.unit,
            value: unit,
            opens: { label: words.changeUnit(unit), panelId: UNIT_PANEL },
            ...wide,
          },
          ...(isDrawn ? [{ name: 'scale', caption: words.scale, value: facts.scale ?? words.toFit }] : []),
          {
            name: 'revision',
            caption: words.revision,
            value: code,
            opens: { label: words.openRevision(code), panelId: REVISION_PANEL },
            ...wide,
          },
          {
            name: 'safe',
            caption: words.safe,
            value: isElsewhere ? (
              words.elsewhere
            ) : (
              <SafeCell
                save={save}
                problem={saveProblem}
                retry={() => void commission.flush()}
                saveCopy={() => void saveEverything()}
              />
            ),
          },
        ]}
      />
      <UnitPanel id={UNIT_PANEL} />
      <RevisionPanel id={REVISION_PANEL} />
    </>
  )
}

/** Where else one can go. It stays as it is while the instrument is worked on. */
const Registers = memo(function Registers({ row, id, number }: LinkProps & { readonly number: string }) {
  const words = TITLE_BLOCK_WORDS
  return (
    <div className="registers">
      <nav className="register" aria-label={`Sheets of ${number}`}>
        <ListLinkInRow />
        {REGISTERED.map((one) =>
          one.group === undefined ? (
            <RegisterLink key={one.path} one={one} row={row} id={id} />
          ) : (
            rowsOfGroup(one.group)[0] === one && <GroupLink key={one.path} group={one.group} row={row} id={id} />
          ),
        )}
      </nav>
      <div className="register-second">
        {row.group !== undefined && (
          <nav className="register" aria-label={words.groupOf(words.groups[row.group], number)}>
            {rowsOfGroup(row.group).map((one) => (
              <RegisterLink key={one.path} one={one} row={row} id={id} />
            ))}
          </nav>
        )}
        <UndoButtons hasFields={row.sheet !== undefined} />
      </div>
    </div>
  )
})

interface LinkProps {
  readonly row: RouteRow
  readonly id: string
}

function RegisterLink({ one, row, id }: LinkProps & { readonly one: RouteRow }) {
  return (
    <Link href={addressOf(one, id)} aria-current={one.path === row.path ? 'page' : undefined}>
      <span>{one.name}</span>
    </Link>
  )
}

/** Stands for the sheets of a part: leads to the first, and is marked while any of them is open. */
function GroupLink({ group, row, id }: LinkProps & { readonly group: RouteGroup }) {
  const first = rowsOfGroup(group)[0]
  if (first === undefined) return null
  return (
    <Link href={addressOf(first, id)} aria-current={row.group === group ? 'true' : undefined}>
      <span>{TITLE_BLOCK_WORDS.groups[group]}</span>
    </Link>
  )
}

function ListLinkInRow() {
  return (
    <Link href={ROUTES[0].path} className="register-home">
      <span>{ROUTES[0].name}</span>
    </Link>
  )
}

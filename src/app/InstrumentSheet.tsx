import { type ReactNode, useCallback, useEffect, useState } from 'react'
import { Link } from 'wouter'
import { countCannot } from '../core/findings.ts'
import { revisionCode } from '../record/revision.ts'
import { type SheetFacts, SheetFactsContext } from '../ui/sheetFacts.ts'
import { TitleBlock } from '../ui/TitleBlock.tsx'
import { useCommission, useShop, useWorkshop } from '../views/workshop.ts'
import { BENCH_WORDS } from '../words/bench.ts'
import { OVERVIEW_WORDS, TITLE_BLOCK_WORDS } from '../words/instrument.ts'
import { placeName } from '../words/places.ts'
import { problemSentence } from '../words/problems.ts'
import { saveEverything } from './faults.ts'
import { RevisionPanel } from './RevisionPanel.tsx'
import { addressOf, INSTRUMENT_ROUTES, ROUTES, type RouteRow } from './routes.ts'
import { SafeCell } from './SafeCell.tsx'
import { SheetFrame } from './SheetFrame.tsx'
import { UnitPanel, useUnitName } from './UnitPanel.tsx'
import { useUndoKeys } from './useUndoKeys.ts'

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
  const doc = useCommission((state) => state.record?.doc ?? null)
  const [facts, setFacts] = useState<SheetFacts>({})
  const tell = useCallback((next: SheetFacts) => setFacts(next), [])
  const isOpen = status === 'open' && openId === id
  useUndoKeys(isOpen)

  useEffect(() => {
    void commission.open(id)
    return () => void commission.close()
  }, [commission, id])

  const windowTitle = doc === null || !isOpen ? row.title : `${doc.number} ${row.title}`
  return (
    <SheetFactsContext value={tell}>
      <SheetFrame
        windowTitle={`${windowTitle} · Ribwright`}
        place={`${id} ${row.path}`}
        banner={
          isOpen && (
            <>
              {isElsewhere && <output className="banner">{OVERVIEW_WORDS.readOnly}</output>}
              <MisfitBanner id={id} />
            </>
          )
        }
        foot={isOpen && doc !== null ? <InstrumentFoot row={row} id={id} facts={facts} /> : <ListLink />}
      >
        {isOpen && children}
        {status === 'opening' && <p className="second">{OVERVIEW_WORDS.opening}</p>}
        {status === 'refused' && problem !== null && (
          <div className="fault" role="alert">
            <h1>{problemSentence(problem, { placeName })}</h1>
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
  const record = useCommission((state) => state.record)
  const save = useCommission((state) => state.save)
  const saveProblem = useCommission((state) => state.saveProblem)
  const isElsewhere = useCommission((state) => state.readOnly !== null)
  const shopName = useShop((state) => state.shop.name)
  const unit = useUnitName()
  const words = TITLE_BLOCK_WORDS
  if (record === null) return null
  const { doc } = record
  const code = revisionCode(doc)
  const seenFrom = (facts.seenFrom ?? row.seenFrom).replace(/^Seen from /u, '')
  return (
    <>
      <nav className="register" aria-label={`Sheets of ${doc.number}`}>
        <ListLinkInRow />
        {INSTRUMENT_ROUTES.map((one) => (
          <Link key={one.path} href={addressOf(one, id)} aria-current={one.path === row.path ? 'page' : undefined}>
            <span>{one.name}</span>
          </Link>
        ))}
      </nav>
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
          { name: 'seenFrom', caption: words.seenFrom, value: seenFrom === '' ? '–' : seenFrom },
          {
            name: 'unit',
            caption: words.unit,
            value: unit,
            opens: { label: words.changeUnit(unit), panelId: UNIT_PANEL },
          },
          { name: 'scale', caption: words.scale, value: facts.scale ?? (seenFrom === '' ? '–' : words.toFit) },
          {
            name: 'revision',
            caption: words.revision,
            value: code,
            opens: { label: words.openRevision(code), panelId: REVISION_PANEL },
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

function ListLinkInRow() {
  return (
    <Link href={ROUTES[0].path} className="register-home">
      <span>{ROUTES[0].name}</span>
    </Link>
  )
}

import { type ComponentType, lazy, type ReactNode, Suspense, useDeferredValue } from 'react'
import { Link, matchRoute, Router, useLocation, useRouter } from 'wouter'
import { useHashLocation } from 'wouter/use-hash-location'
import { OVERVIEW_WORDS } from '../words/instrument.ts'
import { loadEngine, prepareReadings } from './engine.ts'
import { saveEverything } from './faults.ts'
import { findRoute, type RouteRow } from './routes.ts'
import { ShopSheet } from './ShopSheet.tsx'

const ListView = lazy(async () => ({ default: (await import('../views/ListView.tsx')).ListView }))
const ModelsView = lazy(async () => {
  const [{ ModelsView: View }] = await Promise.all([import('../views/models/ModelsView.tsx'), loadEngine()])
  return { default: View }
})
const ShopView = lazy(async () => ({ default: (await import('../views/ShopView.tsx')).ShopView }))
const OverviewView = lazy(async () => ({ default: (await import('../views/OverviewView.tsx')).OverviewView }))
const BenchView = lazy(async () => ({ default: (await import('../views/bench/BenchView.tsx')).BenchView }))
const BriefView = lazy(async () => ({ default: (await import('../views/BriefView.tsx')).BriefView }))
const ModelView = lazy(async () => ({ default: (await import('../views/model/ModelView.tsx')).ModelView }))
const StagesView = lazy(async () => ({ default: (await import('../views/StagesView.tsx')).StagesView }))
const FitView = lazy(async () => {
  // Work that is kept becomes readings, also where there were none.
  const [{ FitView: View }] = await Promise.all([import('../views/fit/FitView.tsx'), prepareReadings()])
  return { default: View }
})
const ReadingsView = lazy(async () => ({ default: (await import('../views/readings/ReadingsView.tsx')).ReadingsView }))
const TypeInView = lazy(async () => {
  const [{ TypeInView: View }] = await Promise.all([import('../views/typeIn/TypeInView.tsx'), prepareReadings()])
  return { default: View }
})
const PaperView = inPressRoom(async () => (await import('../views/PaperView.tsx')).PaperView)
const FullSizeView = inPressRoom(async () => (await import('../views/fullSize/FullSizeView.tsx')).FullSizeView)
const PackView = inPressRoom(async () => (await import('../views/pack/PackView.tsx')).PackView)
const QuestionView = lazy(async () => ({ default: (await import('../views/sheets/SheetView.tsx')).SheetView }))

const InstrumentSheet = lazy(async () => {
  const [{ InstrumentSheet: Sheet }] = await Promise.all([import('./InstrumentSheet.tsx'), loadEngine()])
  return { default: Sheet }
})

type InstrumentViewProps = { readonly id: string }
const OF_INSTRUMENT: Readonly<Partial<Record<RouteRow['view'], ComponentType<InstrumentViewProps>>>> = {
  overview: OverviewView,
  bench: BenchView,
  brief: BriefView,
  model: ModelView,
  stages: StagesView,
  fit: FitView,
  readings: ReadingsView,
  typeIn: TypeInView,
  paper: PaperView,
  fullSize: FullSizeView,
  pack: PackView,
}

/** A view from which papers leave, with the press that makes them. */
function inPressRoom(load: () => Promise<() => ReactNode>): ComponentType<InstrumentViewProps> {
  return lazy(async () => {
    const [{ PressRoom }, View] = await Promise.all([import('./PressRoom.tsx'), load()])
    return {
      default: () => (
        <PressRoom>
          <View />
        </PressRoom>
      ),
    }
  })
}

/** The places of the app, by what stands behind the hash: so that the folder works from anywhere and without a net. */
export function App() {
  return (
    // The router takes the hook it is to use as a value.
    // oxlint-disable-next-line react/hooks
    <Router hook={useHashLocation}>
      <Place />
    </Router>
  )
}

function Place() {
  const [now] = useLocation()
  // The sheet in hand stays until the next has been fetched: no empty page between two sheets.
  const location = useDeferredValue(now)
  const { parser } = useRouter()
  const found = findRoute((path) => {
    const [isMatch, params] = matchRoute(parser, path, location)
    return isMatch ? params : null
  })
  if (found === null) {
    return (
      <main className="fault">
        <h1>{OVERVIEW_WORDS.notFound}</h1>
        <Link className="button" href="/">
          {OVERVIEW_WORDS.toBench}
        </Link>
      </main>
    )
  }
  const { row, id } = found
  if (row.view === 'list' || row.view === 'models' || row.view === 'shop') {
    return (
      <ShopSheet row={row}>
        {row.view === 'list' && <ListView />}
        {row.view === 'models' && <ModelsView />}
        {row.view === 'shop' && <ShopView saveEverything={saveEverything} />}
      </ShopSheet>
    )
  }
  const View = OF_INSTRUMENT[row.view]
  return (
    <Suspense fallback={<p className="fault second">{OVERVIEW_WORDS.opening}</p>}>
      <InstrumentSheet row={row} id={id} key={id}>
        {row.sheet !== undefined ? <QuestionView id={id} sheet={row.sheet} /> : View !== undefined && <View id={id} />}
      </InstrumentSheet>
    </Suspense>
  )
}

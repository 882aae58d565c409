import { createRoot } from 'react-dom/client'
import { aboutNumber } from '../core/catalogue.ts'
import { afterFirstPaint } from '../device/afterFirstPaint.ts'
import { readBenchLight, setBenchLight } from '../device/benchLight.ts'
import { openWorkshop } from '../state/workshop.ts'
import '../ui/tokens.css'
import '../ui/base.css'
import './shell.css'
import { WorkshopProvider } from '../views/workshop.ts'
import { FAULT_WORDS } from '../words/instrument.ts'
import { App } from './App.tsx'
import { buildLoaded, prepareReadings } from './engine.ts'
import { FaultBoundary, FaultPage } from './Fault.tsx'
import { faults, listenForFaults, rescueFrom } from './faults.ts'

/** What answers for the pages without a net, beside the page in its folder. */
const OFFLINE_WORKER = './offlineWorker.js'

listenForFaults()
setBenchLight(readBenchLight())

async function start(place: HTMLElement): Promise<void> {
  const root = createRoot(place)
  try {
    const workshop = await openWorkshop({
      build: buildLoaded,
      prepareReadings,
      startingTolerance: (key) => aboutNumber(key).tolerance,
      loadBell: async () => (await import('./timerBell.ts')).timerBell,
      onNotice: (notice) => faults.setState({ kind: notice === 'newVersionElsewhere' ? 'newVersion' : 'blocked' }),
    })
    rescueFrom(workshop)
    root.render(
      <FaultBoundary>
        <WorkshopProvider value={workshop}>
          <App />
        </WorkshopProvider>
      </FaultBoundary>,
    )
    // Pages that are served while they are written are not laid by.
    if (import.meta.env.PROD)
      afterFirstPaint(() => {
        void workshop.offline.start(async (news) => {
          const { keepOffline } = await import('../device/offline/keepOffline.ts')
          return keepOffline(OFFLINE_WORKER, news)
        })
      })
  } catch {
    root.render(<FaultPage sentence={FAULT_WORDS.cannotOpen} />)
  }
}

const place = document.getElementById('app')
if (place !== null) void start(place)

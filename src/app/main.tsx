import { createRoot } from 'react-dom/client'
import { aboutNumber } from '../core/catalogue.ts'
import { readBenchLight, setBenchLight } from '../device/benchLight.ts'
import { openWorkshop } from '../state/workshop.ts'
import '../ui/tokens.css'
import '../ui/base.css'
import './shell.css'
import { WorkshopProvider } from '../views/workshop.ts'
import { FAULT_WORDS } from '../words/instrument.ts'
import { App } from './App.tsx'
import { buildLoaded, roundLoaded } from './engine.ts'
import { FaultBoundary, FaultPage } from './Fault.tsx'
import { faults, listenForFaults, rescueFrom } from './faults.ts'

listenForFaults()
setBenchLight(readBenchLight())

async function start(place: HTMLElement): Promise<void> {
  const root = createRoot(place)
  try {
    const workshop = await openWorkshop({
      build: buildLoaded,
      roundOf: roundLoaded,
      startingTolerance: (key) => aboutNumber(key).tolerance,
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
  } catch {
    root.render(<FaultPage sentence={FAULT_WORDS.cannotOpen} />)
  }
}

const place = document.getElementById('app')
if (place !== null) void start(place)

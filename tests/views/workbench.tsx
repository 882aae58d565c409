import { render } from '@testing-library/react'
import type { ReactNode } from 'react'
import { Router } from 'wouter'
import { memoryLocation } from 'wouter/memory-location'
import { aboutNumber } from '../../src/core/catalogue.ts'
import { buildLoaded, loadAsBuilt, loadEngine, prepareReadings } from '../../src/app/engine.ts'
import { fetchDemoCommissions } from '../../src/files/packedFiles.ts'
import { openWorkshop } from '../../src/state/workshop.ts'
import { WorkshopProvider } from '../../src/views/workshop.ts'
import { databaseOn, freshDisk } from '../storage/fixture.ts'

/** A workshop on a store of its own, as a fresh device has it. */
export async function openBench(disk = freshDisk()) {
  await Promise.all([loadEngine(), loadAsBuilt()])
  const workshop = await openWorkshop({
    build: buildLoaded,
    prepareReadings,
    startingTolerance: (key) => aboutNumber(key).tolerance,
    onNotice: () => undefined,
    database: databaseOn(disk),
    locks: undefined,
    requestPersistence: async () => 'kept',
  })
  return workshop
}
export type Bench = Awaited<ReturnType<typeof openBench>>

/** The same with the demo laid out. */
export async function openDemoBench(disk = freshDisk()): Promise<Bench> {
  const workshop = await openBench(disk)
  const done = await workshop.demo.install(await fetchDemoCommissions())
  if (!done.ok) throw new Error(JSON.stringify(done.problem))
  return workshop
}

/** Shows a view in its workshop, at an address. */
export function showView(workshop: Bench, view: ReactNode, at = '/') {
  const location = memoryLocation({ path: at, record: true })
  const shown = render(
    <Router hook={location.hook}>
      <WorkshopProvider value={workshop}>{view}</WorkshopProvider>
    </Router>,
  )
  return { ...shown, history: location.history }
}

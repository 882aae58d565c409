import { askToTakeOver } from './takeOver.ts'

/**
 * Whether the program works without a net on this device: 'preparing' while its files are laid by, 'failed' where they could not all be had,
 * 'insecure' over plain http from another device, where a browser lays nothing by, 'unsupported' where it never does.
 */
export type Readiness = 'preparing' | 'ready' | 'failed' | 'insecure' | 'unsupported'

export interface OfflineNews {
  readonly onReadiness: (readiness: Readiness) => void
  /** A newer version is whole, and waits. */
  readonly onNewVersion: () => void
  /** Another version answers from now on: asked for from here, or from another tab. */
  readonly onTaken: () => void
}

export interface OfflineKeeping {
  /** Has the version that waits answer for every tab; `onTaken` is called in each. */
  readonly takeOver: () => void
}

const NOTHING_KEPT: OfflineKeeping = { takeOver: () => undefined }

/**
 * Lays the program by on this device, and looks for a newer version now and whenever the page is shown again. Never throws, never loads a page
 * anew. `worker`: the file that answers, from the folder of the page.
 */
export async function keepOffline(worker: string, news: OfflineNews): Promise<OfflineKeeping> {
  if (!window.isSecureContext) news.onReadiness('insecure')
  else if (!('serviceWorker' in navigator)) news.onReadiness('unsupported')
  else
    try {
      return await keep(worker, news)
    } catch {
      news.onReadiness('failed')
    }
  return NOTHING_KEPT
}

async function keep(worker: string, news: OfflineNews): Promise<OfflineKeeping> {
  const workers = navigator.serviceWorker
  // A first visit comes to be answered for while it is open: that is no other version.
  let isAnswered = workers.controller !== null
  workers.addEventListener('controllerchange', () => {
    if (isAnswered) news.onTaken()
    isAnswered = true
  })
  const registration = await workers.register(new URL(worker, document.baseURI), { updateViaCache: 'none' })
  const look = (): void => {
    const { active, waiting, installing } = registration
    if (active !== null) news.onReadiness('ready')
    else news.onReadiness(installing === null && waiting === null ? 'failed' : 'preparing')
    if (active !== null && waiting !== null) news.onNewVersion()
  }
  const follow = (): void => {
    registration.installing?.addEventListener('statechange', look)
    look()
  }
  registration.addEventListener('updatefound', follow)
  follow()
  document.addEventListener('visibilitychange', () => {
    // Without a net there is nothing newer to be had.
    if (document.visibilityState === 'visible') registration.update().catch(() => undefined)
  })
  return {
    takeOver() {
      isAnswered = true
      // Another tab may have been quicker.
      if (registration.waiting === null) news.onTaken()
      else askToTakeOver(registration.waiting)
    },
  }
}

import { askToTakeOver } from './takeOver.ts'

/** As long as a version that waits may take to answer for the pages, ms; then they are loaded anew as they are. */
const PATIENCE_MS = 3000

/** Loads the page anew, from the newest version that lies on this device: where this one fails, the next may be the one that does not. */
export async function reloadNewest(): Promise<void> {
  try {
    const workers = navigator.serviceWorker
    const waiting = (await workers.getRegistration())?.waiting
    if (waiting !== null && waiting !== undefined)
      await new Promise((done) => {
        workers.addEventListener('controllerchange', done, { once: true })
        setTimeout(done, PATIENCE_MS)
        askToTakeOver(waiting)
      })
  } catch {
    // A browser without such a thing has one version alone.
  }
  window.location.reload()
}

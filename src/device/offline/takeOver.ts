/** What a page says to a version that waits: from now on it answers for all pages. */
export const TAKE_OVER = 'takeOver'

export const askToTakeOver = (waiting: ServiceWorker): void => waiting.postMessage(TAKE_OVER, { transfer: [] })

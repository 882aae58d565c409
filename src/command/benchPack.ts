import type { Browser } from 'playwright-core'
import type { BenchFigure } from './bench.ts'

const ROUNDS = 3
const MOST_MS = 3000
const MOST_FRAME_MS = 100

/** The whole pack of the largest demo, all papers and all templates on A4, from the tap to the file, and the longest the screen stood meanwhile. */
export async function measurePack(browser: Browser, address: string): Promise<BenchFigure[]> {
  // What is copied for days without a net would be measured with it.
  const context = await browser.newContext({
    viewport: { width: 1280, height: 800 },
    acceptDownloads: true,
    serviceWorkers: 'block',
  })
  const page = await context.newPage()
  await page.goto(address)
  await page.getByRole('button', { name: 'Lay out the demo' }).click()
  await page.getByRole('link', { name: /^26-07/ }).click()
  const link = (name: string) => page.getByRole('navigation').getByRole('link', { name, exact: true })
  await link('Paper').click()
  await link('Pack').click()
  await page.getByRole('button', { name: 'All', exact: true }).click()
  await page.evaluate(() => {
    const frames = { longestMs: 0, last: performance.now() }
    ;(globalThis as unknown as { packFrames: typeof frames }).packFrames = frames
    const next = () => {
      const now = performance.now()
      frames.longestMs = Math.max(frames.longestMs, now - frames.last)
      frames.last = now
      requestAnimationFrame(next)
    }
    requestAnimationFrame(next)
  })
  const times: number[] = []
  for (let round = 0; round < ROUNDS; round++) {
    const started = performance.now()
    await Promise.all([
      page.waitForEvent('download', { timeout: 120_000 }),
      page.getByRole('button', { name: 'Make one PDF', exact: true }).click(),
    ])
    times.push(performance.now() - started)
    await page.waitForTimeout(3000)
  }
  const longestMs = await page.evaluate(
    () => (globalThis as unknown as { packFrames: { longestMs: number } }).packFrames.longestMs,
  )
  await context.close()
  return [
    {
      what: 'the whole pack as one PDF, median',
      value: times.toSorted((a, b) => a - b)[Math.floor(ROUNDS / 2)] ?? 0,
      unit: 'ms',
      most: MOST_MS,
    },
    { what: 'the longest a frame took meanwhile', value: longestMs, unit: 'ms', most: MOST_FRAME_MS },
  ]
}

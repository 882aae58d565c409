import type { Browser, CDPSession } from 'playwright-core'
import type { BenchFigure } from './bench.ts'

const THROTTLE = 4
const MOVES = 60
const WARM_UP = 12
const STEP_PX = 1.5
const MOST_SCRIPT_MS = 8
const MOST_SETTLE_MS = 200

/** Seconds of script the page has run so far, as the browser's own counters say. */
async function scriptMs(session: CDPSession): Promise<number> {
  const { metrics } = await session.send('Performance.getMetrics')
  return 1000 * (metrics.find(({ name }) => name === 'ScriptDuration')?.value ?? 0)
}

/** What dragging the end of a brace costs on a machine a quarter as fast: script for each move, and until all stands once it is let go. */
export async function measureDrag(browser: Browser, address: string): Promise<BenchFigure[]> {
  // What is copied for days without a net would be measured with it.
  const page = await browser.newPage({ viewport: { width: 1180, height: 820 }, serviceWorkers: 'block' })
  await page.goto(address)
  await page.getByRole('button', { name: 'Lay out the demo' }).click()
  await page.getByRole('link', { name: /^26-07/ }).click()
  const link = (name: string) => page.getByRole('navigation').getByRole('link', { name, exact: true })
  await link('Box').click()
  await link('Bracing').click()
  await page.locator('.brace-list button').nth(1).click()
  const handle = page.locator('[data-hand="handle"]').first()
  await handle.waitFor()
  const box = await handle.boundingBox()
  const session = await page.context().newCDPSession(page)
  await session.send('Performance.enable')
  if (box === null) return []
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  await session.send('Emulation.setCPUThrottlingRate', { rate: THROTTLE })
  const times: number[] = []
  for (let i = 1; i <= WARM_UP + MOVES; i++) {
    const before = await scriptMs(session)
    const out = i <= (WARM_UP + MOVES) / 2 ? i : WARM_UP + MOVES - i
    await page.mouse.move(x - STEP_PX * out, y + (out % 2))
    await page.evaluate(() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done))))
    if (i > WARM_UP) times.push((await scriptMs(session)) - before)
  }
  await page.mouse.move(x - 30, y)
  await page.evaluate(() => {
    const clock = { last: 0, from: 0 }
    ;(globalThis as unknown as { dragClock: typeof clock }).dragClock = clock
    addEventListener('pointerup', (event) => (clock.from = event.timeStamp), true)
    new MutationObserver(() => requestAnimationFrame(() => (clock.last = performance.now()))).observe(
      document.querySelector('main') ?? document.body,
      { subtree: true, childList: true, characterData: true, attributes: true },
    )
  })
  await page.mouse.up()
  await page.waitForTimeout(2000)
  const settledMs = await page.evaluate(() => {
    const { last, from } = (globalThis as unknown as { dragClock: { last: number; from: number } }).dragClock
    return last - from
  })
  await session.send('Emulation.setCPUThrottlingRate', { rate: 1 })
  await page.close()
  const sorted = times.toSorted((a, b) => a - b)
  const figure = (what: string, value: number, most: number): BenchFigure => ({ what, value, unit: 'ms', most })
  return [
    figure('a brace dragged, script for each move, median', sorted[Math.floor(sorted.length / 2)] ?? 0, MOST_SCRIPT_MS),
    figure('a brace let go, until all stands', settledMs, MOST_SETTLE_MS),
  ]
}

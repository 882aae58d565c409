import type { Browser, Locator, Page } from 'playwright-core'
import type { BenchFigure } from './bench.ts'

const THROTTLE = 4
const MOST_MS_TO_PAINT = 100
const MOST_MS_TO_SETTLE = 200
const KEYS = 24

/** Where keys are pressed, what is typed, and on which commission of the demo. */
interface Place {
  readonly what: string
  readonly number: string
  readonly sheet: string
  readonly field: (page: Page) => Locator
  readonly keys: readonly string[]
  /** Where a longer wait was promised than for the others. */
  readonly mostMsToSettle?: number
}

const PLACES: readonly Place[] = [
  {
    what: 'a character in the rim depth',
    number: '26-07',
    sheet: 'Sides',
    field: (page) => page.getByRole('textbox', { name: 'Rim depth at the tail' }),
    keys: ['1', 'Backspace'],
  },
  {
    what: 'a character in a half-width',
    number: '26-10',
    sheet: 'Outline',
    field: (page) => page.getByRole('textbox', { name: /half-width.* 6$/i }).first(),
    keys: ['5', 'Backspace'],
    mostMsToSettle: 400,
  },
  {
    what: 'a step of the heights',
    number: '26-07',
    sheet: 'Sides',
    field: (page) => page.getByRole('slider').first(),
    keys: ['ArrowRight', 'ArrowRight', 'ArrowLeft', 'ArrowLeft'],
  },
]

/** What the built pages take to answer a key on a machine a quarter as fast: to the next paint, and until nothing moves any more. */
export async function measureScreen(browser: Browser, address: string): Promise<BenchFigure[]> {
  // What is copied for days without a net would be measured with it.
  const page = await browser.newPage({ viewport: { width: 1180, height: 820 }, serviceWorkers: 'block' })
  await page.goto(address)
  await page.getByRole('button', { name: 'Lay out the demo' }).click()
  const session = await page.context().newCDPSession(page)
  const figures: BenchFigure[] = []
  for (const place of PLACES) {
    await page.goto(`${address}#/`)
    await page.getByRole('link', { name: new RegExp(`^${place.number}`) }).click()
    const link = (name: string) => page.getByRole('navigation').getByRole('link', { name, exact: true })
    if ((await link(place.sheet).count()) === 0) await link('Body').click()
    await link(place.sheet).click()
    await place.field(page).waitFor()
    await session.send('Emulation.setCPUThrottlingRate', { rate: THROTTLE })
    const { paintsMs, settlesMs } = await pressKeys(page, place)
    await session.send('Emulation.setCPUThrottlingRate', { rate: 1 })
    const row = (until: string, times: readonly number[], most: number) => {
      const sorted = times.toSorted((a, b) => a - b)
      const [median = 0, worst = 0] = [sorted[Math.floor(sorted.length / 2)], sorted.at(-1)]
      figures.push(
        { what: `${place.what}, ${until}, median`, value: median, unit: 'ms', most },
        { what: `${place.what}, ${until}, worst of ${KEYS}`, value: worst, unit: 'ms', most },
      )
    }
    row('to the paint', paintsMs, MOST_MS_TO_PAINT)
    row('until all stands', settlesMs, place.mostMsToSettle ?? MOST_MS_TO_SETTLE)
  }
  return figures
}

interface Clock {
  pressedAt: number
  paintedAt: number
  settledAt: number
}

async function pressKeys(page: Page, { field, keys }: Place): Promise<{ paintsMs: number[]; settlesMs: number[] }> {
  await page.evaluate(startClock)
  await field(page).focus()
  await page.keyboard.press('End')
  // The first two warm it up.
  const paints: number[] = []
  const settles: number[] = []
  for (let i = -2; i < KEYS; i++) {
    await page.waitForTimeout(700)
    await page.keyboard.press(keys[(i + keys.length) % keys.length]!)
    await page.waitForTimeout(900)
    const { pressedAt, paintedAt, settledAt } = await page.evaluate(
      () => (globalThis as unknown as { benchClock: Clock }).benchClock,
    )
    if (i < 0) continue
    paints.push(paintedAt - pressedAt)
    settles.push(Math.max(settledAt, paintedAt) - pressedAt)
  }
  return { paintsMs: paints, settlesMs: settles }
}

/** Runs in the page: notes when a key was pressed, when the next picture stood, and when the last one stood that the sheet changed in. */
function startClock(): void {
  const clock: Clock = { pressedAt: 0, paintedAt: 0, settledAt: 0 }
  ;(globalThis as unknown as { benchClock: Clock }).benchClock = clock
  const afterPaint = (then: () => void) =>
    requestAnimationFrame(() => {
      const { port1, port2 } = new MessageChannel()
      port1.addEventListener('message', then, { once: true })
      port1.start()
      port2.postMessage(null)
    })
  addEventListener(
    'keydown',
    (event) => {
      clock.pressedAt = event.timeStamp
      clock.paintedAt = 0
      clock.settledAt = 0
      afterPaint(() => {
        clock.paintedAt = performance.now()
      })
    },
    true,
  )
  new MutationObserver(() =>
    afterPaint(() => {
      clock.settledAt = performance.now()
    }),
  ).observe(document.querySelector('main') ?? document.body, {
    subtree: true,
    childList: true,
    characterData: true,
    attributes: true,
  })
}

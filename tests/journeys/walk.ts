import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import type { Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import type { Browser, BrowserContext, Locator, Page } from 'playwright-core'
import { expect } from 'vitest'
import { launchBrowser } from '../../src/command/browser.mjs'
import { makeStaticServer } from '../../src/command/staticServer.mjs'

/** The two benches the walks are made at. */
export const BENCHES = {
  desktop: { viewport: { width: 1280, height: 800 } },
  tablet: { viewport: { width: 1180, height: 820 }, hasTouch: true, isMobile: true, deviceScaleFactor: 2 },
} as const
export type Bench = keyof typeof BENCHES

/** The folder lies under a path of its own, as on a host that serves other things too. */
export const UNDER = '/shop/bench/'
export const DIST = new URL('../../dist', import.meta.url).pathname

export interface Site {
  readonly address: string
  readonly browser: Browser
  readonly close: () => Promise<void>
}

/** The built folder served from a path, and a browser to walk in. */
export async function openSite(): Promise<Site> {
  if (!existsSync(DIST)) throw new Error('There is no dist folder: npm run build comes before the walks.')
  const server: Server = makeStaticServer(DIST, UNDER)
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve))
  const browser = await launchBrowser()
  return {
    address: `http://localhost:${(server.address() as AddressInfo).port}${UNDER}`,
    browser,
    close: async () => {
      await browser.close()
      server.close()
    },
  }
}

/** One device with a store of its own. What it must never do is collected, and asserted at the end of the walk. */
export interface Walk {
  readonly page: Page
  readonly context: BrowserContext
  /** Ends the walk; fails it if something was asked of another host, reported on the console, or held back by the policy. */
  readonly end: () => Promise<void>
}

export async function startWalk(site: Site, bench: Bench): Promise<Walk> {
  const context = await site.browser.newContext({ ...BENCHES[bench], acceptDownloads: true, locale: 'en-GB' })
  const wrong: string[] = []
  const own = new URL(site.address).origin
  context.on('request', (request) => {
    const address = new URL(request.url())
    if (!['data:', 'blob:'].includes(address.protocol) && address.origin !== own) wrong.push(`asked ${request.url()}`)
  })
  context.on('requestfailed', (request) => {
    if (request.failure()?.errorText !== 'net::ERR_ABORTED') wrong.push(`did not get ${request.url()}`)
  })
  context.on('response', (response) => {
    if (response.status() >= 400) wrong.push(`was answered ${response.status()} for ${response.url()}`)
  })
  context.on('weberror', (error) => wrong.push(`threw ${error.error().message}`))
  context.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) wrong.push(`reported ${message.text()}`)
  })
  await context.addInitScript(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      console.error(`held back by the policy: ${event.violatedDirective} ${event.blockedURI}`)
    })
  })
  const page = await context.newPage()
  return {
    page,
    context,
    end: async () => {
      await context.close()
      expect(wrong).toEqual([])
    },
  }
}

/** Clicks or taps, as the device does. */
export async function press(page: Page, target: Locator): Promise<void> {
  const touches = await page.evaluate(() => navigator.maxTouchPoints > 0)
  await (touches ? target.tap() : target.click())
}

/** Writes into a field as a hand does: all of it anew, then on to the next. */
export async function write(field: Locator, text: string): Promise<void> {
  await field.fill('')
  await field.pressSequentially(text)
  await field.blur()
}

/** Goes to a sheet of the instrument by its name in the register. */
export async function turnTo(page: Page, name: string): Promise<void> {
  const link = page.getByRole('navigation').getByRole('link', { name, exact: true })
  await page.getByRole('navigation').first().waitFor()
  for (const group of ['Body', 'Box', 'Neck', 'Work', 'Paper']) {
    if ((await link.count()) > 0) break
    // It lies in a part of the register that is not open.
    await press(page, page.getByRole('navigation').getByRole('link', { name: group, exact: true }))
    await page.getByRole('navigation', { name: new RegExp(`^${group} of `) }).waitFor()
  }
  await press(page, link)
}

/** Waits until the title block says that everything is stored. */
export const untilSaved = (page: Page): Promise<void> =>
  page
    .getByRole('contentinfo')
    .getByRole('status')
    .filter({ hasText: /^saved$/ })
    .waitFor()

/** The text of a printed file, page by page; null, with the reason said, where the tools to read it are not here. */
export function readPrinted(file: string): { readonly pages: readonly string[]; readonly sizes: string } | null {
  const text = spawnSync('pdftotext', ['-layout', file, '-'], { encoding: 'utf8' })
  const info = spawnSync('pdfinfo', [file], { encoding: 'utf8' })
  if (text.error !== undefined || info.error !== undefined) {
    if (process.env['CI'] === 'true') throw new Error('pdftotext is missing: install poppler-utils.')
    console.log('Skipped: the printed pages are not read, since pdftotext is not here (poppler-utils).')
    return null
  }
  return { pages: text.stdout.split('\f').slice(0, -1), sizes: info.stdout }
}

import { cpSync, mkdtempSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs'
import type { Server } from 'node:http'
import type { AddressInfo } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Browser, Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { launchBrowser } from '../../src/command/browser.mjs'
import { filesUnder, OFFLINE_WORKER, writeOfflineWorker } from '../../src/command/offlineWorker.ts'
import { fileFor, makeStaticServer } from '../../src/command/staticServer.mjs'
import { DIST, press, readPrinted, startWalk, turnTo, UNDER, untilSaved, type Walk } from './walk.ts'

const RELOADS = 5
const folder = mkdtempSync(join(tmpdir(), 'ribwright-cellar-'))
let browser: Browser
beforeAll(async () => {
  browser = await launchBrowser()
})
afterAll(async () => {
  await browser.close()
  rmSync(folder, { recursive: true, force: true })
})

/** One address that may be served from one folder, from another, or from none. */
function openHouse() {
  let server: Server | null = null
  let port = 0
  const leave = async (): Promise<void> => {
    const left = server
    server = null
    left?.closeAllConnections()
    if (left !== null) await new Promise((done) => left.close(done))
  }
  const serve = async (from: string): Promise<void> => {
    await leave()
    const next = makeStaticServer(from, UNDER)
    await new Promise<void>((done) => next.listen(port, '127.0.0.1', done))
    port = (next.address() as AddressInfo).port
    server = next
  }
  return { serve, leave, address: () => `http://localhost:${port}${UNDER}` }
}

const FIRST_TITLE = 'How does this shop measure?'
const SECOND_TITLE = 'The second build'

/**
 * A second build: the page says that it is the second, and so does a sheet that is only fetched when it is opened. Every script has a name of its
 * own, as where something has changed that all hang on; the walk need not build the pages twice for that.
 */
async function secondBuild(): Promise<string> {
  const second = join(folder, 'second')
  cpSync(DIST, second, { recursive: true })
  const scripts = new Set(readdirSync(join(second, 'assets')).filter((name) => name.endsWith('.js')))
  const renamed = (text: string) =>
    text.replaceAll(/[\w.-]+\.js\b/g, (name) => (scripts.has(name) ? `second-${name}` : name))
  for (const name of scripts) {
    const file = join(second, 'assets', name)
    writeFileSync(file, renamed(readFileSync(file, 'utf8')).replaceAll(FIRST_TITLE, SECOND_TITLE))
    renameSync(file, join(second, 'assets', `second-${name}`))
  }
  const page = join(second, 'index.html')
  writeFileSync(
    page,
    renamed(readFileSync(page, 'utf8')).replace('<html lang="en">', '<html lang="en" data-build="second">'),
  )
  await writeOfflineWorker(second, filesUnder(second))
  return second
}

const buildOf = (page: Page) => page.evaluate(() => document.documentElement.dataset['build'] ?? 'first')
const goTo = (page: Page, hash: string) =>
  page.evaluate((to) => {
    location.hash = to
  }, hash)

test('every file of the build is laid by, but the one that lays by', () => {
  const source = readFileSync(join(DIST, OFFLINE_WORKER), 'utf8')
  const missing = filesUnder(DIST).filter((path) => path !== OFFLINE_WORKER && !source.includes(`[\`${path}\`,`))
  // The page is laid by under the address of its folder.
  expect(missing).toEqual(['index.html'])
  expect(source).toContain('[``,')
})

describe('in a cellar without a net', () => {
  const house = openHouse()
  let walk: Walk
  beforeAll(async () => {
    await house.serve(DIST)
    walk = await startWalk({ address: house.address(), browser, close: () => Promise.resolve() }, 'tablet')
  })
  afterAll(async () => {
    await walk.end()
    await house.leave()
  })

  test('a first visit lays all by, says so once, and is never loaded anew', async () => {
    const { page } = walk
    await page.goto(house.address())
    await page.evaluate(() => {
      document.body.dataset['visit'] = 'first'
    })
    await press(page, page.getByRole('button', { name: 'Lay out the demo' }))
    await page.getByRole('link', { name: /^26-07/ }).waitFor()
    await goTo(page, '/shop')
    const ready = page.getByText('Works without a net.', { exact: true })
    await ready.waitFor()
    expect(await ready.count()).toBe(1)
    expect(await page.evaluate(() => document.body.dataset['visit'])).toBe('first')
    await goTo(page, '/')
    await page.getByRole('link', { name: /^26-07/ }).waitFor()
  })

  test('without a net the list stands after a reload, and after a fresh start', async () => {
    const { page, context } = walk
    await house.leave()
    await expect(fetch(house.address())).rejects.toThrow('fetch failed')
    const times: number[] = []
    for (let round = 0; round < RELOADS; round++) {
      const started = performance.now()
      await page.reload({ waitUntil: 'commit' })
      await page.getByRole('link', { name: /^26-07/ }).waitFor()
      times.push(performance.now() - started)
    }
    const median = times.sort((a, b) => a - b)[Math.floor(RELOADS / 2)]!
    console.log(`Reload without a net until the list stands: ${Math.round(median)} ms (median of ${RELOADS})`)
    const other = await context.newPage()
    await other.goto(`${house.address()}index.html`)
    await other.getByRole('link', { name: /^26-07/ }).waitFor()
    await other.close()
  })

  test('an instrument never opened before opens, with a stage sheet and a template at full size', async () => {
    const { page } = walk
    await press(page, page.getByRole('link', { name: /^26-07/ }))
    await turnTo(page, 'Bracing')
    await page.getByRole('img').first().waitFor()
    await turnTo(page, 'Stage sheets')
    await page
      .getByRole('status')
      .filter({ hasText: /on \d+ pages/ })
      .waitFor()
    const sheet = join(folder, 'stage.pdf')
    await page.pdf({ path: sheet, preferCSSPageSize: true })
    expect(readPrinted(sheet)?.pages[0] ?? '26-07').toContain('26-07')
    await turnTo(page, 'Full size')
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      press(page, page.getByRole('button', { name: 'PDF at full size', exact: true })),
    ])
    const file = join(folder, 'template.pdf')
    await download.saveAs(file)
    const printed = readPrinted(file)
    if (printed !== null) expect(printed.pages[0]).toContain('Measure this box before you cut')
    expect(readFileSync(file).subarray(0, 5).toString()).toBe('%PDF-')
  })

  test('a new version waits until asked, in every tab, and nothing typed is lost', async () => {
    const { page, context } = walk
    await house.serve(await secondBuild())
    await turnTo(page, 'Brief')
    await page.reload()
    const notice = page.getByRole('status').filter({ hasText: 'A new version is here.' })
    await notice.waitFor()
    const other = await context.newPage()
    await other.goto(house.address())
    await other.getByRole('status').filter({ hasText: 'A new version is here.' }).waitFor()
    expect([await buildOf(page), await buildOf(other)]).toEqual(['first', 'first'])
    // The host has the sheet of the first build no more.
    await goTo(other, '/shop')
    await other.getByRole('heading', { name: FIRST_TITLE }).waitFor()

    await page.bringToFront()
    const field = page.getByRole('textbox', { name: 'Contact', exact: true })
    await field.fill('')
    await field.pressSequentially('Somebody by the sea')
    await press(page, notice.getByRole('button', { name: 'Take it now' }))
    await page.waitForFunction(() => document.documentElement.dataset['build'] === 'second')
    await other.waitForFunction(() => document.documentElement.dataset['build'] === 'second')
    expect(await page.getByRole('textbox', { name: 'Contact', exact: true }).inputValue()).toBe('Somebody by the sea')
    await untilSaved(page)
    await other.getByRole('heading', { name: SECOND_TITLE }).waitFor()
    expect(await page.getByRole('status').filter({ hasText: 'A new version is here.' }).count()).toBe(0)
    // What the version before had laid by is cleared.
    expect(await page.evaluate(async () => (await caches.keys()).length)).toBe(1)
  })
})

test('over plain http from another device nothing breaks, and the shop says why it does not work without a net', async () => {
  // No such host is asked: every file is handed over by hand, as from a machine in the same network.
  const address = `http://bench.lan${UNDER}`
  const { page, context, end } = await startWalk({ address, browser, close: () => Promise.resolve() }, 'desktop')
  await context.route('http://bench.lan/**', async (route) => {
    const file = await fileFor(DIST, UNDER, new URL(route.request().url()).pathname)
    await (file === null ? route.fulfill({ status: 404 }) : route.fulfill({ path: file }))
  })
  await page.goto(`${address}#/shop`)
  await page.getByText(/^It does not work without a net here, since over plain http .* https/).waitFor()
  expect(await page.evaluate(() => [isSecureContext, 'serviceWorker' in navigator])).toEqual([false, false])
  await end()
})

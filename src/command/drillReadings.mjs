import { spawn } from 'node:child_process'
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as wait } from 'node:timers/promises'
import { launchOptions } from './browser.mjs'
import { buildPages, ROOT, setUpPackages } from './setUp.mjs'
import { makeStaticServer } from './staticServer.mjs'

/** After the confirming tap the browser is killed within this time, ms. */
const MOST_MS = 500
const NUMBER = '26-07'

/** A Chromium of its own process group, so that it can be killed as a whole, on a profile that stays. */
async function startBrowser(profile) {
  const { executablePath, args } = await launchOptions()
  const portFile = join(profile, 'DevToolsActivePort')
  rmSync(portFile, { force: true })
  const child = spawn(
    executablePath,
    [
      ...args,
      '--headless=new',
      '--remote-debugging-port=0',
      `--user-data-dir=${profile}`,
      '--no-first-run',
      'about:blank',
    ],
    { detached: true, stdio: 'ignore' },
  )
  for (let tries = 0; tries < 300 && !existsSync(portFile); tries += 1) await wait(50)
  await wait(50)
  const [port] = readFileSync(portFile, 'utf8').split('\n')
  const { chromium } = await import('playwright-core')
  const browser = await chromium.connectOverCDP(`http://127.0.0.1:${port}`)
  const [context] = browser.contexts()
  const page = await context.newPage()
  await page.setViewportSize({ width: 1180, height: 820 })
  const kill = async () => {
    try {
      if (child.pid !== undefined) process.kill(-child.pid, 'SIGKILL')
    } catch {
      // It is gone already.
    }
    await browser.close().catch(() => undefined)
  }
  return { page, kill }
}

/** The values of all readings that are stored, and whether each lies whole in the log its document knows of. */
const storedReadings = (page) =>
  page.evaluate(
    () =>
      new Promise((done, fail) => {
        const opening = indexedDB.open('ribwright')
        opening.addEventListener('error', () => fail(opening.error))
        opening.addEventListener('success', () => {
          const database = opening.result
          const reading = database.transaction(['facts', 'documents'])
          const facts = reading.objectStore('facts').getAll()
          const documents = reading.objectStore('documents').getAll()
          reading.addEventListener('complete', () => {
            const seen = new Map(documents.result.map((row) => [row.id, row.seen]))
            done(
              facts.result
                .filter(({ kind }) => kind === 'reading')
                .map(({ docId, deviceId, seq, value, typed, number }) => ({
                  value,
                  isWhole:
                    typeof typed === 'string' &&
                    typeof number === 'string' &&
                    (seen.get(docId)?.[deviceId] ?? 0) >= seq,
                })),
            )
            database.close()
          })
        })
      }),
  )

/** Opens the bench at a number that is read; gives the stage's page ready for typing. */
async function openBench(page, address) {
  await page.goto(address)
  const link = page.getByRole('link', { name: new RegExp(`^${NUMBER}`) })
  const demo = page.getByRole('button', { name: 'Lay out the demo' })
  await Promise.race([link.waitFor(), demo.waitFor()])
  if (await demo.isVisible()) await demo.click()
  await link.click()
  await page.getByRole('link', { name: 'At the bench', exact: true }).click()
  await page.getByRole('button', { name: /all numbers$/ }).waitFor()
  const readable = page.locator('.hand-reads')
  for (let step = 0; step < 20 && (await readable.count()) === 0; step += 1)
    await page.getByRole('button', { name: 'Next number' }).click()
  await readable.waitFor()
}

/** What the screen has said to be stored, told as it is said. */
async function watchStored(page, told) {
  await page.exposeFunction('saidStored', (text) => told.push(text))
  await page.evaluate(() => {
    const look = () => {
      const strip = document.querySelector('.last-read')
      if (strip?.querySelector('[data-save="saved"]')) globalThis.saidStored(strip.textContent)
    }
    new MutationObserver(look).observe(document.body, {
      subtree: true,
      childList: true,
      characterData: true,
      attributes: true,
    })
  })
}

async function main() {
  const rounds = Number(process.argv[2] ?? 100)
  if (!Number.isInteger(rounds) || rounds < 1) throw new Error('How many times? npm run drill:readings -- 100')
  setUpPackages({ loud: true })
  buildPages()
  const server = makeStaticServer(join(ROOT, 'dist'))
  await new Promise((resolve) => server.listen(0, '127.0.0.1', resolve))
  const address = `http://localhost:${server.address().port}/`
  const profile = mkdtempSync(join(tmpdir(), 'ribwright-drill-'))
  const count = { confirmedKept: 0, confirmedLost: 0, unconfirmedKept: 0, unconfirmedAbsent: 0, damaged: 0 }
  try {
    for (let round = 0; round < rounds; round += 1) {
      const value = (90 + round / 10).toFixed(1)
      const told = []
      let browser = await startBrowser(profile)
      await openBench(browser.page, address)
      await watchStored(browser.page, told)
      await browser.page.keyboard.type(value)
      await browser.page.keyboard.press('Enter')
      await wait(Math.random() * MOST_MS)
      const wasConfirmed = told.some((text) => text.includes(value))
      await browser.kill()
      await wait(200)
      browser = await startBrowser(profile)
      await browser.page.goto(address)
      await browser.page.getByRole('link', { name: new RegExp(`^${NUMBER}`) }).waitFor()
      const stored = await storedReadings(browser.page)
      const isThere = stored.some((one) => one.value === Number(value))
      if (!stored.every(({ isWhole }) => isWhole)) count.damaged += 1
      count[
        wasConfirmed ? (isThere ? 'confirmedKept' : 'confirmedLost') : isThere ? 'unconfirmedKept' : 'unconfirmedAbsent'
      ] += 1
      await browser.kill()
    }
  } finally {
    server.close()
    rmSync(profile, { recursive: true, force: true })
  }
  console.log(
    `Killed ${rounds} times within ${MOST_MS} ms of the tap: ${count.confirmedKept} confirmed and there, ${count.confirmedLost} confirmed and lost, ` +
      `${count.unconfirmedKept} not yet confirmed and there, ${count.unconfirmedAbsent} not yet confirmed and absent, ${count.damaged} damaged.`,
  )
  if (count.confirmedLost + count.damaged > 0) process.exitCode = 1
}

main().catch((fault) => {
  console.error(fault instanceof Error ? fault.message : String(fault))
  process.exitCode = 1
})

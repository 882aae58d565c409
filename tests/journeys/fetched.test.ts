import { readFileSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { gzipBytes, MOST_KB_MORE_FOR_COMMISSION, MOST_KB_UNTIL_LIST } from '../../src/command/sizes.mjs'
import { openSite, press, type Site, startWalk } from './walk.ts'

let site: Site
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

/** Every script the page has asked for since it was loaded, whether it came over the line or out of the browser's store. */
const scriptsOf = (page: Page): Promise<string[]> =>
  page.evaluate(() => [
    ...new Set(
      performance
        .getEntriesByType('resource')
        .map(({ name }) => new URL(name).pathname)
        .filter((path) => path.endsWith('.js')),
    ),
  ])

const kilobytes = (paths: readonly string[]): number =>
  paths.reduce((sum, path) => {
    const file = new URL(`../../dist/${path.slice(path.indexOf('assets/'))}`, import.meta.url)
    return sum + gzipBytes(readFileSync(file)) / 1000
  }, 0)

test('the scripts fetched until the list can be used, and for opening a commission, are small enough', async () => {
  const { page, end } = await startWalk(site, 'tablet')
  await page.goto(site.address)
  await press(page, page.getByRole('button', { name: 'Lay out the demo' }))
  const link = page.getByRole('link', { name: /^26-07/ })
  await link.waitFor()
  await page.reload({ waitUntil: 'networkidle' })
  await link.waitFor()
  const untilList = await scriptsOf(page)
  await press(page, link)
  await page.getByRole('navigation', { name: 'Sheets of 26-07' }).waitFor()
  // The view is asked for after the register stands: what it fetches is counted too.
  await page.getByRole('main').getByRole('heading', { level: 1 }).waitFor()
  await page.waitForLoadState('networkidle')
  const more = (await scriptsOf(page)).filter((path) => !untilList.includes(path))
  const [list, commission] = [kilobytes(untilList), kilobytes(more)]
  console.log(
    `JavaScript, gzipped: ${list.toFixed(1)} kB until the list, ${commission.toFixed(1)} kB more for a commission`,
  )
  expect(untilList.length).toBeGreaterThan(0)
  expect(more.length).toBeGreaterThan(0)
  expect(list).toBeLessThanOrEqual(MOST_KB_UNTIL_LIST)
  expect(commission).toBeLessThanOrEqual(MOST_KB_MORE_FOR_COMMISSION)
  await end()
})

test('the page itself allows no script within it and nothing from elsewhere', () => {
  const html = readFileSync(new URL('../../dist/index.html', import.meta.url), 'utf8').replaceAll('&#39;', "'")
  expect(html).toMatch(/http-equiv="Content-Security-Policy"\s+content="default-src 'none'; script-src 'self'/)
  expect(html).not.toMatch(/<script(?![^>]*\bsrc=)[^>]*>/)
  expect(html).not.toMatch(/(src|href)="(https?:)?\/\//)
  // Relative addresses only: the folder works from any path.
  expect(html).not.toMatch(/(src|href)="\//)
})

import { afterAll, beforeAll, expect, test } from 'vitest'
import { addressOf, INSTRUMENT_ROUTES, ROUTES } from '../../src/app/routes.ts'
import { openSite, press, type Site, startWalk } from './walk.ts'

let site: Site
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

test('the last sheet stands until the next has been fetched: no page without a heading in between', async () => {
  const { page, end } = await startWalk(site, 'tablet')
  await page.goto(site.address)
  await press(page, page.getByRole('button', { name: 'Lay out the demo' }))
  await press(page, page.getByRole('link', { name: /^26-07/ }))
  await page.getByRole('navigation', { name: 'Sheets of 26-07' }).waitFor()
  await page.getByRole('main').getByRole('heading', { level: 1 }).waitFor()
  const id = /#\/i\/([^/]+)/.exec(page.url())![1]!
  const places = [...INSTRUMENT_ROUTES.filter(({ view }) => view !== 'overview'), ROUTES[0]]
  for (const row of places) {
    const empty = await page.evaluate(
      async ({ hash, title }) => {
        let frames = 0
        location.hash = hash
        const giveUp = performance.now() + 10_000
        while (!document.title.includes(title) && performance.now() < giveUp) {
          await new Promise((resolve) => requestAnimationFrame(resolve))
          if (document.querySelector('main h1') === null) frames++
        }
        if (document.querySelector('main h1') === null) frames++
        return document.title.includes(title) ? frames : 'never came'
      },
      { hash: addressOf(row, id), title: row.title },
    )
    expect([row.path, empty]).toEqual([row.path, 0])
  }
  await end()
})

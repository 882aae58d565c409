import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openSite, press, type Site, startWalk, turnTo, untilSaved, type Walk, write } from './walk.ts'

let site: Site
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

/** An instrument whose sides are thicknessed and bent; then the client wants them thicker. */
describe('work that no longer fits', () => {
  let walk: Walk
  beforeAll(async () => {
    walk = await startWalk(site, 'tablet')
    const { page } = walk
    await page.goto(site.address)
    await press(page, page.getByRole('button', { name: 'Lay out the demo' }))
    await press(page, page.getByRole('link', { name: /^26-07/ }))
    await turnTo(page, 'Sides')
    await write(page.getByRole('textbox', { name: 'Side thickness' }), '2.6')
  })
  afterAll(() => walk.end())

  const stage = () => walk.page.getByRole('region', { name: /^Thickness the sides signed off/ })
  const offer = (name: string) => stage().getByRole('button', { name })
  const undo = () => press(walk.page, walk.page.getByRole('button', { name: /^Undo/ }))

  test('is told on the sheet at which it came about, and listed by stage', async () => {
    const { page } = walk
    await page.getByText(/things? already built no longer fits?\./).waitFor()
    await press(page, page.getByRole('link', { name: 'See what' }))
    await page.getByRole('heading', { level: 1, name: 'What is already built and no longer fits?' }).waitFor()
    const cells = await stage()
      .getByRole('row', { name: /^Side thickness/ })
      .innerText()
    expect(cells.replaceAll(/\s+/gu, ' ')).toContain('2.2 mm kept 2.6 mm −0.4 mm ± 0.05 mm')
    expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true)
  })

  test('can have the change taken back, and that be undone', async () => {
    const { page } = walk
    await press(page, offer('Take the change back'))
    await page.getByText('Everything that is built still fits what is asked.').waitFor()
    await undo()
    await stage().waitFor()
    expect(await offer('Take the change back').isEnabled()).toBe(true)
  })

  test('can be kept as built: the numbers still to come follow it', async () => {
    const { page } = walk
    await press(page, offer('Keep the work as built'))
    await stage().waitFor({ state: 'detached' })
    await untilSaved(page)
    await page.reload()
    await page.getByRole('heading', { level: 1, name: 'What is already built and no longer fits?' }).waitFor()
    await expect.poll(() => stage().count()).toBe(0)
    await undo()
    await stage().waitFor()
  })

  test('can be done again: the stage is open, and what to do next', async () => {
    const { page } = walk
    await stage()
      .getByRole('textbox', { name: /^Reason/ })
      .fill('Thicker sides, by letter')
    await press(page, offer('Redo the stage'))
    await stage().waitFor({ state: 'detached' })
    await untilSaved(page)
    await turnTo(page, 'Next')
    await expect.poll(() => page.getByRole('heading', { level: 1 }).innerText()).toBe('Thickness the sides')
  })
})

import { afterAll, beforeAll, expect, test } from 'vitest'
import type { Locator, Page } from 'playwright-core'
import { faultsOf } from './axeFaults.ts'
import { type Bench, openSite, press, type Site, startWalk, turnTo, untilSaved, write } from './walk.ts'

let site: Site
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

/** Opens what belongs to a stage, and gives it. */
async function openStage(page: Page, title: string): Promise<Locator> {
  const row = page.getByRole('listitem').filter({ has: page.getByRole('button', { name: new RegExp(title) }) })
  const head = row.getByRole('button', { name: new RegExp(title) }).first()
  if ((await head.getAttribute('aria-expanded')) !== 'true') await press(page, head)
  const panel = page.getByRole('region', { name: title, exact: true })
  await panel.waitFor()
  return panel
}

/** The day before this one where the browser is, as its calendar writes it. */
const yesterdayIn = (page: Page): Promise<string> =>
  page.evaluate(() => {
    const day = new Date()
    day.setDate(day.getDate() - 1)
    const two = (part: number): string => String(part).padStart(2, '0')
    return `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`
  })

test.each(['desktop', 'tablet'] satisfies Bench[])(
  'a stage of the maker’s own, one done again, hours two share, and an order kept for the next: %s',
  async (bench) => {
    const { page, end } = await startWalk(site, bench)
    await page.goto(site.address)
    await press(page, page.getByRole('button', { name: 'Lay out the demo' }))
    await press(page, page.getByRole('link', { name: /^26-07/ }))
    await turnTo(page, 'Stages')
    await page.getByRole('button', { name: 'Keep this order' }).waitFor()
    expect(await faultsOf(page)).toEqual([])

    // A stage of one's own, with a number to measure.
    let panel = await openStage(page, 'Thickness the top')
    expect(await faultsOf(page)).toEqual([])
    await press(page, panel.getByRole('button', { name: 'Insert after' }))
    await write(page.getByRole('textbox', { name: 'What it is called' }), 'Thin the lower bout')
    await press(page, page.getByRole('button', { name: 'Insert', exact: true }))
    panel = page.getByRole('region', { name: 'Thin the lower bout', exact: true })
    await panel.waitFor()
    await write(panel.getByRole('textbox', { name: 'as a rule' }).first(), '2')
    await write(panel.getByRole('textbox', { name: 'at worst' }).first(), '3')
    await press(page, panel.getByText('Numbers that belong to it'))
    await panel.getByRole('textbox', { name: 'Find a number by name' }).fill('top thickness')
    await press(page, panel.getByRole('button', { name: /^Add Top, thickness/ }).first())
    expect(await panel.getByRole('checkbox', { name: /with a box to measure/ }).isChecked()).toBe(true)
    expect(await faultsOf(page)).toEqual([])
    await untilSaved(page)

    // One signed off, and done again.
    panel = await openStage(page, 'Bend both sides')
    await press(page, panel.getByRole('button', { name: 'Do it again' }))
    await write(page.getByRole('textbox', { name: 'Reason' }), 'Cracked at the waist')
    await press(page, page.getByRole('dialog').getByRole('button', { name: 'Do it again' }))
    await panel.getByText(/to be done again since .*: Cracked at the waist/).waitFor()
    await panel.getByText(/^signed off on/).waitFor()
    await page.getByRole('button', { name: /Bend both sides.*to be done again/ }).waitFor()

    // Three hours of yesterday that two instruments share.
    panel = await openStage(page, 'Glue the linings')
    await press(page, panel.getByRole('button', { name: 'Do this for several' }))
    const dialog = page.getByRole('dialog', { name: 'For which instruments?' })
    await press(page, dialog.getByRole('checkbox', { name: /^26-09/ }))
    await write(dialog.getByRole('textbox', { name: 'Hours' }), '3')
    await dialog.getByLabel('On', { exact: true }).fill(await yesterdayIn(page))
    expect(await faultsOf(page)).toEqual([])
    await press(page, dialog.getByRole('button', { name: 'Do it for 2' }))
    await dialog.waitFor({ state: 'detached' })
    await panel.getByText(/1\.5\sh as said, its share of 2/).waitFor()

    // The order is kept.
    await press(page, page.getByRole('button', { name: 'Keep this order' }))
    await write(page.getByRole('textbox', { name: 'Name' }), 'Steel, thinned')
    await press(page, page.getByRole('button', { name: 'Keep it' }))
    await page.getByText('“Steel, thinned” is kept: new instruments can begin with it.').waitFor()
    await press(page, page.getByRole('button', { name: 'Use another order' }))
    await press(page, page.getByRole('radio', { name: /^Steel, thinned/ }))
    await page.getByText('Nothing comes in.').waitFor()
    expect(await faultsOf(page)).toEqual([])
    await page.keyboard.press('Escape')
    await untilSaved(page)

    // The share of the other stands on the other.
    await turnTo(page, 'Bench')
    await press(page, page.getByRole('link', { name: /^26-09/ }))
    await turnTo(page, 'Stages')
    panel = await openStage(page, 'Glue the linings')
    await panel.getByText(/1\.5\sh as said, its share of 2/).waitFor()

    // The shop lists it, and the next instrument begins with it.
    await turnTo(page, 'Bench')
    await turnTo(page, 'Shop')
    await page.getByRole('textbox', { name: 'Name', exact: true }).waitFor()
    await page.getByRole('heading', { name: 'In which order is work done here?' }).scrollIntoViewIfNeeded()
    await turnTo(page, 'Bench')
    await press(page, page.getByRole('button', { name: 'New instrument' }))
    await write(page.getByRole('textbox', { name: 'Number' }), '27-01')
    await page
      .getByRole('combobox', { name: 'Order of stages' })
      .selectOption({ label: 'Steel, thinned, steel string' })
    await press(page, page.getByRole('button', { name: 'Put it on the bench' }))
    await page.getByRole('navigation', { name: 'Sheets of 27-01' }).waitFor()
    await turnTo(page, 'Stages')
    panel = await openStage(page, 'Thin the lower bout')
    await press(page, panel.getByText('Numbers that belong to it'))
    await panel.getByRole('checkbox', { name: /with a box to measure/ }).waitFor()
    await end()
  },
  60_000,
)

import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { type Bench, openSite, press, type Site, startWalk, turnTo, write } from './walk.ts'

let site: Site
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

async function startTimer(page: Page, what: string, hours: string, minutes: string): Promise<void> {
  await press(page, page.getByRole('button', { name: 'Start a timer' }))
  await write(page.getByRole('textbox', { name: /^What sets/ }), what)
  await write(page.getByRole('textbox', { name: 'Hours' }), hours)
  await write(page.getByRole('textbox', { name: 'Minutes' }), minutes)
  await press(page, page.getByRole('button', { name: 'Start', exact: true }))
  await page.getByRole('dialog').waitFor({ state: 'detached' })
}

test.each(['desktop', 'tablet'] satisfies Bench[])(
  'timers outlive reload and a closed page, stand on every sheet, and say when they are ready: %s',
  async (bench) => {
    const { page, context, end } = await startWalk(site, bench)
    await page.goto(site.address)
    await press(page, page.getByRole('button', { name: 'Lay out the demo' }))
    await press(page, page.getByRole('link', { name: /^26-07/ }))
    await startTimer(page, 'Top braces', '12', '')
    await startTimer(page, 'Rosette', '', '0.05')
    const strip = page.getByRole('region', { name: 'Timers' })
    const ready = strip.getByRole('button', { name: /^26-07 Rosette: ready/ })
    const braces = strip.getByRole('button', { name: /^26-07 Top braces: (12\sh 0|11\sh 59)\smin left$/ })
    await ready.waitFor()
    await page.getByRole('status').filter({ hasText: 'Ready: 26-07 Rosette' }).waitFor({ state: 'attached' })
    await braces.waitFor()
    await page.reload()
    await ready.waitFor()
    await braces.waitFor()
    await page.close()

    const again = await context.newPage()
    await again.goto(site.address)
    const stripAgain = again.getByRole('region', { name: 'Timers' })
    const buttons = stripAgain.getByRole('button')
    await stripAgain.getByRole('button', { name: /^26-07 Top braces/ }).waitFor()
    expect(await buttons.first().getAttribute('aria-label')).toMatch(/^26-07 Rosette: ready/)
    for (const place of ['Shop', 'Models']) {
      await turnTo(again, place)
      await stripAgain.getByRole('button', { name: /^26-07 Top braces/ }).waitFor()
    }
    await turnTo(again, 'Bench')
    await press(again, again.getByRole('link', { name: /^26-09/ }))
    await turnTo(again, 'Sides')
    await buttons.first().waitFor()
    const box = await buttons.first().boundingBox()
    expect(box!.height).toBeGreaterThanOrEqual(bench === 'tablet' ? 56 : 44)
    const width = await again.evaluate(() => document.documentElement.scrollWidth - innerWidth)
    expect(width).toBeLessThanOrEqual(0)

    await press(again, buttons.first())
    const panel = again.getByRole('dialog', { name: 'What is setting?' })
    await press(again, panel.getByRole('button', { name: 'Done with 26-07 Rosette' }))
    await press(again, panel.getByRole('button', { name: '1 h more for 26-07 Top braces' }))
    await panel.getByText(/^(13\sh 0|12\sh 59)\smin/).waitFor()
    await press(again, panel.getByRole('link', { name: 'Go to 26-07' }))
    await again.getByRole('navigation', { name: 'Sheets of 26-07' }).waitFor()
    expect(await buttons.first().getAttribute('aria-label')).toMatch(/^26-07 Top braces: 1[23]\sh/)
    await press(again, buttons.first())
    await press(again, panel.getByRole('button', { name: 'Stop the timer of 26-07 Top braces' }))
    await again.keyboard.press('Escape')
    await stripAgain.waitFor({ state: 'detached' })
    await end()
  },
)

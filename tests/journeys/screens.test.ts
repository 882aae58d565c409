import { readFileSync } from 'node:fs'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { INSTRUMENT_ROUTES, ROUTES } from '../../src/app/routes.ts'
import { faultsOf } from './axeFaults.ts'
import { type Bench, openSite, press, type Site, startWalk, type Walk } from './walk.ts'

/** A commission on which something does not fit on every sheet that has findings of its own. */
function misfitFile(): string {
  const saved = JSON.parse(
    readFileSync(new URL('../../demo-data/commissions/26-09-pipit.json', import.meta.url), 'utf8'),
  )
  saved.plan.outline.pieces[2].sweepDeg += 1
  saved.plan.rim.sideThicknessMm = 6
  saved.plan.top.form = 'flatUpperBout'
  saved.plan.top.flatSlopeDeg = -1
  saved.plan.back.radiusMm = 600
  saved.plan.blocks.neck.widthMm = 200
  saved.plan.soundhole.radiusMm = 38
  saved.plan.top.flatSlope = 'entered'
  saved.plan.board.endBeyondLastFretMm = 0
  saved.plan.frets.slotDepthMm = 4.2
  saved.plan.strings.nutSpreadMm = 38
  saved.plan.setup.riseMm = 3
  saved.plan.bridge.slotDepthMm = 6
  saved.plan.head.thicknessMm = 9
  return JSON.stringify(saved)
}
const WITH_FINDINGS = ['', 'outline', 'sides', 'domes', 'blocks', 'rosette', 'frets', 'strings', 'bridge', 'neck']

let site: Site
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

async function openMisfits(page: Page, address: string): Promise<string> {
  await page.goto(address)
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    press(page, page.getByRole('button', { name: 'Open a file' })),
  ])
  await chooser.setFiles({ name: 'misfits.json', mimeType: 'application/json', buffer: Buffer.from(misfitFile()) })
  await page.getByRole('navigation', { name: 'Sheets of 26-09' }).waitFor()
  return /#\/i\/([^/]+)/.exec(page.url())![1]!
}

describe.each([
  ['desktop', 'light'],
  ['tablet', 'dark'],
] satisfies [Bench, 'light' | 'dark'][])('every screen keeps to WCAG 2.2 AA, %s, %s', (bench, colorScheme) => {
  let walk: Walk
  let id = ''
  const visited = new Set<string>()
  beforeAll(async () => {
    walk = await startWalk(site, bench)
    await walk.page.emulateMedia({ colorScheme })
    id = await openMisfits(walk.page, site.address)
  })
  afterAll(() => walk.end())

  const goTo = async (path: string, title: string) => {
    const { page } = walk
    await page.evaluate(
      (hash) => {
        location.hash = hash
      },
      path.replace(':id', id),
    )
    await page.waitForFunction((start) => document.title.includes(start), title)
    await page.waitForTimeout(150)
  }

  test.each(ROUTES.map((route) => [route.path, route.title]))('%s %s', async (path, title) => {
    await goTo(path, title)
    const name = path.replace('/i/:id', '').replace('/', '')
    if (path.startsWith('/i/') && WITH_FINDINGS.includes(name))
      await walk.page.getByText('What does not fit').first().waitFor({ state: 'attached' })
    expect(await faultsOf(walk.page)).toEqual([])
    visited.add(path)
  })

  test('with the new-instrument dialog open', async () => {
    const { page } = walk
    await goTo('/', ROUTES[0].title)
    await press(page, page.getByRole('button', { name: 'New instrument' }))
    await page.getByRole('dialog').getByRole('radio').first().waitFor()
    expect(await faultsOf(page)).toEqual([])
    await page.keyboard.press('Escape')
  })

  test('with the question open that a file asks which is here already', async () => {
    const { page } = walk
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      press(page, page.getByRole('button', { name: 'Open a file' })),
    ])
    await chooser.setFiles({ name: 'misfits.json', mimeType: 'application/json', buffer: Buffer.from(misfitFile()) })
    await page.getByRole('dialog').waitFor()
    expect(await faultsOf(page)).toEqual([])
    await page.keyboard.press('Escape')
  })

  test('with the menu of an instrument open', async () => {
    const { page } = walk
    await press(page, page.getByRole('button', { name: /^More for/ }).first())
    expect(await faultsOf(page)).toEqual([])
    await page.keyboard.press('Escape')
  })

  test.each([
    ['units', /^Lengths in /],
    ['revision', /^Revision /],
  ])('with the panel of %s open over a sheet with a finding', async (_, name) => {
    const { page } = walk
    await goTo('/i/:id/rosette', INSTRUMENT_ROUTES.find(({ path }) => path.endsWith('rosette'))!.title)
    await press(page, page.getByRole('contentinfo').getByRole('button', { name }))
    expect(await faultsOf(page)).toEqual([])
    await page.keyboard.press('Escape')
  })

  test('with the help of a number open', async () => {
    const { page } = walk
    await press(page, page.getByRole('main').getByRole('button', { name: 'Channel depth', exact: true }).first())
    expect(await faultsOf(page)).toEqual([])
    await page.keyboard.press('Escape')
  })

  test('with a field that refuses what was typed', async () => {
    const { page } = walk
    await goTo('/i/:id/sides', INSTRUMENT_ROUTES.find(({ path }) => path.endsWith('sides'))!.title)
    const field = page.getByRole('textbox', { name: 'Side thickness' })
    await field.fill('thin')
    await field.blur()
    expect(await faultsOf(page)).toEqual([])
  })

  test('no screen of the table was left out', () => {
    expect([...visited].sort()).toEqual(ROUTES.map(({ path }) => path).sort())
  })
})

import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { writeNumbers } from '../../src/command/numbers.ts'
import { compute } from '../../src/core/compute.ts'
import { ringsInOrder } from '../../src/core/instrument/rosette.ts'
import type { Numbers } from '../../src/core/numbers.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { withField } from '../generators/plans.ts'
import { openSite, press, type Site, startWalk, turnTo, untilSaved, type Walk } from './walk.ts'

let site: Site
let walk: Walk
const folder = mkdtempSync(join(tmpdir(), 'ribwright-walk-'))
beforeAll(async () => {
  site = await openSite()
  walk = await startWalk(site, 'tablet')
})
afterAll(async () => {
  await walk.end()
  await site.close()
  rmSync(folder, { recursive: true })
})

const { plan } = STEEL_STRING
const [inner] = ringsInOrder(plan.rosette)
/** The instrument as it comes out: it was drawn so from the start, which is another way to the same numbers. */
const rings = { ...plan.rosette.rings, [inner!.id]: { ...inner!.ring, outerRadiusMm: inner!.ring.outerRadiusMm + 0.4 } }
const deeper = withField(
  withField(plan, 'rim.depthAtTailMm', plan.rim.depthAtTailMm + 1.4),
  'rim.depthAtNeckMm',
  plan.rim.depthAtNeckMm + 0.9,
)
const asDrawn = compute({ ...deeper, rosette: { ...plan.rosette, rings } }).numbers
const planned = compute(plan).numbers

/** Takes a stage in hand by its title, wherever it stands in the building order. */
async function chooseStage(page: Page, title: RegExp): Promise<void> {
  const select = page.getByRole('combobox', { name: 'Stage' })
  await select.waitFor()
  const titles = await select.locator('option').allTextContents()
  await select.selectOption({ index: titles.findIndex((one) => title.test(one)) })
}
const waist = (numbers: Numbers): number => numbers.places.find(({ place }) => place === 'waist')!.depthMm
const field = (page: Page, name: string | RegExp) => page.getByRole('main').getByRole('textbox', { name, exact: true })
const figureOf = (page: Page, name: RegExp) => page.getByRole('main').getByRole('button', { name }).first()

test('an instrument is put on the bench', async () => {
  const { page } = walk
  await page.goto(site.address)
  await press(page, page.getByRole('button', { name: 'New instrument' }))
  const dialog = page.getByRole('dialog')
  await dialog.getByLabel('Number').fill('27-01')
  await press(page, dialog.getByRole('radio', { name: /Meadow/ }))
  await press(page, dialog.getByRole('button', { name: 'Put it on the bench' }))
  await page.getByRole('navigation', { name: 'Sheets of 27-01' }).waitFor()
  await turnTo(page, 'Readings')
  await page.getByText('Nothing has been measured yet.').waitFor()
  expect(await page.getByRole('main').getByRole('article').count()).toBe(0)
})

test('a sheet of three depths is typed in, box after box with Enter; a bad one waits', async () => {
  const { page } = walk
  await turnTo(page, 'Type in')
  await chooseStage(page, /True the rim/)
  await page.getByRole('textbox', { name: 'Read with' }).fill('steel rule')
  const places = asDrawn.places.map(({ depthMm }) => depthMm)
  const first = field(page, 'Rim depth, without plates, Tail, Bass')
  await first.focus()
  await page.keyboard.type(String(places[0]))
  await page.keyboard.press('Enter')
  expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe(
    'Rim depth, without plates, Tail, Treble',
  )
  await field(page, /^Rim depth, without plates, Waist, Bass$/).fill(String(waist(asDrawn)))
  await field(page, /^Rim depth, without plates, Neck, Treble$/).fill(String(asDrawn.places.at(-1)!.depthMm))
  await field(page, /^Rim depth, without plates, Upper bout, Treble$/).fill('about 98')
  await page.getByRole('textbox', { name: 'Read with' }).focus()
  // What is typed outlives the page.
  await page.waitForTimeout(250)
  await page.reload()
  await chooseStage(page, /True the rim/)
  await press(page, page.getByRole('button', { name: 'Store 3 readings' }))
  await page.getByText('3 readings are stored. 1 box cannot be read: its reason stands beside it.').waitFor()
  await page
    .getByText('Rim depth, without plates, Upper bout, Treble: “about” makes no sense here.', { exact: false })
    .waitFor()
  await field(page, /^Rim depth, without plates, Upper bout, Treble$/).fill('')
})

test('and a rosette', async () => {
  const { page } = walk
  await chooseStage(page, /rosette/)
  await field(page, /^Outer radius, Ring 1$/).fill(String(inner!.ring.outerRadiusMm + 0.4))
  await press(page, page.getByRole('button', { name: 'Store 1 reading' }))
  await page.getByText('1 reading is stored.').waitFor()
  await untilSaved(page)
  expect(await field(page, /^Outer radius, Ring 1$/).inputValue()).toBe('')
})

test('the numbers on Sides and Rosette are those of an instrument that was drawn so, marked, what was planned beside them', async () => {
  const { page } = walk
  await turnTo(page, 'Sides')
  const figure = figureOf(page, /^Rim depth here, without plates: /)
  expect(await figure.innerText()).toContain(waist(asDrawn).toFixed(1))
  const box = figure.locator('..')
  expect(await box.getByText('from your reading').count()).toBe(1)
  expect(await box.innerText()).toContain(`planned ${waist(planned).toFixed(1)}`)
  await page
    .getByText(/^Built: .* The plan says .*/)
    .first()
    .waitFor()
  await turnTo(page, 'Rosette')
  const strip = page.getByRole('table', { name: 'Rings of the rosette' })
  await strip
    .getByRole('columnheader', { name: /from your reading/ })
    .first()
    .waitFor()
  expect(await strip.innerText()).toContain(asDrawn.rosette.rings[0]!.stripLengthMm.toFixed(1))
})

test('the file computes the same numbers in Node', async () => {
  const { page } = walk
  await turnTo(page, 'Bench')
  await press(page, page.getByRole('button', { name: /^More for 27-01/ }))
  const save = page
    .getByRole('button', { name: /^Save to a file/ })
    .or(page.getByRole('menuitem', { name: /^Save to a file/ }))
  const [download] = await Promise.all([page.waitForEvent('download'), press(page, save)])
  const saved = join(folder, 'read.json')
  await download.saveAs(saved)
  const there = writeNumbers(readFileSync(saved, 'utf8'))
  if (!there.ok) throw new Error(there.problem)
  const numbers = JSON.parse(there.value) as Numbers
  expect(waist(numbers)).toBeCloseTo(waist(asDrawn), 6)
  expect(numbers.sides.bodyDepthAtTailMm).toBeCloseTo(asDrawn.sides.bodyDepthAtTailMm, 6)
  expect(numbers.rosette.rings[0]!.stripLengthMm).toBeCloseTo(asDrawn.rosette.rings[0]!.stripLengthMm, 9)
  await press(page, page.getByRole('link', { name: /^27-01/ }))
})

test('a reading that is turned off gives the number back', async () => {
  const { page } = walk
  await turnTo(page, 'Readings')
  await page.getByText('The ring as it was read.').waitFor()
  expect(await page.getByRole('main').getByRole('article').count()).toBe(4)
  await press(page, page.getByRole('checkbox', { name: 'Outer radius, ring 1: counts' }))
  await page.getByText('Turned off: ', { exact: false }).waitFor()
  await untilSaved(page)
  await turnTo(page, 'Rosette')
  const strip = page.getByRole('table', { name: 'Rings of the rosette' })
  expect(await strip.innerText()).toContain(planned.rosette.rings[0]!.stripLengthMm.toFixed(1))
  expect(await page.getByText(/^Built: /).count()).toBe(0)
})

import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { STRING_SETS } from '../../src/record/patterns/stringSets.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { withField } from '../generators/plans.ts'
import { openSite, press, type Site, startWalk, turnTo, untilSaved, type Walk, write } from './walk.ts'

let site: Site
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

/** A neck from the app alone, by touch on a tablet: frets, strings, set, bridge, wood; what was typed stands after a reload. */
describe('a neck, from its scale to its bridge', () => {
  let walk: Walk
  beforeAll(async () => {
    walk = await startWalk(site, 'tablet')
    const { page } = walk
    await page.goto(site.address)
    await press(page, page.getByRole('button', { name: 'Lay out the demo' }))
    await press(page, page.getByRole('link', { name: /^26-07/ }))
  })
  afterAll(() => walk.end())

  const figure = (name: string) =>
    walk.page.locator('.big-figure', { has: walk.page.getByRole('button', { name, exact: true }) })

  test('a fret is found by stepping along the board, and marked by a touch', async () => {
    const { page } = walk
    await turnTo(page, 'Frets')
    await press(page, page.getByRole('button', { name: 'Toward the nut' }))
    expect(await figure('From the nut').innerText()).toContain((645 * (1 - 2 ** (-11 / 12))).toFixed(2))
    await press(page, page.getByRole('button', { name: 'Mark fret 19' }))
    expect(await page.getByRole('button', { name: 'Mark fret 19' }).getAttribute('aria-pressed')).toBe('true')
  })

  test('twelve strings are put on, tuned, and their pull is told', async () => {
    const { page } = walk
    await turnTo(page, 'Strings')
    await press(page, page.getByText('Take a usual set'))
    await press(page, page.getByRole('button', { name: 'Steel, twelve strings, light' }))
    const twelve = compute(withField(STEEL_STRING.plan, 'strings.set', STRING_SETS.twelveString)).numbers
    await figure('Pull of all strings').getByText(twelve.stringSet.tensionN.toFixed(0)).waitFor()
    await write(page.getByRole('textbox', { name: 'Note 2' }), 'D2')
    await untilSaved(page)
    expect(await page.getByRole('textbox', { name: 'Note 2' }).inputValue()).toBe('D2')
  })

  test('the neck set follows the bridge, and both stand after a reload', async () => {
    const { page } = walk
    await turnTo(page, 'Neck set')
    await write(page.getByRole('textbox', { name: 'Bridge thickness' }), '9.4')
    const set = compute(withField(STEEL_STRING.plan, 'bridge.thicknessMm', 9.4)).numbers.neckSet
    await figure('Frets’ plane over the top').getByText(set.fretPlaneOverTopMm.toFixed(1)).waitFor()
    await untilSaved(page)
    await page.reload()
    expect(await page.getByRole('textbox', { name: 'Bridge thickness' }).inputValue()).toBe('9.4')
  })

  test('a slot too deep for the bridge is said where it is entered, and on the overview', async () => {
    const { page } = walk
    await turnTo(page, 'Bridge')
    await write(page.getByRole('textbox', { name: 'Saddle slot, depth' }), '9.6')
    await page.getByRole('article', { name: /cuts the bridge through/ }).waitFor()
    await turnTo(page, 'Next')
    const said = page.getByText(/cuts the bridge through/).first()
    await said.waitFor()
    expect(await said.innerText()).toContain('Cannot be built')
    await turnTo(page, 'Bridge')
    await write(page.getByRole('textbox', { name: 'Saddle slot, depth' }), '6.5')
    await untilSaved(page)
  })

  test('no sheet is taller than the window, nor wider than itself', async () => {
    const { page } = walk
    const taller: string[] = []
    for (const sheet of ['Frets', 'Strings', 'Neck set', 'Bridge', 'Neck cut', 'Numbers', 'Model']) {
      await turnTo(page, sheet)
      await page.waitForFunction(
        (name) => document.querySelector('[data-cell="sheet"] dd')?.textContent === name,
        sheet,
      )
      await page.getByRole('main').getByRole('heading', { level: 1 }).waitFor()
      const heights = await page.evaluate(() => [document.scrollingElement!.scrollHeight, window.innerHeight] as const)
      if (heights[0] > heights[1]) taller.push(`${sheet}: ${heights.join(' in ')}`)
      const work = await page.getByRole('main').evaluate((main) => [main.scrollWidth, main.clientWidth] as const)
      if (work[0] > work[1]) taller.push(`${sheet}, across: ${work.join(' in ')}`)
    }
    expect(taller).toEqual([])
  })

  test('what was last done is taken back from any sheet, by one touch as large as a thumb', async () => {
    const { page } = walk
    await turnTo(page, 'Strings')
    await write(page.getByRole('textbox', { name: 'Note 2' }), 'E2')
    await turnTo(page, 'Frets')
    const undo = page.getByRole('contentinfo').getByRole('button', { name: 'Undo: String 2: Note' })
    const box = await undo.boundingBox()
    expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44)
    await press(page, undo)
    await turnTo(page, 'Strings')
    expect(await page.getByRole('textbox', { name: 'Note 2' }).inputValue()).toBe('D2')
    await untilSaved(page)
  })

  test('its stages print with every fret', async () => {
    const { page } = walk
    await turnTo(page, 'Stage sheets')
    await page
      .getByRole('status')
      .filter({ hasText: /on \d+ pages/ })
      .waitFor()
    const text = await page.getByRole('main').innerText()
    expect(text).toContain('Make the fingerboard')
    expect(text).toContain((645 * (1 - 2 ** (-20 / 12))).toFixed(2))
    expect(text).not.toMatch(/NaN|undefined|Infinity/)
  })
})

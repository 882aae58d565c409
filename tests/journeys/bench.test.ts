import { readFileSync } from 'node:fs'
import axe from 'axe-core'
import type { Page } from 'playwright-core'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { asBuilt } from '../../src/core/asBuilt.ts'
import type { Reading } from '../../src/core/asBuilt/reading.ts'
import { compute } from '../../src/core/compute.ts'
import { allowsValue } from '../../src/record/allowsValue.ts'
import { readCommissionFile } from '../../src/record/door.ts'
import { openSite, press, type Site, startWalk, type Walk } from './walk.ts'

const NUMBER = '26-10'
const FILE = readFileSync(new URL('../../demo-data/commissions/26-10-evenfall.json', import.meta.url), 'utf8')
const read = readCommissionFile(JSON.parse(FILE))
if (!read.ok) throw new Error('the demo does not pass the door')
const { plan } = read.value
const planned = compute(plan).numbers
const TRUE_RIM = 'True the rim with its linings'
const CLOSE_BOX = 'Close the box and check its depths'
/** Stations and how far off they come out: over, within and short. */
const OFF = [
  { row: 3, bassMm: 0.9, trebleMm: -0.1 },
  { row: 4, bassMm: 0.8, trebleMm: -0.2 },
  { row: 5, bassMm: 0.9, trebleMm: -0.6 },
] as const
const typedMm = (row: number, offMm: number): string => (planned.rim[row]!.depthMm + offMm).toFixed(2)

let site: Site
let walk: Walk
let id = ''
let taps = 0
beforeAll(async () => {
  site = await openSite()
  walk = await startWalk(site, 'tablet')
})
afterAll(async () => {
  await walk.end()
  await site.close()
})

const tap = async (name: string | RegExp): Promise<void> => {
  taps += 1
  await press(walk.page, walk.page.getByRole('button', { name, exact: typeof name === 'string' }))
}
const typeOnPad = async (text: string): Promise<void> => {
  for (const key of text) await tap(key === '.' ? 'point' : key)
}
/** To a stage, by its row in the building order. */
async function toStage(title: string): Promise<void> {
  const { page } = walk
  await page.evaluate((hash) => {
    location.hash = hash
  }, `/i/${id}/stages`)
  // Its own line begins with its place; others may name it as what a fixture is held until.
  await press(page, page.getByRole('button', { name: new RegExp(`^\\d+ *${title}`), expanded: false }))
  await press(page, page.getByRole('link', { name: `“${title}” at the bench` }))
  await page.getByRole('heading', { level: 1, name: title }).waitFor()
}
/** Takes a number of the stage in hand from its list. */
async function takeInHand(name: RegExp): Promise<void> {
  await tap(/all numbers$/)
  await tap(name)
}
const lastReading = (): Promise<string> => walk.page.getByRole('region', { name: 'Last reading' }).innerText()
const verdictOf = (row: number, offMm: number): string => {
  const off = Number(typedMm(row, offMm)) - planned.rim[row]!.depthMm
  const text = String(Number(Math.abs(off).toFixed(2)))
  return Math.abs(off) <= 0.5 ? 'within' : `${text} mm ${off > 0 ? 'over' : 'short'}`
}

/** Controls of the bench that are smaller than a thumb; figures on a drawing are also reached by the keys beside the number. */
const tooSmall = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('.bench :is(button, a, input, summary)')].flatMap((one) => {
      const { width, height } = one.getBoundingClientRect()
      if (width === 0 || (width >= 56 && height >= 56)) return []
      return [`${one.className} ${one.innerText}: ${width} x ${height}`]
    }),
  )

/** What is cut off, runs into another part, or would have to be scrolled to. */
const cutOff = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const faults: string[] = []
    if (document.documentElement.scrollHeight > innerHeight) faults.push('the page scrolls')
    for (const one of document.querySelectorAll('.bench, .hand, .bench-hand, .bench-foot, .pad'))
      if (one.scrollHeight > one.clientHeight + 1 || one.scrollWidth > one.clientWidth + 1)
        faults.push(
          `${one.className} holds ${one.scrollWidth} x ${one.scrollHeight} in ${one.clientWidth} x ${one.clientHeight}`,
        )
    const foot = document.querySelector('.bench-foot')!.getBoundingClientRect()
    for (const one of document.querySelectorAll('.bench-body button'))
      if (one.closest('.bench-panel') === null && one.getBoundingClientRect().bottom > foot.top + 1)
        faults.push(`${one.className} runs into the foot`)
    return faults
  })

async function axeFaults(page: Page): Promise<string[]> {
  await page.evaluate(axe.source)
  return page.evaluate(async () => {
    const { axe: here } = globalThis as unknown as { axe: typeof axe }
    const { violations } = await here.run(document, {
      preload: false,
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
    })
    return violations.flatMap(({ id: rule, nodes }) => nodes.map(({ target }) => `${rule} ${target.join(' ')}`))
  })
}

describe('a rim is read on the bench', () => {
  test('from the overview, and the screen is all work', async () => {
    const { page } = walk
    await page.goto(site.address)
    await press(page, page.getByRole('button', { name: 'Lay out the demo' }))
    await press(page, page.getByRole('link', { name: new RegExp(`^${NUMBER}`) }))
    await press(page, page.getByRole('link', { name: 'At the bench', exact: true }))
    await page.getByRole('button', { name: 'Next stage' }).waitFor()
    id = /#\/i\/([^/]+)/.exec(page.url())![1]!
    expect(await page.getByRole('contentinfo').count()).toBe(0)
    await toStage(TRUE_RIM)
  })

  test('at three stations of the bass side by the pad, each with no more taps than it may take', async () => {
    const { page } = walk
    await takeInHand(new RegExp(`^Rim depth, without plates, Station ${OFF[0].row} `))
    for (const [i, { row, bassMm }] of OFF.entries()) {
      taps = 0
      if (i === 0) await tap(/^Read Rim depth, without plates, Station 3/)
      if (
        i === 0 &&
        (await page.getByRole('button', { name: 'Bass', exact: true }).getAttribute('aria-pressed')) !== 'true'
      )
        await tap('Bass')
      const text = typedMm(row, bassMm)
      await typeOnPad(text)
      await tap(/^Store /)
      expect(taps - text.length).toBeLessThanOrEqual(3)
      expect(await lastReading()).toContain(verdictOf(row, bassMm))
      expect(await lastReading()).toContain(`Station ${row}, bass side`)
    }
    await page.getByRole('region', { name: 'Last reading' }).getByText('stored', { exact: true }).waitFor()
    expect(await page.getByRole('button', { name: /^Read Rim depth, without plates, Station 6/ }).isVisible()).toBe(
      true,
    )
  })

  test('on the treble side by a caliper that types', async () => {
    const { page } = walk
    await tap('Treble')
    await takeInHand(new RegExp(`^Rim depth, without plates, Station ${OFF[0].row} `))
    for (const { row, trebleMm } of OFF) {
      await page.keyboard.type(typedMm(row, trebleMm))
      await page.keyboard.press('Enter')
      expect(await lastReading()).toContain(verdictOf(row, trebleMm))
      expect(await lastReading()).toContain(`Station ${row}, treble side`)
    }
    await page.getByRole('region', { name: 'Last reading' }).getByText('stored', { exact: true }).waitFor()
  })

  test('and all of it is there after a reload, held against what was asked and not against itself', async () => {
    const { page } = walk
    await page.reload()
    await page.getByRole('button', { name: 'Next stage' }).waitFor()
    await toStage(TRUE_RIM)
    for (const { row, bassMm, trebleMm } of OFF) {
      await takeInHand(new RegExp(`^Rim depth, without plates, Station ${row} `))
      const cells = await page.getByRole('row', { name: /^Read/ }).getByRole('cell').allInnerTexts()
      expect(cells.map((cell) => Number.parseFloat(cell))).toEqual([
        Number(typedMm(row, bassMm)),
        Number(typedMm(row, trebleMm)),
      ])
      const off = await page
        .getByRole('row', { name: /^Off by/ })
        .getByRole('cell')
        .allInnerTexts()
      expect(off[0]!.replace(/\s+/gu, ' ')).toContain(verdictOf(row, bassMm))
      expect(off[1]!.replace(/\s+/gu, ' ')).toContain(verdictOf(row, trebleMm))
    }
  })

  test('a later stage asks for what follows from it', async () => {
    const { page } = walk
    const readings = (['bass', 'treble'] as const).flatMap((side) =>
      OFF.map(
        ({ row, bassMm, trebleMm }): Reading => ({
          id: `${side} ${row}`,
          number: 'rim[].depthMm',
          row,
          side,
          value: Number(typedMm(row, side === 'bass' ? bassMm : trebleMm)),
          alongMm: planned.rim[row]!.alongOuterMm,
          entry: null,
        }),
      ),
    )
    const { sides } = compute(asBuilt(plan, readings, allowsValue).plan).numbers
    const asked = sides.bodyDepthAtTailMm.toFixed(1)
    expect(asked).not.toBe(planned.sides.bodyDepthAtTailMm.toFixed(1))
    await toStage(CLOSE_BOX)
    await takeInHand(/^Body depth at the tail/i)
    expect(await page.locator('.hand-figure').innerText()).toMatch(new RegExp(`^${asked.replace('.', '\\.')}`, 'u'))
    expect(await page.locator('.hand-notes').innerText()).toContain('From your reading')
  })
})

describe('a thumb at arm’s length', () => {
  const SIZES = [
    { width: 1180, height: 820 },
    { width: 1280, height: 800 },
    { width: 800, height: 1280 },
  ] as const
  test.each(SIZES)('hits every control and scrolls to none, $width x $height', async (size) => {
    const { page } = walk
    await page.setViewportSize(size)
    // What stands on the screen is the same on all of them: it is judged once, by either light.
    const isJudged = size === SIZES[0]
    const faults = async () => [
      ...(await tooSmall(page)),
      ...(await cutOff(page)),
      ...(isJudged ? await axeFaults(page) : []),
    ]
    for (const colorScheme of isJudged ? (['light', 'dark'] as const) : (['light'] as const)) {
      await page.emulateMedia({ colorScheme })
      await toStage(TRUE_RIM)
      await takeInHand(/^Rim depth, without plates, Station 3 /)
      expect(await faults()).toEqual([])
      await tap(/^Read Rim depth/)
      await tap('inch')
      await page.keyboard.type('3..7')
      await tap(/^Store /)
      await page.getByRole('alert').waitFor()
      expect(await faults()).toEqual([])
      await page.keyboard.press('Escape')
      await tap(/: change it$/)
      expect(await faults()).toEqual([])
      await tap(/all numbers$/)
      expect(await faults()).toEqual([])
    }
  })
})

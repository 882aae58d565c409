import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'
import { withField } from '../generators/plans.ts'
import { openSite, press, type Site, startWalk, turnTo, untilSaved, type Walk, write } from './walk.ts'

let site: Site
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

/** The box from the app alone, by touch on a tablet: braces placed by hand and by number, edges, air; what was done stands after a reload. */
describe('a box, from its braces to its air', () => {
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
  const numbers = compute(STEEL_STRING.plan).numbers

  test('a brace is chosen in the drawing, and its length is told', async () => {
    const { page } = walk
    await turnTo(page, 'Bracing')
    await press(page, page.getByRole('button', { name: '1 Cross brace', exact: true }).first())
    expect(await figure('Length between the sides').innerText()).toContain(numbers.braces[0]!.lengthMm.toFixed(1))
  })

  test('its end is dragged by a finger; what was entered follows, and one undo brings it back', async () => {
    const { page } = walk
    const { x, y } = await page.getByRole('button', { name: /^First end of 1 Cross brace/ }).evaluate((handle) => {
      const { left, top, width, height } = handle.getBoundingClientRect()
      return { x: left + width / 2, y: top + height / 2 }
    })
    const field = page.getByRole('group', { name: 'First end' }).getByRole('textbox', { name: 'From the tail' })
    const before = await field.inputValue()
    const touch = await walk.context.newCDPSession(page)
    const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', dx: number) =>
      touch.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: type === 'touchEnd' ? [] : [{ x: x + dx, y }],
      })
    await send('touchStart', 0)
    for (const dx of [-6, -12, -18, -24]) await send('touchMove', dx)
    await send('touchEnd', -24)
    await expect.poll(() => field.inputValue()).not.toBe(before)
    const moved = Number(await field.inputValue())
    expect(moved).toBeLessThan(Number(before))
    const [id] = Object.keys(STEEL_STRING.plan.bracing.braces)
    const brace = STEEL_STRING.plan.bracing.braces[id!]!
    const plan = withField(STEEL_STRING.plan, 'bracing.braces', {
      ...STEEL_STRING.plan.bracing.braces,
      [id!]: { ...brace, from: { ...brace.from, xMm: moved } },
    })
    await figure('Length between the sides').getByText(compute(plan).numbers.braces[0]!.lengthMm.toFixed(1)).waitFor()
    await page.keyboard.press('Control+z')
    await expect.poll(() => field.inputValue()).toBe(before)
  })

  test('a brace that runs through the hole is said, by number and by name', async () => {
    const { page } = walk
    for (const end of ['First end', 'Second end'])
      await write(page.getByRole('group', { name: end }).getByRole('textbox', { name: 'From the tail' }), '356')
    await page.getByRole('heading', { name: /hole/i }).first().waitFor()
    await untilSaved(page)
    await page.reload()
    await page.getByRole('heading', { name: /hole/i }).first().waitFor()
    expect(await page.locator('.banner').innerText()).not.toBe('')
  })

  test('the back is laid out anew', async () => {
    const { page } = walk
    await press(page, page.getByText('Back', { exact: true }))
    await press(page, page.getByRole('button', { name: 'No braces' }))
    await page.getByText('No braces yet.').waitFor()
    await press(page, page.getByRole('button', { name: 'Add a brace' }))
    await page.getByRole('textbox', { name: 'Width' }).waitFor()
    await press(page, page.getByRole('button', { name: 'Ladder bracing' }))
    await expect.poll(() => page.locator('.brace-list button').count()).toBe(4)
  })

  test('the edges follow the binding', async () => {
    const { page } = walk
    await turnTo(page, 'Edges')
    await write(page.getByRole('textbox', { name: 'Binding, height' }), '7')
    await expect.poll(() => figure('Binding ledge, down the side').innerText()).toContain('7.0')
  })

  test('a box that was tapped is heard as a note, and named where another one asks', async () => {
    const { page } = walk
    await turnTo(page, 'Air')
    await write(page.getByRole('textbox', { name: 'Heard when tapped' }), 'G#2')
    const heard = page.getByRole('region', { name: 'What was heard' })
    await heard.getByText(/^103\.8\d? Hz: G#2\./).waitFor()
    const ratio = Number(/is (\d\.\d+) of/.exec(await heard.innerText())?.[1])
    const rigid = Number(compute(STEEL_STRING.plan).numbers.air.rigidHz)
    // The braces moved on the way take up a little more or less of the air.
    expect(Math.abs(ratio - 110 / 2 ** (1 / 12) / rigid)).toBeLessThan(0.01)
    await press(page, page.getByRole('button', { name: 'Keep it among the shop’s boxes' }))
    await page.getByRole('button', { name: 'Kept among the shop’s boxes.' }).waitFor()
    await untilSaved(page)
    await press(page, page.getByRole('link', { name: 'Bench', exact: true }))
    await press(page, page.getByRole('link', { name: /^26-09/ }))
    await turnTo(page, 'Air')
    await page.getByText(/^No other box of this family/).waitFor()
    await page.getByText(/not counted: 26-07/).waitFor()
  })
})

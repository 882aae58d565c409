import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { unzipSync } from 'fflate'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { openSite, press, readPrinted, type Site, startWalk, turnTo, type Walk, write } from './walk.ts'

let site: Site
const folder = mkdtempSync(join(tmpdir(), 'ribwright-papers-'))
beforeAll(async () => {
  site = await openSite()
})
afterAll(async () => {
  await site.close()
  rmSync(folder, { recursive: true, force: true })
})

/** Papers from the app alone, by touch: a template in three forms, a pack, and what no longer holds once the plan has changed. */
describe('what leaves on paper', () => {
  let walk: Walk
  const asked: string[] = []
  beforeAll(async () => {
    walk = await startWalk(site, 'tablet')
    walk.context.on('request', (request) => {
      // What is laid by for a day without a net is not asked for by the page.
      if (request.serviceWorker() === null) asked.push(new URL(request.url()).pathname)
    })
    await walk.page.goto(site.address)
    await press(walk.page, walk.page.getByRole('button', { name: 'Lay out the demo' }))
    await press(walk.page, walk.page.getByRole('link', { name: /^26-07/ }))
  })
  afterAll(() => walk.end())

  const fromPress = () => asked.filter((path) => /pressWorker|\.woff$/u.test(path))
  const leave = async (button: string): Promise<{ name: string; file: string }> => {
    const [download] = await Promise.all([
      walk.page.waitForEvent('download'),
      press(walk.page, walk.page.getByRole('button', { name: button, exact: true })),
    ])
    const file = join(folder, download.suggestedFilename())
    await download.saveAs(file)
    return { name: download.suggestedFilename(), file }
  }

  test('nothing of the press is fetched before it is asked for', async () => {
    await turnTo(walk.page, 'Full size')
    await walk.page.getByRole('img', { name: /^Outline, bass half/ }).waitFor()
    await walk.page.waitForLoadState('networkidle')
    expect(fromPress()).toEqual([])
  })

  test('a template leaves as a PDF at true size, as SVG and as DXF', async () => {
    const { page } = walk
    await press(page, page.getByRole('button', { name: 'Outline, whole' }))
    await page.getByRole('img', { name: /^Outline, whole/ }).waitFor()
    const pdf = await leave('PDF at full size')
    expect(pdf.name).toBe('26-07-Fourteen-fret-steel-string-walnut-Outline-whole.pdf')
    expect(fromPress().length).toBeGreaterThan(0)
    const printed = readPrinted(pdf.file)
    if (printed !== null) {
      expect(printed.pages.length).toBeGreaterThan(1)
      for (const text of printed.pages) expect(text).toContain('Measure this box before you cut')
    }
    const svg = readFileSync((await leave('SVG in mm')).file, 'utf8')
    expect(svg).toMatch(/width="[\d.]+mm" height="[\d.]+mm" viewBox/)
    const dxf = readFileSync((await leave('DXF, curves as splines')).file, 'utf8')
    expect(dxf).toContain('$INSUNITS')
  })

  test('a pack leaves as a zip, and is called off where it is stopped', async () => {
    const { page } = walk
    await turnTo(page, 'Pack')
    await press(page, page.getByRole('button', { name: 'None', exact: true }))
    for (const name of ['Specification, to be signed', 'Label', 'Bridge place gauge'])
      await press(page, page.getByRole('checkbox', { name }))
    const zip = await leave('Make a zip')
    expect(Object.keys(unzipSync(new Uint8Array(readFileSync(zip.file))))).toEqual([
      '01-Specification-to-be-signed.pdf',
      '02-Label.pdf',
      '03-Bridge-place-gauge.pdf',
      'svg/03-Bridge-place-gauge.svg',
      'dxf/03-Bridge-place-gauge.dxf',
    ])
    await press(page, page.getByRole('button', { name: 'All', exact: true }))
    await press(page, page.getByRole('button', { name: 'Make one PDF', exact: true }))
    await press(page, page.getByRole('button', { name: 'Stop', exact: true }))
    await page.getByText('Stopped. Nothing left.').waitFor()
  })

  test('what left is said to hold no longer once something it shows has changed, and after a reload', async () => {
    const { page } = walk
    await page.getByText('Everything that left still holds.').waitFor()
    await turnTo(page, 'Sides')
    await write(page.getByRole('textbox', { name: 'Rim depth at the tail' }), '105.5')
    await turnTo(page, 'Pack')
    const row = page.getByRole('row', { name: /^Specification/ })
    await row.getByText('changed since').waitFor()
    for (const name of [/^Label/, /^Outline, whole/, /^Bridge place gauge/])
      await page.getByRole('row', { name }).getByText('still holds').waitFor()
    await page.reload()
    await row.getByText('changed since').waitFor()
    expect(await page.getByRole('row', { name: /^Label/ }).innerText()).toContain('still holds')
  })
})

import { build } from 'vite'
import { afterAll, beforeAll, expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { DEMO_MODELS } from '../generators/demoModels.ts'
import { openSite, type Site } from './walk.ts'

let site: Site
beforeAll(async () => {
  site = await openSite()
})
afterAll(() => site.close())

test('the same record gives the same numbers in Node and in the browser, to 1e-9 mm', async () => {
  const built = await build({
    root: new URL('../..', import.meta.url).pathname,
    configFile: false,
    logLevel: 'silent',
    build: {
      write: false,
      lib: { entry: 'src/core/compute.ts', formats: ['iife'], name: 'core' },
    },
  })
  const [output] = Array.isArray(built) ? built : []
  const code = output?.output[0].code ?? ''
  const page = await site.browser.newPage()
  await page.evaluate(`${code}; globalThis.core = core`)
  for (const { plan } of DEMO_MODELS) {
    const there = await page.evaluate((given) => {
      const { core } = globalThis as unknown as { core: { compute: typeof compute } }
      return core.compute(given).numbers
    }, plan)
    expect(furthest(compute(plan).numbers, there)).toBeLessThanOrEqual(1e-9)
  }
  await page.close()
})

/** Volumes are millions of mm³: of their sixteen digits none is left for 1e-9, so they are compared in litres. */
const sizeOf = (key: string): number => (key.endsWith('Mm3') ? 1e6 : 1)

/** How far two numbers under one key stand apart at most; anything else that differs is endlessly far. */
function furthest(a: unknown, b: unknown, of = ''): number {
  if (typeof a === 'number' && typeof b === 'number') return Math.abs(a - b) / sizeOf(of)
  if (typeof a === 'object' && typeof b === 'object' && a !== null && b !== null) {
    const keys = new Set([...Object.keys(a), ...Object.keys(b)])
    return Math.max(0, ...[...keys].map((key) => furthest(a[key as keyof typeof a], b[key as keyof typeof b], key)))
  }
  return a === b ? 0 : Number.POSITIVE_INFINITY
}

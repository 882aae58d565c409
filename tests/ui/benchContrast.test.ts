import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'

const TOKENS = readFileSync(join(process.cwd(), 'src/ui/tokens.css'), 'utf8')

/** The colours of a block of the style sheet, by token. */
function coloursAfter(opening: string): Record<string, string> {
  const from = TOKENS.indexOf(opening)
  const block = TOKENS.slice(from, TOKENS.indexOf('}', from))
  return Object.fromEntries([...block.matchAll(/--([\w-]+): (#[0-9a-f]{6});/gu)].map(([, name, hex]) => [name, hex]))
}

/** WCAG 2.2, relative luminance and contrast ratio. */
function contrast(a: string, b: string): number {
  const luminance = (hex: string): number => {
    const [r = 0, g = 0, blue = 0] = [1, 3, 5].map((at) => {
      const part = Number.parseInt(hex.slice(at, at + 2), 16) / 255
      return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4
    })
    return 0.2126 * r + 0.7152 * g + 0.0722 * blue
  }
  const [light = 0, dark = 0] = [luminance(a), luminance(b)].toSorted((one, other) => other - one)
  return (light + 0.05) / (dark + 0.05)
}

/** What is read on the bench, on what it stands. */
const READ = [
  ['ink', 'paper'],
  ['ink', 'accent-wash'],
  ['bench-second', 'paper'],
  ['bench-second', 'accent-wash'],
  ['bench-pine', 'paper'],
  ['accent', 'paper'],
  ['on-accent', 'accent'],
] as const

describe.each([
  ['light', ':root {'],
  ['dark, chosen', '[data-bench="dark"] {'],
  ['dark, as the device is set', ':root:not([data-bench="light"]) {'],
])('on a bench that is %s', (_, opening) => {
  const colours = coloursAfter(opening)
  test.each(READ)('%s on %s stands out 7 to 1', (text, ground) => {
    expect(contrast(colours[text]!, colours[ground]!)).toBeGreaterThanOrEqual(7)
  })
})

test('contrast is measured as WCAG has it: black on white 21, mid grey 4.54', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 6)
  expect(contrast('#767676', '#ffffff')).toBeCloseTo(4.54, 2)
})

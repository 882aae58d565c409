import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { findUnfit, writeNumbers } from '../../src/command/numbers.ts'
import { STEEL_STRING } from '../generators/demoModels.ts'

const ROOT = new URL('../../', import.meta.url).pathname
const DEMO = join(ROOT, 'demo-data/commissions/26-07-meadow.json')
const folder = mkdtempSync(join(tmpdir(), 'ribwright-numbers-'))
afterAll(() => rmSync(folder, { recursive: true }))

const run = (file: string) =>
  spawnSync('npm', ['run', '--silent', 'numbers', '--', file], { cwd: ROOT, encoding: 'utf8' })
const file = (name: string, text: string) => {
  writeFileSync(join(folder, name), text)
  return join(folder, name)
}
const damaged = (change: (saved: Record<string, Record<string, Record<string, unknown>>>) => void) => {
  const saved = JSON.parse(readFileSync(DEMO, 'utf8'))
  change(saved)
  return JSON.stringify(saved)
}

describe('npm run --silent numbers -- FILE', () => {
  test('prints every number of a saved commission, and its findings, as JSON', () => {
    const { status, stdout, stderr } = run(DEMO)
    expect([status, stderr]).toEqual([0, ''])
    const { findings, ...numbers } = JSON.parse(stdout)
    const here = compute(STEEL_STRING.plan)
    expect(numbers).toEqual(JSON.parse(JSON.stringify(here.numbers)))
    expect(findings).toEqual(here.findings)
    expect(stdout).not.toMatch(/null|NaN|Infinity/)
    expect(numbers.rim.length).toBeGreaterThanOrEqual(40)
    expect([numbers.rim[0].xMm, numbers.rim.at(-1).xMm]).toEqual([0, expect.closeTo(496, 4)])
  })

  test.each([
    [
      'a field out of its range',
      damaged((saved) => (saved['plan']!['rim']!['depthAtTailMm'] = -4)),
      'plan.rim.depthAtTailMm',
    ],
    [
      'a field with words in it',
      damaged((saved) => (saved['plan']!['back']!['radiusMm'] = 'wide')),
      'plan.back.radiusMm',
    ],
    [
      'a field that is missing',
      damaged((saved) => delete saved['plan']!['scale']!['jointFret']),
      'plan.scale.jointFret',
    ],
    ['a field nobody knows', damaged((saved) => (saved['plan']!['rim']!['colour'] = 'red')), 'plan.rim.colour'],
    ['a file cut short', readFileSync(DEMO, 'utf8').slice(0, 3000), ''],
    ['something else', '{"a": 1}', ''],
  ])('%s: one line that names it, nothing on standard output', (name, text, field) => {
    const { status, stdout, stderr } = run(file(`${name.replaceAll(' ', '-')}.json`, text))
    expect([status, stdout]).toEqual([1, ''])
    expect(stderr.trimEnd().split('\n')).toHaveLength(1)
    expect(stderr).toContain(field)
  })

  test('no file, or one that is not there', () => {
    for (const { status, stdout, stderr } of [run(join(folder, 'none.json'))]) {
      expect([status, stdout]).toEqual([1, ''])
      expect(stderr.trimEnd().split('\n')).toHaveLength(1)
    }
  })
})

test('a number that is none would be named', () => {
  expect(findUnfit({ a: 1, b: [{ c: 2 }, { c: Number.NaN }] }, '')).toBe('b.1.c')
  expect(findUnfit({ a: null }, '')).toBe('a')
  expect(findUnfit({ a: 'flat', b: [] }, '')).toBeNull()
})

test('a hostile file is refused in words', () => {
  for (const text of ['[]', 'null', '1e999', '"x"', '{"__proto__": {}}', '['.repeat(100_000)]) {
    const written = writeNumbers(text)
    expect(written.ok).toBe(false)
  }
})

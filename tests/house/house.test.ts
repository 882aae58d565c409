import { readdirSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { EXCEPTIONS, RULES } from './rules.ts'
import { readSource, readSources } from './source.ts'

const ROOT = new URL('../../', import.meta.url)
const sources = readSources(ROOT, ['src', 'tests'])

describe('the house', () => {
  test.each(RULES)('$name', ({ check }) => {
    expect(sources.flatMap((source) => check(source).map((fault) => `${source.path}: ${fault}`))).toEqual([])
  })

  test('an exception is needed: its file is there, and breaks the rule without it', () => {
    for (const [name, files] of Object.entries(EXCEPTIONS)) {
      const { check } = RULES.find((one) => one.name === name)!
      for (const path of Object.keys(files)) {
        const source = sources.find((one) => one.path === path)
        expect(source, path).toBeDefined()
        // The same text under a path that is in no list.
        const elsewhere = readSource(path.replace(/\/([^/]+)$/, '/elsewhere-$1'), source!.text)
        expect(check(elsewhere), path).not.toEqual([])
      }
    }
  })

  test('the top folder holds what it should and nothing else', () => {
    const fixed = [
      'README.md',
      'DEVELOPERS.md',
      'LICENSE',
      'package.json',
      'package-lock.json',
      'tsconfig.json',
      'vite.config.ts',
      'index.html',
    ]
    const folders = ['src', 'tests', 'public', 'demo-data']
    const made = ['node_modules', 'dist', 'coverage']
    const strangers = readdirSync(ROOT).filter(
      (name) => !name.startsWith('.') && ![...fixed, ...folders, ...made].includes(name),
    )
    expect(strangers).toEqual([])
  })
})

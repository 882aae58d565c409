import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { readCommissionFile } from '../../src/record/door.ts'
import { replayLog } from '../../src/record/log.ts'
import { planSchema } from '../../src/record/planSchema.ts'
import { demoCommissions, demoModels } from '../generators/demoCommissions.ts'

/** The committed files are what the generator tells; `UPDATE_DEMO=1 npx vitest run tests/record/demoData.test.ts` writes them anew. */
const folder = (name: string) => new URL(`../../demo-data/${name}/`, import.meta.url)
const SETS = [
  { name: 'models', files: demoModels() },
  { name: 'commissions', files: demoCommissions() },
]
if (process.env['UPDATE_DEMO'] === '1')
  for (const { name, files } of SETS)
    for (const { file, text } of files) writeFileSync(new URL(file, folder(name)), text)

describe.each(SETS)('demo-data/$name', ({ name, files }) => {
  test('holds these files and no others', () => {
    expect(readdirSync(folder(name)).sort()).toEqual(files.map(({ file }) => file).sort())
  })
  test.each(files)('$file is as generated', ({ file, text }) => {
    expect(readFileSync(new URL(file, folder(name)), 'utf8')).toBe(text)
  })
})

test.each(demoModels())('the model $file is a valid plan without findings', ({ text }) => {
  const model = JSON.parse(text) as { plan: unknown }
  expect(compute(planSchema.parse(model.plan)).findings).toEqual([])
})

test.each(demoCommissions())('the commission $file passes the door, and its log tells what it holds', ({ text }) => {
  const read = readCommissionFile(JSON.parse(text))
  expect(read.ok).toBe(true)
  if (!read.ok) return
  const { plan, brief, demo, stages, tolerances, changes } = read.value
  expect(demo).toBe(true)
  expect(compute(plan).findings).toEqual([])
  const replayed = replayLog(changes) as { doc: unknown } | null
  expect(replayed?.doc).toMatchObject({ plan, brief, demo, stages, tolerances })
})

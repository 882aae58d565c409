import { expect, test } from 'vitest'
import { STAGE_KEYS } from '../../src/record/patterns/stages.ts'
import { fetchStageLines } from '../../src/words/someStageLines.ts'
import { STAGE_WORDS } from '../../src/words/stages.ts'

test.each(STAGE_KEYS)('the lines of %s are fetched with the part they belong to', async (key) => {
  const { title, ...lines } = STAGE_WORDS[key]
  expect(title.length).toBeGreaterThan(0)
  expect(await fetchStageLines(key)).toEqual(lines)
  expect(lines.lines.length).toBeGreaterThan(0)
})

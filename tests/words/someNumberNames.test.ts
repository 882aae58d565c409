import { expect, test } from 'vitest'
import { NUMBER_KEYS } from '../../src/core/catalogue.ts'
import { NUMBER_NAMES } from '../../src/words/numberNames.ts'
import { fetchNumberNames } from '../../src/words/someNumberNames.ts'

test.each(NUMBER_KEYS.map((key) => [key]))('the name of %s is found in the part it belongs to', async (key) => {
  expect((await fetchNumberNames([key]))[key]).toBe(NUMBER_NAMES[key])
})

test('those of parts nobody asked for are not fetched', async () => {
  const names = await fetchNumberNames(['body.lengthMm', 'scale.lengthMm'])
  expect(names['scale.lengthMm']).toBe(NUMBER_NAMES['scale.lengthMm'])
  expect(names['air.rigidHz']).toBeUndefined()
})

import { expect, test } from 'vitest'
import { aboutNumber, NUMBER_KEYS } from '../../src/core/catalogue.ts'
import { effectiveTolerance } from '../../src/papers/effectiveTolerance.ts'
import { getsBox } from '../../src/record/patterns/figuresOfStage.ts'
import { STAGES } from '../../src/record/patterns/stagePatterns.ts'
import { STAGE_KEYS, startingStages } from '../../src/record/patterns/stages.ts'
import { CAUTION_WORDS } from '../../src/words/cautions.ts'
import { STAGE_WORDS } from '../../src/words/stages.ts'

test('a pattern for every stage and for nothing else', () => {
  expect(Object.keys(STAGES).sort()).toEqual([...STAGE_KEYS].sort())
})

test('what a stage looks up is among its numbers, and a box is for what can be measured', () => {
  for (const pattern of Object.values(STAGES)) {
    expect(pattern.numbers).toEqual(expect.arrayContaining([...pattern.lookUp]))
    expect(new Set(pattern.numbers).size).toBe(pattern.numbers.length)
    for (const key of pattern.numbers) if (getsBox(pattern, key)) expect(aboutNumber(key).measured).not.toBeNull()
  }
})

test.each(['steelString', 'nylonString', 'small'] as const)(
  '%s: known stages, each once, wood first and delivery last',
  (family) => {
    const keys = startingStages(family)
    expect(new Set(keys).size).toBe(keys.length)
    expect(STAGE_KEYS).toEqual(expect.arrayContaining([...keys]))
    expect([keys[0], keys.at(-1)]).toEqual(['chooseWood', 'deliver'])
    const at = (key: (typeof STAGE_KEYS)[number]) => keys.indexOf(key)
    for (const [first, then] of [
      ['thicknessSides', 'bendSides'],
      ['profileBlanks', 'bendSides'],
      ['bendSides', 'glueBlocks'],
      ['radiusRim', 'glueLinings'],
      ['glueLinings', 'trueRim'],
      ['thicknessTop', 'inlayRosette'],
      ['inlayRosette', 'cutSoundhole'],
      ['fitTop', 'glueTop'],
      ['trueRim', 'closeBox'],
      ['closeBox', 'bindBox'],
      ['finish', 'cure'],
      ['cure', 'glueBridge'],
      ['inlayRosette', 'levelRosette'],
      ['archTopBraces', 'braceTop'],
      ['veneerHead', 'shapeHead'],
    ] as const)
      expect(at(first), `${first} before ${then}`).toBeLessThan(at(then))
  },
)

test('heel first: the neck comes before the rim, and its heel is slotted instead of jointed', () => {
  const keys = startingStages('nylonString')
  expect(keys.indexOf('makeNeckBlank')).toBeLessThan(keys.indexOf('bendSides'))
  expect(keys).toContain('slotSides')
  expect(keys).not.toContain('cutNeckJoint')
  expect(keys).not.toContain('cutBlockJoint')
  expect(keys).not.toContain('settleInMould')
  for (const family of ['steelString', 'nylonString', 'small'] as const)
    expect(startingStages(family)).not.toContain('bindBoard')
  expect(startingStages('steelString')).not.toContain('slotSides')
  expect(startingStages('small')).not.toContain('braceSides')
})

test('each stage says what to do in two to five short lines', () => {
  for (const { title, lines, whole = lines } of Object.values(STAGE_WORDS)) {
    expect(title.length).toBeLessThanOrEqual(40)
    for (const said of [lines, whole]) {
      expect(said.length).toBeGreaterThanOrEqual(2)
      expect(said.length).toBeLessThanOrEqual(5)
      for (const line of said) expect(line).not.toMatch(/!|please/iu)
    }
  }
})

test('a caution defers to others, and a legal fact carries its date', () => {
  expect(CAUTION_WORDS.cites.full.join(' ')).toMatch(/26 Nov 2019.*national authority/su)
  expect(CAUTION_WORDS.glue.full.join(' ')).toMatch(/safety data sheet/u)
  expect(CAUTION_WORDS.solvents.full.join(' ')).toMatch(/local fire and air codes/u)
})

test('tolerance: own, else shop, else starting; null at any step says none', () => {
  const key = 'sides.thicknessMm'
  expect(effectiveTolerance(key, {}, {})).toBe(0.1)
  expect(effectiveTolerance(key, {}, { [key]: 0.05 })).toBe(0.05)
  expect(effectiveTolerance(key, { [key]: 0.2 }, { [key]: 0.05 })).toBe(0.2)
  expect(effectiveTolerance(key, { [key]: null }, { [key]: 0.05 })).toBeNull()
  expect(effectiveTolerance(key, {}, { [key]: null })).toBeNull()
  expect(effectiveTolerance(key, { [key]: undefined }, {})).toBe(0.1)
  for (const one of NUMBER_KEYS) expect(effectiveTolerance(one, {}, {})).toBe(aboutNumber(one).tolerance)
})

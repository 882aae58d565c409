import { describe, expect, test } from 'vitest'
import { type Family, STAGE_KEYS, type StageKey, startingStages } from '../../src/record/patterns/stages.ts'
import { STAGES } from '../../src/record/patterns/stagePatterns.ts'
import { FIGURES, figuresOfStage, hostOf } from '../../src/record/patterns/figuresOfStage.ts'
import { predecessors } from '../../src/record/patterns/stagesWithin.ts'
import { workWithin } from '../../src/record/patterns/workWithin.ts'
import { readCoarseStages } from '../tables/readCoarseStages.ts'

const FAMILIES = ['steelString', 'nylonString', 'small'] as const satisfies readonly Family[]
const coarse = readCoarseStages()

describe.each(FAMILIES)('%s: a building order of before the stages were told more finely', (family) => {
  const order = coarse.orders[family]

  test.each(order)('%s prints what it printed', (key) => {
    const before = coarse.stages[key]
    const now = figuresOfStage(key, order)
    expect(now.numbers).toEqual(before?.numbers)
    expect([...now.lookUp].sort()).toEqual([...(before?.lookUp ?? [])].sort())
    expect(STAGES[key].drawings).toEqual(before?.drawings)
    expect(STAGES[key].cautions).toEqual(before?.cautions)
  })

  test('holds all the work of the finer order, each stage once', () => {
    const held = order.flatMap((key) => workWithin(key, order, family))
    expect([...held].sort()).toEqual([...startingStages(family)].sort())
  })

  test('keeps to what each stage waits for', () => {
    for (const [at, key] of order.entries())
      for (const before of predecessors(order, key, family))
        expect(order.indexOf(before), `${before} before ${key}`).toBeLessThan(at)
  })
})

test('old keys are all there still', () => {
  expect(STAGE_KEYS).toEqual(expect.arrayContaining(Object.keys(coarse.stages)))
})

test('a stage lies within another, never in a ring, and that other prints its numbers alone', () => {
  for (const key of STAGE_KEYS) {
    const { within } = STAGES[key]
    if (within === null) continue
    expect(STAGES[within].within, key).toBeNull()
    expect(hostOf(key, [within])).toBe(within)
    expect(hostOf(key, [within, key])).toBe(key)
    expect(hostOf(key, [])).toBeNull()
  }
})

test('with every stage present each prints its own', () => {
  for (const key of STAGE_KEYS) expect(figuresOfStage(key, STAGE_KEYS)).toEqual(FIGURES[key])
})

test('one finer stage left out: its numbers go to the stage it lies within, measured where it measures them', () => {
  const present = startingStages('steelString').filter((key) => key !== 'levelRosette')
  expect(STAGES.thicknessTop.lookUp).toContain('plates.topMm')
  expect(figuresOfStage('thicknessTop', present).lookUp).not.toContain('plates.topMm')
  const without = (left: StageKey) => startingStages('steelString').filter((key) => key !== left)
  expect(figuresOfStage('cutLedges', without('inlayEndWedge')).numbers.slice(-2)).toEqual([
    'endWedge.topMm',
    'endWedge.backMm',
  ])
  expect(figuresOfStage('braceTop', without('archTopBraces')).numbers).toContain('braces[].blankLengthMm')
  expect(figuresOfStage('braceTop', without('archTopBraces')).numbers).not.toContain('bridgePlate.lengthMm')
})

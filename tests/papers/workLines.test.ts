import { expect, test } from 'vitest'
import { layStageSheet } from '../../src/papers/stageSheet.ts'
import { orderStrings } from '../../src/record/order.ts'
import { type Family, type StageKey, startingStages } from '../../src/record/patterns/stages.ts'
import { readCoarseStages } from '../tables/readCoarseStages.ts'
import { sampleOrder } from './sampleOrder.ts'
import { STEEL } from './samplePlans.ts'

/** What stands under the heading of a stage in this building order, as one text. */
function workOf(key: StageKey, family: Family, order: readonly StageKey[] = startingStages(family)): string {
  const base = sampleOrder(STEEL, family)
  const orders = orderStrings(order.length)
  const pages = layStageSheet({
    ...base,
    doc: {
      ...base.doc,
      stages: Object.fromEntries(order.map((one, i) => [`s${i}`, { order: orders[i]!, key: one }])),
    },
    stages: [{ id: `s${order.indexOf(key)}`, key, place: order.indexOf(key) + 1, done: false }],
  })
  return pages
    .flatMap(({ blocks }) => blocks.filter(({ kind }) => kind === 'work'))
    .flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])))
    .join(' ')
    .replaceAll('\u00a0', ' ')
}

test('hands, wait with the label, one sitting, humidity, and what is held while it sets', () => {
  expect(workOf('joinTop', 'steelString')).toBe(
    'Hands on: 1.5 h (1 to 2.5 h). Wait: 12 h (4 to 24 h); check the label. In one sitting. Needs building humidity. Takes up: joining board through the wait.',
  )
})

test('no wait, nothing tied up: one short line', () => {
  expect(workOf('thicknessSides', 'steelString')).toBe('Hands on: 1.5 h (1 to 3 h).')
})

test('coats are told each, and parts that must have arrived', () => {
  expect(workOf('finish', 'steelString')).toBe(
    'Hands on: 8 times 45 min (30 min to 1.5 h). Wait: 8 times 15 h (9 to 30 h); check the label. Needs building humidity. Takes up: spray space. Must be here: finish and thinner.',
  )
})

test('a fixture that is held on names the stage it is free after, and that stage says so', () => {
  const order = startingStages('steelString')
  const place = order.indexOf('closeBox') + 1
  expect(workOf('settleInMould', 'steelString')).toContain(`Takes up: mould from here until stage ${place} is done.`)
  expect(workOf('settleInMould', 'steelString')).toContain('Then free: bending form.')
  expect(workOf('closeBox', 'steelString')).toContain('Then free: mould.')
  expect(workOf('closeBox', 'nylonString')).toContain('Then free: workboard.')
})

test('where the wood says when a wait is over, no label is asked', () => {
  expect(workOf('settleWood', 'steelString')).toContain('Wait: 28 days (14 to 84 days); go by its weight.')
})

test('in a coarse order a stage takes what the finer ones take, one wait after the other', () => {
  const { orders } = readCoarseStages()
  const finish = workOf('finish', 'steelString', orders.steelString)
  expect(finish).toContain('Wait: 8 times 15 h (9 to 30 h), then 14 days (7 to 30 days); check the label.')
  // Coats 6 h and the look at the cure: 6.1 h, to the quarter.
  expect(finish).toContain('Hands on: 6 h (4 to 12 h).')
  expect(workOf('sandAndFill', 'steelString', orders.steelString)).toContain(
    `drying rack from here until stage ${orders.steelString.indexOf('finish') + 1} is done`,
  )
  expect(workOf('stringUp', 'small', orders.small)).toContain(
    'Must be here: tuners, end pin or pickup, guard plate, strings.',
  )
})

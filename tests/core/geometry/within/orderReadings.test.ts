import { expect, test } from 'vitest'
import { orderReadings } from '../../../../src/core/geometry/within/orderReadings.ts'
import { STEEL_STRING } from '../../../generators/demoModels.ts'
import { traceChain } from '../../trace.ts'

const BARE = { rows: [], tailRows: [], neckRows: [], lengthMm: 100, neckFlatHalfWidthMm: 10 }

test('readings of a traced outline come back in the order of the trace', () => {
  const { outline } = STEEL_STRING.plan
  const trace = traceChain(outline.kind === 'compassArcs' ? outline.pieces : [], 2).slice(1)
  const onTail = (_: unknown, i: number) => i < 60 && i % 7 === 0
  const onNeck = (_: unknown, i: number) => i > trace.length - 60 && trace[i]!.y > 28.1 && i % 7 === 0
  const inRows = (_: unknown, i: number) => i % 7 === 3 && trace[i]!.x < 496 - 1e-3
  const ordered = orderReadings({
    rows: trace.filter(inRows).sort((a, b) => a.x - b.x),
    tailRows: trace.filter(onTail).reverse(),
    neckRows: trace.filter(onNeck).reverse(),
    lengthMm: 496,
    neckFlatHalfWidthMm: 28,
  })
  expect(ordered).toEqual(trace.filter((point, i) => onTail(point, i) || onNeck(point, i) || inRows(point, i)))
})

test('what repeats an end or another reading is left out', () => {
  const rows = [
    { x: 0, y: 0 },
    { x: 2, y: 30 },
    { x: 50, y: 60 },
    { x: 100, y: 0 },
  ]
  const neckRows = [
    { x: 100, y: 10 },
    { x: 99, y: 20 },
  ]
  expect(orderReadings({ ...BARE, rows, tailRows: [{ x: 2, y: 30 }], neckRows })).toEqual([
    { x: 2, y: 30 },
    { x: 50, y: 60 },
    { x: 99, y: 20 },
  ])
})

test('where an outline leaves an end steeply, rows fall between the readings across it', () => {
  const way = [
    { x: 1, y: 20 },
    { x: 10, y: 95 },
    { x: 12, y: 96 },
    { x: 14, y: 100 },
    { x: 86, y: 90 },
    { x: 88, y: 86 },
    { x: 90, y: 85 },
    { x: 99, y: 20 },
  ]
  const rows = way.filter(({ x }) => x > 1 && x < 99 && x !== 14 && x !== 86)
  const tailRows = [way[3]!, way[0]!]
  const neckRows = [way[7]!, way[4]!]
  expect(orderReadings({ ...BARE, rows, tailRows, neckRows })).toEqual(way)
})

test('nothing gives nothing, and the lists stay as they were', () => {
  expect(orderReadings(BARE)).toEqual([])
  const tailRows = Object.freeze([Object.freeze({ x: 3, y: 30 }), Object.freeze({ x: 1, y: 10 })])
  expect(orderReadings({ ...BARE, tailRows })).toEqual([tailRows[1], tailRows[0]])
})

import { describe, expect, it } from 'vitest'
import type { BoxMark, Page } from '../../src/papers/page.ts'
import { boxesInOrder, stageBoxes } from '../../src/papers/stageBoxes.ts'
import { layStageSheet } from '../../src/papers/stageSheet.ts'
import type { StageOnSheet, StageSheetOrder } from '../../src/papers/stageSheetOrder.ts'
import { SMALL, STEEL_STRING } from '../generators/demoModels.ts'
import { NYLON_STRING } from '../generators/demoNylon.ts'
import { sampleOrder } from './sampleOrder.ts'
import { CUTAWAY } from './samplePlans.ts'

/** Boxes for the pencil, counted on the pages as they are printed. */
const printed = (pages: readonly Page[]): number =>
  pages
    .flatMap(({ blocks }) => blocks.flatMap(({ marks }) => marks))
    .filter((mark): mark is BoxMark => mark.kind === 'box' && mark.purpose === 'measured').length

const ORDERS: readonly (readonly [string, StageSheetOrder])[] = [
  ['steel-string', sampleOrder(STEEL_STRING.plan, 'steelString')],
  ['nylon-string on Letter', sampleOrder(NYLON_STRING.plan, 'nylonString', { paperSize: 'Letter' })],
  ['small', sampleOrder(SMALL.plan, 'small')],
  ['steel-string with a cutaway', sampleOrder(CUTAWAY, 'steelString')],
]

describe('the boxes of a sheet that is typed in', () => {
  it.each(ORDERS)('%s: as many as are printed, stage by stage, none twice', (_, order) => {
    let all = 0
    for (const stage of order.stages) {
      const boxes = boxesInOrder(stageBoxes(order, stage))
      expect(boxes.length, stage.key).toBe(printed(layStageSheet({ ...order, stages: [stage] })))
      expect(new Set(boxes.map((box) => JSON.stringify(box))).size, stage.key).toBe(boxes.length)
      all += boxes.length
    }
    expect(all).toBeGreaterThan(150)
  })

  it.each(ORDERS)('%s: row by row in the order of the sheet', (_, order) => {
    for (const stage of order.stages) {
      const tables = stageBoxes(order, stage)
      const names = tables.flatMap(({ rows }) => rows.map(({ name }) => name))
      const texts = lettering(order, stage)
      // Every row's name is found on the pages, further down than the one before it.
      let at = 0
      for (const name of names) {
        const found = texts.indexOf(name.split(' ')[0]!, at)
        expect(found, `${stage.key}: ${name}`).toBeGreaterThanOrEqual(at)
        at = found
      }
    }
  })
})

/** All text of a stage's pages in the order it is set, word by word. */
const lettering = (order: StageSheetOrder, stage: StageOnSheet): readonly string[] =>
  layStageSheet({ ...order, stages: [stage] })
    .flatMap(({ blocks }) => blocks.filter(({ kind }) => ['numbers', 'rows', 'stations'].includes(kind)))
    .flatMap(({ marks }) => marks)
    .flatMap((mark) => (mark.kind === 'text' ? mark.text.split(' ') : []))

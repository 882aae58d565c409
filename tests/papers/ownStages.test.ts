import { expect, test } from 'vitest'
import { compute } from '../../src/core/compute.ts'
import { figureText } from '../../src/format/figure.ts'
import { formatQuantity } from '../../src/format/formatQuantity.ts'
import type { Page } from '../../src/papers/page.ts'
import { layStageSheet } from '../../src/papers/stageSheet.ts'
import type { OwnStage } from '../../src/record/stageSchema.ts'
import { CAUTION_WORDS } from '../../src/words/cautions.ts'
import { NUMBER_NAMES } from '../../src/words/numberNames.ts'
import { paperName } from '../../src/views/pack/paperName.ts'
import { sampleOrder } from './sampleOrder.ts'
import { STEEL } from './samplePlans.ts'

const BASE = sampleOrder(STEEL, 'steelString')
const OWN_ID = 'stage-own'
const BENDING = BASE.stages.find(({ key }) => key === 'bendSides')!

function sheet(
  id: string,
  key: 'ownWork' | 'bendSides',
  own: OwnStage,
): { readonly text: string; readonly pages: readonly Page[] } {
  const place = id === OWN_ID ? BASE.stages.length + 1 : BENDING.place
  const pages = layStageSheet({
    ...BASE,
    doc: { ...BASE.doc, stages: { ...BASE.doc.stages, [id]: { order: BASE.doc.stages[id]?.order ?? 'zz', key, own } } },
    stages: [{ id, key, place, done: false }],
    stagesTotal: place,
  })
  const text = pages
    .flatMap(({ blocks }) => blocks.filter(({ stage }) => stage?.id === id))
    .flatMap(({ marks }) =>
      marks.flatMap((mark) =>
        mark.kind === 'text' ? [mark.text] : mark.kind === 'figure' ? [figureText(mark.figure)] : [],
      ),
    )
    .join(' ')
    .replaceAll('\u00a0', ' ')
  return { text, pages }
}

test('work of the maker’s own prints its title, its lines, its hours and the numbers chosen, with boxes for those', () => {
  const { text, pages } = sheet(OWN_ID, 'ownWork', {
    title: 'Thin the lower bout',
    note: 'Tap as you go.\nStop early.',
    handsH: { low: 1, likely: 2, high: 3 },
    waitH: { low: 12, likely: 24, high: 36 },
    times: 2,
    parts: ['strings', 'the client’s pickup'],
    fixtures: [{ fixture: 'mould', held: 'working', until: null }],
    cautions: ['woodDust'],
    numbers: ['sides.thicknessMm', 'body.lengthMm'],
    lookUp: ['body.lengthMm'],
  })
  for (const said of [
    'Thin the lower bout',
    'Tap as you go.',
    'Stop early.',
    'Hands on: 2 times 2 h (1 to 3 h).',
    'Wait: 2 times 24 h (12 to 36 h); check the label.',
    'Takes up: mould.',
    'Must be here: strings, the client’s pickup.',
    CAUTION_WORDS.woodDust.title,
    NUMBER_NAMES['sides.thicknessMm'],
    NUMBER_NAMES['body.lengthMm'],
    figureText(formatQuantity(BASE.computed.numbers.body.lengthMm, 'bodyLength', BASE.shop.units)),
  ])
    expect(text).toContain(said)
  const boxes = pages.flatMap(({ blocks }) =>
    blocks
      .filter(({ kind }) => kind === 'numbers')
      .flatMap(({ marks }) => marks.filter((mark) => mark.kind === 'box' && mark.purpose === 'measured')),
  )
  expect(boxes).toHaveLength(1)
})

test('work of which nothing is known prints no hours', () => {
  expect(sheet(OWN_ID, 'ownWork', { title: 'Photograph it' }).text).not.toContain('Hands on')
})

test('a stage of the house prints what its maker says instead, and all else as the house has it', () => {
  const usual = sheet(BENDING.id, 'bendSides', {}).text
  const { text } = sheet(BENDING.id, 'bendSides', { title: 'Bend over the pipe', numbers: [], oneSitting: false })
  expect(usual).toContain('Bend both sides')
  expect(text).toContain('Bend over the pipe')
  expect(text).not.toContain('Bend both sides')
  expect(usual).toContain('Tightest bend')
  expect(text).not.toContain('Tightest bend')
  expect(text).toContain(BASE.words.stages.bendSides.lines[0]!.slice(0, 30))
})

test('the pack calls a sheet by the maker’s title', () => {
  const stages = {
    '0a0a0a0a-0000-4000-8000-000000000001': { order: 'i', key: 'ownWork', own: { title: 'Photograph it' } },
  } as const
  expect(paperName('stage:0a0a0a0a-0000-4000-8000-000000000001', stages, compute(STEEL))).toContain('Photograph it')
})

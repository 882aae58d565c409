import { describe, expect, test } from 'vitest'
import type { Plan } from '../../src/core/plan.ts'
import { figureText } from '../../src/format/figure.ts'
import type { Block, Page } from '../../src/papers/page.ts'
import { stageNumbers } from '../../src/papers/stageNumbers.ts'
import { layStageSheet } from '../../src/papers/stageSheet.ts'
import { STAGES } from '../../src/record/patterns/stagePatterns.ts'
import type { StageKey } from '../../src/record/patterns/stages.ts'
import { NUMBER_WORDS } from '../../src/words/numbers.ts'
import { PAPER_WORDS } from '../../src/words/paper.ts'
import { sampleOrder } from './sampleOrder.ts'
import { CUTAWAY, STEEL } from './samplePlans.ts'

const withMethod = (plan: Plan, method: Plan['rim']['method']): Plan => ({ ...plan, rim: { ...plan.rim, method } })

/** The blocks of one stage, printed alone. */
function blocksOf(plan: Plan, key: StageKey): readonly Block[] {
  const order = sampleOrder(plan, 'steelString')
  const pages: readonly Page[] = layStageSheet({ ...order, stages: order.stages.filter((stage) => stage.key === key) })
  return pages.flatMap(({ blocks }) => blocks.filter(({ stage, kind }) => stage?.key === key || kind === 'note'))
}
const textsOf = (blocks: readonly Block[]): string[] =>
  blocks.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : [])))
const tablesOf = (blocks: readonly Block[]): readonly Block[] =>
  blocks.filter(({ kind }) => ['numbers', 'rows', 'stations', 'contour'].includes(kind))
const boxesOf = (blocks: readonly Block[]): number =>
  blocks.flatMap(({ marks }) => marks.filter((mark) => mark.kind === 'box')).length

describe('the rim method', () => {
  test('sawn before bending: cut widths with the blanks, depths on the rim', () => {
    const plan = withMethod(STEEL, 'beforeBending')
    expect(textsOf(blocksOf(plan, 'profileBlanks')).join(' ')).toContain(NUMBER_WORDS['rim[].cutWidthMm'].name)
    expect(textsOf(blocksOf(plan, 'radiusRim')).join(' ')).toContain(NUMBER_WORDS['rim[].firstDepthMm'].name)
  })

  test('brought to on the rim: no stations with the blanks and a line that says why, depths as before', () => {
    const plan = withMethod(STEEL, 'onTheRim')
    const blanks = blocksOf(plan, 'profileBlanks')
    expect(tablesOf(blanks)).toEqual([])
    expect(textsOf(blanks).join(' ')).toContain('brought to on the bent rim')
    const rim = blocksOf(plan, 'radiusRim')
    expect(rim.filter(({ kind }) => kind === 'stations').length).toBeGreaterThan(0)
    expect(textsOf(rim).join(' ')).toContain(NUMBER_WORDS['rim[].firstDepthMm'].name)
  })

  test('sawn before bending: nothing says it is not', () => {
    expect(textsOf(blocksOf(withMethod(STEEL, 'beforeBending'), 'profileBlanks')).join(' ')).not.toContain('bent rim')
  })
})

describe('the fingerboard', () => {
  const fretTable = (scale: Partial<Plan['scale']>): string =>
    textsOf(
      blocksOf({ ...STEEL, scale: { ...STEEL.scale, ...scale } }, 'makeBoard').filter(({ kind }) => kind === 'rows'),
    ).join(' ')
  const name = (key: 'fromNutMm' | 'bassEdgeMm' | 'trebleEdgeMm' | 'slantRad') => NUMBER_WORDS[`frets[].${key}`].name

  test('square frets are printed by one place each', () => {
    const table = fretTable({ fan: 'square' })
    expect(table).toContain(name('fromNutMm'))
    for (const key of ['bassEdgeMm', 'trebleEdgeMm', 'slantRad'] as const) expect(table).not.toContain(name(key))
  })

  test('fanned ones by a place at either edge and their slant', () => {
    const table = fretTable({ fan: 'fanned', lengthMm: 650, trebleLengthMm: 625, squareFret: 7 })
    for (const key of ['bassEdgeMm', 'trebleEdgeMm', 'slantRad'] as const) expect(table).toContain(name(key))
    expect(table.replaceAll(NUMBER_WORDS['markers[].fromNutMm'].name, '')).not.toContain(name('fromNutMm'))
  })
})

describe('a treble side of its own', () => {
  test.each(['profileBlanks', 'radiusRim', 'trueRim'] as const)('%s: a table of stations for each piece', (key) => {
    const cut = textsOf(blocksOf(CUTAWAY, key))
    for (const title of ['Bass side', 'Treble side, piece 1', 'Treble side, piece 2']) expect(cut).toContain(title)
    const mirrored = textsOf(blocksOf(STEEL, key))
    expect(mirrored.filter((text) => /^(Bass|Treble) side/u.test(text))).toEqual([])
  })

  test('the second piece is measured on its own blank, but round the rim from the tail', () => {
    const onBlank = textsOf(blocksOf(CUTAWAY, 'profileBlanks')).join(' ')
    expect(onBlank.match(/own tail line/gu)).toHaveLength(1)
    expect(textsOf(blocksOf(CUTAWAY, 'radiusRim')).join(' ')).not.toContain('own tail line')
    // The tables say so because the numbers do: the blank starts afresh, the rim runs on.
    const first = sampleOrder(CUTAWAY, 'steelString').computed.numbers.trebleRim.find(({ blank }) => blank === 2)
    expect(first?.alongBlankMm).toBe(0)
    expect(first?.alongOuterMm).toBeGreaterThan(500)
  })

  test('three blanks, a length and a width to measure on each; a mirrored body has two', () => {
    const rows = (plan: Plan) => blocksOf(plan, 'markBlanks').filter(({ kind }) => kind === 'rows')
    expect(boxesOf(rows(CUTAWAY))).toBe(3 * 2)
    expect(boxesOf(rows(STEEL))).toBe(2 * 2)
    for (const name of ['Bass side', 'Treble side, piece 1', 'Treble side, piece 2'])
      expect(textsOf(rows(CUTAWAY)).join(' ')).toContain(name)
    expect(textsOf(rows(STEEL)).filter((text) => text.startsWith('Treble'))).toEqual(['Treble side'])
  })

  test('blanks are not printed twice', () => {
    const { numbers } = sampleOrder(CUTAWAY, 'steelString').computed
    expect(stageNumbers('markBlanks', STAGES.markBlanks.numbers, 'beforeBending', numbers)).not.toContain(
      'sides.blankLengthMm',
    )
  })

  test('the horn and the flank of the neck block only where there is a cutaway', () => {
    const horn = NUMBER_WORDS['cutaway.hornOnRimMm'].name
    const reach = NUMBER_WORDS['blocks.neck.trebleReachMm'].name
    expect(textsOf(blocksOf(CUTAWAY, 'bendSides'))).toContain(horn)
    expect(textsOf(blocksOf(STEEL, 'bendSides'))).not.toContain(horn)
    expect(textsOf(blocksOf(CUTAWAY, 'makeBlocks')).join(' ')).toContain(reach)
    expect(textsOf(blocksOf(STEEL, 'makeBlocks')).join(' ')).not.toContain(reach)
    const contours = (plan: Plan) => blocksOf(plan, 'makeBlocks').filter(({ kind }) => kind === 'contour').length
    expect([contours(STEEL), contours(CUTAWAY)]).toEqual([2, 3])
  })
})

test('side braces: a row for each, a box for each side; none asked for, no table', () => {
  const atMm = [120, 260, 400, 520]
  const braced = (form: Plan['sideBraces']['form']): Plan => ({
    ...STEEL,
    sideBraces: { ...STEEL.sideBraces, form, atMm },
  })
  const rows = (plan: Plan) => blocksOf(plan, 'braceSides').filter(({ kind }) => kind === 'rows')
  expect(boxesOf(rows(braced('wood')))).toBe(atMm.length * 2)
  expect(rows(braced('none'))).toEqual([])
  expect(textsOf(blocksOf(braced('none'), 'braceSides'))).not.toContain('Brace')
})

describe('stages of plates and edges print what is cut, not only what is left', () => {
  const figuresOf = (blocks: readonly Block[]): string[] =>
    blocks.flatMap(({ marks }) => marks.flatMap((mark) => (mark.kind === 'figure' ? [figureText(mark.figure)] : [])))
  test.each([
    ['thicknessTop', ['plates.topMm'], ['2.8 mm']],
    ['levelRosette', ['plates.topMm'], ['2.8 mm']],
    ['joinBack', ['backStrip.widthMm', 'backStrip.downMm'], ['6.0 mm', '1.2 mm']],
    ['thicknessBack', ['plates.backMm'], ['2.5 mm']],
    ['cutLedges', ['edges.ledgeInMm', 'edges.topPurflingMm', 'edges.purflingDownMm'], ['2.0 mm', '1.5 mm', '1.8 mm']],
    ['inlayEndWedge', ['endWedge.intoSideMm', 'endWedge.edgeMm'], ['2.2 mm', '0.6 mm']],
    ['archTopBraces', ['braces[].finishedLengthMm', 'braces[].widthMm', 'braces[].blankLengthMm'], []],
    ['patchTop', ['bridgePlate.thicknessMm'], []],
    ['braceTop', ['braceCrossings[].xMm', 'braceCrossings[].notchMm', 'braces[].fromXMm'], ['267.7 mm']],
    ['braceTopFine', ['braces[].fromXMm'], []],
    ['stripBack', ['patches.strip.widthMm', 'patches.strip.thicknessMm'], []],
    ['archBackBraces', ['braces[].widthMm'], []],
    ['carveBack', ['braces[].fromLetInMm', 'braces[].heightMm'], []],
    ['carveTop', ['braces[].fromLetInMm', 'braces[].toLetInMm'], ['2.5 mm']],
    ['fitBack', ['braces[].fromLetInMm', 'braces[].finishedLengthMm'], []],
  ] as const)('%s', (stage, keys, figures) => {
    const blocks = blocksOf(STEEL, stage)
    const said = textsOf(blocks).join(' ').replaceAll(/\s+/gu, ' ')
    for (const key of keys) expect(said).toContain(NUMBER_WORDS[key].name)
    expect(figuresOf(blocks)).toEqual(expect.arrayContaining([...figures]))
  })

  test('a side stands before a place across, and no bare sign', () => {
    const figures = figuresOf([...blocksOf(STEEL, 'braceTop'), ...blocksOf(STEEL, 'braceTopFine')])
    expect(figures).toContain('bass 137.3 mm')
    expect(figures.filter((text) => text.startsWith('-'))).toEqual([])
  })

  test('each brace of the top is placed once: at its own of the two stages, or at the one there is', () => {
    const { braces } = sampleOrder(STEEL, 'steelString').computed.numbers
    const ofTop = braces.filter(({ plate }) => plate === 'top')
    const namesIn = (blocks: readonly Block[]) =>
      ofTop.flatMap(({ number, kind, half }) => {
        // Long names are broken between words.
        const first = PAPER_WORDS.brace(number, kind, half).split(' ', 2).join(' ')
        return textsOf(tablesOf(blocks)).some((text) => text.startsWith(first)) ? [number] : []
      })
    const main = namesIn(blocksOf(STEEL, 'braceTop'))
    const fine = namesIn(blocksOf(STEEL, 'braceTopFine'))
    expect(main).toEqual(ofTop.flatMap(({ number, kind }) => (kind === 'cross' ? [number] : [])))
    expect([...main, ...fine].toSorted((a, b) => a - b)).toEqual(ofTop.map(({ number }) => number))
    expect(fine.length).toBeGreaterThan(0)
    const order = sampleOrder(STEEL, 'steelString')
    const together = layStageSheet({
      ...order,
      doc: {
        ...order.doc,
        stages: Object.fromEntries(Object.entries(order.doc.stages).filter(([, { key }]) => key !== 'braceTopFine')),
      },
      stages: order.stages.filter(({ key }) => key === 'braceTop'),
    })
    expect(namesIn(together.flatMap(({ blocks }) => blocks))).toEqual(ofTop.map(({ number }) => number))
  })

  test('carving says which ends are scooped; ordinates stand for braces that no one radius fits, and for no other', () => {
    const names = (plan: Plan) => textsOf(blocksOf(plan, 'archTopBraces')).filter((text) => text.includes('/8'))
    expect(textsOf(blocksOf(STEEL, 'carveTop')).join(' ')).toContain('scoop 1, 2, 3')
    expect(names(STEEL)).toEqual([])
    const planed: Plan = { ...STEEL, top: { ...STEEL.top, form: 'flatUpperBout', flatFromMm: 250 } }
    const { braces } = sampleOrder(planed, 'steelString').computed.numbers
    const without = braces.filter(({ plate, undersideRadiusMm }) => plate === 'top' && undersideRadiusMm === 'none')
    expect(without.length).toBeGreaterThan(0)
    expect(new Set(names(planed).map((name) => Number.parseInt(name, 10)))).toEqual(
      new Set(without.map(({ number }) => number)),
    )
  })
})

test('no table without a row: each shows a figure', () => {
  for (const plan of [STEEL, CUTAWAY, withMethod(CUTAWAY, 'onTheRim')])
    for (const page of layStageSheet(sampleOrder(plan, 'steelString')))
      for (const block of tablesOf(page.blocks)) expect(block.marks.some(({ kind }) => kind === 'figure')).toBe(true)
})

test('stations carry their number, 0 at the tail', () => {
  const order = sampleOrder(STEEL, 'steelString')
  const stations = blocksOf(STEEL, 'radiusRim').filter(({ kind }) => kind === 'stations')
  const numbered = textsOf(stations).filter((text) => /^\d+$/u.test(text))
  expect(numbered).toEqual(order.computed.numbers.rim.map((_, row) => String(row)))
})

test('blocks are read when the rim has been trued, and only looked up while their ends stand proud', () => {
  const name = NUMBER_WORDS['blocks.tail.heightInsideMm'].name
  for (const key of ['glueBlocks', 'trueRim'] as const) expect(textsOf(blocksOf(STEEL, key)).join(' ')).toContain(name)
  expect(boxesOf(tablesOf(blocksOf(STEEL, 'glueBlocks')))).toBe(0)
  // Two blocks of two heights and two slopes each.
  const singles = tablesOf(blocksOf(STEEL, 'trueRim')).filter(({ kind }) => kind === 'numbers')
  expect(boxesOf(singles)).toBeGreaterThanOrEqual(8)
})

test('strings are told by their notes alone: no count of rows stands for a string', () => {
  const names = textsOf(blocksOf(STEEL, 'makeNutAndSaddle'))
  for (const note of ['E2', 'A2', 'D3', 'G3', 'B3', 'E4']) expect(names).toContain(note)
  expect(names.filter((text) => /^\d+ [A-G]/u.test(text))).toEqual([])
})

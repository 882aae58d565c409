import { unzipSync } from 'fflate'
import { describe, expect, it } from 'vitest'
import { makeFile } from '../../../src/app/press/makeFile.ts'
import { marksOf } from '../../../src/app/press/marks.ts'
import { openPaperMaker } from '../../../src/app/press/paperMaker.ts'
import { figureText } from '../../../src/format/figure.ts'
import { type PaperId, parsePaperId, stagePaper } from '../../../src/papers/paperId.ts'
import type { CommissionDoc, ShopDoc } from '../../../src/record/commission.ts'
import { startingStages } from '../../../src/record/patterns/stages.ts'
import { revisionCode } from '../../../src/record/revisionCode.ts'
import { STARTING_SHOP } from '../../../src/state/shopStore.ts'
import type { SignedOff } from '../../../src/state/signedOff.ts'
import type { PressOrder, PressProgress } from '../../../src/views/press.ts'
import { beginSteel, countedIds } from '../../record/fixture.ts'
import { withField } from '../../generators/plans.ts'
import { SHEET_FONTS } from './fonts.ts'

const begun = beginSteel(countedIds('f')).row.doc
const stageIds = startingStages('steelString').map((_, i) => `57a6e000-0000-4000-8000-${String(i).padStart(12, '0')}`)
const doc: CommissionDoc = {
  ...begun,
  stages: Object.fromEntries(
    startingStages('steelString').map((key, i) => [stageIds[i]!, { order: `a${String(i).padStart(3, '0')}`, key }]),
  ),
}
const orderOf = (changes: Partial<CommissionDoc> = {}, shop: Partial<ShopDoc> = {}): PressOrder => ({
  doc: { ...doc, ...changes },
  revision: revisionCode({ ...doc, ...changes }),
  shop: { ...STARTING_SHOP, name: 'Alder Lane', ...shop },
  doneStages: [],
  dateIso: '2027-03-12',
})
const stageOf = (key: string): PaperId =>
  stagePaper(Object.entries(doc.stages).find(([, stage]) => stage.key === key)![0])

const text = (bytes: Uint8Array) => new TextDecoder().decode(bytes)

describe('papers in one file', () => {
  it('are a PDF, made after telling of each in its order, stage sheets as one', async () => {
    const told: PressProgress[] = []
    const papers: PaperId[] = ['label', stageOf('bendSides'), 'template:bridgeGauge:', stageOf('glueBlocks')]
    const file = await makeFile({ order: orderOf(), papers, form: 'pdf' }, SHEET_FONTS, (one) => told.push(one))
    expect(file.name).toBe('26-007-Meadow-fourteen-fret.pdf')
    expect(text(file.bytes.slice(0, 5))).toBe('%PDF-')
    expect(told).toEqual([
      { done: 0, of: 3, paper: 'label' },
      { done: 1, of: 3, paper: stageOf('bendSides') },
      { done: 2, of: 3, paper: 'template:bridgeGauge:' },
    ])
  })

  it('are a zip with a file for each paper, and what a laser reads for each template', async () => {
    const papers: PaperId[] = ['label', 'template:bridgeGauge:']
    const file = await makeFile({ order: orderOf(), papers, form: 'zip' }, SHEET_FONTS, () => undefined)
    const inside = unzipSync(file.bytes)
    expect(Object.keys(inside)).toEqual([
      '01-Label.pdf',
      '02-Bridge-place-gauge.pdf',
      'svg/02-Bridge-place-gauge.svg',
      'dxf/02-Bridge-place-gauge.dxf',
    ])
    expect(text(inside['svg/02-Bridge-place-gauge.svg']!)).toContain('<g id="cut"')
    expect(text(inside['dxf/02-Bridge-place-gauge.dxf']!)).toContain('SECTION')
    const again = await makeFile({ order: orderOf(), papers, form: 'zip' }, SHEET_FONTS, () => undefined)
    expect(again.bytes).toEqual(file.bytes)
  })

  it('leave alone as the drawing that was asked for', async () => {
    const ask = (form: 'svg' | 'dxfSplines' | 'dxfPolylines') =>
      makeFile({ order: orderOf(), papers: ['template:outlineWhole:'], form }, SHEET_FONTS, () => undefined)
    const [svg, splines, polylines] = [await ask('svg'), await ask('dxfSplines'), await ask('dxfPolylines')]
    expect(svg.name).toBe('26-007-Meadow-fourteen-fret-Outline-whole.svg')
    expect(svg.mime).toBe('image/svg+xml')
    expect(splines.name.endsWith('.dxf')).toBe(true)
    expect(text(polylines.bytes)).not.toContain('\nSPLINE\n')
  })
})

describe('the mark of a paper', () => {
  const ALL: PaperId[] = [
    'specification',
    'drawings',
    'buyingList',
    'label',
    stageOf('bendSides'),
    stageOf('makeBlocks'),
    stageOf('makeBoard'),
    'template:outlineWhole:',
    'template:fretboardPlan:',
    'template:mould:bass',
  ]
  const changedBy = (now: PressOrder): string[] => {
    const then = new Map(marksOf(orderOf(), ALL).map(({ paper, print }) => [paper, print]))
    return marksOf(now, ALL).flatMap(({ paper, print }) => (then.get(paper) === print ? [] : [paper]))
  }

  it('stays while nothing changes but the day, the sheet in the printer, or a stage that was signed off', () => {
    expect(changedBy({ ...orderOf(), dateIso: '2028-01-01' })).toEqual([])
    expect(changedBy({ ...orderOf(), doneStages: stageIds.slice(0, 20) })).toEqual([])
    expect(changedBy(orderOf({}, { printing: { ...STARTING_SHOP.printing, sheet: 'A0', boxAcrossMm: 99 } }))).toEqual(
      [],
    )
  })

  it('changes where a paper shows what changed, and nowhere else', () => {
    const wider = orderOf({ plan: withField(doc.plan, 'board.nutWidthMm', 43.5) as CommissionDoc['plan'] })
    expect(changedBy(wider)).toContain('template:fretboardPlan:')
    expect(changedBy(wider)).toContain('specification')
    expect(changedBy(wider)).not.toContain('template:mould:bass')
    expect(changedBy(wider)).not.toContain(stageOf('makeBlocks'))
    const roomier = orderOf({}, { jigs: { ...STARTING_SHOP.jigs, mouldClearanceMm: 1 } })
    expect(changedBy(roomier)).toEqual(['template:mould:bass'])
  })

  it('is not given for what is gone, or was never a paper of this program', () => {
    expect(marksOf(orderOf(), ['stage:nowhere', 'template:braceArch:gone', 'poster', ''])).toEqual([])
  })
})

describe('the name of a paper', () => {
  it.each([
    ['template:braceArch:b1:treble', { kind: 'template', ref: { name: 'braceArch', of: 'b1:treble' } }],
    ['template:outlineWhole:', { kind: 'template', ref: { name: 'outlineWhole', of: null } }],
    ['stage:s1', { kind: 'stage', stageId: 's1' }],
    ['label', { kind: 'whole', paper: 'label' }],
    ['template:poster:', null],
    ['template:outlineWhole', null],
    ['stage:', null],
  ])('%s', (id, paper) => {
    expect(parsePaperId(id)).toEqual(paper)
  })
})

describe('the sheet of a signed stage', () => {
  const bend = stageOf('bendSides')
  const stageId = bend.slice('stage:'.length)
  const signed: SignedOff = {
    stageId,
    factId: '57a6e000-0000-4000-8000-00000000ffff',
    on: '2027-02-28',
    plan: doc.plan,
    tolerances: {},
    readings: [],
    kept: { 'body.waistMm': 222.2 },
    isTold: true,
  }
  const later = orderOf({ plan: withField(doc.plan, 'rim.depthAtTailMm', 104) as CommissionDoc['plan'] })
  const said = (order: PressOrder, paper = bend): string =>
    openPaperMaker(order)
      .pagesOf([paper])
      .flatMap(({ blocks }) => blocks.flatMap(({ marks }) => marks))
      .flatMap((mark) => (mark.kind === 'text' ? [mark.text] : mark.kind === 'figure' ? [figureText(mark.figure)] : []))
      .join('\n')

  it('shows what was kept, and says so', () => {
    const order = { ...later, doneStages: [stageId], signed: [signed] }
    expect(said(order)).toContain('222.2')
    expect(said(order)).toContain('Signed off on 28 Feb 2027: numbers as they were then.')
    expect(said({ ...later, doneStages: [] })).not.toContain('222.2')
    expect(said({ ...later, doneStages: [] })).not.toContain('Signed off on')
  })

  it('stays as it left when the plan changes later, and another sheet does not', () => {
    const depths = stageOf('radiusRim')
    const now = { ...later, doneStages: [stageId], signed: [{ ...signed, kept: {} }] }
    const prints = (order: PressOrder) => marksOf(order, [bend, depths]).map(({ print }) => print)
    expect(prints(now)[0]).toBe(prints(orderOf())[0])
    expect(prints(now)[1]).not.toBe(prints(orderOf())[1])
    const alsoSigned = { ...now, signed: [...now.signed, { ...signed, stageId: depths.slice(6), kept: {} }] }
    expect(prints(alsoSigned)).toEqual(prints(orderOf()))
  })
})

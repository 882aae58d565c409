import type { Block, Page } from './page.ts'
import type { Piece, Run } from './flow.ts'
import { layCautions, layCautionsInFull, layNote } from './blocks/caution.ts'
import { layHeading, layHeadingAgain, layPlainHeading } from './blocks/heading.ts'
import { layInstructions } from './blocks/instructions.ts'
import { formatDate } from '../format/formatDate.ts'
import { layWork } from './blocks/workLines.ts'
import type { Column } from './pen.ts'
import { CAUTION_KEYS, type CautionKey } from '../record/patterns/cautions.ts'
import { columnOf, setOnPages } from './sheetPages.ts'
import { STAGES } from '../record/patterns/stagePatterns.ts'
import { ownOf, stageFigures } from './stageFigures.ts'
import { sawsNoProfile } from './stageNumbers.ts'
import type { StageOnSheet, StageSheetOrder } from './stageSheetOrder.ts'
import { stageTables } from './stageTables.ts'
import { orderOfStage } from './stageThen.ts'
import { isFromReading, valuesOf } from './targetCell.ts'
import { taperNote } from './taperNote.ts'

/**
 * The stage sheet of one instrument: the chosen stages in order, then their cautions in full, on as many pages as it takes.
 * Laid out once; every writer sets the same pages. No stage chosen: no page.
 */
export function layStageSheet(order: StageSheetOrder): readonly Page[] {
  if (order.stages.length === 0) return []
  const column = columnOf(order.paperSize, 'upright')
  const { planned: _, ...plannedOrder } = order
  const runs = [
    // What a stage that is signed off was built to is on record; its targets are not spoken of as news.
    ...order.stages.map((stage, i) => layStage(stage.done ? plannedOrder : order, stage, column, i === 0)),
    ...cautionsRun(order, column),
  ]
  const { stageSheet, titleBlock } = order.words.paper
  return setOnPages(order, runs, {
    sheet: stageSheet,
    showsOf: (blocks) => showsOf(order, blocks),
    scale: titleBlock.notToScale,
  })
}

function layStage(today: StageSheetOrder, asked: StageOnSheet, column: Column, isFirst: boolean): Run {
  const order = orderOfStage(today, asked)
  // Blocks carry their stage: what it was built to is no part of the page.
  const { built, ...stage } = asked
  const { words } = order
  const pattern = STAGES[stage.key]
  const drawings = pattern.drawings.flatMap((name) => order.drawingOf(name) ?? [])
  const whole = (block: Block, airMm: number, keepsWithNext: boolean): Piece => ({
    kind: 'whole',
    block,
    airMm,
    keepsWithNext,
  })
  const tables = stageTables(order, stage, column)
  const tapers = taperNote(order, stage)
  const noProfile = sawsNoProfile(stage.key, order.doc.plan.rim.method)
  const cautions = cautionsOf(order, stage).map((key) => words.cautions[key])
  const pieces: Piece[] = [
    ...(isFirst ? [whole(layNote(words.paper.legend, column), 0, true)] : []),
    whole(layHeading(order, stage, column), isFirst ? 2.5 : 0, true),
    ...(stage.done && built !== undefined
      ? [whole(layNote(words.paper.signedOff(formatDate(built.on)), column), 0, true)]
      : []),
    whole(layWork(order, stage, column), 0.4, true),
    ...(hasReadings(order, stage) ? [whole(layNote(words.paper.readingLegend, column), 0, true)] : []),
    ...(noProfile ? [whole(layNote(words.paper.profileOnRim, column), 0, true)] : []),
    whole(layInstructions(order, drawings, stage, column), 1, cautions.length > 0),
    ...(cautions.length > 0 ? [whole(layCautions(cautions, stage, column), 2, false)] : []),
    ...(tapers === null ? [] : [whole(layNote(tapers, column), 2, true)]),
    ...tables,
  ]
  return { pieces, again: layHeadingAgain(order, stage, column) }
}

/** Where a stage can hurt: as its maker says, else as the house does. */
const cautionsOf = (order: StageSheetOrder, stage: StageOnSheet): readonly CautionKey[] =>
  ownOf(order, stage).cautions ?? STAGES[stage.key].cautions

/** The cautions the chosen stages call for, each once, in full. */
function cautionsRun(order: StageSheetOrder, column: Column): Run[] {
  const { paper, cautions } = order.words
  const keys = CAUTION_KEYS.filter((key) => order.stages.some((stage) => cautionsOf(order, stage).includes(key)))
  if (keys.length === 0) return []
  // Long ones beside long ones: less paper stays white.
  const lengthOf = (key: CautionKey) => cautions[key].full.join(' ').length
  const byLength = keys.toSorted((a, b) => lengthOf(b) - lengthOf(a))
  const pairs = byLength.flatMap((_, i) => (i % 2 === 0 ? [byLength.slice(i, i + 2)] : []))
  const heading = layPlainHeading(paper.cautionsInFull, column)
  const pieces: Piece[] = [
    { kind: 'whole', block: heading, airMm: 0, keepsWithNext: true },
    { kind: 'whole', block: layNote(paper.cautionsNote, column), airMm: 0, keepsWithNext: true },
    ...pairs.map(
      (pair): Piece => ({
        kind: 'whole',
        block: layCautionsInFull(
          pair.map((key) => cautions[key]),
          column,
        ),
        airMm: 4,
        keepsWithNext: false,
      }),
    ),
  ]
  return [{ pieces, again: null }]
}

/** What a page shows, for its title block. */
function showsOf(order: StageSheetOrder, blocks: readonly Block[]): string {
  const { titleBlock, cautionsInFull } = order.words.paper
  const places = order.stages.filter(({ id }) => blocks.some(({ stage }) => stage?.id === id)).map(({ place }) => place)
  return places.length === 0 ? cautionsInFull.toLowerCase() : titleBlock.stages(places, order.stagesTotal)
}

/** Whether any number a stage prints follows a reading. */
const hasReadings = (order: StageSheetOrder, stage: StageOnSheet): boolean =>
  order.planned !== undefined &&
  stageFigures(order, stage).numbers.some((key) =>
    valuesOf(order, key).some((value) => isFromReading(order, key, value)),
  )

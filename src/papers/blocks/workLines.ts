import { formatHours } from '../../format/formatHours.ts'
import { patternOf } from '../../record/patterns/stagePatterns.ts'
import type { FixtureKey } from '../../record/patterns/fixtureKeys.ts'
import type { PartKey } from '../../record/patterns/partKeys.ts'
import type { Span, StageWork } from '../../record/patterns/stages/stagePattern.ts'
import { workWithin } from '../../record/patterns/workWithin.ts'
import type { StageKey } from '../../record/patterns/stages.ts'
import type { FixtureInHand, StageInHand } from '../../record/stageInHand.ts'
import type { Block } from '../page.ts'
import { blockOf, type Column, linesHeightMm, linesMarks, TYPE } from '../pen.ts'
import { buildingOrder, stagesOf } from '../stageFigures.ts'
import type { StageOnSheet, StageSheetOrder } from '../stageSheetOrder.ts'
import { wrapText } from '../textWidth.ts'

/** What a stage takes, small under its heading: hours and waits, then what it ties up and what must have arrived. */
export function layWork(order: StageSheetOrder, stage: StageOnSheet, column: Column): Block {
  const inHand = stagesOf(order).find(({ id }) => id === stage.id)
  if (inHand === undefined) return blockOf('work', column, 0, [], stage)
  const parts = partsOf(order, stage.key)
  const text = [...timeOf(order, inHand, parts), ...needsOf(order, inHand)].join(' ')
  const lines = wrapText(text, column.widthMm, TYPE.small)
  return blockOf(
    'work',
    column,
    linesHeightMm(lines.length, TYPE.small) + 0.8,
    linesMarks(lines, column.leftMm, 0, { sizePt: TYPE.small }),
    stage,
  )
}

/** A stage, or a finer one whose work it includes. */
interface Part {
  readonly key: StageKey
  readonly pattern: Pick<StageWork, 'waitH' | 'times'>
}

const partsOf = (order: StageSheetOrder, key: StageKey): readonly Part[] =>
  workWithin(key, buildingOrder(order), order.doc.family).map((part) => ({
    key: part,
    pattern: patternOf(part, order.doc.family),
  }))

function timeOf(order: StageSheetOrder, stage: StageInHand, parts: readonly Part[]): readonly string[] {
  const { work: words } = order.words.paper
  const [only] = parts
  const { own } = stage
  const isOneWait = parts.length === 1 || own.waitH !== undefined || own.times !== undefined
  const waits = (isOneWait ? [{ key: stage.key, pattern: stage }] : parts)
    .filter(({ pattern }) => pattern.waitH.high > 0)
    .map(({ key, pattern }) => ({ stage: key, of: durations(pattern.waitH), times: pattern.times }))
  return [
    // Work that no hours are known of says none.
    ...(only?.key === 'ownWork' && stage.handsH.high === 0 ? [] : [words.hands(durations(stage.handsH), stage.times)]),
    ...(waits.length === 0 ? [] : [words.wait(waits)]),
    ...(stage.oneSitting ? [words.oneSitting] : []),
    ...(stage.inHumidity ? [words.inHumidity] : []),
  ]
}

function needsOf(order: StageSheetOrder, stage: StageInHand): readonly string[] {
  const { work: words } = order.words.paper
  const all = stagesOf(order)
  const lastPlace = (use: FixtureInHand): number => all.find(({ id }) => id === use.until)?.place ?? stage.place
  const called = ({ fixture }: FixtureInHand): string => words.fixture[fixture as FixtureKey] ?? fixture
  const namesOf = (isMeant: (use: FixtureInHand) => boolean): string =>
    [...new Set(stage.fixtures.filter(isMeant).map(called))].join(', ')
  const isHeldOn = (use: FixtureInHand) => use.held === 'until' && lastPlace(use) > stage.place
  const inHand = namesOf(({ held }) => held === 'working')
  const inWait = namesOf((use) => use.held !== 'working' && !isHeldOn(use))
  const taken = [
    ...stage.fixtures.filter(isHeldOn).map((use) => words.until(called(use), lastPlace(use))),
    ...(inWait === '' ? [] : [words.setting(inWait)]),
    ...(inHand === '' ? [] : [inHand]),
  ]
  const freed = all
    .filter(({ id }) => id !== stage.id)
    .flatMap(({ fixtures }) => fixtures.filter(({ held, until }) => held === 'until' && until === stage.id))
  return [
    ...(taken.length === 0 ? [] : [words.needs(taken)]),
    ...(freed.length === 0 ? [] : [words.frees(freed.map(called))]),
    ...(stage.parts.length === 0 ? [] : [words.parts(stage.parts.map((part) => words.part[part as PartKey] ?? part))]),
  ]
}

const durations = ({ low, likely, high }: Span) => ({
  low: formatHours(low),
  likely: formatHours(likely),
  high: formatHours(high),
})

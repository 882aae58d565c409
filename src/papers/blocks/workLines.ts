import { formatHours } from '../../format/formatHours.ts'
import { patternOf } from '../../record/patterns/stagePatterns.ts'
import type { FixtureUse, Span, StagePattern } from '../../record/patterns/stages/stagePattern.ts'
import { hostOf } from '../../record/patterns/figuresOfStage.ts'
import { heldUntil, workWithin } from '../../record/patterns/stagesWithin.ts'
import { STAGE_KEYS, type StageKey } from '../../record/patterns/stages.ts'
import type { Block } from '../page.ts'
import { blockOf, type Column, linesHeightMm, linesMarks, TYPE } from '../pen.ts'
import { buildingOrder } from '../stageFigures.ts'
import type { StageOnSheet, StageSheetOrder } from '../stageSheetOrder.ts'
import { wrapText } from '../textWidth.ts'

/** What a stage takes, small under its heading: hours and waits, then what it ties up and what must have arrived. */
export function layWork(order: StageSheetOrder, stage: StageOnSheet, column: Column): Block {
  const building = buildingOrder(order)
  const parts = workOf(order, building, stage.key)
  const text = [...timeOf(order, parts), ...needsOf(order, building, stage, parts)].join(' ')
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
  readonly pattern: StagePattern
}

const workOf = ({ doc }: StageSheetOrder, building: readonly StageKey[], key: StageKey): readonly Part[] =>
  workWithin(key, building, doc.family).map((part) => ({ key: part, pattern: patternOf(part, doc.family) }))

function timeOf(order: StageSheetOrder, parts: readonly Part[]): readonly string[] {
  const { work: words } = order.words.paper
  const [only] = parts
  const hands =
    parts.length === 1 && only !== undefined
      ? words.hands(durations(only.pattern.handsH), only.pattern.times)
      : words.hands(durations(allHands(parts)), 1)
  const waits = parts
    .filter(({ pattern }) => pattern.waitH.high > 0)
    .map(({ key, pattern }) => ({ stage: key, of: durations(pattern.waitH), times: pattern.times }))
  return [
    hands,
    ...(waits.length === 0 ? [] : [words.wait(waits)]),
    ...(parts.some(({ pattern }) => pattern.oneSitting) ? [words.oneSitting] : []),
    ...(parts.some(({ pattern }) => pattern.inHumidity) ? [words.inHumidity] : []),
  ]
}

function needsOf(
  order: StageSheetOrder,
  building: readonly StageKey[],
  stage: StageOnSheet,
  parts: readonly Part[],
): readonly string[] {
  const { work: words } = order.words.paper
  const uses = parts.flatMap(({ pattern }) => pattern.fixtures)
  const lastPlace = (use: FixtureUse): number => building.indexOf(heldUntil(use, building) ?? stage.key) + 1
  const namesOf = (isMeant: (use: FixtureUse) => boolean): string =>
    [...new Set(uses.filter(isMeant).map(({ fixture }) => words.fixture[fixture]))].join(', ')
  const isHeldOn = (use: FixtureUse) => use.held === 'until' && lastPlace(use) > stage.place
  const inHand = namesOf(({ held }) => held === 'working')
  const inWait = namesOf((use) => use.held !== 'working' && !isHeldOn(use))
  const taken = [
    ...uses.filter(isHeldOn).map((use) => words.until(words.fixture[use.fixture], lastPlace(use))),
    ...(inWait === '' ? [] : [words.setting(inWait)]),
    ...(inHand === '' ? [] : [inHand]),
  ]
  const freed = STAGE_KEYS.flatMap((key) => {
    const host = hostOf(key, building)
    if (host === null || host === stage.key) return []
    return patternOf(key, order.doc.family).fixtures.filter((use) => heldUntil(use, building) === stage.key)
  })
  const arrived = [...new Set(parts.flatMap(({ pattern }) => pattern.parts))]
  return [
    ...(taken.length === 0 ? [] : [words.needs(taken)]),
    ...(freed.length === 0 ? [] : [words.frees(freed.map(({ fixture }) => words.fixture[fixture]))]),
    ...(arrived.length === 0 ? [] : [words.parts(arrived.map((part) => words.part[part]))]),
  ]
}

const durations = ({ low, likely, high }: Span) => ({
  low: formatHours(low),
  likely: formatHours(likely),
  high: formatHours(high),
})

const allHands = (parts: readonly Part[]): Span => {
  const total = (which: keyof Span) =>
    parts.reduce((sum, { pattern }) => sum + pattern.handsH[which] * pattern.times, 0)
  return { low: total('low'), likely: total('likely'), high: total('high') }
}

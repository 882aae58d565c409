import { formatHours } from '../../format/formatHours.ts'
import { patternOf } from '../../record/patterns/stagePatterns.ts'
import type { Span, StagePattern } from '../../record/patterns/stages/stagePattern.ts'
import { heldUntil, hostOf, workWithin } from '../../record/patterns/stagesWithin.ts'
import { STAGE_KEYS, type StageKey } from '../../record/patterns/stages.ts'
import type { Block } from '../page.ts'
import { blockOf, type Column, linesHeightMm, linesMarks, TYPE } from '../pen.ts'
import { buildingOrder } from '../stageFigures.ts'
import type { StageOnSheet, StageSheetOrder } from '../stageSheetOrder.ts'
import { wrapText } from '../textWidth.ts'

/** What a stage takes, small under its heading: hours and waits, then what it ties up and what must have arrived. */
export function layWork(order: StageSheetOrder, stage: StageOnSheet, column: Column): Block {
  const lines = workSentences(order, stage).flatMap((line) => wrapText(line, column.widthMm, TYPE.small))
  return blockOf(
    'work',
    column,
    linesHeightMm(lines.length, TYPE.small) + 0.8,
    linesMarks(lines, column.leftMm, 0, { sizePt: TYPE.small }),
    stage,
  )
}

/** Two lines, or one where nothing is tied up and nothing has to arrive. */
function workSentences(order: StageSheetOrder, stage: StageOnSheet): readonly string[] {
  const { work: words } = order.words.paper
  const building = buildingOrder(order)
  const parts = workOf(order, building, stage.key)
  const [only] = parts
  const waits = parts.filter(({ pattern }) => pattern.waitH.high > 0)
  const hands =
    parts.length === 1 && only !== undefined
      ? words.hands(durations(only.pattern.handsH), only.pattern.times)
      : words.hands(durations(allHands(parts.map(({ pattern }) => pattern))), 1)
  const time = [
    hands,
    ...(waits.length === 0
      ? []
      : [
          words.wait(
            waits.map(({ key, pattern }) => ({
              stage: key,
              of: durations(pattern.waitH),
              times: pattern.times,
            })),
          ),
        ]),
    ...(parts.some(({ pattern }) => pattern.oneSitting) ? [words.oneSitting] : []),
    ...(parts.some(({ pattern }) => pattern.inHumidity) ? [words.inHumidity] : []),
  ]
  const arrived = [...new Set(parts.flatMap(({ pattern }) => pattern.parts))].map((part) => words.part[part])
  const taken = [...new Set(parts.flatMap(({ pattern }) => pattern.fixtures.map(takenAs)))]
  const freed = STAGE_KEYS.flatMap((key) => {
    const host = hostOf(key, building)
    if (host === null || host === stage.key) return []
    return patternOf(key, order.doc.family).fixtures.filter((use) => heldUntil(use, building) === stage.key)
  })
  const needs = [
    ...(taken.length === 0 ? [] : [words.needs(taken)]),
    ...(freed.length === 0 ? [] : [words.frees(freed.map(({ fixture }) => words.fixture[fixture]))]),
    ...(arrived.length === 0 ? [] : [words.parts(arrived)]),
  ]
  return [time, needs].filter((line) => line.length > 0).map((line) => line.join(' '))

  function takenAs(use: StagePattern['fixtures'][number]): string {
    const name = words.fixture[use.fixture]
    if (use.held === 'working') return name
    const last = heldUntil(use, building)
    const place = last === null ? 0 : building.indexOf(last) + 1
    return place > stage.place ? words.until(name, place) : words.setting(name)
  }
}

interface Part {
  readonly key: StageKey
  readonly pattern: StagePattern
}

const workOf = ({ doc }: StageSheetOrder, building: readonly StageKey[], key: StageKey): readonly Part[] =>
  workWithin(key, building, doc.family).map((part) => ({ key: part, pattern: patternOf(part, doc.family) }))

const durations = ({ low, likely, high }: Span) => ({
  low: formatHours(low),
  likely: formatHours(likely),
  high: formatHours(high),
})

const allHands = (patterns: readonly StagePattern[]): Span => {
  const total = (which: keyof Span) => patterns.reduce((sum, { handsH, times }) => sum + handsH[which] * times, 0)
  return { low: total('low'), likely: total('likely'), high: total('high') }
}

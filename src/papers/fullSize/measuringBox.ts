import { MM_PER_INCH } from '../../core/units/length.ts'
import { decimalText } from '../../format/rounding.ts'
import type { FullSizeWords } from '../../words/fullSize.ts'
import type { Block, Mark } from '../page.ts'
import { boxMark, level, linesHeightMm, linesMarks, textMark, TYPE, upright } from '../pen.ts'
import { wrapText } from '../textWidth.ts'
import type { TileOnPage } from './tileOnPage.ts'

/** A ruler is laid to the middle of its line: the line is fine. */
const PEN_MM = 0.15
const BOX = { widthMm: 100, heightMm: 20 } as const
const INCHES = 4
const PAD_MM = 2.4
const SMALL_PT = 7.5
/** From the box to the inch scale under it. */
const UNDER_MM = 1.6

type Times = TileOnPage['times']

/** How wide the measuring box and its scale stand on the page. */
export const measuringWidthMm = (times: Times): number => INCHES * MM_PER_INCH * times.across

/** A box of 100 by 20 mm and a scale of 4 in, set as much larger as the plot is, with the sentence to measure it. */
export function layMeasuringBox(words: FullSizeWords, times: Times, xMm: number, yMm: number, heightMm: number): Block {
  const box = { xMm, yMm: yMm + PEN_MM, widthMm: BOX.widthMm * times.across, heightMm: BOX.heightMm * times.along }
  const foot = box.yMm + box.heightMm
  const tens = Array.from({ length: 9 }, (_, i) => xMm + (i + 1) * 10 * times.across)
  const marks: Mark[] = [
    boxMark(box, 'frame', PEN_MM),
    ...tens.map((x, i) => upright(x, foot - (i === 4 ? 2 : 1.2), foot, PEN_MM)),
    ...inBox(words, times, box),
    ...inchScale(words, times, xMm, foot + UNDER_MM),
  ]
  return { kind: 'measuringBox', area: { xMm, yMm, widthMm: measuringWidthMm(times), heightMm }, stage: null, marks }
}

function inBox({ measure }: FullSizeWords, times: Times, box: { xMm: number; yMm: number; widthMm: number }): Mark[] {
  const { title, says, off, corrected } = measure
  const left = box.xMm + PAD_MM
  const top = box.yMm + 1.2
  const isTrue = times.across === 1 && times.along === 1
  const said = [says, isTrue ? off : corrected(decimalText(times.across, 4), decimalText(times.along, 4))]
  const lines = said.flatMap((line) => wrapText(line, box.widthMm - 2 * PAD_MM, TYPE.caption))
  return [
    ...linesMarks([title], left, top, { sizePt: TYPE.text, weight: 'strong' }),
    ...linesMarks(lines, left, top + linesHeightMm(1, TYPE.text), { sizePt: TYPE.caption }),
  ]
}

/** Inches in quarters, figures under the whole ones. */
function inchScale({ measure }: FullSizeWords, times: Times, xMm: number, yMm: number): Mark[] {
  const at = (inches: number) => xMm + inches * MM_PER_INCH * times.across
  const quarters = Array.from({ length: INCHES * 4 + 1 }, (_, i) => i)
  const deep = (quarter: number) => (quarter % 4 === 0 ? 2.6 : quarter % 2 === 0 ? 1.9 : 1.2)
  return [
    level(at(0), at(INCHES), yMm, PEN_MM),
    ...quarters.map((quarter) => upright(at(quarter / 4), yMm, yMm + deep(quarter), PEN_MM)),
    ...Array.from({ length: INCHES + 1 }, (_, inch) =>
      textMark(inch === INCHES ? measure.inches(inch) : String(inch), at(inch), yMm + 5, {
        sizePt: SMALL_PT,
        anchor: inch === 0 ? 'start' : inch === INCHES ? 'end' : 'middle',
      }),
    ),
  ]
}

/** A scale of 100 mm along the page, in its left margin: the box is too low to tell how far off a printer is that way. */
export function layUprightScale(words: FullSizeWords, times: Times, marginMm: number, topMm: number): Block {
  const x = marginMm - 3
  const lengthMm = 100 * times.along
  const ticks = Array.from({ length: 11 }, (_, i) => i)
  return {
    kind: 'uprightScale',
    area: { xMm: x - 5, yMm: topMm - 5, widthMm: 6, heightMm: lengthMm + 6 },
    stage: null,
    marks: [
      upright(x, topMm, topMm + lengthMm, PEN_MM),
      ...ticks.map((i) => level(x - (i % 5 === 0 ? 2.4 : 1.4), x, topMm + i * 10 * times.along, PEN_MM)),
      textMark(words.measure.upright, x + 0.6, topMm - 1.6, { sizePt: SMALL_PT, anchor: 'end' }),
    ],
  }
}

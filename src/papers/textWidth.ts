import type { Figure } from '../format/figure.ts'
import { MM_PER_PT, type Weight } from './page.ts'

/**
 * Advance widths of the signs U+0020 to U+007E in thousandths of the type size, read from the sheet's lettering;
 * digits have their tabular width.
 */
const PLAIN = [
  200, 319, 263, 659, 559, 848, 658, 132, 261, 261, 397, 500, 264, 394, 278, 400, 527, 527, 527, 527, 527, 527, 527,
  527, 527, 527, 339, 311, 500, 500, 500, 461, 827, 607, 627, 607, 618, 605, 568, 613, 654, 259, 577, 611, 568, 715,
  676, 622, 592, 576, 612, 584, 569, 648, 589, 878, 589, 567, 549, 380, 400, 380, 450, 484, 195, 511, 546, 520, 546,
  533, 356, 535, 539, 255, 245, 501, 230, 827, 539, 545, 552, 552, 364, 481, 364, 536, 475, 721, 477, 461, 445, 302,
  166, 302, 501,
]
const STRONG = [
  200, 335, 325, 677, 567, 833, 688, 155, 316, 316, 398, 491, 265, 404, 273, 447, 538, 538, 538, 538, 538, 538, 538,
  538, 538, 538, 355, 314, 491, 491, 491, 500, 821, 648, 622, 608, 618, 592, 563, 613, 637, 262, 581, 620, 571, 715,
  669, 621, 595, 587, 613, 591, 579, 636, 610, 878, 616, 599, 554, 403, 447, 403, 465, 509, 219, 522, 559, 531, 559,
  541, 376, 549, 544, 255, 251, 522, 239, 829, 544, 556, 563, 563, 376, 493, 374, 541, 504, 761, 516, 489, 455, 350,
  190, 350, 522,
]
const WIDTHS = { plain: PLAIN, strong: STRONG } as const
const FIRST = 32

/** Signs outside that range which the papers use; anything else counts as a wide sign. */
const OTHERS: Readonly<Record<string, number>> = {
  '°': 381,
  '±': 500,
  '×': 437,
  '–': 467,
  '−': 500,
  '’': 181,
  '“': 329,
  '”': 329,
  '²': 337,
  '³': 323,
  '⁄': 235,
  '″': 373,
  '\u2009': 200,
  '\u00a0': 275,
}
const WIDE = 1000
/** Another face of the same size, where the sheet's own cannot be loaded, runs about this much wider. */
const SLACK = 1.06

/** Sizes of the parts of a figure against the figure itself. A unit is small, but never under 7.5 points. */
const UNIT_SCALE = 0.6
const LEAST_UNIT_PT = 7.5
const FRACTION_SCALE = 0.62

/** Width a text may take, mm, at a size in points: an estimate on the safe side. */
export function textWidthMm(text: string, sizePt: number, weight: Weight = 'plain'): number {
  let thousandths = 0
  for (const sign of text) thousandths += WIDTHS[weight][(sign.codePointAt(0) ?? 0) - FIRST] ?? OTHERS[sign] ?? WIDE
  return (thousandths / 1000) * sizePt * MM_PER_PT * SLACK
}

/** The parts a figure is set from, left to right, each with its size against the figure's and how far it is raised. */
export function figureParts(figure: Figure, word: string, sizePt: number): readonly FigurePart[] {
  const unitScale = Math.min(1, Math.max(UNIT_SCALE, LEAST_UNIT_PT / sizePt))
  if (figure.word !== null) return [{ text: word, scale: 1, raise: 0 }]
  const { fraction, unit, remainder } = figure
  const { side } = figure
  const parts: FigurePart[] = [
    ...(side === undefined ? [] : [{ text: `${side}\u00a0`, scale: unitScale, raise: 0 }]),
    { text: `${figure.sign === '-' && side === undefined ? '−' : ''}${figure.whole}`, scale: 1, raise: 0 },
  ]
  if (fraction !== null) {
    if (figure.whole !== '') parts.push({ text: '\u2009', scale: 1, raise: 0 })
    parts.push({ text: String(fraction.numerator), scale: FRACTION_SCALE, raise: 0.3 })
    parts.push({ text: '⁄', scale: 1, raise: 0 })
    parts.push({ text: String(fraction.denominator), scale: FRACTION_SCALE, raise: 0 })
  }
  const tight = unit === '"' || unit === '°'
  if (tight) parts.push({ text: unit === '"' ? '″' : unit, scale: 1, raise: 0 })
  else if (unit !== '') parts.push({ text: `\u00a0${unit}`, scale: unitScale, raise: 0 })
  if (remainder !== null) parts.push({ text: `\u00a0${remainder.replace('-', '−')}`, scale: unitScale, raise: 0 })
  if (figure.noted !== undefined) parts.push({ text: `\u2009${figure.noted}`, scale: unitScale, raise: 0.3 })
  return parts.filter((part) => part.text !== '')
}
export interface FigurePart {
  readonly text: string
  readonly scale: number
  readonly raise: number
}

/** Width a figure may take, mm. */
export function figureWidthMm(figure: Figure, word: string, sizePt: number, weight: Weight = 'plain'): number {
  return figureParts(figure, word, sizePt).reduce(
    (sum, part) => sum + textWidthMm(part.text, sizePt * part.scale, weight),
    0,
  )
}

/** A text broken into lines no wider than asked; a word that is wider on its own is broken between its letters. */
export function wrapText(text: string, widthMm: number, sizePt: number, weight: Weight = 'plain'): readonly string[] {
  const fits = (line: string) => textWidthMm(line, sizePt, weight) <= widthMm
  const lines: string[] = []
  let line = ''
  for (const word of text.split(/\s+/u).filter((part) => part !== '')) {
    const longer = line === '' ? word : `${line} ${word}`
    if (fits(longer)) {
      line = longer
      continue
    }
    if (line !== '') lines.push(line)
    line = ''
    for (const letter of word) {
      if (line !== '' && !fits(line + letter)) {
        lines.push(line)
        line = ''
      }
      line += letter
    }
  }
  return line === '' ? lines : [...lines, line]
}

/** A text cut to one line, with an ellipsis where something was left off. */
export function cutText(text: string, widthMm: number, sizePt: number, weight: Weight = 'plain'): string {
  if (textWidthMm(text, sizePt, weight) <= widthMm) return text
  let kept = ''
  for (const letter of text) {
    if (textWidthMm(`${kept}${letter}…`, sizePt, weight) > widthMm) break
    kept += letter
  }
  return `${kept.trimEnd()}…`
}

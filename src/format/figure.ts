/** A number ready to be set, in pieces, so that a view can set the fraction as a fraction and the unit small. */
export type Figure = {
  readonly sign: '' | '-'
  /** Of a place off the centreline: bass or treble, set before it in place of the sign, which stays for spreadsheets. */
  readonly side?: string
  /** Digits before the fraction, decimals included: 98.5, 3, 14' 8; empty for a bare fraction. */
  readonly whole: string
  readonly fraction: { readonly numerator: number; readonly denominator: number } | null
  /** What the nearest 64th leaves over, to be added as it stands: +4 thou, -3 thou. */
  readonly remainder: string | null
  /** mm, m, in, ", ft, thou, °, cm², sq in, l, cu in, cents, %, N, MPa, GPa, or nothing */
  readonly unit: string
  /** A sign set after it, told of in a legend; left out where it has none. */
  readonly noted?: string
  /** Code of the word that stands in place of a number; the word itself is in words/. */
  readonly word: 'flat' | 'none' | null
}

/** A figure that is a word and no number. */
export const wordFigure = (word: 'flat' | 'none'): Figure => ({
  sign: '',
  whole: '',
  fraction: null,
  remainder: null,
  unit: '',
  word,
})

/** A figure of digits and a unit only. A value that rounds to nothing has no sign. */
export function plainFigure(value: number, digits: string, unit: string): Figure {
  const sign = value < 0 && /[1-9]/u.test(digits) ? '-' : ''
  return { sign, whole: digits, fraction: null, remainder: null, unit, word: null }
}

/** A figure on one line, as parseLength, parseAngle or parseDecimal reads it back: 98.5 mm, 3 7/8", -3 7/8" -4 thou, 14' 8 1/2", 1.31°. */
export function figureText(figure: Figure): string {
  if (figure.word !== null) return figure.word
  const { fraction, unit } = figure
  const written = fraction === null ? '' : `${fraction.numerator}/${fraction.denominator}`
  const number = [figure.whole, written].filter((piece) => piece !== '').join(' ')
  const gap = unit === '' || unit === '"' || unit === '°' || unit === '%' ? '' : ' '
  const remainder = figure.remainder === null ? '' : ` ${figure.remainder}`
  const before = figure.side === undefined ? figure.sign : `${figure.side} `
  const noted = figure.noted === undefined ? '' : ` ${figure.noted}`
  return `${before}${number}${gap}${unit}${remainder}${noted}`
}

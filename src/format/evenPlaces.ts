import type { Figure } from './figure.ts'

/** Units in which a figure is written with no more decimals than it has, so that noughts say no more than is known. */
const TRIMMED = new Set(['mm', 'm'])

const DECIMALS = /^\d+(?:\.(\d+))?$/u
const placesOf = (figure: Figure): number =>
  TRIMMED.has(figure.unit) ? (DECIMALS.exec(figure.whole)?.[1]?.length ?? 0) : 0

/** Figures of one column with one number of decimals, the most that any of them has: 8.5 m and 8.499 m as 8.500 m and 8.499 m. */
export function evenPlaces(figures: readonly Figure[]): Figure[] {
  const places = figures.reduce((most, figure) => Math.max(most, placesOf(figure)), 0)
  return figures.map((figure) => {
    const missing = places - placesOf(figure)
    if (missing === 0 || !TRIMMED.has(figure.unit) || !DECIMALS.test(figure.whole)) return figure
    const point = figure.whole.includes('.') ? '' : '.'
    return { ...figure, whole: `${figure.whole}${point}${'0'.repeat(missing)}` }
  })
}

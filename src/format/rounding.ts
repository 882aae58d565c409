/** False for NaN, the infinite, and what is so far from zero that its digits mean nothing (1e15, a thousand million km in mm). */
export const canBeShown = (value: number): boolean => Math.abs(value) <= 1e15

/**
 * The whole number of steps nearest to a value, halves away from zero, never -0. Fifteen digits are looked at, so that 98.45, which
 * a double holds as a hair more or less, goes up like the number on paper.
 */
export function stepsNearest(value: number, step: number): number {
  const steps = Number((Math.abs(value) / step).toPrecision(15))
  return Math.sign(value) * Math.round(steps) + 0
}

/**
 * The whole number of steps not below (`up`) or not above (`down`) a value; one that misses a step by a double's last digits is
 * that step.
 */
export function stepsInward(value: number, step: number, direction: 'up' | 'down'): number {
  const steps = value / step
  const nearest = Math.round(steps)
  if (Math.abs(steps - nearest) <= 1e-9 + 1e-14 * Math.abs(steps)) return nearest + 0
  return (direction === 'up' ? Math.ceil(steps) : Math.floor(steps)) + 0
}

/** A value of zero or more written with a fixed number of decimals, halves up, never with an exponent. */
export function decimalText(value: number, places: number): string {
  const steps = BigInt(stepsNearest(value, 10 ** -places))
  const digits = steps.toString().padStart(places + 1, '0')
  return places === 0 ? digits : `${digits.slice(0, -places)}.${digits.slice(-places)}`
}

/** 2.20 as 2.2 and 2.00 as 2.0 for `keep` 1, as 2 for `keep` 0: ending noughts go, `keep` decimals stay. */
export function trimZeros(decimal: string, keep: 0 | 1): string {
  return keep === 1
    ? decimal.replace(/(\.\d+?)0+$/u, '$1')
    : decimal.replace(/\.?0+$/u, (end) => (end.startsWith('.') ? '' : end))
}

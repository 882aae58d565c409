import type { Duration } from './formatHours.ts'
import { decimalText, stepsNearest, trimZeros } from './rounding.ts'

/** From here on nobody counts quarters. */
const WHOLE_FROM_H = 10

/**
 * Hours of work as a duration: never in days, since nobody works round the clock. Under one hour in minutes, to 5; then in hours, to a quarter;
 * from ten on to whole ones. What is below zero or not finite counts as none.
 */
export function formatWorkHours(hours: number): Duration {
  const h = Number.isFinite(hours) && hours > 0 ? hours : 0
  const minutes = stepsNearest(h * 60, 5) * 5
  if (minutes < 60) return { amount: String(minutes), unit: 'min' }
  const step = h < WHOLE_FROM_H ? 0.25 : 1
  return { amount: trimZeros(trimZeros(decimalText(stepsNearest(h, step) * step, 2), 1), 0), unit: 'h' }
}

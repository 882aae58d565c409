import { decimalText, stepsNearest, trimZeros } from './rounding.ts'

/** A stretch of time as a bench says it: an amount and its unit. */
export interface Duration {
  readonly amount: string
  readonly unit: 'min' | 'h' | 'day'
}

const MINUTES = 60
const DAY_H = 24
/** From two days on nobody counts hours. */
const DAYS_FROM_H = 48

/**
 * Hours as a duration: under one hour in minutes, to 5; then in hours, to a quarter; from two days on in days, to a half. What is below
 * zero or not finite counts as none.
 */
export function formatHours(hours: number): Duration {
  const short = underAnHour(hours)
  if (short !== null) return short
  if (hours < DAYS_FROM_H) return { amount: inSteps(hours, 0.25), unit: 'h' }
  return { amount: inSteps(hours / DAY_H, 0.5), unit: 'day' }
}

/** Minutes, to 5, where it is less than an hour; null: it is more. What is below zero or not finite counts as none. */
export function underAnHour(hours: number): Duration | null {
  const h = Number.isFinite(hours) && hours > 0 ? hours : 0
  const minutes = stepsNearest(h * MINUTES, 5) * 5
  return minutes < MINUTES ? { amount: String(minutes), unit: 'min' } : null
}

/** The nearest of these steps, written as short as it is. */
export const inSteps = (value: number, step: number): string =>
  trimZeros(trimZeros(decimalText(stepsNearest(value, step) * step, 2), 1), 0)

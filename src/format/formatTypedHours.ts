import { decimalText, trimZeros } from './rounding.ts'

/** Hours as they are typed: 12, 0.5, 1.25; to a hundredth. What is no number, or less than nothing, is 0. */
export const formatTypedHours = (hours: number): string =>
  trimZeros(trimZeros(decimalText(Number.isFinite(hours) ? Math.max(hours, 0) : 0, 2), 1), 0)

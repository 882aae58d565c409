import { expect } from 'vitest'

/** Two numbers no further apart than the tolerance, both finite. */
export function expectWithin(actual: unknown, expected: number, tolerance: number, what = ''): void {
  const close = typeof actual === 'number' && Number.isFinite(actual) && Math.abs(actual - expected) <= tolerance
  expect(close, `${what} is ${String(actual)}, should be ${expected} within ${tolerance}`).toBe(true)
}

export const DEG = Math.PI / 180

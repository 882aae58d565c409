import { type Duration, inSteps, underAnHour } from './formatHours.ts'

/** From here on nobody counts quarters. */
const WHOLE_FROM_H = 10

/**
 * Hours of work as a duration: never in days, since nobody works round the clock. Under one hour in minutes, to 5; then in hours, to a quarter;
 * from ten on to whole ones. What is below zero or not finite counts as none.
 */
export function formatWorkHours(hours: number): Duration {
  return underAnHour(hours) ?? { amount: inSteps(hours, hours < WHOLE_FROM_H ? 0.25 : 1), unit: 'h' }
}

const SECOND_MS = 1000
const MINUTE = 60
const HOUR = 3600
const DAY = 86_400

/**
 * Time left as a maker reads it, always rounded up so that nothing is called ready too soon: in the last hour 04:59, before that 3 h 12 min, from two
 * days on 2 d 4 h. What has run out, or is no number, is 00:00.
 */
export function formatTimeLeft(leftMs: number): string {
  const seconds = Number.isFinite(leftMs) ? Math.max(Math.ceil(leftMs / SECOND_MS), 0) : 0
  if (seconds < HOUR) return `${twoDigits(Math.floor(seconds / MINUTE))}:${twoDigits(seconds % MINUTE)}`
  if (seconds < 2 * DAY) return hoursAndMinutes(Math.ceil(seconds / MINUTE))
  return daysAndHours(Math.ceil(seconds / HOUR))
}

/** How long ago, rounded down, as 40 min, 3 h 12 min, 2 d 4 h; null in the first minute. */
export function formatTimePast(pastMs: number): string | null {
  const seconds = Number.isFinite(pastMs) ? Math.floor(pastMs / SECOND_MS) : 0
  if (seconds < MINUTE) return null
  if (seconds < HOUR) return `${Math.floor(seconds / MINUTE)}\u00a0min`
  return seconds < 2 * DAY ? hoursAndMinutes(Math.floor(seconds / MINUTE)) : daysAndHours(Math.floor(seconds / HOUR))
}

const twoDigits = (count: number): string => String(count).padStart(2, '0')
const hoursAndMinutes = (minutes: number): string => `${Math.floor(minutes / 60)}\u00a0h ${minutes % 60}\u00a0min`
const daysAndHours = (hours: number): string => `${Math.floor(hours / 24)}\u00a0d ${hours % 24}\u00a0h`

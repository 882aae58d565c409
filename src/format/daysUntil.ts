const MS_PER_DAY = 86_400_000

/** Whole days from one calendar day (ISO) to another: negative when it has passed, null where either is no day. */
export function daysUntil(isoDay: string, today: string): number | null {
  const [to, from] = [isoDay, today].map((day) => Date.parse(`${day.slice(0, 10)}T00:00:00Z`))
  if (to === undefined || from === undefined || Number.isNaN(to) || Number.isNaN(from)) return null
  return Math.round((to - from) / MS_PER_DAY)
}

const inLocale = new Map<string, Intl.DateTimeFormat>()

/**
 * A calendar date (2027-03-12) as a maker reads it: 12 Mar 2027. A calendar date has no clock, so no time zone moves it. What is
 * not a date of the calendar comes back as it was.
 */
export function formatDate(isoDate: string, locale = 'en-GB'): string {
  if (!/^\d{4}-\d{2}-\d{2}$/u.test(isoDate)) return isoDate
  const midnight = new Date(`${isoDate}T00:00:00Z`)
  const exists = !Number.isNaN(midnight.getTime()) && midnight.toISOString().startsWith(isoDate)
  return exists ? dateFormat(locale).format(midnight) : isoDate
}

function dateFormat(locale: string): Intl.DateTimeFormat {
  const known = inLocale.get(locale)
  if (known !== undefined) return known
  const format = new Intl.DateTimeFormat(locale, { day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC' })
  inLocale.set(locale, format)
  return format
}

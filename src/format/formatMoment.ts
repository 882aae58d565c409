/** An ISO moment as a maker reads it, on the device's own clock: 12 Mar 2027, 14:05. What is no moment comes back as it was. */
export function formatMoment(isoMoment: string, locale = 'en-GB'): string {
  const moment = new Date(isoMoment)
  if (Number.isNaN(moment.getTime())) return isoMoment
  return new Intl.DateTimeFormat(locale, {
    day: 'numeric',
    month: 'short',
    year: 'numeric',
    hour: '2-digit',
    minute: '2-digit',
  }).format(moment)
}

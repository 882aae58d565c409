/** Hours as a clock shows them, whole minutes that are full: 0:07, 12:40. */
export function formatRunningTime(hours: number): string {
  const minutes = Math.floor(hours * 60 + 1e-6)
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`
}

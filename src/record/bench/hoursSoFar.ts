import type { StageWork } from './work.ts'

const HOUR_MS = 3_600_000

/** The hours on a stage until now, what its running clock has counted included; `nowIso`: the moment. A clock set back counts as no time. */
export function hoursSoFar(work: StageWork | undefined, nowIso: string): number {
  if (work === undefined) return 0
  const { running, hours } = work
  if (running === null) return hours
  return hours + Math.max(Date.parse(nowIso) - Date.parse(running.since), 0) / HOUR_MS / running.sharedBy
}

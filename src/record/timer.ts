import * as z from 'zod/mini'

/** Ninety days: longer than any finish is left alone. */
export const MOST_TIMER_SECONDS = 90 * 24 * 3600

/** Something that sets, dries or settles on this device's clock. It belongs to the device, not to the instrument's record. */
const timer = z.strictObject({
  id: z.uuid(),
  docId: z.uuid(),
  stageId: z.nullable(z.uuid()),
  /** The instrument's number as it was shown then. */
  number: z.string().check(z.maxLength(40)),
  /** What sets: the stage's title, or the maker's own words. */
  label: z.string().check(z.maxLength(200)),
  startedAt: z.iso.datetime(),
  endsAt: z.iso.datetime(),
  /** When it was stopped, or the maker said that it is seen to. */
  endedAt: z.nullable(z.iso.datetime()),
  /** When one of the tabs has given notice that it ran out. */
  noticedAt: z.nullable(z.iso.datetime()),
})
export type Timer = z.infer<typeof timer>

/** A stored row as a timer; null where it cannot be read. */
export function readTimer(row: unknown): Timer | null {
  const read = timer.safeParse(row)
  return read.success ? read.data : null
}

export interface TimerBeginning {
  readonly docId: string
  readonly stageId: string | null
  readonly number: string
  readonly label: string
  /** Held to between 1 second and ninety days; what is no number counts as 1. */
  readonly seconds: number
}

export function beginTimer(id: string, beginning: TimerBeginning, now: string): Timer {
  const { docId, stageId, number, label, seconds } = beginning
  const held = Math.min(Math.max(Number.isNaN(seconds) ? 1 : seconds, 1), MOST_TIMER_SECONDS)
  return {
    id,
    docId,
    stageId,
    number: number.slice(0, 40),
    label: label.slice(0, 200),
    startedAt: now,
    endsAt: later(now, held),
    endedAt: null,
    noticedAt: null,
  }
}

/** Time left, ms, by the clock and nothing else: what the device slept through has passed. Negative once it has run out. */
export const timeLeftMs = ({ endsAt }: Timer, now: string): number => Date.parse(endsAt) - Date.parse(now)

/** Minutes more; one that has run out runs that long from now, one that has been ended stays as it is. At most ninety days lie ahead. */
export function addMinutes(timer: Timer, minutes: number, now: string): Timer {
  if (timer.endedAt !== null) return timer
  const leftSeconds = Math.max(timeLeftMs(timer, now), 0) / 1000
  return { ...timer, endsAt: later(now, Math.min(leftSeconds + minutes * 60, MOST_TIMER_SECONDS)), noticedAt: null }
}

/** Stopped, or seen to. */
export const endTimer = (timer: Timer, now: string): Timer => ({ ...timer, endedAt: timer.endedAt ?? now })

/** Ended by mistake: it goes on as if it had not been. */
export const bringBackTimer = (timer: Timer): Timer => ({ ...timer, endedAt: null })

/** A notice dated later than now was given by a clock that has been set back since: it does not count. */
export const needsNotice = (timer: Timer, now: string): boolean =>
  timer.endedAt === null &&
  timeLeftMs(timer, now) <= 0 &&
  (timer.noticedAt === null || Date.parse(timer.noticedAt) > Date.parse(now))

const later = (moment: string, seconds: number): string => new Date(Date.parse(moment) + seconds * 1000).toISOString()

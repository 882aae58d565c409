/** What labels a change with its moment. Injected everywhere, so that nothing below reads a clock of its own. */
export interface Clock {
  /** ISO moment, UTC. */
  readonly now: () => string
}

export const systemClock: Clock = { now: () => new Date().toISOString() }

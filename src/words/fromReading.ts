/** What stands beside a number that follows something that was measured. Every sheet needs it: it is kept short. */
export const FROM_READING_WORDS = {
  mark: 'from your reading',
  planned: (figure: string) => `planned ${figure}`,
  /** Under a field of the plan whose value gave way. */
  built: (figure: string, day: string | null, planned: string) =>
    `Built: ${figure}, from your reading${day === null ? '' : ` of ${day}`}. The plan says ${planned}.`,
  toReadings: 'Readings',
  helpHeading: 'From your reading',
  help: 'Something was measured that this number follows. What was read stands in the place of what was planned.',
  now: 'As built',
} as const

/** Over a column of what the plan has, in a table that is taken away. */
export const plannedHeading = (heading: string): string => `${heading}, planned`

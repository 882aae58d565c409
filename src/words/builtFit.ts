/** Finished work that the specification has moved away from, and what can be done about it. */
export const BUILT_FIT_WORDS = {
  title: 'What is already built and no longer fits?',
  lead: 'The plan has changed since these stages were signed off. Listed is what in the wood now differs by more than its tolerance.',
  fits: 'Everything that is built still fits what is asked.',
  nothingDone: 'No stage is signed off yet: nothing is built that could no longer fit.',
  banner: (count: number): string =>
    count === 1 ? 'One thing already built no longer fits.' : `${count} things already built no longer fit.`,
  see: 'See what',
  signedOn: (day: string): string => `signed off ${day}`,
  caption: (stage: string): string => `${stage}: what no longer fits`,
  columns: { number: 'Number', built: 'Built', asked: 'Asked now', by: 'Differs by', tolerance: 'Within' },
  from: { read: 'read', kept: 'kept' },
  fromHint: 'Read: measured at the work. Kept: what it was signed off to, where nothing was read.',
  at: (number: string, row: string): string => `${number}, ${row}`,
  gone: (list: string): string => `${list}: none of it is asked any more.`,
  more: (count: number): string => `Show ${count} more`,
  fewer: 'Show the worst only',
  acts: (stage: string): string => `What to do about ${stage}`,
  takeBack: 'Take the change back',
  takeBackLead: 'Sets back to what they were at the signing:',
  wasNow: 'from',
  to: 'back to',
  keep: 'Keep the work as built',
  keepHint:
    'What was built takes the place of what is planned, and the numbers still to come follow it. What defines nothing else stays as it is, and is not listed again while the same is asked.',
  redo: 'Redo the stage',
  redoHint:
    'The stage is to be done again, to the plan. Its sign-off stays on record; what was read at its work counts no more.',
  reason: 'Reason, may be left empty',
} as const

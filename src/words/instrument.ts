/** The screens of one instrument: what stands on them besides numbers, stages and findings. */
export const TITLE_BLOCK_WORDS = {
  label: 'Title block',
  groups: { body: 'Body', box: 'Box', neck: 'Neck', work: 'Work', paper: 'Paper' },
  groupOf: (group: string, number: string): string => `${group} of ${number}`,
  number: 'Number',
  instrument: 'Instrument',
  sheet: 'This sheet',
  seenFrom: 'Seen from',
  unit: 'Lengths in',
  scale: 'Scale',
  revision: 'Revision',
  safe: 'Safe',
  shopName: 'Shop',
  notNamed: 'not named yet',
  toFit: 'to fit',
  changeUnit: (unit: string) => `Lengths in ${unit}: change the units`,
  openRevision: (code: string) => `Revision ${code}: history, undo, compare with paper`,
  saved: 'saved',
  saving: 'saving',
  unsaved: 'not saved',
  retry: 'Try again',
  saveCopy: 'Save a copy of everything',
  elsewhere: 'read only',
} as const

export const UNIT_WORDS = {
  mm: 'mm',
  metres: 'metres',
  decimalInch: 'inches, decimal',
  fractionalInch: 'inches and 64ths',
  feetInches: 'feet and inches',
  thousandths: 'thousandths',
} as const

export const UNIT_KIND_WORDS = {
  bodyLength: 'Lengths on the body',
  domeRadius: 'Dome radii',
  thickness: 'Thicknesses',
} as const

export const REVISION_WORDS = {
  title: 'What has changed?',
  undo: 'Undo',
  redo: 'Redo',
  history: 'Last changes',
  since: 'Revision code on a printed sheet',
  sinceHint: 'Six signs, at the foot of every page. It tells what has changed since that page was printed.',
  unchanged: 'Nothing has changed since that sheet was printed.',
  unknown: 'No state of this instrument has that code. Check the sheet’s number, and the six signs.',
  changed: (when: string) => `Since that sheet (it stood so on ${when}):`,
  wasNow: (was: string, now: string) => `${was} → ${now}`,
  nothing: 'nothing',
  open: 'open',
  changedWhole: 'changed',
  takenBack: 'taken back',
} as const

export const OVERVIEW_WORDS = {
  next: 'Next',
  allDone: 'Every stage is done.',
  atTheBench: 'At the bench',
  markDone: 'Mark as done',
  allStages: 'All stages',
  questions: 'What do you want to know?',
  findings: 'What does not fit',
  noFindings: 'Nothing here is out of order.',
  goTo: 'Go to',
  printStage: 'Print this stage',
  startTimer: 'Start a timer',
  opening: 'Opening the instrument.',
  notFound: 'There is no such sheet.',
  toBench: 'To the bench',
  cannot: (count: number) =>
    `Cannot be built as planned: ${count === 1 ? 'one thing does' : `${count} things do`} not fit. Do not cut to these numbers.`,
  seeMisfits: 'See what',
  readOnly:
    'This instrument is being written in another tab. What you see here stays live; it can be changed here once that tab is closed.',
} as const

export const STAGES_WORDS = {
  markDone: (title: string) => `Mark “${title}” as done`,
} as const

export const BRIEF_SCREEN_WORDS = {
  title: 'Who is it for?',
  lead: 'What was agreed. None of it moves a number.',
  dates: 'Dates',
  agreed: 'Agreed',
  family: 'Kind of instrument',
  forStock: 'Left empty: built for stock.',
} as const

export const FAMILY_WORDS = {
  steelString: 'Steel string',
  nylonString: 'Nylon string',
  small: 'Small',
} as const

export const FAULT_WORDS = {
  sentence: 'Something went wrong that should not have. What was saved is still on this device.',
  saveCopy: 'Save a copy of everything',
  reload: 'Reload',
  goOn: 'Go on',
  cannotOpen:
    'The store of this browser cannot be opened, so nothing can be kept. Private windows and full disks do this. Close other tabs of the workbench and reload.',
  newVersion:
    'Another tab has brought a newer version of the workbench. What was typed here is saved: reload to go on.',
  blocked: 'Another tab keeps an older version open. Close it, and this one goes on.',
} as const

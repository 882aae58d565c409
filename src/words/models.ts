import type { PlanField } from '../core/planFields.ts'
import { FIELD_WORDS } from './fields.ts'
import { OUTLINE_KIND_WORDS } from './fields/outline.ts'

/** The models of the house, and what is done to one. */
export const MODELS_WORDS = {
  title: 'What does this house build?',
  lead: 'A model is what an instrument begins with. Changing one moves no instrument: each keeps the model as it was taken.',
  columns: {
    name: 'Model',
    family: 'Kind',
    length: 'Body length',
    lowerBout: 'Lower bout',
    uses: 'Instruments',
    acts: 'What can be done with it',
  },
  nameOf: (name: string) => `Name of ${name}`,
  nameMissing: 'Give it a name: it stands wherever an instrument is begun.',
  nameTaken: (name: string) => `There is a model called ${name} already: give it another name.`,
  packed: 'came with the workbench',
  begin: 'Begin an instrument',
  beginFrom: (name: string) => `Begin an instrument from ${name}`,
  remove: 'Remove',
  removeOf: (name: string) => `Remove ${name}`,
  bringBack: 'Bring back',
  bringBackOf: (name: string) => `Bring back ${name}`,
  none: 'Every model is removed. Bring one back to begin an instrument from it.',
  showRemoved: (count: number) => (count === 1 ? 'Show the one removed' : `Show the ${count} removed`),
  hideRemoved: 'Hide what was removed',
  removed: 'Removed',
  unreadable: 'This model cannot be read and was left as it is.',
  undo: 'Undo',
} as const

/** How many instruments go by a model. */
export function usedBy(count: number): string {
  if (count === 0) return 'none'
  return count === 1 ? 'one' : String(count)
}

export const MODEL_ACTION_SENTENCES = {
  created: (name: string) => `${name} is among the models.`,
  renamed: (name: string) => `The model is called ${name} now.`,
  given: (name: string) => `${name} has this instrument’s plan now.`,
  deleted: (name: string) => `${name} is removed from the models.`,
  restored: (name: string) => `${name} is back among the models.`,
} as const

/** The sheet that compares an instrument with its model. */
export const MODEL_WORDS = {
  title: 'How does it differ from its model?',
  goesBy: (name: string) => `It goes by ${name}. What differs is listed; nothing moves until you say so.`,
  takenAs: (name: string) => `When it was taken, the model was called ${name}.`,
  noModel: 'It goes by no model: it has a plan of its own. Save that plan as a model, or choose one to compare with.',
  noRecord: (name: string) =>
    `It was begun from ${name}, which has no record among the models here. Only what the model was then is known.`,
  removed: (name: string) => `${name} was removed from the models. What it was when it was taken is still known.`,
  same: 'It is as its model, and the model is as it was taken.',
  sameAsTaken: 'It is as the model was when it was taken.',
  sameInUse: 'Whatever counts in the forms chosen is the same.',
  idle: (count: number) =>
    count === 1
      ? 'Show the one difference that counts for nothing in the forms chosen'
      : `Show the ${count} differences that count for nothing in the forms chosen`,
  hideIdle: 'Hide what counts for nothing',
  caption: 'Where instrument and model differ',
  field: 'Field',
  asTaken: 'Model as taken',
  today: 'Model today',
  here: 'This instrument',
  acts: 'What can be taken over',
  states: { today: 'as the model today', taken: 'as taken', own: 'its own' },
  takeToday: 'As today',
  takeTodayOf: (field: string) => `As the model today: ${field}`,
  takeTaken: 'As taken',
  takeTakenOf: (field: string) => `As the model was taken: ${field}`,
  all: 'All of it at once',
  takeAll: 'Take the model as it is today',
  takeAllHint: 'Every field, and from then on this is the model as taken. The hand it is played with stays.',
  whichPlan: 'What a model is given',
  which: { planned: 'the plan as planned', built: 'the plan as built' },
  give: 'Give this plan to the model',
  giveHint: 'Other instruments keep theirs. The hand the model is played with stays.',
  bringBack: 'Bring the model back',
  putAmong: 'Put it among the models, as it was taken',
  saveAs: 'Save this plan as a new model',
  saveAsHint: 'This instrument goes by it from then on.',
  name: 'Name of the new model',
  save: 'Save as a model',
  goBy: 'Go by another model',
  goByFirst: 'Go by a model',
  goByHint: 'The plan stays as it is; only what it is compared with changes.',
} as const

/** What a field is called where the fields of every way to draw an outline stand in one table. */
export function fieldCalled(field: PlanField): string {
  const { name } = FIELD_WORDS[field]
  for (const kind of ['keyWidths', 'halfWidths'] as const)
    if (field.startsWith(`outline.${kind}.`)) return `${name} (${OUTLINE_KIND_WORDS[kind].toLowerCase()})`
  return name
}

export const WHOLE_WORDS = {
  open: 'open',
  evenly: 'evenly spaced',
  noPath: 'none',
  path: 'a drawn outline',
  changed: (text: string) => `${text}, changed`,
} as const

const COUNTED: Readonly<Partial<Record<PlanField, readonly [one: string, many: string]>>> = {
  'outline.pieces': ['piece', 'pieces'],
  'outline.halfWidths.rows': ['reading', 'readings'],
  'outline.halfWidths.tailRows': ['reading', 'readings'],
  'outline.halfWidths.neckRows': ['reading', 'readings'],
  'sideBraces.atMm': ['place', 'places'],
  'rosette.rings': ['ring', 'rings'],
  'bracing.braces': ['brace', 'braces'],
  'cutting.planks': ['plank', 'planks'],
  'cutting.woods': ['wood', 'woods'],
}

/** How many a field that is replaced whole holds: 10 pieces, one ring, no readings. */
export function countedWhole(field: PlanField, count: number): string {
  const [one, many] = COUNTED[field] ?? ['entry', 'entries']
  if (count === 0) return `no ${many}`
  return count === 1 ? `one ${one}` : `${count} ${many}`
}

import type { PlanField } from '../core/planFields.ts'
import { FIELD_WORDS, RING_WORDS } from './fields.ts'
import { BRACE_END_WORDS, BRACE_WORDS } from './fields/box.ts'

export const BRIEF_WORDS = {
  client: 'Client',
  contact: 'Contact',
  wishes: 'Wishes',
  orderedOn: 'Ordered on',
  promisedOn: 'Promised for',
  notes: 'Notes',
} as const

const OTHER_PLACES: Readonly<Record<string, string>> = {
  number: 'Number',
  title: 'What it is',
  family: 'Kind of instrument',
  archivedOn: 'Put away, or taken out again',
  deletedAt: 'Deleted, or brought back',
  demo: 'Part of the demo',
  plan: 'The whole plan',
  tolerances: 'Tolerances',
  stages: 'Order of stages',
  facts: 'Work at the bench',
  patterns: 'Building orders kept',
  name: 'Name of the shop',
  'units.bodyLength': 'Unit of lengths on the body',
  'units.domeRadius': 'Unit of dome radii',
  'units.thickness': 'Unit of thicknesses',
  origin: 'Where tables are measured from',
  paperSize: 'Paper size',
  jigs: 'Forms and moulds',
  printing: 'Full-size printing',
  modelAsTaken: 'The model it was started from',
  changes: 'Change log',
  shop: 'The shop’s settings',
  savedAt: 'Time it was saved',
  schemaVersion: 'Version',
  id: 'Mark of the instrument',
}

/** What a dotted place in the record is called at the bench; a name that is not known comes back as it is written. */
export function placeName(field: string): string {
  if (field === '') return 'The whole record'
  const own = OTHER_PLACES[field]
  if (own !== undefined) return own
  if (field.startsWith('brief.')) return (BRIEF_WORDS as Readonly<Record<string, string>>)[field.slice(6)] ?? field
  if (field.startsWith('stages.')) return 'Order of stages'
  if (field.startsWith('patterns.')) return 'Building orders kept'
  if (field.startsWith('tolerances.')) return `Tolerance of ${field.slice('tolerances.'.length)}`
  if (field.startsWith('plan.')) return planPlaceName(field.slice(5)) ?? field
  const [first = ''] = field.split('.')
  return OTHER_PLACES[first] === undefined ? field : `${OTHER_PLACES[first]}, ${field}`
}

/** Lists that are one field: a place inside one goes by the name of the list. */
const REPLACED_WHOLE = [
  'outline.pieces',
  'outline.halfWidths.rows',
  'outline.halfWidths.tailRows',
  'outline.halfWidths.neckRows',
  'outline.drawnPath',
  'sideBraces.atMm',
] as const satisfies readonly PlanField[]

function planPlaceName(field: string): string | null {
  const own = (FIELD_WORDS as Readonly<Record<string, { name: string }>>)[field]
  if (own !== undefined) return own.name
  if (field.startsWith('rosette.rings')) {
    const last = field.slice(field.lastIndexOf('.') + 1)
    const value = (RING_WORDS as Readonly<Record<string, { name: string }>>)[last]
    return value === undefined ? FIELD_WORDS['rosette.rings' satisfies PlanField].name : `Ring: ${value.name}`
  }
  if (field.startsWith('bracing.braces')) {
    const [, , , place = '', last = ''] = field.split('.')
    const isEnd = place === 'from' || place === 'to'
    const words: Readonly<Record<string, { name: string }>> = isEnd ? BRACE_END_WORDS : BRACE_WORDS
    const value = words[isEnd ? last : place]
    if (value === undefined) return FIELD_WORDS['bracing.braces' satisfies PlanField].name
    return isEnd ? `Brace, ${place === 'from' ? 'first' : 'second'} end: ${value.name}` : `Brace: ${value.name}`
  }
  if (field.startsWith('cutting.woods.')) return FIELD_WORDS['cutting.woods' satisfies PlanField].name
  if (field.startsWith('cutting.planks.')) return FIELD_WORDS['cutting.planks' satisfies PlanField].name
  const whole = REPLACED_WHOLE.find((name) => field.startsWith(`${name}.`))
  return whole === undefined ? null : FIELD_WORDS[whole].name
}

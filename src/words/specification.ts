import type { PlanField } from '../core/planFields.ts'
import { choiceWord } from './fields/choices.ts'
import { MATERIAL_WORDS } from './fields/neck.ts'
import { FIELD_WORDS } from './fields.ts'
import { FAMILY_WORDS } from './instrument.ts'
import { BRIEF_WORDS } from './places.ts'
import { WOOD_ROLE_NAMES } from './wood.ts'

/** What the client signs. */
export const SPECIFICATION_WORDS = {
  sheet: 'Specification',
  lead: 'What is to be built, as it was agreed. Sizes are what the instrument is made to; wood moves with the air’s moisture.',
  sections: {
    agreed: 'Agreed',
    wishes: BRIEF_WORDS.wishes,
    body: 'Body',
    woods: 'Woods and thicknesses',
    edges: 'Edges',
    rosette: 'Soundhole and rosette',
    board: 'Scale and fingerboard',
    strings: 'Strings and tuning',
    setup: 'Set-up, strings at pitch',
    neck: 'Neck and head',
    bridge: 'Bridge',
  },
  number: 'Number',
  title: 'What it is',
  family: 'Kind of instrument',
  families: FAMILY_WORDS,
  client: BRIEF_WORDS.client,
  orderedOn: BRIEF_WORDS.orderedOn,
  promisedOn: BRIEF_WORDS.promisedOn,
  woods: WOOD_ROLE_NAMES,
  notChosen: 'not chosen yet',
  noDay: 'no day set',
  ring: (place: number) => `Ring ${place}, inner and outer radius`,
  fromTo: (from: string, to: string) => `${from} to ${to}`,
  noRings: 'none',
  rings: 'Rings',
  materials: MATERIAL_WORDS,
  string: (note: string, material: string, isPaired: boolean) =>
    `${note}, ${material.toLowerCase()}${isPaired ? ', pair' : ''}`,
  tuning: 'Tuning, bass to treble',
  pitch: 'Pitch of the A',
  fieldName: (field: PlanField): string => FIELD_WORDS[field].name,
  choice: (field: PlanField, choice: string): string => choiceWord(field, choice) ?? choice,
  statementTitle: 'To sign',
  statement: (number: string, revision: string) =>
    `The instrument ${number} is to be built as this specification says, in revision ${revision}. What is changed later is written down, gets a revision of its own and is signed again.`,
  signs: { client: 'Client', maker: 'Maker', date: 'Date' },
} as const
export type SpecificationWords = typeof SPECIFICATION_WORDS

import * as z from 'zod/mini'
import { NUMBER_KEYS } from '../core/catalogue.ts'
import { UNIT_CHOICES } from '../core/quantity.ts'
import { benchFacts, figure } from './bench/factSchemas.ts'
import { patterns, stages } from './stageSchema.ts'
import { STAGE_KEYS } from './patterns/stages.ts'
import { FAMILIES } from './family.ts'
import { fixtures } from './fixtureSchema.ts'
import { jigs, printing } from './fullSizeSchema.ts'
import type { ModelDoc } from './houseModel.ts'
import { planSchema } from './planSchema.ts'
import { taps } from './tapSchema.ts'

/** The version of the record this program writes. Older ones are migrated at the door; newer ones are refused in plain words. */
export const SCHEMA_VERSION = 6

const line = (max = 200) => z.string().check(z.maxLength(max))
const text = z.string().check(z.maxLength(20000))
const isoDay = z.nullable(z.iso.date())
const isoMoment = z.iso.datetime()

/** Tolerances in mm or rad by number; null: this number carries none. A number not named here falls back to the shop's, then to the catalogue's. */
export const tolerances = z.partialRecord(z.enum(NUMBER_KEYS), z.nullable(z.number().check(z.gte(0), z.lte(100))))

export const brief = z.strictObject({
  client: line(),
  contact: line(),
  wishes: text,
  orderedOn: isoDay,
  promisedOn: isoDay,
  notes: text,
})

export const commissionDoc = z.strictObject({
  number: line(40),
  title: line(),
  family: z.enum(FAMILIES),
  archivedOn: isoDay,
  /** Part of the demo that came with the program: may be removed in one step. */
  demo: z.boolean(),
  brief,
  plan: planSchema,
  tolerances,
  stages,
  /** The model it was started from, as it was then; its id, where the model has a document of its own. */
  modelAsTaken: z.nullable(z.strictObject({ modelId: z.nullable(z.uuid()), name: line(), plan: planSchema })),
})
export type CommissionDoc = z.infer<typeof commissionDoc>

export const shopDoc = z.strictObject({
  name: line(),
  units: z.strictObject({
    bodyLength: z.enum(UNIT_CHOICES.bodyLength),
    domeRadius: z.enum(UNIT_CHOICES.domeRadius),
    thickness: z.enum(UNIT_CHOICES.thickness),
  }),
  tolerances,
  origin: z.enum(['tail', 'neckEdge', 'saddleLine']),
  paperSize: z.enum(['A4', 'Letter']),
  /** Boards, dishes, moulds and forms: a collection, so by id. */
  fixtures,
  /** Finished boxes as they were heard, by instrument. */
  taps,
  jigs,
  printing,
  /** Building orders of the house's own. */
  patterns,
})
export type ShopDoc = z.infer<typeof shopDoc>

/** One row per document. `seen` is the highest change number taken in from each device. */
export const documentHead = z.strictObject({
  id: z.uuid(),
  schemaVersion: z.literal(SCHEMA_VERSION),
  seen: z.record(z.uuid(), z.int().check(z.gte(0))),
  deletedAt: z.nullable(isoMoment),
})
export interface StoredDocument<Kind extends 'commission' | 'model' | 'shop', Doc>
  extends z.infer<typeof documentHead> {
  readonly kind: Kind
  readonly doc: Doc
}
export type CommissionRecord = StoredDocument<'commission', CommissionDoc>
export type ModelRecord = StoredDocument<'model', ModelDoc>
export type ShopRecord = StoredDocument<'shop', ShopDoc>

/** Names that every object answers to without owning them: never a step of a path, never a key of a record. */
export const FORBIDDEN_NAMES: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype'])

const path = z
  .array(
    z.string().check(
      z.maxLength(80),
      z.refine((step) => !FORBIDDEN_NAMES.has(step)),
    ),
  )
  .check(z.maxLength(12))

/** Place in the log: one more than the highest seen from any device when it was written, so that (seq, deviceId) orders the log everywhere. */
const seq = z.int().check(z.gte(1), z.lte(1e9))

/** One value that changed. The log is undo, history and, later, what devices exchange; clocks only label, they never order. */
export const change = z.strictObject({
  id: z.uuid(),
  docId: z.uuid(),
  deviceId: z.uuid(),
  seq,
  at: isoMoment,
  /** The maker's one action this belongs to. */
  gesture: z.uuid(),
  /** Path inside the document row: ['doc', 'plan', ...] or ['deletedAt']; [] for the whole row when it came to be. */
  path,
  /** The new and the former value; a key left out means the path did not exist (after, or before). */
  value: z.optional(z.json()),
  previous: z.optional(z.json()),
  /** The change that set this path before, if any: two with one parent are a conflict. */
  after: z.nullable(z.uuid()),
  /** The gesture this one takes back; null for an edit of the maker's own. */
  undoes: z.nullable(z.uuid()),
})
export type Change = z.infer<typeof change>

const factHead = {
  id: z.uuid(),
  docId: z.uuid(),
  deviceId: z.uuid(),
  seq,
  at: isoMoment,
  /** The maker's one action this belongs to, and the one it takes back: as for a change. */
  gesture: z.uuid(),
  undoes: z.nullable(z.uuid()),
}

/** What happened at the bench: append-only. A mistake is not erased but withdrawn. */
export const fact = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('stageDone'),
    ...factHead,
    stageId: z.uuid(),
    /** The numbers the stage was built to: evidence, never recomputed. */
    builtTo: z.record(z.string().check(z.maxLength(120)), figure),
  }),
  z.strictObject({
    kind: z.literal('withdrawal'),
    ...factHead,
    of: z.uuid(),
  }),
  /** Papers that left: what they showed is kept as a mark, so that the app can say which of them no longer hold. */
  z.strictObject({
    kind: z.literal('printed'),
    ...factHead,
    revision: z.string().check(z.maxLength(12)),
    papers: z
      .array(z.strictObject({ paper: z.string().check(z.maxLength(120)), print: z.string().check(z.maxLength(24)) }))
      .check(z.maxLength(400)),
  }),
  ...benchFacts(factHead),
])
export type Fact = z.infer<typeof fact>

/** The few fields the list of instruments needs; rebuilt from the documents at will. */
export const head = z.strictObject({
  id: z.uuid(),
  number: line(40),
  client: line(),
  title: line(),
  family: z.enum(FAMILIES),
  archivedOn: isoDay,
  promisedOn: isoDay,
  deletedAt: z.nullable(isoMoment),
  demo: z.boolean(),
  stagesDone: z.int().check(z.gte(0)),
  stagesTotal: z.int().check(z.gte(0)),
  nextStage: z.nullable(z.enum(STAGE_KEYS)),
  /** Its name where the maker gave it one; '' for the pattern's. */
  nextTitle: line(120),
  /** When it was last changed: a label, never an order. */
  changedAt: isoMoment,
})
export type Head = z.infer<typeof head>

/** What a maker typed that was not, or could not be, taken yet. */
export const draft = z.strictObject({
  docId: z.string().check(z.minLength(1), z.maxLength(60)),
  field: z.string().check(z.minLength(1), z.maxLength(200)),
  text: z.string().check(z.maxLength(20000)),
  at: isoMoment,
})
export type Draft = z.infer<typeof draft>

/** The file one commission leaves in: its planned values lie under `plan`. */
export const COMMISSION_FILE = 'ribwright-commission'
export const commissionFile = z.strictObject({
  format: z.literal(COMMISSION_FILE),
  ...documentHead.shape,
  savedAt: isoMoment,
  ...commissionDoc.shape,
  shop: shopDoc,
  changes: z.array(change),
  facts: z.array(fact),
})
export type CommissionFile = z.infer<typeof commissionFile>

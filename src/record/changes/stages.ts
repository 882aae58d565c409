import type { Draft } from 'immer'
import type { CommissionDoc, CommissionRecord } from '../commission.ts'
import type { Recipe } from '../edit.ts'
import { inOrder, placeBefore } from '../order.ts'
import { sameJson } from '../path.ts'
import type { StageKey } from '../patterns/stages.ts'
import { type StageTerms, usualTerms } from '../stageInHand.ts'
import { afterOf, circleOf } from '../stageLinks.ts'
import { MOST_STAGES, type OwnStage, type StageEntry } from '../stageSchema.ts'

/** Why a change of the building order is not made. */
export type StageRefusal =
  /** These stages would wait for each other in a ring. */
  { readonly code: 'circular'; readonly ring: readonly string[] } | { readonly code: 'tooMany'; readonly most: number }

/** What of an instrument its building order is made of. */
type Order = Pick<CommissionDoc, 'stages' | 'family'>
type Mend = (doc: Draft<Order>) => void
/** A change of the building order: does nothing where it would be refused. */
export type StageChange = Recipe<CommissionRecord> & { readonly mend: Mend }

/** Why a change would be refused; null: it is made. Stages that waited in a ring before do not keep others from being changed. */
export function refusalOf(doc: Order, { mend }: Pick<StageChange, 'mend'>): StageRefusal | null {
  const mended: Order = { family: doc.family, stages: copied(doc.stages) }
  mend(mended)
  const count = Object.keys(mended.stages).length
  if (count > MOST_STAGES && count > Object.keys(doc.stages).length) return { code: 'tooMany', most: MOST_STAGES }
  const ring = circleOf(afterOf(mended.stages, mended.family))
  if (ring === null || circleOf(afterOf(doc.stages, doc.family)) !== null) return null
  return { code: 'circular', ring }
}

const stageChange = (mend: Mend): StageChange =>
  Object.assign(
    (draft: Draft<CommissionRecord>) => {
      if (refusalOf(draft.doc, { mend }) === null) mend(draft.doc)
    },
    { mend },
  )

/** Puts a stage before another in this instrument's building order; null: last. */
export function moveStage(id: string, beforeId: string | null): StageChange {
  return stageChange((doc) => placeBefore(doc.stages, id, beforeId))
}

/**
 * Takes a stage out of this instrument's building order. What was signed off for it stays among the facts; stages that were said to come after
 * it come after what it came after, and a fixture it would have freed is free as soon as its own stage has set.
 */
export function skipStage(id: string): StageChange {
  return stageChange((doc) => {
    const before = afterOf(doc.stages, doc.family).get(id) ?? []
    delete doc.stages[id]
    for (const [otherId, { own }] of Object.entries(doc.stages)) {
      if (own?.after?.includes(id))
        own.after = [...new Set(own.after.flatMap((one) => (one === id ? before : [one])))].filter(
          (one) => one !== otherId,
        )
      if (own?.fixtures?.some(({ until }) => until === id))
        own.fixtures = own.fixtures.map((use) => (use.until === id ? { ...use, held: 'setting', until: null } : use))
    }
  })
}

/** Adds a stage before another (null: last); `id` is a fresh uuid, or the one it had before it was skipped, with what was its own then. */
export function addStage(id: string, key: StageKey, beforeId: string | null, own?: OwnStage): StageChange {
  return stageChange((doc) => insert(doc, id, own === undefined ? { key } : { key, own }, beforeId))
}

/** Adds work the house has no pattern for. */
export function addOwnStage(id: string, title: string, beforeId: string | null): StageChange {
  return addStage(id, 'ownWork', beforeId, { title })
}

/** Does a stage once more: a second one right behind it, under a title of its own, that waits for the first. */
export function duplicateStage(id: string, newId: string, title: string): StageChange {
  return stageChange((doc) => {
    const stage = doc.stages[id]
    if (stage === undefined) return
    const ids = inOrder(doc.stages).map(([one]) => one)
    const own = { ...stage.own, title, after: [id] }
    insert(doc, newId, { key: stage.key, own }, ids[ids.indexOf(id) + 1] ?? null)
  })
}

/**
 * Sets one thing of a stage: what is as the pattern says is not kept, and undefined is as the pattern says. A stage can wait only for others that
 * are there.
 */
export function setStageDetail<Name extends keyof OwnStage>(
  id: string,
  name: Name,
  value: OwnStage[Name] | undefined,
): StageChange {
  return stageChange((doc) => {
    const stage = doc.stages[id]
    if (stage === undefined) return
    const { [name]: _was, ...rest }: OwnStage = stage.own ?? {}
    const said = name === 'after' ? theirIds(doc, id, value as OwnStage['after']) : value
    const usual = name === 'title' || name === 'note' ? '' : usualTerms(doc, id)?.[name as keyof StageTerms]
    const isUsual = said === undefined || sameJson(said, usual) || (name === 'after' && sameSet(said, usual))
    const own: OwnStage = isUsual ? rest : { ...rest, [name]: said }
    if (Object.keys(own).length === 0) delete stage.own
    else stage.own = own
  })
}

/** All of a stage as the pattern says; work without a pattern keeps what it is called. */
export function stageAsPattern(id: string): StageChange {
  return stageChange((doc) => {
    const stage = doc.stages[id]
    if (stage === undefined) return
    const title = stage.key === 'ownWork' ? stage.own?.title : undefined
    if (title === undefined) delete stage.own
    else stage.own = { title }
  })
}

/** Puts a whole order in the place of the one that is there: see `orderTaken`. */
export function applyPattern(stages: Readonly<Record<string, StageEntry>>): StageChange {
  return stageChange((doc) => {
    for (const id of Object.keys(doc.stages)) if (stages[id] === undefined) delete doc.stages[id]
    for (const [id, stage] of Object.entries(stages))
      if (!sameJson(doc.stages[id], stage)) doc.stages[id] = structuredClone(stage)
  })
}

function insert(doc: Draft<Order>, id: string, stage: Omit<StageEntry, 'order'>, beforeId: string | null): void {
  doc.stages[id] = { order: '', ...copied(stage) }
  placeBefore(doc.stages, id, beforeId)
}

/** Plain JSON apart from where it came from: what is being changed is no plain object, and cannot be cloned otherwise. */
// oxlint-disable-next-line unicorn/prefer-structured-clone
const copied = <Json>(json: Json): Json => JSON.parse(JSON.stringify(json)) as Json

const theirIds = (doc: Draft<Order>, id: string, ids: readonly string[] | undefined) =>
  ids?.filter((one, i) => one !== id && doc.stages[one] !== undefined && ids.indexOf(one) === i)

const sameSet = (a: unknown, b: unknown): boolean =>
  Array.isArray(a) && Array.isArray(b) && a.length === b.length && a.every((one) => b.includes(one))

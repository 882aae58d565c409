import type { BraceEndPlan, BracePlan } from '../../core/boxPlan.ts'
import type { LooseEnd } from '../../core/instrument/brace/looseEnds.ts'
import type { MovedEnds } from '../../core/instrument/brace/movedEnd.ts'
import type { CommissionRecord } from '../commission.ts'
import type { Recipe } from '../edit.ts'
import { inOrder, orderStrings, placeBefore } from '../order.ts'

type BraceValues = Omit<BracePlan, 'order'>

/** Adds a brace as the last; `id` is a fresh uuid. */
export function addBrace(id: string, brace: BraceValues): Recipe<CommissionRecord> {
  return ({ doc }) => {
    const { braces } = doc.plan.bracing
    braces[id] = { ...brace, order: '' }
    placeBefore(braces, id, null)
  }
}

/** Takes a brace away; what stopped at it stops where it stood, as far as `loose` says where that is, else where it was entered. */
export function removeBrace(id: string, loose: readonly LooseEnd[] = []): Recipe<CommissionRecord> {
  return ({ doc }) => {
    const { braces } = doc.plan.bracing
    delete braces[id]
    for (const { id: of, end, xMm, yMm } of loose) {
      const brace = braces[of]
      if (brace?.[end].braceId === id) Object.assign(brace[end], { xMm, yMm })
    }
    for (const brace of Object.values(braces))
      for (const end of [brace.from, brace.to])
        if (end.braceId === id) Object.assign(end, { braceId: null, stops: 'here' })
  }
}

/** Puts a brace before another; null: last. */
export function moveBrace(id: string, beforeId: string | null): Recipe<CommissionRecord> {
  return ({ doc }) => placeBefore(doc.plan.bracing.braces, id, beforeId)
}

/** Sets some values of one brace; an id that is not there changes nothing. */
export function changeBrace(id: string, values: Partial<Omit<BraceValues, 'from' | 'to'>>): Recipe<CommissionRecord> {
  return ({ doc }) => {
    const brace = doc.plan.bracing.braces[id]
    if (brace !== undefined) Object.assign(brace, values)
  }
}

export function changeBraceEnd(
  id: string,
  end: 'from' | 'to',
  values: Partial<BraceEndPlan>,
): Recipe<CommissionRecord> {
  return ({ doc }) => {
    const brace = doc.plan.bracing.braces[id]
    if (brace !== undefined) Object.assign(brace[end], values)
  }
}

/** Sets some values of either end in one change. */
export function moveBraceEnds(id: string, ends: MovedEnds): Recipe<CommissionRecord> {
  return ({ doc }) => {
    const brace = doc.plan.bracing.braces[id]
    if (brace === undefined) return
    Object.assign(brace.from, ends.from)
    Object.assign(brace.to, ends.to)
  }
}

/** Braces of one plate anew, under fresh ids and in their order; those of the other plate stay, after a top's and before a back's. */
export function startBracing(
  plate: BracePlan['plate'],
  braces: readonly { readonly id: string; readonly brace: BraceValues }[],
): Recipe<CommissionRecord> {
  return ({ doc }) => {
    const { bracing } = doc.plan
    const kept = inOrder(bracing.braces).filter(([, brace]) => brace.plate !== plate)
    const fresh = braces.map(({ id, brace }) => [id, { ...brace, order: '' }] as const)
    const all = plate === 'top' ? [...fresh, ...kept] : [...kept, ...fresh]
    const orders = orderStrings(all.length)
    bracing.braces = Object.fromEntries(all.map(([id, brace], i) => [id, { ...brace, order: orders[i] ?? 'z' }]))
  }
}

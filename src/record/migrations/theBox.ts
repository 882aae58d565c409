import { isPlainObject } from '../path.ts'
import type { Migration } from './migrate.ts'
import { BRIDGE_PLATES, BRACING, CUTTING, EDGES, WOODS } from './usualBoxes.ts'

type Json = Record<string, unknown>

/**
 * Version 3 knew no braces, no air, no woods, and of the edges only the binding. What is added is common practice by family, no published source, and changes
 * no number that version 3 gave; no brace is made up: an instrument begun without them has none until its maker places them.
 */
export const theBox: Migration = {
  to: 4,
  name: 'the box',
  row: (row) => {
    const { doc } = row
    if (!isPlainObject(doc)) return row
    if (row['kind'] === 'shop') return { ...row, doc: { ...doc, taps: {} } }
    const family = doc['family']
    const next: Json = { ...doc, plan: widenPlan(doc['plan'], family) }
    if (Object.hasOwn(doc, 'modelAsTaken')) next['modelAsTaken'] = widenModel(doc['modelAsTaken'], family)
    return { ...row, doc: next }
  },
  change: (change, row) => {
    const path = Array.isArray(change['path']) ? change['path'].join('.') : ''
    const widen = Object.hasOwn(WHOLE, path) ? WHOLE[path] : undefined
    if (widen === undefined) return change
    const next = { ...change }
    const family = isPlainObject(row) && isPlainObject(row['doc']) ? row['doc']['family'] : undefined
    for (const side of ['value', 'previous']) if (Object.hasOwn(next, side)) next[side] = widen(next[side], family)
    return next
  },
  fact: (fact) => fact,
}

/** Changes that set more than one value at once. */
const WHOLE: Readonly<Record<string, (value: unknown, family: unknown) => unknown>> = {
  'doc.plan': widenPlan,
  'doc.modelAsTaken': widenModel,
  'doc.plan.bridge': widenBridge,
}

function widenModel(value: unknown, family: unknown): unknown {
  return isPlainObject(value) ? { ...value, plan: widenPlan(value['plan'], family) } : value
}

const usualOf = (family: unknown) => (family === 'nylonString' || family === 'small' ? family : 'steelString')

function widenPlan(value: unknown, family: unknown): unknown {
  if (!isPlainObject(value)) return value
  const usual = usualOf(family)
  return {
    ...value,
    bracing: { braces: {}, ...BRACING[usual] },
    air: { temperatureC: 20, holeChangeMm: 1, depthChangeMm: 5, heardHz: null },
    edges: { ...EDGES[usual] },
    cutting: { ...CUTTING, woods: { ...WOODS }, planks: {} },
    bridge: widenBridge(value['bridge'], family),
  }
}

/** The plate under the bridge reaches as far across as the bridge does, and a little further toward the tail. */
function widenBridge(value: unknown, family: unknown): unknown {
  return isPlainObject(value) ? { ...value, ...BRIDGE_PLATES[usualOf(family)] } : value
}

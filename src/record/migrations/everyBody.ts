import { isPlainObject } from '../path.ts'
import type { Migration } from './migrate.ts'

type Json = Record<string, unknown>

/**
 * Version 1 knew outlines by arcs and key widths with a mirrored treble half, and nothing of linings, bindings, side braces, cauls
 * and fixtures. What is added changes no number that version 1 gave. Its values are common practice, no published source.
 */
export const everyBody: Migration = {
  to: 2,
  name: 'every body',
  row: (row) => {
    const { doc } = row
    if (!isPlainObject(doc)) return row
    if (row['kind'] === 'shop') return { ...row, doc: { ...doc, fixtures: {} } }
    const family = doc['family']
    return {
      ...row,
      doc: { ...doc, plan: plan(doc['plan'], family), modelAsTaken: model(doc['modelAsTaken'], family) },
    }
  },
  change: (change) => {
    const path = Array.isArray(change['path']) ? change['path'].join('.') : ''
    const widen = WHOLE[path]
    if (widen === undefined) return change
    const next = { ...change }
    for (const side of ['value', 'previous']) if (Object.hasOwn(next, side)) next[side] = widen(next[side])
    return next
  },
  fact: (fact) => fact,
}

/** Changes that set more than one value at once. */
const WHOLE: Readonly<Record<string, (value: unknown) => unknown>> = {
  'doc.plan': (value) => plan(value, null),
  'doc.plan.outline': outline,
  'doc.modelAsTaken': (value) => model(value, null),
}

const model = (value: unknown, family: unknown): unknown =>
  isPlainObject(value) ? { modelId: null, ...value, plan: plan(value['plan'], family) } : value

function plan(value: unknown, family: unknown): unknown {
  if (!isPlainObject(value)) return value
  const { rim } = value
  return {
    ...value,
    handed: 'right',
    outline: outline(value['outline']),
    rim: isPlainObject(rim) ? { ...rim, method: 'beforeBending', firstLeavesTopMm: 0.3, firstLeavesBackMm: 0.3 } : rim,
    ...insideOf(family),
  }
}

function outline(value: unknown): unknown {
  if (!isPlainObject(value)) return value
  const { treble: _treble, ...kept } = value
  const keys: Json = isPlainObject(value['keyWidths']) ? value['keyWidths'] : {}
  const lengthMm = typeof value['lengthMm'] === 'number' ? value['lengthMm'] : 500
  return {
    ...kept,
    halfWidths: {
      rows: [],
      tailRows: [],
      neckRows: [],
      readToMm: 0.5,
      tailRadiusMm: keys['tailRadiusMm'] ?? null,
      neckFlatMm: keys['neckFlatMm'] ?? 0,
      neckRadiusMm: keys['neckRadiusMm'] ?? null,
    },
    drawnPath: null,
    cutaway: {
      form: 'none',
      leavesAtMm: Math.min(Math.max(lengthMm * 0.85, 60), 790),
      hornRadiusMm: 35,
      hollowRadiusMm: 70,
      meetsNeckAtMm: 30,
    },
  }
}

function insideOf(family: unknown): Json {
  const small = family === 'small'
  const lining = {
    kind: family === 'nylonString' ? 'solidBent' : 'kerfed',
    widthMm: small ? 4.5 : 6,
    heightMm: small ? 9 : 15,
  }
  return {
    linings: { top: { ...lining }, back: { ...lining }, wastePercent: 10 },
    binding: {
      heightMm: small ? 4 : 6,
      thicknessMm: small ? 1.5 : 2,
      topPurflingMm: small ? 0 : 1.5,
      backPurflingMm: 0,
    },
    sideBraces: {
      form: small ? 'none' : 'wood',
      atMm: null,
      spacingMm: 100,
      widthMm: 8,
      thicknessMm: 3,
      ends: 'betweenLinings',
    },
    caul: { spanMm: 90, widthMm: 20, heightMm: 12, modulusGPa: 10, forceN: 300 },
  }
}

import { isPlainObject } from '../path.ts'
import type { Migration } from './migrate.ts'
import { boardThrough, type OldBoard, readOldBoard } from './oldBoard.ts'
import { neckOf, type NeckSite } from './usualNecks.ts'

type Json = Record<string, unknown>

/**
 * Version 2 knew of the neck only its scale and where the board lies over the body: how far, and how wide at the joint and at its end. These are
 * numbers now, and come out again from the widths at nut and fret 12 and the frets that take their place. A flat upper bout keeps the fall that was
 * entered. What is added changes no number that version 2 gave; its values are common practice, no published source.
 */
export const theNeck: Migration = {
  to: 3,
  name: 'the neck',
  row: (row) => {
    const { doc } = row
    if (!isPlainObject(doc) || row['kind'] === 'shop') return row
    const family = doc['family']
    const next: Json = { ...doc, plan: widenPlan(doc['plan'], family) }
    if (Object.hasOwn(doc, 'modelAsTaken')) next['modelAsTaken'] = widenModel(doc['modelAsTaken'], family)
    return { ...row, doc: next }
  },
  change: (change, row) => {
    const path = Array.isArray(change['path']) ? change['path'].join('.') : ''
    if (GONE.has(path)) return withoutValues(change)
    const widen = Object.hasOwn(WHOLE, path) ? WHOLE[path] : undefined
    if (widen === undefined) return change
    const next = { ...change }
    const doc = isPlainObject(row) && isPlainObject(row['doc']) ? row['doc'] : {}
    for (const side of ['value', 'previous']) if (Object.hasOwn(next, side)) next[side] = widen(next[side], doc)
    return next
  },
  fact: (fact) => fact,
}

/** Paths that lead nowhere any more: their changes keep their place in the log and set nothing, so that undo passes over them. */
const GONE: ReadonlySet<string> = new Set([
  'doc.plan.board.overBodyMm',
  'doc.plan.board.widthAtJointMm',
  'doc.plan.board.widthAtEndMm',
])

function withoutValues(change: Json): Json {
  const { value: _value, previous: _previous, ...kept } = change
  return kept
}

/** Changes that set more than one value at once; what they leave out is as the document has it now. */
const WHOLE: Readonly<Record<string, (value: unknown, doc: Json) => unknown>> = {
  'doc.plan': (value, doc) => widenPlan(value, doc['family']),
  'doc.modelAsTaken': (value, doc) => widenModel(value, doc['family']),
  'doc.plan.top': widenTop,
  'doc.plan.scale': (value, doc) => partOf('scale', value, doc),
  'doc.plan.board': (value, doc) => partOf('board', value, doc),
}

function partOf(part: 'scale' | 'board', value: unknown, { plan, family }: Json): unknown {
  if (!isPlainObject(plan)) return value
  const widened = widenPlan({ ...plan, [part]: value }, family)
  return isPlainObject(widened) ? widened[part] : value
}

const widenModel = (value: unknown, family: unknown): unknown =>
  isPlainObject(value) ? { ...value, plan: widenPlan(value['plan'], family) } : value

function widenTop(value: unknown): unknown {
  return isPlainObject(value) ? { ...value, flatSlope: 'entered' } : value
}

function widenPlan(value: unknown, family: unknown): unknown {
  if (!isPlainObject(value)) return value
  const { top, scale, board } = value
  const old = readOldBoard(board)
  const site = siteOf(value, family, old ?? USUAL_BOARD)
  const { board: restOfBoard, ...parts } = neckOf(site)
  const { fretCount, ...widths } = site.board
  return {
    ...value,
    top: widenTop(top),
    ...parts,
    // What was never valid stays as it is: the door names it.
    scale: isPlainObject(scale)
      ? { ...scale, fan: 'square', trebleLengthMm: scale['lengthMm'], squareFret: 7, frets: fretCount }
      : scale,
    board: old === null ? board : { ...widths, ...restOfBoard },
  }
}

const USUAL_BOARD: OldBoard = { overBodyMm: 90, widthAtJointMm: 56, widthAtEndMm: 59 }

function siteOf(plan: Json, family: unknown, board: OldBoard): NeckSite {
  const scale = inside(plan['scale'])
  const lengthMm = numberOr(scale['lengthMm'], 645)
  const jointFret = numberOr(scale['jointFret'], 14)
  const toSaddleMm = lengthMm * 2 ** (-jointFret / 12)
  const block = inside(inside(plan['blocks'])['neck'])
  const bodyMm = numberOr(inside(plan['outline'])['lengthMm'], family === 'small' ? 302 : 490)
  return {
    family: family === 'nylonString' || family === 'small' ? family : 'steelString',
    nutToJointMm: lengthMm - toSaddleMm,
    saddleLineMm: bodyMm - toSaddleMm,
    board: boardThrough(board, { lengthMm, jointFret }),
    blockWidthMm: numberOr(block['widthMm'], 80),
    blockThicknessMm: numberOr(block['thicknessMm'], 36),
    depthAtNeckMm: numberOr(inside(plan['rim'])['depthAtNeckMm'], 90),
  }
}

const inside = (value: unknown): Json => (isPlainObject(value) ? value : {})
const numberOr = (value: unknown, usual: number): number =>
  typeof value === 'number' && Number.isFinite(value) ? value : usual

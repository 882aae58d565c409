import type { Change, CommissionDoc } from './commission.ts'
import { replayStates } from './log.ts'
import { isPlainObject, sameJson, valueAt } from './path.ts'

/** Crockford's base 32: no I, L, O or U, so that a code read from paper is not mistaken. */
const SIGNS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ'
const CODE_LENGTH = 6

type OnPaper = Pick<CommissionDoc, 'plan' | 'tolerances' | 'stages'>

/** Parts of the plan that change nothing of what is built: what-ifs, what was heard of a finished box, and the planks in the rack. */
const BESIDE: Readonly<Record<string, readonly string[]>> = {
  air: ['holeChangeMm', 'depthChangeMm', 'heardHz'],
  cutting: ['planks'],
}

/** A plan without them. Plans of older records, which lack some of it, are taken as they are. */
function builtPlan<Of extends object>(plan: Of): Of {
  const parts = Object.entries(plan).map(([part, values]: [string, unknown]) => {
    const beside = BESIDE[part]
    if (beside === undefined || !isPlainObject(values)) return [part, values] as const
    return [part, Object.fromEntries(Object.entries(values).filter(([key]) => !beside.includes(key)))] as const
  })
  return Object.fromEntries(parts) as Of
}

/**
 * A short code for what a stage sheet shows of a commission: the plan as far as it is built, its tolerances and its stages; not the brief, not
 * the title, nor what the plan holds beside (`BESIDE`), so that a question asked of the air makes no printed sheet look out of date.
 */
export function revisionCode(doc: OnPaper): string {
  const { plan, tolerances, stages } = onPaperOf(doc)
  let left = hash30(sortedJson({ plan, tolerances, stages }))
  let code = ''
  for (let i = 0; i < CODE_LENGTH; i += 1) {
    code = `${SIGNS[left % 32]}${code}`
    left = Math.floor(left / 32)
  }
  return code
}

/** A code as typed from paper in its one form: capitals, o as 0, i and l as 1, without spaces and hyphens. null: no such code. */
export function parseRevisionCode(typed: string): string | null {
  const code = typed.toUpperCase().replaceAll(/[\s-]/g, '').replaceAll('O', '0').replaceAll(/[IL]/g, '1')
  return code.length === CODE_LENGTH && [...code].every((sign) => SIGNS.includes(sign)) ? code : null
}

/** One value that differs: dotted path inside the document; a key left out was, or is, not there. */
export interface Difference {
  readonly field: string
  readonly before?: unknown
  readonly now?: unknown
}

export type SinceRevision =
  | { readonly kind: 'unknown' }
  | { readonly kind: 'unchanged' }
  /** `stoodAt`: ISO moment of the change that led to the printed state, the latest if there were several. */
  | { readonly kind: 'changed'; readonly stoodAt: string; readonly differences: readonly Difference[] }

/** What has changed since a sheet with this code was printed, found by replaying the log. */
export function changesSinceRevision(typed: string, doc: CommissionDoc, changes: readonly Change[]): SinceRevision {
  const code = parseRevisionCode(typed)
  if (code === null) return { kind: 'unknown' }
  if (revisionCode(doc) === code) return { kind: 'unchanged' }
  let found: { doc: OnPaper; stoodAt: string } | null = null
  let lastSeen: OnPaper | null = null
  for (const { row, change } of replayStates(changes)) {
    const then = onPaper(row)
    if (then === null) continue
    if (lastSeen !== null && samePaper(then, lastSeen)) continue
    lastSeen = then
    if (revisionCode(then) === code) found = { doc: then, stoodAt: change.at }
  }
  if (found === null) return { kind: 'unknown' }
  return { kind: 'changed', stoodAt: found.stoodAt, differences: listDifferences(onPaperOf(found.doc), onPaperOf(doc)) }
}

const samePaper = (a: OnPaper, b: OnPaper): boolean =>
  a.plan === b.plan && a.tolerances === b.tolerances && a.stages === b.stages

const onPaperOf = ({ plan, tolerances, stages }: OnPaper): OnPaper => ({ plan: builtPlan(plan), tolerances, stages })

function onPaper(row: unknown): OnPaper | null {
  const doc = valueAt(row, ['doc'])
  if (!doc.here || !isPlainObject(doc.value)) return null
  const { plan, tolerances, stages } = doc.value
  return [plan, tolerances, stages].every(isPlainObject) ? ({ plan, tolerances, stages } as unknown as OnPaper) : null
}

/** The leaves that differ between two pieces of JSON; lists, and entries only one side has, are named whole. */
export function listDifferences(before: unknown, now: unknown, field = ''): Difference[] {
  if (sameJson(before, now)) return []
  if (!isPlainObject(before) || !isPlainObject(now)) return [{ field, before, now }]
  return [...new Set([...Object.keys(before), ...Object.keys(now)])].flatMap((key): Difference[] => {
    const name = field === '' ? key : `${field}.${key}`
    if (!Object.hasOwn(before, key)) return [{ field: name, now: now[key] }]
    if (!Object.hasOwn(now, key)) return [{ field: name, before: before[key] }]
    return listDifferences(before[key], now[key], name)
  })
}

/** JSON with keys in alphabetical order at every level: the same text for the same values. */
export function sortedJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(sortedJson).join(',')}]`
  if (!isPlainObject(value)) return JSON.stringify(value) ?? 'null'
  const parts = Object.keys(value)
    .sort()
    .map((key) => `${JSON.stringify(key)}:${sortedJson(value[key])}`)
  return `{${parts.join(',')}}`
}

/**
 * 30 bits of FNV-1a over the UTF-16 units, the low byte first, then stirred so that near texts part. Not for secrets.
 * Source: Fowler, Noll and Vo, FNV-1a, 32 bit (offset basis 2166136261, prime 16777619); the stirring from memory (MurmurHash3's last step).
 */
function hash30(text: string): number {
  let hash = 2166136261
  for (let i = 0; i < text.length; i += 1) {
    const unit = text.charCodeAt(i)
    hash = Math.imul(hash ^ (unit & 255), 16777619)
    hash = Math.imul(hash ^ (unit >>> 8), 16777619)
  }
  hash = Math.imul(hash ^ (hash >>> 16), 0x85ebca6b)
  hash = Math.imul(hash ^ (hash >>> 13), 0xc2b2ae35)
  return (hash ^ (hash >>> 16)) >>> 2
}

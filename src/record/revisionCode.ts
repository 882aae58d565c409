import type { CommissionDoc } from './commission.ts'
import { isPlainObject } from './path.ts'

/** Crockford's base 32: no I, L, O or U, so that a code read from paper is not mistaken. */
export const SIGNS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ'
export const CODE_LENGTH = 6

/** What a stage sheet shows. */
export type OnPaper = Pick<CommissionDoc, 'plan' | 'tolerances' | 'stages'>

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
  return shortCode({ plan, tolerances, stages })
}

/** Six signs that stand for a piece of JSON: the same for the same values, whatever the order of their keys. */
export function shortCode(value: unknown): string {
  let left = hash30(sortedJson(value))
  let code = ''
  for (let i = 0; i < CODE_LENGTH; i += 1) {
    code = `${SIGNS[left % 32]}${code}`
    left = Math.floor(left / 32)
  }
  return code
}

/** Of a document, as far as it is built. */
export const onPaperOf = ({ plan, tolerances, stages }: OnPaper): OnPaper => ({
  plan: builtPlan(plan),
  tolerances,
  stages,
})

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

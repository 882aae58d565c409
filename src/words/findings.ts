import type { Finding, FindingCode } from '../core/findings.ts'
import { AIR_FINDINGS } from './findings/air.ts'
import { BODY_FINDINGS } from './findings/body.ts'
import { BRACING_FINDINGS } from './findings/bracing.ts'
import { BRIDGE_FINDINGS } from './findings/bridge.ts'
import type { FindingText, FindingWriter, Say } from './findings/findingWords.ts'
import { EDGE_FINDINGS } from './findings/edges.ts'
import { INSIDE_FINDINGS } from './findings/inside.ts'
import { NECK_FINDINGS } from './findings/neck.ts'
import { OUTLINE_FINDINGS } from './findings/outline.ts'
import { PLATE_FINDINGS } from './findings/plates.ts'
import { ROSETTE_FINDINGS } from './findings/rosette.ts'

/** One writer for every code; a code without one does not compile. */
const WRITERS: Record<FindingCode, FindingWriter> = {
  ...OUTLINE_FINDINGS,
  ...BODY_FINDINGS,
  ...INSIDE_FINDINGS,
  ...PLATE_FINDINGS,
  ...ROSETTE_FINDINGS,
  ...NECK_FINDINGS,
  ...BRIDGE_FINDINGS,
  ...BRACING_FINDINGS,
  ...EDGE_FINDINGS,
  ...AIR_FINDINGS,
}

/**
 * A finding in words. `say` puts a value (mm or rad) into the shop's unit; a value that is missing or not finite is left out
 * of the sentence, never shown raw.
 */
export function findingSentence(finding: Finding, say: Say): FindingText {
  const read = (name: string): number | null => {
    const value = finding.values[name]
    return value !== undefined && Number.isFinite(value) ? value : null
  }
  return WRITERS[finding.code]({
    value: (name, quantity) => {
      const value = read(name)
      return value === null ? null : say(value, quantity)
    },
    size: (name, quantity) => {
      const value = read(name)
      return value === null ? null : say(Math.abs(value), quantity)
    },
    number: read,
    leadsTo: (field) => finding.fields.includes(field),
  })
}

/** The word that stands beside a finding's mark. */
export const WEIGHT_WORDS: Record<Finding['weight'], string> = { cannot: 'Cannot be built', care: 'Take care' }

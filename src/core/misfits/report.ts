import type { Finding, FindingCode } from '../findings.ts'
import type { PlanField } from '../planFields.ts'

/** Writes one finding down. */
export type Report = (
  code: FindingCode,
  weight: Finding['weight'],
  fields: readonly PlanField[],
  values?: Record<string, number>,
) => void

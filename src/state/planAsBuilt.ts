import type { Plan } from '../core/plan.ts'
import { readingsInUse } from '../record/bench/measured.ts'
import type { Bundle } from '../record/document.ts'

/** The plan of a stored instrument as it came out: what was measured in the place of what was planned. What that takes is fetched when it is asked for. */
export async function planAsBuilt({ row, facts }: Bundle): Promise<Plan> {
  const readings = readingsInUse(facts)
  if (readings.length === 0) return row.doc.plan
  const [{ asBuilt }, { allowsValue }] = await Promise.all([
    import('../core/asBuilt.ts'),
    import('../record/allowsValue.ts'),
  ])
  return asBuilt(row.doc.plan, readings, allowsValue).plan
}

import type { Numbers } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import type { Report } from './report.ts'

// Limits are common practice, no published source, unless said.
const LEAST_LEDGE_MM = 3
/** Above this a hardwood caul takes a set or breaks. */
const CAUL_STRESS_MPA = 60

/** Linings, side braces and the caul that presses them. */
export function insideMisfits(plan: Plan, numbers: Numbers, report: Report) {
  for (const plate of ['top', 'back'] as const) {
    const ledgeMm = numbers.linings[plate].ledgeMm
    if (ledgeMm < LEAST_LEDGE_MM)
      report(
        'ledgeTooNarrow',
        ledgeMm <= 0 ? 'cannot' : 'care',
        [`linings.${plate}.widthMm`, 'binding.thicknessMm', `binding.${plate}PurflingMm`],
        { plate: plate === 'top' ? 0 : 1, ledgeMm },
      )
  }
  const depths = [...numbers.rim, ...numbers.trebleRim].map((row) => row.depthMm)
  const between = Math.min(...depths) - plan.linings.top.heightMm - plan.linings.back.heightMm
  if (between <= 0)
    report('liningsMeet', 'cannot', ['linings.top.heightMm', 'linings.back.heightMm'], { byMm: -between })
  if (plan.sideBraces.form !== 'none' && numbers.caul.stressMPa > CAUL_STRESS_MPA)
    report('caulTooThin', 'care', ['caul.heightMm', 'caul.forceN', 'caul.spanMm'], {})
}

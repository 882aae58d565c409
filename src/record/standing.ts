import { aboutNumber, type NumberKey } from '../core/catalogue.ts'
import type { About } from '../core/catalogue/about.ts'
import type { BridgePlan } from '../core/neckPlan.ts'

/** The strings' own estimates say what each string wants, whichever compensation the saddle is given. */
const STRINGS_OWN = 'strings[].'

/**
 * How sure a number of one instrument is. What the catalogue calls an estimate because it follows an estimated compensation is as sure as what
 * was entered where the compensation is entered; every other number stands as the catalogue has it. Derived.
 */
export function standingOf(
  key: NumberKey,
  { bridge }: { readonly bridge: Pick<BridgePlan, 'compensation'> },
): About['standing'] {
  const { standing, hangsOn } = aboutNumber(key)
  const followsSaddle = hangsOn.includes('bridge.compensation') && !key.startsWith(STRINGS_OWN)
  return standing === 'estimate' && bridge.compensation === 'entered' && followsSaddle ? 'exact' : standing
}

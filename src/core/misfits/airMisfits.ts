import type { Numbers } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import type { Report } from './report.ts'

/** Parts of the rigid box outside of which a note is hardly the air's: far beyond the usual band. Common practice, no published source. */
const LEAST_RATIO = 0.6
const GREATEST_RATIO = 1

/** The air of the closed box, and what was heard of it. */
export function airMisfits({ air: { heardHz } }: Plan, { air }: Numbers, report: Report) {
  if (air.netMm3 <= 0)
    report('noAirLeft', 'cannot', ['rim.depthAtTailMm', 'rim.depthAtNeckMm'], {
      grossMm3: air.grossMm3,
      takenUpMm3: air.takenUpMm3,
    })
  if (air.holeMm2 <= 0)
    report('noFreeHole', 'care', [
      'scale.frets',
      'board.endBeyondLastFretMm',
      'soundhole.centreMm',
      'soundhole.radiusMm',
    ])
  const { ratio, rigidHz, lowHz, highHz } = air
  if (heardHz === null || typeof ratio !== 'number' || typeof rigidHz !== 'number') return
  if (typeof lowHz !== 'number' || typeof highHz !== 'number') return
  if (ratio < LEAST_RATIO || ratio > GREATEST_RATIO)
    report('heardUnlikely', 'care', ['air.heardHz'], {
      heardHz,
      rigidHz,
      lowHz,
      highHz,
    })
}

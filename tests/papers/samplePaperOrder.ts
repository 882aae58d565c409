import { compute } from '../../src/core/compute.ts'
import type { Plan } from '../../src/core/plan.ts'
import { STARTING_UNITS } from '../../src/core/quantity.ts'
import type { PaperOrder } from '../../src/papers/paperOrder.ts'
import { stageDrawing } from '../../src/papers/stageDrawing.ts'
import { PAPER_LETTERING } from '../../src/words/paperLettering.ts'

/** An instrument ready for the papers that are about the whole of it. */
export function samplePaperOrder(plan: Plan, changes: Partial<PaperOrder> = {}): PaperOrder {
  const computed = compute(plan)
  return {
    doc: {
      number: '0412',
      title: 'Steel-string, 14 frets to the body',
      family: 'steelString',
      brief: {
        client: 'Tamsin Oakhollow',
        contact: '',
        wishes: 'A warm voice for small rooms.\n\nStrap button in the heel, and no varnish on the neck.',
        orderedOn: '2027-01-20',
        promisedOn: '2027-11-30',
        notes: 'Pays in three parts.',
      },
      plan,
      tolerances: {},
      stages: {},
    },
    computed,
    shop: { name: 'Oakhollow workshop', units: STARTING_UNITS, tolerances: {} },
    paperSize: 'A4',
    revisionCode: '7QK4ZD',
    dateIso: '2027-03-12',
    drawingOf: (name) => stageDrawing(computed, plan, name),
    words: PAPER_LETTERING,
    ...changes,
  }
}

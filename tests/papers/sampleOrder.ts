import { compute } from '../../src/core/compute.ts'
import type { Plan } from '../../src/core/plan.ts'
import { STARTING_UNITS } from '../../src/core/quantity.ts'
import { stageDrawing } from '../../src/papers/stageDrawing.ts'
import type { StageSheetOrder } from '../../src/papers/stageSheetOrder.ts'
import { orderStrings } from '../../src/record/order.ts'
import { startingStages } from '../../src/record/patterns/stages.ts'
import { CAUTION_WORDS } from '../../src/words/cautions.ts'
import { NUMBER_WORDS } from '../../src/words/numbers.ts'
import { enlargedWords, SEEN_FROM_WORDS, SHAPE_WORDS } from '../../src/words/drawing.ts'
import { PAPER_WORDS } from '../../src/words/paper.ts'
import { STAGE_WORDS } from '../../src/words/stages.ts'

/** All stages of an instrument, ready to be laid out. */
export function sampleOrder(
  plan: Plan,
  family: Parameters<typeof startingStages>[0],
  changes: Partial<StageSheetOrder> = {},
): StageSheetOrder {
  const keys = startingStages(family)
  const orders = orderStrings(keys.length)
  const computed = compute(plan)
  return {
    doc: {
      number: '0412',
      title: 'Steel-string, 14 frets to the body',
      brief: { client: 'Tamsin Oakhollow', contact: '', wishes: '', orderedOn: null, promisedOn: null, notes: '' },
      family,
      tolerances: {},
      stages: Object.fromEntries(keys.map((key, i) => [`stage-${i}`, { order: orders[i]!, key }])),
      plan,
    },
    computed,
    stages: keys.map((key, i) => ({ id: `stage-${i}`, key, place: i + 1, done: i < 2 })),
    stagesTotal: keys.length,
    shop: { units: STARTING_UNITS, tolerances: {} },
    paperSize: 'A4',
    revisionCode: '7QK4ZD',
    dateIso: '2027-03-12',
    drawingOf: (name) => stageDrawing(computed, plan, name),
    words: {
      stages: STAGE_WORDS,
      cautions: CAUTION_WORDS,
      numbers: NUMBER_WORDS,
      paper: PAPER_WORDS,
      drawing: { seenFrom: SEEN_FROM_WORDS, shapes: SHAPE_WORDS, enlarged: enlargedWords },
    },
    ...changes,
  }
}

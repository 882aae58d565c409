import { compute } from '../../src/core/compute.ts'
import type { Figure } from '../../src/core/figure.ts'
import { type NumberKey, readNumbers } from '../../src/core/numbers.ts'
import type { Plan } from '../../src/core/plan.ts'
import { writeCommissionFile } from '../../src/files/commissionFile.ts'
import { beginCommission } from '../../src/record/changes/begin.ts'
import { setBriefField } from '../../src/record/changes/brief.ts'
import { setField } from '../../src/record/changes/setField.ts'
import { setTolerance } from '../../src/record/changes/tolerances.ts'
import type { CommissionDoc, CommissionRecord, ShopDoc } from '../../src/record/commission.ts'
import type { Bundle } from '../../src/record/document.ts'
import { type EditMeta, editDocument, type Recipe } from '../../src/record/edit.ts'
import { type BuiltTo, signOff } from '../../src/record/facts.ts'
import { inOrder } from '../../src/record/order.ts'
import type { StageKey } from '../../src/record/patterns/stages.ts'
import { figuresOfStage } from '../../src/record/patterns/figuresOfStage.ts'
import { STARTING_SHOP } from '../../src/state/shopStore.ts'
import type { DemoModel } from './demoModel.ts'
import { SMALL, STEEL_STRING } from './demoModels.ts'
import { NYLON_STRING } from './demoNylon.ts'
import { readCoarseStages } from '../tables/readCoarseStages.ts'

/**
 * The shop and the clients of the demo: all invented. A shop of one maker by a river mouth has three instruments in hand in the last week
 * of November 2026: a steel-string in the mould, a small one just begun for stock, a nylon-string ordered five days ago.
 */
const SHOP: ShopDoc = { ...STARTING_SHOP, name: 'Saltmarsh Bench' }
const SAVED_AT = '2026-11-25T08:30:00.000Z'
const DEVICE = 'a11ce000-0000-4000-8000-000000000001'

interface Entry {
  readonly day: string
  readonly recipe: Recipe<CommissionRecord>
}

interface Story {
  readonly file: string
  /** Eight hexadecimal digits that begin every id of this commission. */
  readonly mark: string
  readonly model: DemoModel
  readonly number: string
  readonly title: string
  readonly begunOn: string
  readonly brief: Partial<CommissionDoc['brief']>
  readonly entries: readonly Entry[]
  /** Stages done, each with its day. */
  readonly done: readonly (readonly [StageKey, string])[]
}

const plan = (field: string, value: unknown): Recipe<CommissionRecord> => setField(`plan.${field}`, value)

const STORIES: readonly Story[] = [
  {
    file: '26-07-meadow',
    mark: '26070000',
    model: STEEL_STRING,
    number: '26-07',
    title: 'Fourteen-fret steel-string, walnut',
    begunOn: '2026-08-17',
    brief: {
      client: 'Ottoline Farrow',
      contact: 'ottoline.farrow@example.org',
      wishes:
        'Plays seated, fingerstyle, mostly in low tunings. Wants the bass to stay clear rather than big. Plain appointments: one wide ring, no shell.',
      orderedOn: '2026-08-14',
      promisedOn: '2027-03-19',
    },
    entries: [
      { day: '2026-08-20', recipe: plan('rim.depthAtTailMm', 108) },
      { day: '2026-09-03', recipe: plan('rim.depthAtTailMm', 106) },
      {
        day: '2026-09-03',
        recipe: setBriefField(
          'notes',
          'Spoke on 3 September: two millimetres less at the tail, her old one dug into the arm.',
        ),
      },
      { day: '2026-10-12', recipe: setTolerance('sides.thicknessMm', 0.05) },
    ],
    done: [
      ['chooseWood', '2026-08-24'],
      ['settleWood', '2026-10-05'],
      ['thicknessSides', '2026-10-13'],
      ['markBlanks', '2026-10-14'],
      ['profileBlanks', '2026-10-14'],
      ['bendSides', '2026-10-21'],
      ['settleInMould', '2026-10-28'],
      ['makeBlocks', '2026-11-04'],
      ['glueBlocks', '2026-11-11'],
      ['braceSides', '2026-11-19'],
    ],
  },
  {
    file: '26-09-pipit',
    mark: '26090000',
    model: SMALL,
    number: '26-09',
    title: 'Small fourteen-fret, cherry',
    begunOn: '2026-11-02',
    brief: {
      wishes: 'For stock: the spring fair on the quay. From the offcuts of 26-03.',
      promisedOn: '2027-04-24',
    },
    entries: [
      { day: '2026-11-09', recipe: plan('plates.topMm', 1.8) },
      {
        day: '2026-11-09',
        recipe: setBriefField('notes', 'The cedar offcut is stiff across: top a tenth thinner than the model.'),
      },
    ],
    done: [
      ['chooseWood', '2026-11-06'],
      ['settleWood', '2026-11-23'],
    ],
  },
  {
    file: '26-10-evenfall',
    mark: '26100000',
    model: NYLON_STRING,
    number: '26-10',
    title: 'Twelve-fret nylon-string, cypress',
    begunOn: '2026-11-20',
    brief: {
      client: 'Bram Tessaly',
      contact: '+44 1632 960 214, evenings',
      wishes:
        'Accompanies a choir: quick and dry, light to hold. Shape by its widths, after the body he plays now; he measured it himself and is sure of the waist to a millimetre.',
      orderedOn: '2026-11-20',
      promisedOn: '2027-06-18',
    },
    entries: [{ day: '2026-11-21', recipe: plan('outline.keyWidths.waistMm', 232) }],
    done: [],
  },
]

/** The one nylon-string begins from its model's waist as the client first gave it. */
const asBegun = (story: Story): Plan =>
  story.model === NYLON_STRING
    ? {
        ...story.model.plan,
        outline: { ...story.model.plan.outline, keyWidths: { ...story.model.plan.outline.keyWidths, waistMm: 234 } },
      }
    : story.model.plan

/** The building orders the demo was begun with. */
const { orders } = readCoarseStages()

/** What a stage was built to: each of its numbers, row by row where it has rows. */
export function builtTo(stage: StageKey, present: readonly StageKey[], of: Plan): BuiltTo {
  const { numbers } = compute(of)
  const entries = figuresOfStage(stage, present).numbers.flatMap((key: NumberKey): [string, Figure][] =>
    readNumbers(numbers, key).map((value, i) => [key.replace('[]', `[${i}]`), value]),
  )
  return Object.fromEntries(entries)
}

function tell(story: Story): Bundle {
  let count = 0
  const newId = () => {
    count += 1
    return `${story.mark}-0000-4000-8000-${count.toString(16).padStart(12, '0')}`
  }
  const on = (day: string, hour: number): EditMeta => ({
    deviceId: DEVICE,
    at: `${day}T${String(hour).padStart(2, '0')}:15:00.000Z`,
    gesture: newId(),
    newId,
  })
  const { model } = story
  const begun = beginCommission(
    {
      number: story.number,
      title: story.title,
      family: model.family,
      model: { modelId: model.id, name: model.name, plan: model.plan },
      plan: asBegun(story),
      stages: orders[model.family],
      brief: story.brief,
    },
    on(story.begunOn, 9),
  )
  if (!begun.ok) throw new Error(JSON.stringify(begun.problem))
  let { row, changes, facts } = begun.value
  const steps = [
    { day: story.begunOn, recipe: setField<CommissionRecord>('demo', true), stage: null },
    ...story.entries.map((entry) => ({ ...entry, stage: null })),
    ...story.done.map(([stage, day]) => ({ day, stage, recipe: null })),
  ].toSorted((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0))
  for (const { day, recipe, stage } of steps) {
    if (recipe !== null) {
      const edited = editDocument(row, changes, recipe, on(day, 10))
      if (!edited.ok) throw new Error(JSON.stringify(edited.problem))
      row = edited.value.row
      changes = [...changes, ...edited.value.changes]
    }
    if (stage !== null) {
      const [id] = inOrder(row.doc.stages).find(([, one]) => one.key === stage)!
      const fact = signOff(row, id, builtTo(stage, orders[model.family], row.doc.plan), on(day, 16))
      facts = [...facts, fact]
      row = { ...row, seen: { ...row.seen, [DEVICE]: fact.seq } }
    }
  }
  return { row, changes, facts }
}

/** The demo commissions as the files they are committed as. */
export const demoCommissions = (): { readonly file: string; readonly text: string }[] =>
  STORIES.map((story) => ({ file: `${story.file}.json`, text: writeCommissionFile(tell(story), SHOP, SAVED_AT) }))

/** The models as the files they are committed as. */
export const demoModels = (): { readonly file: string; readonly text: string }[] =>
  [STEEL_STRING, SMALL, NYLON_STRING].map(({ file, ...model }) => ({
    file: `${file}.json`,
    text: `${JSON.stringify(model, null, 2)}\n`,
  }))

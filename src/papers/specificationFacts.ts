import type { NumberKey } from '../core/numbers.ts'
import type { PlanField } from '../core/planFields.ts'
import type { Quantity } from '../core/quantity.ts'
import { WOOD_ROLES } from '../core/wood/part.ts'
import { figureText } from '../format/figure.ts'
import { formatDate } from '../format/formatDate.ts'
import { formatNote } from '../format/formatNote.ts'
import { formatQuantity } from '../format/formatQuantity.ts'
import type { SpecificationWords } from '../words/specification.ts'
import type { Fact } from './blocks/factsTable.ts'
import type { PaperOrder } from './paperOrder.ts'
import { targetFigure, valuesOf } from './targetCell.ts'

export interface SpecificationSection {
  readonly key: keyof SpecificationWords['sections']
  readonly facts: readonly Fact[]
}

/** What is agreed about an instrument, part by part, in the shop's units. What this instrument has none of is left out. */
export function specificationSections(order: PaperOrder): readonly SpecificationSection[] {
  const { plan } = order.doc
  const { words } = order
  const numbers = (...keys: NumberKey[]) => keys.flatMap((key) => numberFact(order, key))
  const choice = (field: PlanField, value: string) => ({
    name: words.specification.fieldName(field),
    value: words.specification.choice(field, value),
  })
  /** A size of the plan that no number stands for; nothing, where it is none. */
  const size = (field: PlanField, value: number, quantity: Quantity): Fact[] =>
    value === 0
      ? []
      : [
          {
            name: words.specification.fieldName(field),
            value: { figure: formatQuantity(value, quantity, order.shop.units), word: '' },
          },
        ]
  const { binding, edges, scale, board, strings, neck, head, bridge, outline } = plan
  const sections: readonly SpecificationSection[] = [
    { key: 'agreed', facts: agreedFacts(order) },
    {
      key: 'body',
      facts: [
        ...numbers('body.lengthMm', 'body.lowerBoutMm', 'body.waistMm', 'body.upperBoutMm'),
        ...numbers('sides.bodyDepthAtTailMm', 'sides.bodyDepthAtNeckMm'),
        ...numbers('top.radiusMm', 'back.radiusMm'),
        choice('outline.cutaway.form', outline.cutaway.form),
        choice('handed', plan.handed),
      ],
    },
    {
      key: 'woods',
      facts: [
        ...WOOD_ROLES.map((role) => ({
          name: words.specification.woods[role],
          value: plan.cutting.woods[role].trim() || words.specification.notChosen,
        })),
        ...size('plates.topMm', plan.plates.topMm, 'thickness'),
        ...size('plates.backMm', plan.plates.backMm, 'thickness'),
        ...numbers('sides.thicknessMm'),
      ],
    },
    {
      key: 'edges',
      facts: [
        ...size('binding.heightMm', binding.heightMm, 'bodyLength'),
        ...size('binding.thicknessMm', binding.thicknessMm, 'thickness'),
        ...size('binding.topPurflingMm', binding.topPurflingMm, 'thickness'),
        ...size('binding.backPurflingMm', binding.backPurflingMm, 'thickness'),
        ...size('edges.wedgeTopMm', edges.wedgeTopMm, 'bodyLength'),
        ...size('edges.wedgeBackMm', edges.wedgeBackMm, 'bodyLength'),
        ...size('edges.backStripMm', edges.backStripMm, 'bodyLength'),
        ...size('board.bindingMm', board.bindingMm, 'thickness'),
      ],
    },
    { key: 'rosette', facts: [...numbers('soundhole.radiusMm', 'soundhole.centreMm'), ...ringFacts(order)] },
    {
      key: 'board',
      facts: [
        ...(scale.fan === 'square' ? numbers('scale.lengthMm') : numbers('scale.bassMm', 'scale.trebleMm')),
        choice('scale.fan', scale.fan),
        ...size('scale.frets', scale.frets, 'count'),
        ...size('scale.jointFret', scale.jointFret, 'count'),
        ...numbers('board.nutWidthMm', 'board.widthAtTwelfthMm'),
        choice('board.surface', board.surface),
        ...(board.surface === 'flat' ? [] : size('board.radiusMm', board.radiusMm, 'bodyLength')),
        ...(board.surface === 'compound' ? size('board.endRadiusMm', board.endRadiusMm, 'bodyLength') : []),
      ],
    },
    {
      key: 'strings',
      facts: [
        { name: words.specification.tuning, value: strings.set.map(({ note }) => formatNote(note)).join(' ') },
        {
          name: words.specification.pitch,
          value: { figure: formatQuantity(strings.pitchHz, 'frequency', order.shop.units), word: '' },
        },
        ...strings.set.map((string) => stringFact(order, string)),
        ...size('strings.nutSpreadMm', strings.nutSpreadMm, 'fineLength'),
        ...size('strings.saddleSpreadMm', strings.saddleSpreadMm, 'fineLength'),
      ],
    },
    {
      key: 'setup',
      facts: numbers(
        'setup.actionBassMm',
        'setup.actionTrebleMm',
        'setup.nutBassMm',
        'setup.nutTrebleMm',
        'setup.reliefMm',
      ),
    },
    {
      key: 'neck',
      facts: [
        choice('neck.joint', neck.joint),
        ...numbers('neck.thicknessAtFirstMm', 'neck.thicknessAtTenthMm', 'neck.heelCapMm'),
        choice('neck.rod', neck.rod),
        choice('head.tuners', head.tuners),
        ...numbers('head.angleRad', 'head.lengthMm', 'head.thicknessMm'),
      ],
    },
    {
      key: 'bridge',
      facts: [
        choice('bridge.holds', bridge.holds),
        ...numbers(
          'bridge.lengthMm',
          'bridge.widthMm',
          'bridge.thicknessMm',
          'bridge.slotLengthMm',
          'bridge.slotWidthMm',
        ),
      ],
    },
  ]
  return sections.filter(({ facts }) => facts.length > 0)
}

function agreedFacts({ doc, words }: PaperOrder): Fact[] {
  const { specification, paper } = words
  const day = (iso: string | null) => (iso === null ? specification.noDay : formatDate(iso))
  return [
    { name: specification.number, value: doc.number },
    { name: specification.title, value: doc.title },
    { name: specification.family, value: specification.families[doc.family] },
    { name: specification.client, value: doc.brief.client.trim() || paper.forStock },
    { name: specification.orderedOn, value: day(doc.brief.orderedOn) },
    { name: specification.promisedOn, value: day(doc.brief.promisedOn) },
  ]
}

/** A number by its own name; none where this instrument has none of it. */
function numberFact(order: PaperOrder, key: NumberKey): Fact[] {
  const [value] = valuesOf(order, key)
  if (value === undefined || value === 'none') return []
  return [{ name: order.words.numbers[key].name, value: targetFigure(order, key, value) }]
}

function ringFacts({ computed, shop, words }: PaperOrder): Fact[] {
  const { rings } = computed.numbers.rosette
  const { specification } = words
  const text = (mm: number) => figureText(formatQuantity(mm, 'bodyLength', shop.units))
  if (rings.length === 0) return [{ name: specification.rings, value: specification.noRings }]
  return rings.map((ring, i) => ({
    name: specification.ring(i + 1),
    value: specification.fromTo(text(ring.innerRadiusMm), text(ring.outerRadiusMm)),
  }))
}

/** A string by its note; its gauge to a hundredth of a millimetre or a thousandth of an inch, as strings are sold. */
function stringFact({ shop, words }: PaperOrder, string: PaperOrder['doc']['plan']['strings']['set'][number]): Fact {
  const { specification } = words
  return {
    name: specification.string(
      formatNote(string.note),
      specification.materials[string.material],
      string.pairedWithNext,
    ),
    value: { figure: formatQuantity(string.diameterMm, 'fineLength', shop.units), word: '' },
  }
}

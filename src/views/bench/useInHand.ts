import { useMemo } from 'react'
import type { ReadingPlace } from '../../core/asBuilt/reading.ts'
import { aboutNumber } from '../../core/catalogue.ts'
import type { Tool } from '../../core/catalogue/about.ts'
import type { Figure } from '../../core/figure.ts'
import type { Computed } from '../../core/compute.ts'
import type { Plan } from '../../core/plan.ts'
import type { Quantity, ShopUnits } from '../../core/quantity.ts'
import { type Verdict, verdictOf } from '../../core/verdict.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { effectiveTolerance } from '../../papers/effectiveTolerance.ts'
import { type Measured, measured } from '../../record/bench/measured.ts'
import { readAt } from '../../record/bench/readAt.ts'
import type { StageDone } from '../../record/facts.ts'
import { standingOf } from '../../record/standing.ts'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { FIGURE_WORDS } from '../../words/sheets.ts'
import { rowKey } from '../builtTo.ts'
import { useCommission, useShop, useWorkshop } from '../workshop.ts'
import { alongWord, fullName, readingPlace, rowWord } from './spotPlace.ts'
import { type Side, type Spot, valueAt } from './spots.ts'
import type { StageInHand } from './stageInHand.ts'

/** What was read of the number in hand on one side, and how it stands to what was asked. */
export interface SideRead {
  readonly side: Side
  readonly reading: Measured | null
  readonly verdict: Verdict | null
  /** No field can hold it: it is kept, and changes nothing. */
  readonly isOutside: boolean
}

/** The number in hand, with all that is said of it. */
export interface InHand {
  readonly spot: Spot
  readonly side: Side
  readonly name: string
  readonly row: string
  readonly along: string
  /** With row and side, on one line. */
  readonly called: string
  readonly quantity: Quantity
  readonly tool: Tool | null
  readonly tolerance: number | null
  readonly isEstimate: boolean
  /** What it is to be; of a stage that is signed off, what it was built to. */
  readonly asked: Figure
  readonly isSigned: boolean
  /** What was planned, where readings of other numbers have moved it. */
  readonly plannedText: string | null
  readonly defines: boolean
  readonly reads: readonly SideRead[]
  readonly place: ReadingPlace
  /** What the drawing shows: the instrument as it is asked to be. */
  readonly plan: Plan
  readonly computed: Computed
}

/** What is asked of a spot, its own readings left out; of a signed stage what it was built to. */
export function useInHand(stage: StageInHand, spot: Spot | null, side: Side, done: StageDone | null): InHand | null {
  const { askedOf, computedOf } = useWorkshop()
  const record = useCommission((state) => state.record)
  const built = useCommission((state) => state.builtDoc)
  const computed = useCommission((state) => state.computed)
  const facts = useCommission((state) => state.facts)
  const outside = useCommission((state) => state.outside)
  const units = useShop((state) => state.shop.units)
  const shopTolerances = useShop((state) => state.shop.tolerances)
  const readings = useMemo(() => measured(facts), [facts])
  if (record === null || built === null || computed === null || spot === null) return null
  const { doc } = record
  const about = aboutNumber(spot.key)
  const from = askedOf(spot.key)
  const kept = done?.builtTo[rowKey(spot.key, spot.row ?? 0)]
  const now = valueAt((from?.computed ?? computed).numbers, spot)
  const asked = kept ?? now
  const planned = facts.length === 0 ? asked : valueAt(computedOf(doc.plan).numbers, spot)
  const tolerance = typeof asked === 'number' ? effectiveTolerance(spot.key, doc.tolerances, shopTolerances) : null
  const { numbers } = computed
  const places = spot.sides.map((one) => readingPlace(spot, one, numbers, built.plan))
  const name = NUMBER_NAMES[spot.key]
  const row = rowWord(spot, numbers, built.plan)
  return {
    spot,
    side,
    name,
    row,
    along: alongWord(spot, stage.numbers, numbers, units),
    called: fullName(name, row, side),
    quantity: about.quantity,
    tool: about.measured?.tool ?? null,
    tolerance,
    isEstimate: standingOf(spot.key, doc.plan) === 'estimate',
    asked,
    isSigned: kept !== undefined,
    plannedText: kept === undefined ? otherText(planned, asked, about.quantity, units) : null,
    defines: from?.defines ?? false,
    reads: places.map((place): SideRead => {
      const reading = readAt(readings, place)
      // Of a stage that is signed off, a reading is held against what was asked when it was taken.
      const against = kept !== undefined && reading !== null ? reading.planned : asked
      const verdict = reading === null ? null : verdictOf(reading.value, against, tolerance, about.quantity)
      return { side: place.side, reading, verdict, isOutside: reading !== null && outside.includes(reading.id) }
    }),
    place: readingPlace(spot, side, numbers, built.plan),
    plan: from?.plan ?? built.plan,
    computed: from?.computed ?? computed,
  }
}

/** A planned value as text, where it reads otherwise than what is asked. */
function otherText(planned: Figure, asked: Figure, quantity: Quantity, units: ShopUnits): string | null {
  const say = (value: Figure): string => {
    const figure = formatQuantity(value, quantity, units)
    return figure.word === null ? figureText(figure) : FIGURE_WORDS[figure.word]
  }
  return say(planned) === say(asked) ? null : say(planned)
}

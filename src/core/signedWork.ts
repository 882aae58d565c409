import { latestReadings, meanValue, type Reading } from './asBuilt/reading.ts'
import type { NumberKey } from './catalogue.ts'
import type { Figure } from './figure.ts'
import { type KeptNumbers, readKeptName } from './keptNumbers.ts'
import { figureAt, listOf, type NumberPlace, placeOf, type Worked } from './numberPlace.ts'
import { readNumbers } from './numbers.ts'
import type { Plan } from './plan.ts'

/** A stage that was signed off, and what is known of its work. */
export interface SignedWork {
  readonly stageId: string
  /** The numbers it was built to. */
  readonly kept: KeptNumbers
  /** The instrument as it was built to then: tells where the rows of what was kept stand. */
  readonly builtThen: Worked
  /** What the plan of then asks, with the readings that still hold and today's stations. */
  readonly askedThen: Worked
  /** What was asked when the maker said that this work stays as it is. */
  readonly excused: readonly KeptNumbers[]
}

/** How the numbers of work that was done are to be judged. */
export interface SignedTerms {
  /** Readings that stand, in the order they were taken. */
  readonly readings: readonly Reading[]
  /** Whether a number of a stage is read at the work; one that is only looked up is nowhere in the wood. */
  readonly isRead: (stageId: string, key: NumberKey) => boolean
  /** mm or rad; null: the number carries none. */
  readonly toleranceOf: (key: NumberKey) => number | null
}

/** A number of finished work that is no longer what the plan asks. In the unit of the number. */
export interface UnfitNumber {
  /** As it was kept: 'rim[3].depthMm'. */
  readonly name: string
  readonly place: NumberPlace
  /** What the wood has: read there, or else as the stage was built to. */
  readonly wood: number
  readonly from: 'read' | 'kept'
  readonly asked: number
  /** Wood less asked. */
  readonly by: number
  readonly tolerance: number
}

/** A list of rows that a stage was built to, and that is empty now; with the first number of it that was kept. */
export interface GoneList {
  readonly list: string
  readonly name: string
  readonly key: NumberKey
}

/** What of a stage no longer fits, worst first, and the lists it was built to of which nothing is left. */
export interface UnfitStage {
  readonly stageId: string
  readonly numbers: readonly UnfitNumber[]
  readonly gone: readonly GoneList[]
}

/** Of a tolerance: what moves a number by less is no change of what is asked. */
const NO_CHANGE = 1 / 10
/** Of a number worked out twice from one plan, mm or rad. */
const SAME = 1e-6

/**
 * What is done and no longer fits: numbers of signed stages whose wood lies further from what is asked now than their tolerance, where the
 * specification moved what is asked, and not a reading. Stages that still fit are left out; the others keep their order.
 */
export function unfitWork(now: Worked, stages: readonly SignedWork[], terms: SignedTerms): readonly UnfitStage[] {
  return stages.flatMap((stage): UnfitStage[] => {
    const numbers = new Map<string, UnfitNumber>()
    const gone = new Map<string, GoneList>()
    for (const [name, value] of Object.entries(stage.kept)) {
      const found = readKeptName(name)
      if (found === null || typeof value !== 'number' || !terms.isRead(stage.stageId, found.key)) continue
      const tolerance = terms.toleranceOf(found.key)
      if (tolerance === null) continue
      const { key, row } = found
      const place = placeOf(stage.builtThen, key, row)
      const list = listOf(key)
      if (list !== null && isEmptied(key, now, stage)) {
        if (!gone.has(list) && !isLetGo(list, stage)) gone.set(list, { list, name, key })
        continue
      }
      const unfit = judge(name, value, place, { now, stage, tolerance, readings: terms.readings })
      if (unfit !== null) numbers.set(name, unfit)
    }
    if (numbers.size + gone.size === 0) return []
    const worstFirst = [...numbers.values()].toSorted(
      (a, b) => Math.abs(b.by) / Math.max(b.tolerance, SAME) - Math.abs(a.by) / Math.max(a.tolerance, SAME),
    )
    return [{ stageId: stage.stageId, numbers: worstFirst, gone: [...gone.values()] }]
  })
}

interface Judged {
  readonly now: Worked
  readonly stage: SignedWork
  readonly tolerance: number
  readonly readings: readonly Reading[]
}

function judge(
  name: string,
  kept: number,
  place: NumberPlace,
  { now, stage, tolerance, readings }: Judged,
): UnfitNumber | null {
  const asked = figureAt(now, place)
  const before = figureAt(stage.askedThen, place)
  if (typeof asked !== 'number' || typeof before !== 'number') return null
  if (Math.abs(asked - before) <= tolerance * NO_CHANGE) return null
  const read = readingAt(readings, place)
  const wood = read ?? kept
  const by = wood - asked
  if (Math.abs(by) <= tolerance) return null
  const isExcused = stage.excused.some((one) => isNear(one[name], asked, tolerance * NO_CHANGE))
  return isExcused ? null : { name, place, wood, from: read === null ? 'kept' : 'read', asked, by, tolerance }
}

const isNear = (figure: Figure | undefined, value: number, within: number): boolean =>
  typeof figure === 'number' && Math.abs(figure - value) <= within

/** Rows there were by the plan of then, and now there are none. */
const isEmptied = (key: NumberKey, now: Worked, { askedThen }: SignedWork): boolean =>
  readNumbers(now.numbers, key).length === 0 && readNumbers(askedThen.numbers, key).length > 0

/** The maker knows that nothing of a list is asked any more. */
const isLetGo = (list: string, { excused }: SignedWork): boolean =>
  excused.some((asked) =>
    Object.entries(asked).some(([name, figure]) => {
      const found = figure === 'none' ? readKeptName(name) : null
      return found !== null && listOf(found.key) === list
    }),
  )

/** Round the rim a rule is not laid twice at the very same place. */
const SAME_PLACE_MM = 0.5

/** What was read last at a place: of the two halves their middle; null where nothing was. */
export function readingAt(readings: readonly Reading[], place: NumberPlace): number | null {
  const here = latestReadings(readings.filter((one) => one.number === place.key && isOf(one, place)))
  const last = here.at(-1)
  if (last === undefined) return null
  return last.side === 'whole' ? last.value : meanValue(here.filter(({ side }) => side !== 'whole'))
}

function isOf({ row, side, alongMm, entry }: Reading, place: NumberPlace): boolean {
  if (entry !== null && place.entry !== null) {
    const [id, half] = place.entry.split(' ')
    return entry === id && (side === 'whole' || half === undefined || half === 'single' || half === side)
  }
  if (alongMm !== null && place.alongMm !== null) return Math.abs(alongMm - place.alongMm) < SAME_PLACE_MM
  return row === place.row
}

/**
 * Whether the plan still asks of what was read what it asked then: else the specification of that very thing has changed, and the reading
 * says nothing of the new one. Both worked out from the bare plan, with the same stations.
 */
export function stillSpecified({ number, row, alongMm, entry }: Reading, then: Worked, now: Worked): boolean {
  const place: NumberPlace = { key: number, row, alongMm, entry: listOf(number) === 'rosette.rings' ? entry : null }
  const [before, after] = [figureAt(then, place), figureAt(now, place)]
  if (typeof before === 'number' && typeof after === 'number') return Math.abs(before - after) <= SAME
  return before === after
}

const stepped = new WeakMap<Plan, Plan>()

/** A plan with the stations of another: so that rows of both stand at the same distances. The same plan each time it is asked for. */
export function withStationsOf(plan: Plan, other: Plan): Plan {
  const { stationStepMm } = other.rim
  if (plan.rim.stationStepMm === stationStepMm) return plan
  const known = stepped.get(plan)
  if (known?.rim.stationStepMm === stationStepMm) return known
  const made = { ...plan, rim: { ...plan.rim, stationStepMm } }
  stepped.set(plan, made)
  return made
}

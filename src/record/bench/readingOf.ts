import type { Taken } from '../../core/asBuilt.ts'
import { type Reading, type ReadingPlace, samePlace } from '../../core/asBuilt/reading.ts'
import type { NumberKey } from '../../core/catalogue.ts'
import type { Figure } from '../../core/figure.ts'
import { ringsInOrder } from '../../core/instrument/rosette.ts'
import { type Numbers, readNumbers } from '../../core/numbers.ts'
import type { Plan } from '../../core/plan.ts'
import type { Measured, NewReading } from './measured.ts'
import { readAt } from './readAt.ts'

/** A box of a sheet: which number of which row is read, and on which half. */
export interface Box {
  readonly number: NumberKey
  /** From 0; 0 where it stands once. */
  readonly row: number
  readonly side: Reading['side']
}

/** What is known of the instrument when it is read: its plan and numbers as built, and what was measured up to now. */
export interface ReadingSite {
  readonly plan: Plan
  readonly numbers: Numbers
  readonly all: readonly Measured[]
  readonly taken: readonly Pick<Taken, 'readings'>[]
}

/** Lists whose places are told along the rim: a reading stays where it was taken when the stations move. */
const ALONG_THE_RIM = /^(?:rim|trebleRim|places|treblePlaces)\[\]/u
const RINGS = 'rosette.rings[]'

/** Where a reading of a box is taken, as it is kept: along the rim by its distance from the tail, of a ring by the ring. */
export function placeOfBox({ plan, numbers }: Pick<ReadingSite, 'plan' | 'numbers'>, box: Box): ReadingPlace {
  const { number, row } = box
  const list = ALONG_THE_RIM.exec(number)?.[0]
  const along = list === undefined ? 'none' : readNumbers(numbers, `${list}.alongOuterMm` as NumberKey)[row]
  const entry = number.startsWith(RINGS) ? (ringsInOrder(plan.rosette)[row]?.id ?? null) : null
  return { ...box, alongMm: typeof along === 'number' ? along : null, entry }
}

/**
 * What a box is asked to read, in the number's unit: the number as it stands, or, where a reading of the same place stands in its place, what
 * that was held against. Nothing is held against itself.
 */
export function askedOfBox(site: ReadingSite, box: Box): Figure {
  const place = placeOfBox(site, box)
  const rules = new Set(site.taken.flatMap(({ readings }) => readings))
  const own = site.all.findLast((one) => rules.has(one.id) && samePlace({ ...one, side: box.side }, place))
  return own?.planned ?? readNumbers(site.numbers, box.number)[box.row] ?? 'none'
}

/** What was read, before it is held against anything. */
export interface WhatWasRead {
  /** In the number's unit: mm, rad. */
  readonly value: number
  readonly typed: string
  readonly gauge: string
  readonly stageId: string | null
}

const LONGEST = 120

/** A reading of a box, ready to be kept. One of a place that was read before stands as its correction; the first stays on record. */
export function readingOf(site: ReadingSite, box: Box, read: WhatWasRead): NewReading {
  const place = placeOfBox(site, box)
  return {
    ...place,
    ...read,
    typed: read.typed.slice(0, LONGEST),
    gauge: read.gauge.trim().slice(0, LONGEST),
    planned: askedOfBox(site, box),
    replaces: readAt(site.all, place)?.id ?? null,
  }
}

/** A correction of a reading: of the same place, held against the same. */
export const correctionOf = (first: Measured, read: Pick<WhatWasRead, 'value' | 'typed'>): NewReading => {
  const { stageId, number, row, side, alongMm, entry, gauge, planned } = first
  const typed = read.typed.slice(0, LONGEST)
  return { stageId, number, row, side, alongMm, entry, gauge, planned, value: read.value, typed, replaces: first.id }
}

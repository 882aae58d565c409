import { shapeBody } from '../bodyShape.ts'
import { aboutNumber } from '../catalogue.ts'
import { toSaddlePart } from '../instrument/neck/fretboard.ts'
import { ringsInOrder } from '../instrument/rosette.ts'
import type { NumberKey } from '../numbers.ts'
import type { Plan } from '../plan.ts'
import type { PlanField } from '../planFields.ts'
import { degFromRad } from '../units/angle.ts'
import { radiusFromGaps } from './domeRadius.ts'
import { meanValue, type Reading } from './reading.ts'
import { DEPTHS_ROUND_THE_RIM, depthsFromReadings } from './rimDepths.ts'
import { HEIGHTS_OF_THE_NECK, saddleShowingMm } from './saddleShowing.ts'
import type { FieldValues } from './withFields.ts'

/** How a reading comes to define the plan; the words explain each to the maker. */
export const INVERSE_NAMES = [
  'itself', // the number is the field
  'degrees', // the field is the same angle, as the maker writes it
  'flatSlope',
  'closedBox', // depths with the plates on
  'endDepths',
  'rimDepths', // depths at places round the rim
  'topGaps',
  'backGaps',
  'neckStands', // the saddle takes up how the neck came to stand
  'boardWidth',
  'fretPlaces',
  'channel',
  'rings',
] as const
export type InverseName = (typeof INVERSE_NAMES)[number]

/** What is known when a round of readings is turned into fields. */
export interface InverseSite {
  /** The plan with everything read so far in it. */
  readonly plan: Plan
  /** What the fields of this round hold without it. */
  readonly start: Plan
  /** The latest reading of every place, in the order they were taken. */
  readonly readings: readonly Reading[]
}

const ENDS: readonly PlanField[] = ['rim.depthAtTailMm', 'rim.depthAtNeckMm']
const NECK: readonly PlanField[] = ['bridge.saddleShowingMm']
const RINGS: readonly PlanField[] = ['rosette.rings']

interface Inverse {
  readonly name: InverseName
  readonly fields: readonly PlanField[]
}

/** Every number that is not itself a field, and still defines one. */
const OTHERS: Readonly<Partial<Record<NumberKey, Inverse>>> = {
  'head.angleRad': { name: 'degrees', fields: ['head.angleDeg'] },
  'top.flatSlopeRad': { name: 'flatSlope', fields: ['top.flatSlopeDeg', 'top.flatSlope'] },
  'sides.bodyDepthAtTailMm': { name: 'closedBox', fields: ['rim.depthAtTailMm'] },
  'sides.bodyDepthAtNeckMm': { name: 'closedBox', fields: ['rim.depthAtNeckMm'] },
  'sides.depthAtTailMm': { name: 'endDepths', fields: ['rim.depthAtTailMm'] },
  'sides.depthAtNeckMm': { name: 'endDepths', fields: ['rim.depthAtNeckMm'] },
  'sides.depthAtNeckPlanedMm': { name: 'endDepths', fields: ['rim.depthAtNeckMm'] },
  ...each(DEPTHS_ROUND_THE_RIM, { name: 'rimDepths', fields: ENDS }),
  ...each(['top.gapAcrossLowerBoutMm', 'top.gapAcrossWaistMm', 'top.gapAcrossUpperBoutMm', 'top.gapAlongMm'], {
    name: 'topGaps',
    fields: ['top.radiusMm'],
  }),
  ...each(['back.gapAcrossLowerBoutMm', 'back.gapAcrossWaistMm', 'back.gapAcrossUpperBoutMm', 'back.gapAlongMm'], {
    name: 'backGaps',
    fields: ['back.radiusMm'],
  }),
  ...each(HEIGHTS_OF_THE_NECK, { name: 'neckStands', fields: NECK }),
  ...each(['board.widthAtJointMm', 'board.widthAtEndMm'], { name: 'boardWidth', fields: ['board.widthAtTwelfthMm'] }),
  ...each(['scale.lengthMm', 'board.nutToJointMm', 'frets[].fromNutMm'], {
    name: 'fretPlaces',
    fields: ['scale.lengthMm'],
  }),
  'rosette.channelDepthMm': { name: 'channel', fields: ['rosette.standsProudMm'] },
  ...each(['rosette.rings[].innerRadiusMm', 'rosette.rings[].outerRadiusMm', 'rosette.rings[].widthMm'], {
    name: 'rings',
    fields: RINGS,
  }),
}

function each(keys: readonly NumberKey[], inverse: Inverse): Partial<Record<NumberKey, Inverse>> {
  return Object.fromEntries(keys.map((key) => [key, inverse]))
}

/** What a reading of a number defines, and how; null: it is kept for the record and changes no other number. */
export function inverseOf(number: NumberKey, plan: Plan): Inverse | null {
  const other = OTHERS[number]
  const direct = aboutNumber(number).measured?.defines ?? null
  const found = other ?? (direct === null ? null : { name: 'itself' as const, fields: [direct] })
  return found !== null && isOpenTo(found, number, plan) ? found : null
}

/** Whether the plan still asks that field: a length the chain gives, or the radius of a flat plate, is none of its own. */
function isOpenTo({ name, fields }: Inverse, number: NumberKey, plan: Plan): boolean {
  if (number === 'body.lengthMm') return plan.outline.lengthMm !== null && plan.outline.kind !== 'drawnPath'
  if (name === 'fretPlaces') return plan.scale.fan === 'square'
  if (fields.includes('top.radiusMm')) return plan.top.form !== 'flat'
  if (fields.includes('back.radiusMm')) return plan.back.form !== 'flat'
  if (name === 'flatSlope' || number === 'top.flatFromMm') return plan.top.form === 'flatUpperBout'
  if (number === 'top.riseAtSaddleMm') return plan.top.form === 'flatRim'
  return true
}

/** The fields a round of readings gives; null where they say nothing on this plan. All of one round have the same inverse. */
export function solveRound(name: InverseName, fields: readonly PlanField[], site: InverseSite): FieldValues | null {
  const { plan, start, readings } = site
  const last = readings.at(-1)
  const [field] = fields
  if (last === undefined || field === undefined) return null
  switch (name) {
    case 'itself':
      return { [field]: meanValue(readings) }
    case 'degrees':
      return { [field]: degFromRad(meanValue(readings)) }
    case 'flatSlope':
      return { 'top.flatSlopeDeg': degFromRad(meanValue(readings)), 'top.flatSlope': 'entered' }
    case 'closedBox':
    case 'endDepths':
    case 'rimDepths': {
      const depths = depthsFromReadings({ plan, shape: shapeBody(plan) }, start.rim, readings)
      return { 'rim.depthAtTailMm': depths.depthAtTailMm, 'rim.depthAtNeckMm': depths.depthAtNeckMm }
    }
    case 'topGaps':
    case 'backGaps': {
      const plate = name === 'topGaps' ? 'top' : 'back'
      const radiusMm = radiusFromGaps({ plan, shape: shapeBody(plan) }, plate, readings)
      return radiusMm === null ? null : { [field]: radiusMm }
    }
    case 'neckStands':
      return neckStands(plan, start, last)
    case 'boardWidth':
      return { [field]: widthAtTwelfthMm(plan, last) }
    case 'fretPlaces':
      return { [field]: scaleLengthMm(plan, readings) }
    case 'channel':
      return { [field]: plan.rosette.inlayMm - last.value }
    case 'rings':
      return { [field]: ringsAsRead(start, readings) }
  }
}

/** A flat that was to fall as the neck asks is planed when the neck stands: it keeps the fall it was planed to. */
function neckStands(plan: Plan, start: Plan, reading: Reading): FieldValues {
  const follows = start.top.form === 'flatUpperBout' && start.top.flatSlope === 'neckSet'
  const slopeRad = follows ? shapeBody({ ...plan, top: start.top, bridge: start.bridge }).top.flatSlopeRad : 'none'
  const flat: FieldValues =
    typeof slopeRad === 'number' ? { 'top.flatSlopeDeg': degFromRad(slopeRad), 'top.flatSlope': 'entered' } : {}
  const planed: Plan =
    typeof slopeRad === 'number'
      ? { ...plan, top: { ...plan.top, flatSlope: 'entered', flatSlopeDeg: degFromRad(slopeRad) } }
      : plan
  return { ...flat, 'bridge.saddleShowingMm': saddleShowingMm({ plan: planed, shape: shapeBody(planed) }, reading) }
}

/** Straight edges: w = nut + (w12 - nut) t, t the part of the way from the nut to fret 12. */
function widthAtTwelfthMm(plan: Plan, { number, value }: Reading): number {
  const { shape } = shapeBody(plan).placed
  const atMm = number === 'board.widthAtJointMm' ? shape.jointMm : shape.endMm
  const part = (shape.nutMm - atMm) / (shape.scaleMm / 2)
  return plan.board.nutWidthMm + (value - plan.board.nutWidthMm) / Math.max(part, 0.1)
}

/** The scale whose frets stand nearest to where they were read: d = S (1 - 2^(-n/12)), least squares. Source: equal temperament (ISO 16). */
function scaleLengthMm(plan: Plan, readings: readonly Reading[]): number {
  const parts = readings.map(({ number, row, value }) => {
    const fret = number === 'board.nutToJointMm' ? plan.scale.jointFret : row + 1
    return { part: number === 'scale.lengthMm' ? 1 : 1 - toSaddlePart(fret), value }
  })
  const sum = (of: (one: { part: number; value: number }) => number) => parts.reduce((all, one) => all + of(one), 0)
  return (
    sum(({ part, value }) => part * value) /
    Math.max(
      sum(({ part }) => part * part),
      1e-6,
    )
  )
}

/** Rings with the radii that were read; a width counts outward from the inner radius. */
function ringsAsRead({ rosette }: Plan, readings: readonly Reading[]): Plan['rosette']['rings'] {
  const inOrder = ringsInOrder(rosette)
  const rings = { ...rosette.rings }
  for (const { number, row, entry, value } of readings) {
    const id = entry ?? inOrder[row]?.id
    const ring = id === undefined ? undefined : rings[id]
    if (id === undefined || ring === undefined) continue
    if (number === 'rosette.rings[].innerRadiusMm') rings[id] = { ...ring, innerRadiusMm: value }
    else if (number === 'rosette.rings[].outerRadiusMm') rings[id] = { ...ring, outerRadiusMm: value }
    else rings[id] = { ...ring, outerRadiusMm: ring.innerRadiusMm + value }
  }
  return rings
}

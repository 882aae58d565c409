import type { Figure } from '../../figure.ts'
import type { BridgePlan, StringsPlan } from '../../neckPlan.ts'
import type { PinRow } from './bridge.ts'
import type { Fretboard } from './fretboard.ts'
import { stringOverFretMm } from './stringHeight.ts'
import type { StringRow, StringSetNumbers } from './stringRow.ts'
import type { StringLine } from './strings.ts'
import { coreOf, massGPerM, noteHz, stressMPa, tensionN } from './tension.ts'

export interface StringsSite {
  readonly shape: Fretboard
  readonly lines: readonly StringLine[]
  readonly pins: readonly PinRow[]
  readonly crownMm: number
  /** Estimated for each string; 'none' where its core or mass is not known. */
  readonly estimatesMm: readonly Figure[]
  /** As used at the outer strings. */
  readonly compensationBassMm: number
  readonly compensationTrebleMm: number
  /** Height of a string in the middle over the plane of the frets at the saddle. */
  readonly middleAtSaddleMm: number
  /** The neck under strings, against the rim plane; and the top's rise toward the neck at the saddle. */
  readonly strungSlope: number
  readonly topSlopeAtSaddle: number
}

/** A string as it would be with another tuning or scale; an own scale of a fanned board changes in proportion. */
interface OtherWay {
  readonly frequencyHz: number
  readonly scaleMm: number
}

/**
 * Every string in place.
 *
 *   break = atan(front) + atan(behind)      front: rise of the string toward the tail, t + (a - n)/S with t the slope of the neck
 *                                           behind: its fall to pin or tie hole, f/b + the top's own rise toward the neck
 *   saddle over the bridge = what shows in the middle + (this string's height at the saddle - the middle's)
 *
 * Source: derived.
 */
export function stringRows(strings: StringsPlan, bridge: BridgePlan, site: StringsSite): readonly StringRow[] {
  const { shape, lines } = site
  const outerMm = strings.saddleSpreadMm
  return strings.set.flatMap((string, i): StringRow[] => {
    const line = lines[i]
    if (line === undefined) return []
    const mass = massGPerM(string)
    const core = coreOf(string)
    const frequencyHz = noteHz(string.note, strings.pitchHz)
    const other: OtherWay = {
      frequencyHz: noteHz(strings.otherNotes?.[i] ?? string.note, strings.pitchHz),
      scaleMm: strings.otherScaleMm === null ? line.scaleMm : (line.scaleMm * strings.otherScaleMm) / shape.bassScaleMm,
    }
    const pull = (scaleMm: number, hz: number): Figure => (mass === 'none' ? 'none' : tensionN(mass, scaleMm, hz))
    const tension = pull(line.scaleMm, frequencyHz)
    const saddleShowingMm = bridge.saddleShowingMm + line.saddleHeightMm - site.middleAtSaddleMm
    const fallMm =
      bridge.holds === 'pins' ? saddleShowingMm : saddleShowingMm + bridge.thicknessMm - bridge.tieHoleOverTopMm
    const behindMm = Math.max(site.pins[i]?.behindSaddleMm ?? bridge.holdsBehindMm, 1)
    const front = site.strungSlope + (line.saddleHeightMm - line.nutHeightMm) / Math.max(line.scaleMm, 1)
    const part = outerMm > 0 ? line.saddleAcrossMm / outerMm + 0.5 : 0.5
    const usedMm = site.compensationBassMm + (site.compensationTrebleMm - site.compensationBassMm) * part
    const estimate = site.estimatesMm[i] ?? 'none'
    return [
      {
        nutAcrossMm: line.nutAcrossMm,
        nutFromBassEdgeMm: shape.halfWidthAtMm(shape.nutMm) + line.nutAcrossMm,
        saddleAcrossMm: line.saddleAcrossMm,
        scaleMm: line.scaleMm,
        diameterMm: string.diameterMm,
        massGPerM: mass,
        frequencyHz,
        tensionN: tension,
        stressMPa: tension === 'none' || core === 'none' ? 'none' : stressMPa(Number(tension), core),
        otherFrequencyHz: other.frequencyHz,
        otherTensionN: pull(other.scaleMm, other.frequencyHz),
        slotOverBoardMm: line.nutHeightMm + shape.dropMm(line.nutMm, line.nutAcrossMm) + site.crownMm,
        overFirstMm: stringOverFretMm(line, shape, 1),
        overTwelfthMm: stringOverFretMm(line, shape, 12),
        saddleShowingMm,
        breakRad: Math.atan(front) + Math.atan(fallMm / behindMm + site.topSlopeAtSaddle),
        compensationMm: estimate,
        crownBehindLineMm: typeof estimate === 'number' ? estimate - usedMm : 'none',
      },
    ]
  })
}

/** What the strings do together. Those whose mass is not known are left out of the sums. */
export function measureStringSet(
  strings: StringsPlan,
  rows: readonly StringRow[],
  site: {
    readonly shape: Fretboard
    readonly lines: readonly StringLine[]
    readonly gapAtNutMm: number
    readonly gapAtSaddleMm: number
    /** Strings over the top at the saddle. */
    readonly armMm: number
  },
): StringSetNumbers {
  const { shape, lines, armMm } = site
  const sum = (pulls: readonly Figure[]) =>
    pulls.reduce<number>((all, one) => all + (typeof one === 'number' ? one : 0), 0)
  const tension = sum(rows.map((row) => row.tensionN))
  const otherTension = sum(rows.map((row) => row.otherTensionN))
  const edgeMm = (i: number, end: 'nut' | 'end'): number => {
    const line = lines.at(i)
    if (line === undefined) return shape.halfWidthAtMm(shape.nutMm)
    const xMm = end === 'nut' ? shape.nutMm : shape.endMm
    const across = line.nutAcrossMm + ((line.saddleAcrossMm - line.nutAcrossMm) * (shape.nutMm - xMm)) / shape.scaleMm
    return shape.halfWidthAtMm(xMm) - Math.abs(across) - (strings.set.at(i)?.diameterMm ?? 0) / 2
  }
  return {
    count: rows.length,
    tensionN: tension,
    torqueNm: (tension * armMm) / 1000,
    otherTensionN: otherTension,
    otherTorqueNm: (otherTension * armMm) / 1000,
    gapAtNutMm: site.gapAtNutMm,
    gapAtSaddleMm: site.gapAtSaddleMm,
    bassEdgeAtNutMm: edgeMm(0, 'nut'),
    trebleEdgeAtNutMm: edgeMm(-1, 'nut'),
    leastEdgeMm: Math.min(edgeMm(0, 'nut'), edgeMm(-1, 'nut'), edgeMm(0, 'end'), edgeMm(-1, 'end')),
  }
}

import { ringsInOrder } from '../instrument/rosette.ts'
import type { Plan } from '../plan.ts'
import { type CuttingAllowances, DEFAULT_CUTTING, withAllowances } from './cutting.ts'
import { edgeParts } from './edgeParts.ts'
import { bridgeParts, neckParts } from './neckParts.ts'
import { type CutPart, cutPart, type PartKey, ROLE_OF_PART, volumeMm3 } from './part.ts'
import { braceParts, plateParts } from './plateParts.ts'
import { rimParts } from './rimParts.ts'
import type { WoodNumbers } from './woodNumbers.ts'

const ORDER: readonly string[] = Object.keys(ROLE_OF_PART)
const placeOf = (key: PartKey): number => ORDER.indexOf(key)

/**
 * Everything one instrument is sawn from, in the order of `ROLE_OF_PART`: sizes mm, finished and rough. Worked out when asked for, beside the numbers.
 * A part that is none on this instrument, or is nothing in one of its three measures, is left out. Total: every size is finite and over 0.
 * Source: the instrument's own numbers; what is left for planing and trimming is common practice and an argument.
 */
export function cutList(
  plan: Plan,
  numbers: WoodNumbers,
  cutting: CuttingAllowances = DEFAULT_CUTTING,
): readonly CutPart[] {
  return [
    ...plateParts(plan, numbers, cutting),
    ...braceParts(numbers),
    ...rimParts(plan, numbers, cutting),
    ...edgeParts(plan, numbers, cutting),
    ...neckParts(plan, numbers, cutting),
    ...bridgeParts(plan, numbers, cutting),
    ...rosetteParts(plan, numbers, cutting),
  ]
    .filter(isThere)
    .sort((a, b) => placeOf(a.key) - placeOf(b.key))
}

/** A strip, or its tiles, for every ring: as wide as the ring, as deep as the inlay. */
function rosetteParts(plan: Plan, { rosette }: WoodNumbers, cutting: CuttingAllowances): CutPart[] {
  const tileCounts = ringsInOrder(plan.rosette).map(({ ring }) => ring.tileCount)
  return rosette.rings.map((ring, i) => {
    const tiles = tileCounts[i] ?? null
    const finished = {
      lengthMm: ring.stripLengthMm / (tiles ?? 1),
      widthMm: ring.widthMm,
      thicknessMm: plan.rosette.inlayMm,
    }
    return cutPart({
      key: tiles === null ? 'rosetteStrip' : 'rosetteTile',
      row: i + 1,
      quantity: tiles ?? 1,
      finished,
      rough: withAllowances(finished, cutting),
    })
  })
}

function isThere({ quantity, finished }: CutPart): boolean {
  const sizes = [finished.lengthMm, finished.widthMm, finished.thicknessMm]
  return quantity >= 1 && sizes.every((mm) => Number.isFinite(mm) && mm > 0) && Number.isFinite(volumeMm3(finished))
}

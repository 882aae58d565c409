import type { Figure } from './figure.ts'
import { type AirSite, cents, rigidHz, SOUNDS } from './instrument/airResonance.ts'
import type { Back } from './instrument/back.ts'
import type { BlockNumbers } from './instrument/block.ts'
import { equivalentRadiusMm, freeHoleMm2 } from './instrument/freeHole.ts'
import { insideOfBox } from './instrument/insideVolume.ts'
import type { Outline } from './instrument/outline.ts'
import type { BoardEnd } from './instrument/rosette.ts'
import type { SideBraceRow } from './instrument/sideBraces.ts'
import {
  allWood,
  type Stick,
  type WoodInside,
  woodOfBlock,
  woodOfBraces,
  woodOfLining,
  woodOfPatch,
  woodOfRing,
  woodOfSideBraces,
} from './instrument/takenUp.ts'
import type { Top } from './instrument/top.ts'
import { creaseOfTop } from './instrument/topCrease.ts'
import type { Plan } from './plan.ts'

export interface AirNumbers {
  /** Between the plates within the sides; what blocks, linings, braces and patches take of it; what is left. */
  readonly grossMm3: number
  readonly takenUpMm3: number
  readonly netMm3: number
  /** Of the hole, as far as the board leaves it open, and the radius of the round hole of that area. */
  readonly holeMm2: number
  readonly holeRadiusMm: number
  /** The air alone in a box with rigid walls, and the band in which a finished one is heard; none without air or hole. */
  readonly rigidHz: Figure
  readonly lowHz: Figure
  readonly highHz: Figure
  /** What was heard, as a part of the rigid box. */
  readonly ratio: Figure
  /** With the hole's radius, and with the rim's depth, changed as asked. */
  readonly holeChanged: ChangedAir
  readonly depthChanged: ChangedAir
}

export interface ChangedAir {
  readonly rigidHz: Figure
  readonly lowHz: Figure
  readonly highHz: Figure
  /** Of all three, over what they were. */
  readonly cents: Figure
}

/** What the rest of the instrument says about the air in it. */
export interface AirParts {
  readonly outline: Outline
  readonly lengthMm: number
  readonly saddleLineMm: number
  readonly top: Top
  readonly back: Back
  readonly boardEnd: BoardEnd
  readonly blocks: readonly BlockNumbers[]
  /** Glued along one edge of the rim, top and back alike. */
  readonly liningLengthMm: number
  readonly sideBraces: readonly SideBraceRow[]
  /** Braces of top and back. */
  readonly braces: readonly Stick[]
}

/** The air of the closed box. All of it estimates but the empty inside and the hole. */
export function measureAir(plan: Plan, parts: AirParts): AirNumbers {
  const { outline, lengthMm, top, back } = parts
  const { temperatureC, holeChangeMm, depthChangeMm, heardHz } = plan.air
  const inside = insideOfBox({
    bass: outline.bass,
    treble: outline.treble,
    sideThicknessMm: plan.rim.sideThicknessMm,
    top: top.plate,
    back: back.surface,
    crease: creaseOfTop(top, lengthMm, parts.saddleLineMm),
  })
  const wood = woodInside(plan, parts)
  const netMm3 = inside.volumeMm3 - wood.volumeMm3
  const { radiusMm } = plan.soundhole
  const holeMm2 = freeHoleMm2(radiusMm, parts.boardEnd)
  const site: AirSite = { volumeMm3: netMm3, holeMm2, edgeMm: edgeOfHoleMm(plan), temperatureC }
  const hz = rigidHz(site)
  const otherHole = { ...site, holeMm2: freeHoleMm2(radiusMm + holeChangeMm, parts.boardEnd) }
  const otherDepth = { ...site, volumeMm3: netMm3 + depthChangeMm * (inside.areaMm2 - wood.perDepthMm2) }
  return {
    grossMm3: inside.volumeMm3,
    takenUpMm3: wood.volumeMm3,
    netMm3,
    holeMm2,
    holeRadiusMm: equivalentRadiusMm(holeMm2),
    ...soundOf(hz),
    ratio: heardHz === null || hz === null ? 'none' : heardHz / hz,
    // What stays the same before and after says nothing of how much higher it sounds: any will do.
    holeChanged: changed(site, otherHole, { volumeMm3: 1 }),
    depthChanged: changed(site, otherDepth, { holeMm2: 1 }),
  }
}

/** Wood at the edge of the hole: the top, and the ring inside where it reaches the edge. */
function edgeOfHoleMm({ plates, bracing }: Plan): number {
  const reaches = bracing.holeRingMm > 0 && bracing.holeRingSetBackMm <= 0
  return plates.topMm + (reaches ? bracing.holeRingThicknessMm : 0)
}

function woodInside(plan: Plan, parts: AirParts): WoodInside {
  const { linings, sideBraces, bracing, bridge, blocks, soundhole, rim } = plan
  // Cloth takes next to nothing.
  const upright = sideBraces.form === 'wood' ? parts.sideBraces : []
  const betweenBlocksMm = parts.lengthMm - 2 * rim.sideThicknessMm - blocks.tail.thicknessMm - blocks.neck.thicknessMm
  return allWood([
    ...parts.blocks.map(woodOfBlock),
    woodOfLining(linings.top, parts.liningLengthMm),
    woodOfLining(linings.back, parts.liningLengthMm),
    woodOfSideBraces(
      upright.map(({ lengthMm }) => lengthMm),
      sideBraces.widthMm,
      sideBraces.thicknessMm,
    ),
    woodOfBraces(parts.braces),
    woodOfPatch(
      Math.abs(bridge.plateToMm - bridge.plateFromMm),
      [bridge.plateTailWidthMm, bridge.plateNeckWidthMm],
      bridge.plateMm,
    ),
    woodOfPatch(betweenBlocksMm, [bracing.stripWidthMm, bracing.stripWidthMm], bracing.stripThicknessMm),
    woodOfRing(soundhole.radiusMm + bracing.holeRingSetBackMm, bracing.holeRingMm, bracing.holeRingThicknessMm),
  ])
}

const soundOf = (hz: number | null) =>
  ({
    rigidHz: hz ?? 'none',
    lowHz: hz === null ? 'none' : hz * SOUNDS.least,
    highHz: hz === null ? 'none' : hz * SOUNDS.most,
  }) as const

function changed(before: AirSite, after: AirSite, same: Partial<AirSite>): ChangedAir {
  const [from, to] = [rigidHz({ ...before, ...same }), rigidHz({ ...after, ...same })]
  return { ...soundOf(rigidHz(after)), cents: from === null || to === null ? 'none' : cents(to, from) }
}

import type { Surface } from '../../geometry/surface.ts'
import type { BridgePlan } from '../../neckPlan.ts'
import { radFromDeg } from '../../units/angle.ts'
import { type CrossLine, crossingMm, type Fretboard } from './fretboard.ts'
import { stringAtFretMm } from './stringHeight.ts'
import type { StringLine } from './strings.ts'

export interface BridgeNumbers {
  /** The saddle's crown under the outer strings and on the centreline, from the tail; before compensation the scale has its own line. */
  readonly saddleBassAtMm: number
  readonly saddleTrebleAtMm: number
  readonly saddleMiddleAtMm: number
  readonly jointToSaddleMm: number
  /** From fret 12 to the crown, along x, at the outer strings. */
  readonly twelfthToBassMm: number
  readonly twelfthToTrebleMm: number
  /** As used: entered or estimated. */
  readonly compensationBassMm: number
  readonly compensationTrebleMm: number
  /** Of the saddle against square; positive where its bass end stands nearer the tail. */
  readonly slantRad: number
  /** How much nearer the tail the slot's bass end lies, over the saddle's length. */
  readonly slotEndsDifferMm: number
  /** Where the slot's middle meets the bridge's top, in front of the crown; and how far the crown moves for each mm of height. */
  readonly slotFromCrownMm: number
  readonly crownMovesMm: number
  /** From the bridge's front edge to the front wall of the slot, at its two ends. */
  readonly slotFrontAtBassMm: number
  readonly slotFrontAtTrebleMm: number
  readonly saddleHeightMm: number
  readonly woodUnderSlotMm: number
  readonly frontEdgeAtMm: number
  readonly backEdgeAtMm: number
  readonly jointToFrontMm: number
  /** Underside: radius of the top across the body at the saddle, the hollow over the bridge's length and over its width. */
  readonly undersideRadiusMm: number | 'flat'
  readonly hollowAcrossMm: number
  readonly hollowAlongMm: number
  readonly thicknessMm: number
  readonly lengthMm: number
  readonly widthMm: number
  /** Of the saddle's slot. */
  readonly slotWidthMm: number
  readonly slotLengthMm: number
  readonly slotDepthMm: number
  /** Pins or tie holes: the middle of their line, and its slant. */
  readonly holdsAtMm: number
  readonly holdsSlantRad: number
  /** The plate under the bridge: how far it reaches past the line of the holds, toward tail and neck; 'none' without a plate. */
  readonly plateBehindHoldsMm: number | 'none'
  readonly plateBeforeSaddleMm: number | 'none'
}

export interface PinRow {
  /** From the tail, and across with the bass side negative. */
  readonly atMm: number
  readonly acrossMm: number
  /** From the string's crown on the saddle, along x. */
  readonly behindSaddleMm: number
}

export interface BridgeSite {
  readonly shape: Fretboard
  readonly lines: readonly StringLine[]
  readonly topPlate: Surface
  readonly compensationBassMm: number
  readonly compensationTrebleMm: number
}

/** A hollow of less than this is flat. */
const FLAT_MM = 1e-9

/**
 * The bridge and the places of its holes, mm and rad.
 *
 *   crown at an outer string = its uncompensated saddle line less its compensation; the saddle runs straight through both
 *   slant = atan((x_treble - x_bass) / (y_treble - y_bass))
 *   a saddle that leans back by t meets the bridge's top its showing x tan t before its crown
 *   underside: R = c^2 / (8 h) + h / 2 from the hollow h over the bridge's length c
 *
 * Source: derived; where bridges, pins and plates usually lie is common practice.
 */
export function measureBridge(
  bridge: BridgePlan,
  { shape, lines, topPlate, compensationBassMm, compensationTrebleMm }: BridgeSite,
): { readonly bridge: BridgeNumbers; readonly pins: readonly PinRow[] } {
  const halfMm = shape.halfSpreadAtMm(shape.saddleLine.xMm)
  const bassAcrossMm = lines[0]?.saddleAcrossMm ?? -halfMm
  const trebleAcrossMm = lines.at(-1)?.saddleAcrossMm ?? halfMm
  const bassAtMm = crossingMm(shape.saddleLine, bassAcrossMm) - compensationBassMm
  const trebleAtMm = crossingMm(shape.saddleLine, trebleAcrossMm) - compensationTrebleMm
  const spreadMm = trebleAcrossMm - bassAcrossMm
  const slant = spreadMm > 1 ? (trebleAtMm - bassAtMm) / spreadMm : 0
  const crown: CrossLine = { xMm: (bassAtMm + trebleAtMm) / 2 - (slant * (bassAcrossMm + trebleAcrossMm)) / 2, slant }
  const slantRad = Math.atan(slant)
  const tilt = Math.tan(radFromDeg(bridge.saddleTiltDeg))
  const slotEndsDifferMm = bridge.saddleLengthMm * Math.sin(slantRad)
  const slotFrontMm = bridge.saddleFromFrontMm - bridge.saddleShowingMm * tilt - bridge.saddleWidthMm / 2
  const frontMm = crown.xMm + bridge.saddleFromFrontMm
  const backMm = frontMm - bridge.widthMm

  const middleMm = (frontMm + backMm) / 2
  const topMm = (x: number, y: number) => topPlate.heightMm(x, y)
  const side = bridge.lengthMm / 2
  const acrossMm = topMm(middleMm, 0) - (topMm(middleMm, side) + topMm(middleMm, -side)) / 2
  const alongMm = topMm(middleMm, 0) - (topMm(frontMm, 0) + topMm(backMm, 0)) / 2

  const holds: CrossLine = {
    xMm: crown.xMm - bridge.holdsBehindMm,
    slant: bridge.pinRun === 'withSaddle' ? slant : 0,
  }
  const pins = lines.map(({ saddleAcrossMm }, i): PinRow => {
    const evenly = lines.length > 1 ? bridge.pinSpreadMm * (i / (lines.length - 1) - 0.5) : 0
    const across = bridge.holds === 'pins' ? evenly : saddleAcrossMm
    const atMm = crossingMm(holds, across)
    return { atMm, acrossMm: across, behindSaddleMm: crossingMm(crown, saddleAcrossMm) - atMm }
  })
  const rearmost = Math.min(holds.xMm, ...pins.map(({ atMm }) => atMm))
  const hasPlate = bridge.plateMm > 0
  const toTwelfth = (line: StringLine | undefined, crownMm: number) =>
    (line === undefined ? shape.fretLine(12).xMm : stringAtFretMm(line, shape, 12)) - crownMm
  return {
    pins,
    bridge: {
      saddleBassAtMm: bassAtMm,
      saddleTrebleAtMm: trebleAtMm,
      saddleMiddleAtMm: crown.xMm,
      jointToSaddleMm: shape.jointMm - crown.xMm,
      twelfthToBassMm: toTwelfth(lines[0], bassAtMm),
      twelfthToTrebleMm: toTwelfth(lines.at(-1), trebleAtMm),
      compensationBassMm,
      compensationTrebleMm,
      slantRad,
      slotEndsDifferMm,
      slotFromCrownMm: bridge.saddleShowingMm * tilt,
      crownMovesMm: tilt,
      slotFrontAtBassMm: slotFrontMm + slotEndsDifferMm / 2,
      slotFrontAtTrebleMm: slotFrontMm - slotEndsDifferMm / 2,
      saddleHeightMm: bridge.saddleShowingMm + bridge.slotDepthMm,
      woodUnderSlotMm: bridge.thicknessMm - bridge.slotDepthMm,
      frontEdgeAtMm: frontMm,
      backEdgeAtMm: backMm,
      jointToFrontMm: shape.jointMm - frontMm,
      undersideRadiusMm:
        Math.abs(acrossMm) < FLAT_MM ? 'flat' : (bridge.lengthMm * bridge.lengthMm) / (8 * acrossMm) + acrossMm / 2,
      hollowAcrossMm: acrossMm,
      hollowAlongMm: alongMm,
      thicknessMm: bridge.thicknessMm,
      lengthMm: bridge.lengthMm,
      widthMm: bridge.widthMm,
      slotWidthMm: bridge.saddleWidthMm,
      slotLengthMm: bridge.saddleLengthMm,
      slotDepthMm: bridge.slotDepthMm,
      holdsAtMm: holds.xMm,
      holdsSlantRad: Math.atan(holds.slant),
      plateBehindHoldsMm: hasPlate ? rearmost - bridge.plateFromMm : 'none',
      plateBeforeSaddleMm: hasPlate ? bridge.plateToMm - Math.max(bassAtMm, trebleAtMm) : 'none',
    },
  }
}

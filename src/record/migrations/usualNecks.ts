import type { BoardThrough } from './oldBoard.ts'
import { BOARDS, BRIDGES, FRETS, HEADS, MARKERS, NECKS, SETS, SETUPS, SPREADS } from './usualFigures.ts'

type Json = Record<string, unknown>

/** What a usual neck is fitted to. Lengths mm. */
export interface NeckSite {
  readonly family: 'steelString' | 'nylonString' | 'small'
  readonly nutToJointMm: number
  /** From the tail. */
  readonly saddleLineMm: number
  readonly board: BoardThrough
  readonly blockWidthMm: number
  readonly blockThicknessMm: number
  readonly depthAtNeckMm: number
}

const clamp = (value: number, least: number, most: number) => Math.min(Math.max(value, least), most)

/** Everything of neck, strings and bridge that version 2 did not know, as it usually is in a family. Common practice, no published source. */
export function neckOf(site: NeckSite): Json & { readonly board: Json } {
  const { family, board } = site
  const { besideMm, saddleMm } = SPREADS[family]
  const nutSpreadMm = clamp(board.nutWidthMm - besideMm, 10, 110)
  // The strings stay as far from the edges of the board as at the nut.
  const boardAtSaddleMm = 2 * board.widthAtTwelfthMm - board.nutWidthMm
  const saddleSpreadMm = clamp(Math.min(saddleMm, boardAtSaddleMm - besideMm), 15, 130)
  return {
    board: { ...BOARDS[family], markersAt: MARKERS[family].filter((fret) => fret <= board.fretCount) },
    frets: { ...FRETS[family] },
    strings: {
      set: SETS[family].map((string) => ({ ...string })),
      nutSpreadMm,
      saddleSpreadMm,
      pairGapMm: 2,
      pitchHz: 440,
      otherNotes: null,
      otherScaleMm: null,
    },
    setup: { ...SETUPS[family] },
    bridge: bridge(site, saddleSpreadMm),
    neck: neck(site),
    head: { ...HEADS[family] },
  }
}

/** Whole millimetres, as a maker enters them; what is over is left off. */
const whole = (mm: number) => mm - (mm % 1)

function bridge({ family, saddleLineMm }: NeckSite, saddleSpreadMm: number): Json {
  const { lengthMm, saddleBeyondMm, plateBehindMm, plateBeforeMm, ...usual } = BRIDGES[family]
  const saddleLengthMm = clamp(saddleSpreadMm + saddleBeyondMm, 20, 150)
  return {
    ...usual,
    lengthMm: clamp(Math.max(lengthMm, saddleLengthMm + 30), 30, 300),
    saddleLengthMm,
    pinSpreadMm: saddleSpreadMm,
    compensation: 'entered',
    plateFromMm: clamp(whole(saddleLineMm - plateBehindMm), 10, 440),
    plateToMm: clamp(whole(saddleLineMm + plateBeforeMm), 30, 500),
  }
}

function neck({ family, nutToJointMm, depthAtNeckMm, blockWidthMm, blockThicknessMm }: NeckSite): Json {
  const usual = NECKS[family]
  const bolts = usual.joint === 'sidesInHeel' ? [] : [0.28, 0.7]
  return {
    ...usual,
    tenonWidthMm: clamp(Math.min(24, blockWidthMm - 22), 5, 80),
    tenonDepthMm: clamp(Math.min(28, blockThicknessMm - 8), 3, 100),
    boltsAtMm: bolts.map((part) => whole(clamp(depthAtNeckMm, 20, 200) * part)),
    rodLengthMm: clamp(whole(nutToJointMm - 15), 50, 700),
  }
}

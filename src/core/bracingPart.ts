import { type BraceArchRow, type BracedPlate, braceArchRows, braceFace } from './instrument/brace/braceArch.ts'
import { type BraceCollision, type BraceCrossingRow, crossBraces } from './instrument/brace/braceCrossing.ts'
import { type BraceRow, braceRow } from './instrument/brace/braceRow.ts'
import {
  type BridgePlateNumbers,
  measureBridgePlate,
  nearestToPlate,
  plateCorners,
} from './instrument/brace/bridgePlate.ts'
import { innerRimOf } from './instrument/brace/innerRim.ts'
import { type LiningEdges, withTips } from './instrument/brace/letIn.ts'
import { type JointStripRow, jointStripRows, measurePatches, type PatchNumbers } from './instrument/brace/patches.ts'
import { bracesInOrder, type PlacedBrace, placeBraces } from './instrument/brace/placedBrace.ts'
import type { ConvexPolygon } from './geometry/convexPolygon.ts'
import type { Surface } from './geometry/surface.ts'
import type { Outline } from './instrument/outline.ts'
import type { Numbers } from './numbers.ts'
import type { Plan } from './plan.ts'

/** What stands on the two plates inside: what drawings are made from. */
export interface BracingShape {
  /** By number: the first is number 1. */
  readonly placed: readonly PlacedBrace[]
  readonly collisions: readonly BraceCollision[]
  /** Corners of the plate under the bridge; null without one. */
  readonly bridgePlate: ConvexPolygon | null
  /** The brace that comes nearest to it, as a place among those placed. */
  readonly nearestToPlate: { readonly index: number; readonly clearMm: number } | null
}

export interface BracingNumbers {
  /** In their order, twins one after the other. */
  readonly braces: readonly BraceRow[]
  /** Every brace at every eighth of its length. */
  readonly braceArch: readonly BraceArchRow[]
  readonly braceCrossings: readonly BraceCrossingRow[]
  readonly patches: PatchNumbers
  readonly jointStrip: readonly JointStripRow[]
  readonly bridgePlate: BridgePlateNumbers
}

/** What the braces need of the box. */
export interface BracedBox {
  readonly outline: Outline
  readonly lengthMm: number
  readonly top: Surface
  readonly back: Surface
  readonly bridge: Numbers['bridge']
  readonly pins: Numbers['pins']
}

/** The inner edges of both linings; one where they are of one width. */
function liningEdges({ rim, linings }: Plan, outline: Outline): LiningEdges {
  const edge = (widthMm: number) => innerRimOf(outline, rim.sideThicknessMm + widthMm)
  const top = edge(linings.top.widthMm)
  return { top, back: linings.back.widthMm === linings.top.widthMm ? top : edge(linings.back.widthMm) }
}

export function measureBracing(
  plan: Plan,
  box: BracedBox,
): { readonly numbers: BracingNumbers; readonly shape: BracingShape } {
  const { bracing, blocks } = plan
  const { sideThicknessMm } = plan.rim
  const standing = placeBraces(bracesInOrder(bracing.braces), innerRimOf(box.outline, sideThicknessMm))
  const placed = standing.length === 0 ? standing : withTips(standing, liningEdges(plan, box.outline))
  const plates: Readonly<Record<'top' | 'back', BracedPlate>> = {
    top: { surface: box.top, outward: 'up' },
    back: { surface: box.back, outward: 'down' },
  }
  const faces = placed.map((brace) => braceFace(brace, plates[brace.plan.plate]))
  const { crossings, collisions } = crossBraces(placed)
  const between = {
    fromMm: sideThicknessMm + blocks.tail.thicknessMm,
    toMm: box.lengthMm - sideThicknessMm - blocks.neck.thicknessMm,
  }
  const jointStrip = jointStripRows(bracing.stripWidthMm, between, placed)
  const lappedOnTop = crossings.filter(
    ({ number, lapMm }) => lapMm !== 'none' && placed[number - 1]?.plan.plate === 'top',
  )
  const bridgePlate = plateCorners(plan.bridge)
  const nearest = bridgePlate === null ? null : nearestToPlate(bridgePlate, placed)
  return {
    numbers: {
      braces: placed.map((brace, i) => braceRow(brace, faces[i]!, i + 1, bracing)),
      braceArch: placed.flatMap((brace, i) => braceArchRows(brace, faces[i]!, i + 1)),
      braceCrossings: crossings,
      patches: measurePatches(bracing, {
        holeRadiusMm: plan.soundhole.radiusMm,
        crossings: lappedOnTop.length,
        strip: jointStrip,
      }),
      jointStrip,
      bridgePlate: measureBridgePlate(plan.bridge, {
        frontEdgeMm: box.bridge.frontEdgeAtMm,
        backEdgeMm: box.bridge.backEdgeAtMm,
        pins: box.pins,
        plate: bridgePlate,
        nearest,
      }),
    },
    shape: {
      placed,
      collisions,
      bridgePlate,
      nearestToPlate: nearest,
    },
  }
}

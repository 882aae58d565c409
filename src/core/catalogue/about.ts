import type { PlanField } from '../planFields.ts'
import type { Quantity } from '../quantity.ts'

/** What is known about a number besides its value. Stage sheets, tolerances, help and the list of checks are views of this table. */
export interface About {
  readonly quantity: Quantity
  /** exact: closed form; numeric: found to a stated tolerance; estimate: every place that shows it says so. */
  readonly standing: 'exact' | 'numeric' | 'estimate'
  readonly source: 'published' | 'derived' | 'practice' | 'memory'
  /** The fields of the plan whose change can move it. */
  readonly hangsOn: readonly PlanField[]
  /** Starting tolerance, mm or rad: common practice. null: none is printed until the shop says one. */
  readonly tolerance: number | null
  /** How it is measured at the bench; null: it is computed only. */
  readonly measured: {
    readonly tool: Tool
    readonly where: 'onePlace' | 'roundTheRim'
    readonly defines: PlanField | null
  } | null
}

export const TOOLS = [
  'rule',
  'tape',
  'caliper',
  'thicknessCaliper',
  'depthGauge',
  'straightedge',
  'bevelGauge',
  'contourBoard',
  'dividers',
  'feelerGauge',
  'radiusGauge',
  'protractor',
] as const
export type Tool = (typeof TOOLS)[number]

type Measured = NonNullable<About['measured']>
export const onePlace = (tool: Tool, defines: PlanField | null = null): Measured => ({
  tool,
  where: 'onePlace',
  defines,
})
export const roundTheRim = (tool: Tool): Measured => ({ tool, where: 'roundTheRim', defines: null })

export const about = (
  quantity: Quantity,
  hangsOn: readonly PlanField[],
  more: Partial<Omit<About, 'quantity' | 'hangsOn'>> = {},
): About => ({ quantity, hangsOn, standing: 'exact', source: 'derived', tolerance: null, measured: null, ...more })

// Starting tolerances, common practice (no published source), mm unless said.
export const DEPTH = 0.5
export const SIDE_THICKNESS = 0.1
export const PLATE_THICKNESS = 0.1
export const BLANK_LENGTH = 1
export const BLANK_WIDTH = 0.5
export const BEVEL_RAD = (0.3 * Math.PI) / 180
export const LIGHT_GAP = 0.1
export const LINING_PROUD = 0.2
export const CHANNEL_DEPTH = 0.05
export const HOLE_RADIUS = 0.25

export const FRET_SLOT = 0.1
export const FRET_PLANE = 0.4
export const SADDLE_LINE = 0.3
export const NUT_SLOT = 0.05
export const ACTION = 0.1
export const RELIEF = 0.05
export const BOARD_THICKNESS = 0.1

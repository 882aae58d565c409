import type { Computed } from '../../core/compute.ts'
import type { Curve } from '../../core/geometry/curve.ts'
import { upToMm } from '../../core/instrument/cutaway.ts'
import type { PlaceRow, RimRow, TrebleRow } from '../../core/instrument/rim.ts'
import type { HalfName } from '../../drawing/innerFace.ts'

export type StationList = 'rim' | 'trebleRim'
export type PlaceList = 'places' | 'treblePlaces'
/** Every list of rows round the rim. */
export const RIM_LISTS = ['rim', 'trebleRim', 'places', 'treblePlaces'] as const satisfies readonly (
  | StationList
  | PlaceList
)[]

/** The rows of one side; a treble side that mirrors the bass one has the same. */
export interface SideInHand {
  readonly stations: readonly (RimRow | TrebleRow)[]
  readonly places: readonly PlaceRow[]
  readonly stationList: StationList
  readonly placeList: PlaceList
}

/** Whether the treble side is one of its own. */
export const hasOwnTreble = ({ geometry }: Computed): boolean => !geometry.outline.isMirrored

const isOwn = (computed: Computed, side: HalfName): boolean => side === 'treble' && hasOwnTreble(computed)

export function sideInHand(computed: Computed, side: HalfName): SideInHand {
  const own = isOwn(computed, side)
  const stationList = own ? 'trebleRim' : 'rim'
  const placeList = own ? 'treblePlaces' : 'places'
  const { numbers } = computed
  return { stations: numbers[stationList], places: numbers[placeList], stationList, placeList }
}

/** The outer face of one side, as far as its wood goes. */
export function woodCurve(computed: Computed, side: HalfName): Curve {
  const { outline } = computed.geometry
  return isOwn(computed, side) ? upToMm(outline.treble, outline.trebleWoodEndMm) : outline.bass
}

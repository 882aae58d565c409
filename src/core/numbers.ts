import type { AirNumbers } from './airPart.ts'
import type { BracingNumbers } from './bracingPart.ts'
import type { EdgeNumbers } from './edgesPart.ts'
import type { Figure } from './figure.ts'
import type { LiningNumbers } from './insideRim.ts'
import type { BackNumbers } from './instrument/back.ts'
import type { BackStripNumbers } from './instrument/backStrip.ts'
import type { BlockNumbers } from './instrument/block.ts'
import type { BodyNumbers } from './instrument/body.ts'
import type { CaulNumbers } from './instrument/caul.ts'
import type { SolvedPiece } from './instrument/compassArcs.ts'
import type { CutawayNumbers } from './instrument/cutNumbers.ts'
import type { EdgeRow } from './instrument/edgeCut.ts'
import type { EdgeStripRow } from './instrument/edgeStrips.ts'
import type { EndWedgeNumbers } from './instrument/endWedge.ts'
import type { FitNumbers } from './instrument/fit.ts'
import type { ReadingRow } from './instrument/halfWidths.ts'
import type { BoardNumbers, MarkerRow } from './instrument/neck/boardNumbers.ts'
import type { BridgeNumbers, PinRow } from './instrument/neck/bridge.ts'
import type { FretRow } from './instrument/neck/frets.ts'
import type { HeadNumbers, TunerRow } from './instrument/neck/head.ts'
import type { NeckBlankNumbers } from './instrument/neck/neckBlank.ts'
import type { NeckSetNumbers } from './instrument/neck/neckSet.ts'
import type { SetupNumbers, StringRow, StringSetNumbers } from './instrument/neck/stringRow.ts'
import type { PlaceRow, RimRow, TrebleRow } from './instrument/rim.ts'
import type { RosetteNumbers } from './instrument/rosette.ts'
import type { ScaleNumbers } from './instrument/scale.ts'
import type { BlankRow, SideNumbers } from './instrument/side.ts'
import type { SideBraceRow } from './instrument/sideBraces.ts'
import type { SoundholeNumbers } from './instrument/soundhole.ts'
import type { TopNumbers } from './instrument/top.ts'

/** Every number of one instrument. This type IS the list: the catalogue, the words and the outside checks carry its keys. */
export interface Numbers {
  readonly body: BodyNumbers
  /** The compass chain as solved; empty where the outline is drawn another way. */
  readonly pieces: readonly SolvedPiece[]
  /** What the outline was read from, and how far each reading lies from it; empty where it is drawn another way. */
  readonly readings: readonly ReadingRow[]
  readonly fit: FitNumbers
  readonly cutaway: CutawayNumbers
  readonly sides: SideNumbers
  /** Blanks to cut: bass side, treble side, and the second piece of a treble side with a pointed horn. */
  readonly blanks: readonly BlankRow[]
  /** Stations round the rim, tail to neck, both ends included: of the bass side, and of the treble side where it is its mirror. */
  readonly rim: readonly RimRow[]
  /** Stations of a treble side of its own; none where it mirrors the bass side. */
  readonly trebleRim: readonly TrebleRow[]
  /** The same at tail, bouts, waist, horn and neck, as far as the body has them. */
  readonly places: readonly PlaceRow[]
  readonly treblePlaces: readonly PlaceRow[]
  readonly linings: LiningNumbers
  readonly sideBraces: readonly SideBraceRow[]
  /** Braces of a treble side of its own; none where it mirrors the bass side. */
  readonly trebleBraces: readonly SideBraceRow[]
  readonly caul: CaulNumbers
  readonly top: TopNumbers
  readonly back: BackNumbers
  /** How thick the plates are worked. */
  readonly plates: { readonly topMm: number; readonly backMm: number }
  readonly blocks: { readonly tail: BlockNumbers; readonly neck: BlockNumbers }
  readonly scale: ScaleNumbers
  readonly board: BoardNumbers
  /** From the first to the last. */
  readonly frets: readonly FretRow[]
  readonly markers: readonly MarkerRow[]
  /** From bass to treble. */
  readonly strings: readonly StringRow[]
  readonly stringSet: StringSetNumbers
  readonly neckSet: NeckSetNumbers
  readonly setup: SetupNumbers
  readonly bridge: BridgeNumbers
  readonly pins: readonly PinRow[]
  readonly neck: NeckBlankNumbers
  readonly head: HeadNumbers
  readonly tuners: readonly TunerRow[]
  readonly soundhole: SoundholeNumbers
  readonly rosette: RosetteNumbers
  readonly air: AirNumbers
  readonly braces: BracingNumbers['braces']
  readonly braceArch: BracingNumbers['braceArch']
  readonly braceCrossings: BracingNumbers['braceCrossings']
  readonly patches: BracingNumbers['patches']
  /** The strip over the back's joint on the inside, piece by piece from the tail. */
  readonly jointStrip: BracingNumbers['jointStrip']
  readonly bridgePlate: BracingNumbers['bridgePlate']
  readonly edges: EdgeNumbers
  /** The cuts for binding and purfling at the named places, and at those of a treble side of its own. */
  readonly edgePlaces: readonly EdgeRow[]
  readonly trebleEdgePlaces: readonly EdgeRow[]
  /** Bindings and purflings to cut: bass half first, the top's pieces before the back's, from the tail. */
  readonly edgeStrips: readonly EdgeStripRow[]
  readonly endWedge: EndWedgeNumbers
  readonly backStrip: BackStripNumbers
}

type KeysOf<T, Path extends string> = {
  [K in keyof T & string]: T[K] extends readonly (infer Row)[]
    ? KeysOf<Row, `${Path}${K}[].`>
    : T[K] extends Figure
      ? `${Path}${K}`
      : T[K] extends string
        ? never
        : KeysOf<T[K], `${Path}${K}.`>
}[keyof T & string]

/** The key of every number: its path in `Numbers`, `[]` standing for "in each row". Texts such as a form have none. */
export type NumberKey = KeysOf<Numbers, ''>

/** The values under one key: one, or one for each row; none where the instrument has no such row. */
export function readNumbers(numbers: Numbers, key: NumberKey): Figure[] {
  let level: unknown[] = [numbers]
  for (const step of key.split('.')) {
    const name = step.replace('[]', '')
    level = level.map((one) => (one as Record<string, unknown>)[name])
    if (step.endsWith('[]')) level = level.flat()
  }
  return level as Figure[]
}

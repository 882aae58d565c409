import type { FixtureKey } from '../record/patterns/fixtureKeys.ts'
import type { PartKey } from '../record/patterns/partKeys.ts'
import type { StageKey } from '../record/patterns/stages.ts'

/** What a stage ties up in the shop, in the middle of a sentence. */
export const STAGE_FIXTURE_WORDS: Readonly<Record<FixtureKey, string>> = {
  dryingShelf: 'drying shelf',
  bendingForm: 'bending form',
  bendingIron: 'bending iron',
  mould: 'mould',
  workboard: 'workboard',
  topDish: 'dish of the top',
  backDish: 'dish of the back',
  joiningBoard: 'joining board',
  deck: 'go-bar deck or spools',
  blockClamps: 'block clamps',
  smallClamps: 'small clamps',
  clips: 'lining clips',
  caul: 'caul and weights',
  straps: 'straps or tape',
  clamps: 'clamps',
  sprayRoom: 'spray space',
  dryingRack: 'drying rack',
  bridgeClamps: 'bridge clamps',
  hangingPlace: 'hanging place',
}

/** What has to have arrived before a stage, in the middle of a sentence. */
export const PART_KEY_WORDS: Readonly<Record<PartKey, string>> = {
  rosetteStrips: 'rosette strips',
  bindings: 'bindings and purflings',
  truss: 'truss rod',
  neckBolts: 'bolts and inserts of the neck',
  tuners: 'tuners',
  markers: 'position markers',
  fretWire: 'fret wire',
  boardBindings: 'bindings of the board',
  label: 'label',
  filler: 'pore filler',
  finish: 'finish and thinner',
  bridgePins: 'bridge pins',
  nutAndSaddle: 'nut and saddle blanks',
  endPin: 'end pin or pickup',
  guardPlate: 'guard plate',
  strings: 'strings',
  case: 'case',
}

/** An amount and its unit, as `format` gives them. */
interface Duration {
  readonly amount: string
  readonly unit: 'min' | 'h' | 'day'
}
interface DurationSpan {
  readonly low: Duration
  readonly likely: Duration
  readonly high: Duration
}

const duration = ({ amount, unit }: Duration): string =>
  unit === 'day' ? `${amount} ${amount === '1' ? 'day' : 'days'}` : `${amount}\u00a0${unit}`

function spanned({ low, likely, high }: DurationSpan): string {
  const from = low.unit === high.unit || low.amount === '0' ? low.amount : duration(low)
  return `${duration(likely)} (${from} to ${duration(high)})`
}
const repeated = (of: DurationSpan, times: number): string => (times === 1 ? '' : `${times} times `) + spanned(of)

/** Nothing sets in these waits: the wood says when they are over. Of all others the label does. */
const WOOD_SAYS: Readonly<Partial<Record<StageKey, string>>> = {
  settleWood: 'go by its weight',
  bendSides: 'go by the wood',
  settleInMould: 'go by the wood',
  bendBindings: 'go by the wood',
  stringUp: 'go by the top',
}

const LABEL_SAYS = 'check the label'

/** Who says when the wait after a stage is over. */
export const waitAdvice = (stage: StageKey): string => WOOD_SAYS[stage] ?? LABEL_SAYS

/** What a stage takes of time and of the shop. */
export const STAGE_WORK_WORDS = {
  hands: (of: DurationSpan, times: number) => `Hands on: ${repeated(of, times)}.`,
  /** `waits`: one after the other, each after the stage that begins it. */
  wait: (waits: readonly { readonly stage: StageKey; readonly of: DurationSpan; readonly times: number }[]) => {
    const [first] = waits
    const own = waits.every(({ stage }) => WOOD_SAYS[stage] !== undefined) && first !== undefined
    const advice = own ? waitAdvice(first.stage) : LABEL_SAYS
    return `Wait: ${waits.map(({ of, times }) => repeated(of, times)).join(', then ')}; ${advice}.`
  },
  oneSitting: 'In one sitting.',
  inHumidity: 'Needs building humidity.',
  needs: (fixtures: readonly string[]) => `Takes up: ${fixtures.join('; ')}.`,
  setting: (fixtures: string) => `${fixtures} through the wait`,
  until: (fixture: string, place: number) => `${fixture} from here until stage ${place} is done`,
  frees: (fixtures: readonly string[]) => `Then free: ${fixtures.join(', ')}.`,
  parts: (parts: readonly string[]) => `Must be here: ${parts.join(', ')}.`,
  fixture: STAGE_FIXTURE_WORDS,
  part: PART_KEY_WORDS,
} as const

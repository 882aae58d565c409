import type { NumberKey } from '../core/numbers.ts'

/** Names of some numbers: those of a part that has been fetched. */
export type SomeNumberNames = Readonly<Partial<Record<NumberKey, string>>>

const PARTS: readonly { readonly keys: RegExp; readonly fetch: () => Promise<SomeNumberNames> }[] = [
  {
    keys: /^(?:scale|board|frets|markers|strings|stringSet|setup|neckSet|bridge|pins|neck|head|tuners)[.[]/u,
    fetch: async () => (await import('./names/ofNeck.ts')).NAMES_OF_NECK,
  },
  {
    keys: /^(?:brace|bridgePlate|jointStrip|patches|holeRing|edge|trebleEdge|endWedge|backStrip|air)/u,
    fetch: async () => (await import('./names/ofBox.ts')).NAMES_OF_BOX,
  },
  {
    keys: /^(?:sides|blanks|rim|trebleRim|places|treblePlaces|blocks|linings|sideBraces|trebleBraces|caul)[.[]/u,
    fetch: async () => (await import('./names/ofSides.ts')).NAMES_OF_SIDES,
  },
  { keys: /^/u, fetch: async () => (await import('./names/ofBody.ts')).NAMES_OF_BODY },
]

/** The names of these numbers, without fetching those of parts that none of them belongs to. */
export async function fetchNumberNames(keys: readonly NumberKey[]): Promise<SomeNumberNames> {
  const parts = new Set(keys.map((key) => PARTS.find((part) => part.keys.test(key))!))
  const names = await Promise.all([...parts].map((part) => part.fetch()))
  return Object.assign({}, ...names) as SomeNumberNames
}

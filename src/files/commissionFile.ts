import { type CommissionFile, commissionFile, type ShopDoc } from '../record/commission.ts'
import type { Bundle } from '../record/document.ts'
import { fileOfBundle } from '../record/door.ts'
import { isPlainObject } from '../record/path.ts'
import type { DoorProblem } from '../record/problem.ts'
import { accept, type Result, refuse } from '../record/result.ts'
import { fileStem } from './fileStem.ts'

/** No commission with its whole log comes near this; more is refused before it is read. */
export const MOST_MEGABYTES = 30
const MOST_BYTES = MOST_MEGABYTES * 1_000_000

export const COMMISSION_MIME = 'application/json'

/** A commission with its log, its facts and the shop it was computed with, as text: the same record always gives the same text. */
export function writeCommissionFile(bundle: Bundle, shop: ShopDoc, savedAt: string): string {
  const file = fileOfBundle(bundle, shop, savedAt)
  const inSchemaOrder: CommissionFile = commissionFile.safeParse(file).data ?? file
  return `${JSON.stringify(inSchemaOrder, sortCollections, 2)}\n`
}

/** A name the file can be saved under anywhere: number and title without signs that some system forbids. */
export function commissionFileName(doc: { readonly number: string; readonly title: string }): string {
  return `${fileStem([doc.number, doc.title], 'commission', 80)}.ribwright.json`
}

/** What a picked file holds, still unknown. Nothing beyond MOST_MEGABYTES is read. */
export async function readCommissionBytes(file: Blob): Promise<Result<unknown, DoorProblem>> {
  if (file.size > MOST_BYTES) return tooLarge()
  try {
    return parseCommissionText(await file.text())
  } catch {
    return refuse({ code: 'unreadable' })
  }
}

/** JSON text as unknown data. A byte order mark before it is passed over. */
export function parseCommissionText(text: string): Result<unknown, DoorProblem> {
  if (text.length > MOST_BYTES) return tooLarge()
  try {
    return accept(JSON.parse(text.startsWith('\uFEFF') ? text.slice(1) : text) as unknown)
  } catch {
    return refuse({ code: 'unreadable' })
  }
}

const tooLarge = (): Result<never, DoorProblem> =>
  refuse({ code: 'tooLarge', detail: { kind: 'size', mostMegabytes: MOST_MEGABYTES } })

const COLLECTIONS: ReadonlySet<string> = new Set([
  'rings',
  'braces',
  'planks',
  'woods',
  'fixtures',
  'taps',
  'stages',
  'tolerances',
  'seen',
  'builtTo',
])

/** Collections by id have no order of their own; the file gives them one. */
function sortCollections(key: string, value: unknown): unknown {
  if (!COLLECTIONS.has(key) || !isPlainObject(value)) return value
  return Object.fromEntries(Object.entries(value).toSorted(([a], [b]) => (a < b ? -1 : 1)))
}

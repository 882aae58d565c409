import type { PlateSide } from '../../../core/boxPlan.ts'
import { CATALOGUE, type NumberKey } from '../../../core/catalogue.ts'
import { readNumbers } from '../../../core/numbers.ts'
import { braceName, BRACING_WORDS } from '../../../words/box/bracing.ts'
import { NUMBER_NAMES } from '../../../words/numberNames.ts'
import { FigureRows } from '../FigureRows.tsx'
import { useSheetBench } from '../sheetBench.ts'
import { TableTools } from '../TableTools.tsx'
import type { FigureTable } from '../tableText.ts'

interface RowsProps {
  readonly caption: string
  readonly fileName: string
  readonly head: string
  /** The rows of the list that are shown, with their names. */
  readonly rows: readonly { readonly at: number; readonly name: string }[]
  readonly keys: readonly NumberKey[]
}

/** Some rows of a list of numbers, under names of their own; nothing where there are none. */
function PickedRows({ caption, fileName, head, rows, keys }: RowsProps) {
  const { numbers } = useSheetBench().computed
  if (rows.length === 0) return null
  const columns = keys.map((key) => readNumbers(numbers, key))
  const table: FigureTable = {
    columns: [
      { heading: head, quantity: null },
      ...keys.map((key) => ({ heading: NUMBER_NAMES[key], quantity: CATALOGUE[key].quantity })),
    ],
    rows: rows.map(({ at, name }) => [name, ...columns.map((column) => column[at] ?? 'none')]),
  }
  return (
    <section aria-label={caption}>
      <h2>{caption}</h2>
      <FigureRows table={table} caption={caption} keys={[null, ...keys]} keysOf="columns" />
      <TableTools table={() => table} fileName={fileName} />
    </section>
  )
}

/** Every brace of one plate, with what to cut for it. */
export function BraceTable({ plate }: { readonly plate: PlateSide }) {
  const { braces } = useSheetBench().computed.numbers
  return (
    <PickedRows
      caption={BRACING_WORDS.lengths}
      fileName={`braces-${plate}`}
      head={BRACING_WORDS.list}
      rows={braces.flatMap((row, at) =>
        row.plate === plate ? [{ at, name: braceName(row.number, row.kind, row.half) }] : [],
      )}
      keys={[
        'braces[].lengthMm',
        'braces[].angleRad',
        'braces[].fromXMm',
        'braces[].fromAcrossMm',
        'braces[].toXMm',
        'braces[].toAcrossMm',
        'braces[].archRiseMm',
        'braces[].blankLengthMm',
        'braces[].blankHeightMm',
        'braces[].blankWidthMm',
      ]}
    />
  )
}

/** The arch of one brace, eighth by eighth. */
export function ArchTable({ row, name }: { readonly row: number; readonly name: string }) {
  const { braceArch, braces } = useSheetBench().computed.numbers
  const number = braces[row]?.number
  const rows = braceArch.flatMap((one, at) => (one.number === number ? [at] : []))
  return (
    <>
      <PickedRows
        caption={BRACING_WORDS.arch(name)}
        fileName={`brace-${number ?? 0}`}
        head={BRACING_WORDS.station}
        rows={rows.map((at, part) => ({ at, name: String(part) }))}
        keys={['braceArch[].alongMm', 'braceArch[].riseMm', 'braceArch[].heightMm']}
      />
      <p className="second small">{BRACING_WORDS.archNote}</p>
    </>
  )
}

/** Where braces cross, on either plate. */
export function CrossingTable() {
  const { braceCrossings } = useSheetBench().computed.numbers
  return (
    <PickedRows
      caption={BRACING_WORDS.crossings}
      fileName="brace-crossings"
      head={BRACING_WORDS.list}
      rows={braceCrossings.map(({ number, otherNumber }, at) => ({
        at,
        name: BRACING_WORDS.crossing(number, otherNumber),
      }))}
      keys={[
        'braceCrossings[].xMm',
        'braceCrossings[].acrossMm',
        'braceCrossings[].alongMm',
        'braceCrossings[].otherAlongMm',
        'braceCrossings[].angleRad',
        'braceCrossings[].lapMm',
      ]}
    />
  )
}

/** The strip over the back's joint, piece by piece. */
export function JointStripTable() {
  const { jointStrip } = useSheetBench().computed.numbers
  return (
    <PickedRows
      caption={BRACING_WORDS.strip}
      fileName="back-joint-strip"
      head={BRACING_WORDS.piece}
      rows={jointStrip.map((_, at) => ({ at, name: String(at + 1) }))}
      keys={['jointStrip[].fromMm', 'jointStrip[].toMm', 'jointStrip[].lengthMm']}
    />
  )
}

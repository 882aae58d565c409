import type { PlateSide } from '../../../core/boxPlan.ts'
import { CATALOGUE, type NumberKey } from '../../../core/catalogue.ts'
import { readNumbers } from '../../../core/numbers.ts'
import { braceName, BRACING_WORDS } from '../../../words/box/bracing.ts'
import { FigureRows } from '../FigureRows.tsx'
import { KeyTable } from '../neck/KeyTable.tsx'
import { usePlannedColumn } from '../planned.ts'
import { useSheetBench } from '../sheetBench.ts'
import type { FigureTable } from '../tableText.ts'

/** Every brace of one plate, with what to cut for it. */
export function BraceTable({ plate }: { readonly plate: PlateSide }) {
  const { braces } = useSheetBench().computed.numbers
  const own = braces.flatMap((row, at) => (row.plate === plate ? [{ row, at }] : []))
  return (
    <KeyTable
      caption={BRACING_WORDS.lengths}
      fileName={`braces-${plate}`}
      head={BRACING_WORDS.list}
      names={own.map(({ row }) => braceName(row.number, row.kind, row.half))}
      at={own.map(({ at }) => at)}
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

const END_KEYS = {
  from: ['fromXMm', 'fromAcrossMm', 'fromAlongOuterMm', 'fromLetInMm', 'fromHeightMm', 'fromTaperMm'],
  to: ['toXMm', 'toAcrossMm', 'toAlongOuterMm', 'toLetInMm', 'toHeightMm', 'toTaperMm'],
} as const

/** Both ends of one brace: where they stand, and how they run out. */
export function EndsTable({ row, name }: { readonly row: number; readonly name: string }) {
  const { numbers } = useSheetBench().computed
  const planned = usePlannedColumn()
  const caption = BRACING_WORDS.ends(name)
  const keysOf = (end: 'from' | 'to') => END_KEYS[end].map((key): NumberKey => `braces[].${key}`)
  const plannedEnds = (at: number) => {
    const cells = (['from', 'to'] as const).map((end) => planned(keysOf(end)[at] ?? 'braces[].fromXMm').planned?.[row])
    return cells.every((cell) => cell !== undefined) ? { planned: cells } : {}
  }
  const table: FigureTable = {
    columns: [
      { heading: BRACING_WORDS.end, quantity: null },
      ...keysOf('from').map((key, i) => ({
        heading: BRACING_WORDS.endColumns[i] ?? '',
        quantity: CATALOGUE[key].quantity,
        ...plannedEnds(i),
      })),
    ],
    rows: (['from', 'to'] as const).map((end) => [
      BRACING_WORDS[end],
      ...keysOf(end).map((key) => readNumbers(numbers, key)[row] ?? 'none'),
    ]),
  }
  return (
    <section>
      <h3>{caption}</h3>
      <FigureRows table={table} caption={caption} keys={[null, ...keysOf('from')]} keysOf="columns" />
    </section>
  )
}

/** The arch of one brace, eighth by eighth. */
export function ArchTable({ row, name }: { readonly row: number; readonly name: string }) {
  const { braceArch, braces } = useSheetBench().computed.numbers
  const number = braces[row]?.number
  const rows = braceArch.flatMap((one, at) => (one.number === number ? [at] : []))
  return (
    <>
      <KeyTable
        caption={BRACING_WORDS.arch(name)}
        fileName={`brace-${number ?? 0}`}
        head={BRACING_WORDS.station}
        names={rows.map((_, part) => String(part))}
        at={rows}
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
    <KeyTable
      caption={BRACING_WORDS.crossings}
      fileName="brace-crossings"
      head={BRACING_WORDS.list}
      names={braceCrossings.map(({ number, otherNumber }) => BRACING_WORDS.crossing(number, otherNumber))}
      keys={[
        'braceCrossings[].xMm',
        'braceCrossings[].acrossMm',
        'braceCrossings[].alongMm',
        'braceCrossings[].otherAlongMm',
        'braceCrossings[].angleRad',
        'braceCrossings[].lapMm',
        'braceCrossings[].underNumber',
        'braceCrossings[].notchMm',
        'braceCrossings[].otherNotchMm',
      ]}
    />
  )
}

/** The strip over the back's joint, piece by piece. */
export function JointStripTable() {
  const { jointStrip } = useSheetBench().computed.numbers
  return (
    <KeyTable
      caption={BRACING_WORDS.strip}
      fileName="back-joint-strip"
      head={BRACING_WORDS.piece}
      names={jointStrip.map((_, i) => String(i + 1))}
      keys={['jointStrip[].fromMm', 'jointStrip[].toMm', 'jointStrip[].lengthMm']}
    />
  )
}

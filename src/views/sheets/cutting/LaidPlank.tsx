import { useMemo } from 'react'
import type { SawnBoard } from '../../../core/wood/boardLayout.ts'
import type { LengthQuantity } from '../../../core/quantity.ts'
import { plankDrawing } from '../../../drawing/cutting/plankDrawing.ts'
import { figureText } from '../../../format/figure.ts'
import { formatNotNothing } from '../../../format/formatNotNothing.ts'
import { formatQuantity } from '../../../format/formatQuantity.ts'
import { CUTTING_WORDS } from '../../../words/box/cutting.ts'
import { SAW_CUT_NAMES, WOOD_WORDS } from '../../../words/wood.ts'
import { FigureRows } from '../FigureRows.tsx'
import { SheetDrawing } from '../SheetDrawing.tsx'
import { useSheetBench } from '../sheetBench.ts'
import type { FigureTable } from '../tableText.ts'
import type { NamedPlank } from './PlankLayouts.tsx'

const words = CUTTING_WORDS.layout

interface Props {
  readonly plank: NamedPlank
  readonly sawn: SawnBoard
  readonly nameOf: (partId: string) => string
}

/** One plank: what lies where on it, and the cuts in the order they are made. */
export function LaidPlank({ plank: { name, board }, sawn, nameOf }: Props) {
  const { units } = useSheetBench()
  const drawing = useMemo(() => plankDrawing(board, sawn), [board, sawn])
  const length = (mm: number, quantity: LengthQuantity) => figureText(formatQuantity(mm, quantity, units))
  const size = CUTTING_WORDS.planks.size(
    length(board.lengthMm, 'bodyLength'),
    length(board.widthMm, 'bodyLength'),
    length(board.thicknessMm, 'bodyLength'),
  )
  const pieces: FigureTable = {
    columns: [
      { heading: words.piece, quantity: null },
      { heading: WOOD_WORDS.columns.part, quantity: null },
      { heading: words.slices, quantity: 'count' },
      { heading: words.along, quantity: 'bodyLength' },
      { heading: words.across, quantity: 'bodyLength' },
      { heading: words.thickness, quantity: 'thickness' },
      { heading: words.lies, quantity: null },
    ],
    rows: sawn.placements.map((piece, i) => [
      String(i + 1),
      nameOf(piece.partId),
      piece.copies,
      piece.lengthMm,
      piece.widthMm,
      piece.thicknessMm,
      piece.isTurned ? words.turned : words.straight,
    ]),
  }
  const cuts: FigureTable = {
    columns: [
      { heading: words.cut, quantity: null },
      { heading: words.way, quantity: null },
      { heading: words.at, quantity: 'bodyLength' },
      { heading: words.from, quantity: 'bodyLength' },
      { heading: words.to, quantity: 'bodyLength' },
    ],
    rows: sawn.cuts.map((cut, i) => [String(i + 1), SAW_CUT_NAMES[cut.way], cut.atMm, cut.fromMm, cut.toMm]),
  }
  const volume = (mm3: number): string => figureText(formatNotNothing(mm3, 'volume', units))
  return (
    <section className="laid-plank" aria-label={name}>
      <h4>{`${name}, ${size}`}</h4>
      {sawn.placements.length === 0 ? (
        <p>{words.empty}</p>
      ) : (
        <>
          <SheetDrawing drawing={drawing} mostHeightPx={320} />
          <div className="laid-tables">
            <FigureRows table={pieces} caption={words.pieces(name)} />
            <div>
              <FigureRows table={cuts} caption={words.cuts(name)} />
              <p className="second small">{words.cutsNote}</p>
            </div>
          </div>
          <p>{words.volumes(volume(sawn.partsMm3), volume(sawn.offcutsMm3), volume(sawn.lostMm3))}</p>
        </>
      )}
    </section>
  )
}

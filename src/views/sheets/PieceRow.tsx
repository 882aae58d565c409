import type { SolvedValues } from '../../core/instrument/solvedValues.ts'
import type { OutlinePiece } from '../../core/plan.ts'
import { setPieces } from '../../record/changes/outline.ts'
import { MOST_PIECES, PIECE_RANGES } from '../../record/fields.ts'
import { AngleField } from '../../ui/AngleField.tsx'
import { ChoiceField } from '../../ui/ChoiceField.tsx'
import { LengthField, type LengthValue } from '../../ui/LengthField.tsx'
import { BEND_WORDS, PIECE_KIND_WORDS, PIECE_WORDS } from '../../words/fields.ts'
import { OUTLINE_WORDS } from '../../words/bodySheets.ts'
import { changePiece, insertPiece, movePiece, removePiece, turnPieceInto } from './pieceEdits.ts'
import { useSheetBench } from './sheetBench.ts'
import { useSheetField } from './useSheetField.ts'

type Bend = Extract<OutlinePiece, { kind: 'arc' }>['bend']
const KINDS = (['arc', 'straight'] as const).map((value) => ({ value, label: PIECE_KIND_WORDS[value] }))
const BENDS = (['convex', 'concave'] as const).map((value) => ({ value, label: BEND_WORDS[value] }))

interface Props {
  readonly piece: OutlinePiece
  readonly at: number
  readonly pieces: readonly OutlinePiece[]
  readonly solved: readonly SolvedValues[]
  readonly rearrange: (next: readonly OutlinePiece[]) => void
}

/** One piece: its values in sight, what it is and where it stands a tap away. */
export function PieceRow({ piece, at, pieces, solved, rearrange }: Props) {
  const { readOnly, units } = useSheetBench()
  const own = solved[at]
  const title = `${OUTLINE_WORDS.piece} ${at + 1}`
  const bend = piece.kind === 'arc' ? `, ${BEND_WORDS[piece.bend].toLowerCase()}` : ''
  const full = pieces.length >= MOST_PIECES
  return (
    <li className="piece">
      <details className="piece-more">
        <summary>
          <h3>
            {title}
            <span className="second">{`: ${PIECE_KIND_WORDS[piece.kind].toLowerCase()}${bend}`}</span>
            <span className="out-of-sight">{`. ${OUTLINE_WORDS.change}`}</span>
          </h3>
        </summary>
        <KindChoice piece={piece} at={at} pieces={pieces} own={own} rearrange={rearrange} />
        {piece.kind === 'arc' && <BendChoice piece={piece} at={at} pieces={pieces} />}
        <div className="commands">
          <Command
            word={OUTLINE_WORDS.earlier}
            disabled={readOnly || at === 0}
            act={() => rearrange(movePiece(pieces, at, at - 1))}
          />
          <Command
            word={OUTLINE_WORDS.later}
            disabled={readOnly || at === pieces.length - 1}
            act={() => rearrange(movePiece(pieces, at, at + 1))}
          />
          <Command
            word={OUTLINE_WORDS.addBefore}
            disabled={readOnly || full}
            act={() => rearrange(insertPiece(pieces, at, solved))}
          />
          <Command
            word={OUTLINE_WORDS.addAfter}
            disabled={readOnly || full}
            act={() => rearrange(insertPiece(pieces, at + 1, solved))}
          />
          <Command
            word={`${OUTLINE_WORDS.remove} ${title.toLowerCase()}`}
            disabled={readOnly}
            act={() => rearrange(removePiece(pieces, at))}
          />
        </div>
      </details>
      <div className="piece-values" data-long={units.bodyLength === 'fractionalInch'}>
        {piece.kind === 'arc' ? (
          <ArcValues piece={piece} at={at} pieces={pieces} own={own} />
        ) : (
          <StraightValues piece={piece} at={at} pieces={pieces} own={own} />
        )}
      </div>
    </li>
  )
}

interface ValueProps<Kind extends OutlinePiece> {
  readonly piece: Kind
  readonly at: number
  readonly pieces: readonly OutlinePiece[]
  readonly own: SolvedValues | undefined
}

function ArcValues({ piece, at, pieces, own }: ValueProps<Extract<OutlinePiece, { kind: 'arc' }>>) {
  const { units } = useSheetBench()
  const radius = useSheetField<LengthValue>(pieceField(at, 'radiusMm'), piece.radiusMm, (value) =>
    setPieces(changePiece(pieces, at, { radiusMm: value === 'flat' ? null : value })),
  )
  const sweep = useSheetField<number | null>(pieceField(at, 'sweepDeg'), piece.sweepDeg, (sweepDeg) =>
    setPieces(changePiece(pieces, at, { sweepDeg })),
  )
  return (
    <>
      <LengthField
        label={label(at, 'radiusMm', piece.radiusMm === null)}
        binding={radius}
        range={PIECE_RANGES.radiusMm}
        units={units}
        solvedMm={own?.radiusMm ?? null}
      />
      <AngleField
        label={label(at, 'sweepDeg', piece.sweepDeg === null)}
        binding={sweep}
        range={PIECE_RANGES.sweepDeg}
        canBeOpen
        solvedDeg={own?.sweepDeg ?? null}
      />
    </>
  )
}

function StraightValues({ piece, at, pieces, own }: ValueProps<Extract<OutlinePiece, { kind: 'straight' }>>) {
  const { units } = useSheetBench()
  const length = useSheetField<LengthValue>(pieceField(at, 'lengthMm'), piece.lengthMm, (value) =>
    setPieces(changePiece(pieces, at, { lengthMm: value === 'flat' ? null : value })),
  )
  return (
    <LengthField
      label={label(at, 'lengthMm', piece.lengthMm === null)}
      binding={length}
      range={PIECE_RANGES.lengthMm}
      units={units}
      solvedMm={own?.lengthMm ?? null}
    />
  )
}

function KindChoice({ piece, at, pieces, own, rearrange }: ValueProps<OutlinePiece> & Pick<Props, 'rearrange'>) {
  const { readOnly } = useSheetBench()
  const binding = useSheetField<OutlinePiece['kind']>(pieceField(at, 'kind'), piece.kind, () => () => undefined)
  return (
    <ChoiceField
      label={PIECE_WORDS.kind.name}
      binding={{ ...binding, readOnly, take: (kind) => rearrange(turnPieceInto(pieces, at, kind, own)) }}
      choices={KINDS}
    />
  )
}

function BendChoice({ piece, at, pieces }: Omit<ValueProps<Extract<OutlinePiece, { kind: 'arc' }>>, 'own'>) {
  const binding = useSheetField<Bend>(pieceField(at, 'bend'), piece.bend, (bend) =>
    setPieces(changePiece(pieces, at, { bend })),
  )
  return <ChoiceField label={PIECE_WORDS.bend.name} binding={binding} choices={BENDS} />
}

function Command({
  word,
  disabled,
  act,
}: {
  readonly word: string
  readonly disabled: boolean
  readonly act: () => void
}) {
  return (
    <button className="button" type="button" disabled={disabled} onClick={act}>
      {word}
    </button>
  )
}

const pieceField = (at: number, field: string) => `plan.outline.pieces.${at}.${field}`

/** The piece's number is in the label, so that two fields of a sheet never sound alike; what is solved says so. */
function label(at: number, field: 'radiusMm' | 'sweepDeg' | 'lengthMm', isOpen: boolean): string {
  return `${PIECE_WORDS[field].name} ${at + 1}${isOpen ? `, ${OUTLINE_WORDS.solved}` : ''}`
}

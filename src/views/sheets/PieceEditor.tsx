import { useState } from 'react'
import { type SolvedValues, solvedValues } from '../../core/instrument/solvedValues.ts'
import type { OutlinePiece } from '../../core/plan.ts'
import { setPieces } from '../../record/changes/outline.ts'
import { MOST_PIECES } from '../../record/fields.ts'
import { FIELD_WORDS } from '../../words/fields.ts'
import { OUTLINE_WORDS } from '../../words/bodySheets.ts'
import { PieceRow } from './PieceRow.tsx'
import { insertPiece } from './pieceEdits.ts'
import { useSheetBench } from './sheetBench.ts'

const PIECE_FIELDS = ['radiusMm', 'sweepDeg', 'lengthMm'] as const

/** The half outline, piece by piece from the tail: each value given or left open, and what the open ones came out as. */
export function PieceEditor() {
  const bench = useSheetBench()
  const { pieces } = bench.plan.outline
  const solved: readonly SolvedValues[] = bench.computed.numbers.pieces.map(solvedValues)
  const [generation, setGeneration] = useState(0)

  /** Pieces have no name of their own: when they move, half-typed texts are dropped and the fields are made anew. */
  const rearrange = (next: readonly OutlinePiece[]): void => {
    pieces.forEach((_, i) => {
      for (const field of PIECE_FIELDS) bench.dropDraft(`plan.outline.pieces.${i}.${field}`)
    })
    bench.edit(setPieces(next), bench.newId())
    setGeneration((before) => before + 1)
  }

  return (
    <section className="sheet-fields" data-field="plan.outline.pieces" aria-labelledby="pieces-heading">
      <h2 id="pieces-heading">{FIELD_WORDS['outline.pieces'].name}</h2>
      <p className="second small">{FIELD_WORDS['outline.pieces'].hint}</p>
      {pieces.length === 0 && <p>{OUTLINE_WORDS.none}</p>}
      <ol className="pieces">
        {pieces.map((piece, i) => (
          <PieceRow
            key={`${generation} ${i}`}
            piece={piece}
            at={i}
            pieces={pieces}
            solved={solved}
            rearrange={rearrange}
          />
        ))}
      </ol>
      {pieces.length === 0 && (
        <button
          className="button button-next"
          type="button"
          disabled={bench.readOnly}
          onClick={() => rearrange(insertPiece(pieces, 0, solved))}
        >
          {OUTLINE_WORDS.addFirst}
        </button>
      )}
      {pieces.length >= MOST_PIECES && <p className="second small">{OUTLINE_WORDS.full}</p>}
    </section>
  )
}

import { useMemo } from 'react'
import { outlinePreview } from '../../drawing/outlinePreview.ts'
import type { ReadLines, TakenOutline } from '../../files/takeOutline.ts'
import { figureText } from '../../format/figure.ts'
import { formatLength } from '../../format/formatLength.ts'
import type { LeftOutKind } from '../../record/drawnFile.ts'
import { FigureText } from '../../ui/FigureText.tsx'
import { DRAWN_PATH_WORDS } from '../../words/drawnPath.ts'
import { useSheetBench } from './sheetBench.ts'

/** The outline a drawing gives, as it would be taken: drawn, with its length and width. */
export function OutlineFound({ taken }: { readonly taken: TakenOutline }) {
  const { units } = useSheetBench()
  const { plan, outline, sidesDiffer } = taken
  const preview = useMemo(() => outlinePreview(plan.bass, plan.treble), [plan])
  const said =
    outline.drawnAs === 'half'
      ? DRAWN_PATH_WORDS.half
      : sidesDiffer
        ? DRAWN_PATH_WORDS.differ(figureText(formatLength(outline.asymmetryMm, 'thickness', units)))
        : DRAWN_PATH_WORDS.whole
  const words = [
    { word: DRAWN_PATH_WORDS.tail, at: preview.tailAt, anchor: 'start' },
    { word: DRAWN_PATH_WORDS.neck, at: preview.neckAt, anchor: 'end' },
    { word: DRAWN_PATH_WORDS.bass, at: preview.bassAt, anchor: 'middle' },
    { word: DRAWN_PATH_WORDS.trebleSide, at: preview.trebleAt, anchor: 'middle' },
  ] as const
  return (
    <figure className="outline-found">
      <svg viewBox={preview.viewBox} role="img" aria-label={DRAWN_PATH_WORDS.preview}>
        <path className="outline-found-centre" d={preview.centreline} />
        <path className="outline-found-edge" d={preview.bass} />
        <path className="outline-found-edge" d={preview.treble} />
        {words.map(({ word, at, anchor }) => (
          <text key={word} x={at.x} y={at.y} fontSize={preview.letteringMm} textAnchor={anchor}>
            {word}
          </text>
        ))}
      </svg>
      <figcaption>
        <dl className="drawn-path-facts">
          <div>
            <dt>{DRAWN_PATH_WORDS.length}</dt>
            <dd>
              <FigureText figure={formatLength(outline.lengthMm, 'bodyLength', units)} />
            </dd>
          </div>
          <div>
            <dt>{DRAWN_PATH_WORDS.width}</dt>
            <dd>
              <FigureText figure={formatLength(outline.widestMm, 'bodyLength', units)} />
            </dd>
          </div>
        </dl>
        <p>{said}</p>
      </figcaption>
    </figure>
  )
}

/** Smaller gaps are of the reckoning, not of the drawing. */
const SEEN_MM = 0.001

interface DoneProps {
  readonly healed: ReadLines['healed']
  /** null: there is none yet. */
  readonly outline: TakenOutline['outline'] | null
  readonly leftOut: readonly { readonly kind: LeftOutKind; readonly count: number }[]
}

/** What was mended on the way, and what was left out: never in silence. */
export function DrawingDone({ healed, outline, leftOut }: DoneProps) {
  const { units } = useSheetBench()
  const { gapsClosed, largestGapMm, tinyDropped, duplicatesDropped } = healed
  const small = (lengthMm: number) => figureText(formatLength(lengthMm, 'thickness', units))
  const said = [
    gapsClosed > 0 && DRAWN_PATH_WORDS.gaps(gapsClosed, small(largestGapMm)),
    tinyDropped > 0 && DRAWN_PATH_WORDS.tiny(tinyDropped),
    duplicatesDropped > 0 && DRAWN_PATH_WORDS.duplicates(duplicatesDropped),
    outline !== null && outline.gapMm > SEEN_MM && DRAWN_PATH_WORDS.closedUp(small(outline.gapMm)),
    outline?.centrelineDropped === true && DRAWN_PATH_WORDS.centrelineDropped,
    ...leftOut.map(({ kind, count }) => DRAWN_PATH_WORDS.leftOut(kind, count)),
  ].filter((sentence) => sentence !== false)
  return (
    <section>
      <h3>{DRAWN_PATH_WORDS.done}</h3>
      {said.length === 0 ? (
        <p>{DRAWN_PATH_WORDS.nothingDone}</p>
      ) : (
        <ul>
          {said.map((sentence) => (
            <li key={sentence}>{sentence}</li>
          ))}
        </ul>
      )}
    </section>
  )
}

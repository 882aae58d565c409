import {
  type BoxMark,
  type DrawingMark,
  type FigureMark,
  type Mark,
  MM_PER_PT,
  type Page,
  type SignMark,
  type TextMark,
} from '../papers/page.ts'
import { figureParts } from '../papers/textWidth.ts'
import { DRAWING_WORDS } from '../words/drawings.ts'
import { SMALL_PENS } from '../drawing/pens.ts'
import { DimensionMark, DrawingLabels, DrawingLines, EdgeLettering } from './drawingSvg.tsx'
import './DrawingFrame.css'
import './paperPages.css'


/** Pages of a paper, on screen as sheets at their true aspect, in print each exactly one sheet. */
export function PaperPages({
  pages,
  label,
}: {
  readonly pages: readonly Page[]
  /** What a page is called by one who cannot see it. */
  readonly label: (page: Page) => string
}) {
  return (
    <div className="paper-pages">
      {pages.map((page) => (
        <section className="paper-page" key={page.number} data-size={page.size} aria-label={label(page)}>
          <svg
            className="paper-page-sheet"
            viewBox={`0 0 ${page.widthMm} ${page.heightMm}`}
            style={{ aspectRatio: `${page.widthMm} / ${page.heightMm}` }}
          >
            {page.blocks.map((block, i) => (
              <g key={i} data-block={block.kind}>
                {block.marks.map((mark, n) => (
                  <MarkShape key={n} mark={mark} />
                ))}
              </g>
            ))}
          </svg>
        </section>
      ))}
    </div>
  )
}

function MarkShape({ mark }: { readonly mark: Mark }) {
  switch (mark.kind) {
    case 'text':
      return <Lettering mark={mark} />
    case 'figure':
      return <FigureShape mark={mark} />
    case 'rule':
      return (
        <line
          className="paper-line"
          x1={mark.fromXMm}
          y1={mark.fromYMm}
          x2={mark.toXMm}
          y2={mark.toYMm}
          strokeWidth={mark.penMm}
        />
      )
    case 'box':
      return <BoxShape mark={mark} />
    case 'sign':
      return <SignShape mark={mark} />
    case 'drawing':
      return <DrawingShape mark={mark} />
  }
}

function DrawingShape({ mark: { drawing, laid, xMm, yMm, widthMm, heightMm } }: { readonly mark: DrawingMark }) {
  const { box, mmPerUnit, figureMm } = laid
  const { name, description } = DRAWING_WORDS[drawing.name]
  return (
    <svg
      className="drawing-svg"
      x={xMm}
      y={yMm}
      width={widthMm}
      height={heightMm}
      viewBox={`${box.minX} ${box.minY} ${box.maxX - box.minX} ${box.maxY - box.minY}`}
      role="img"
      aria-label={`${name}. ${description}`}
    >
      <DrawingLines drawing={drawing} mmPerUnit={mmPerUnit} pens={SMALL_PENS} />
      <DrawingLabels laid={laid} pens={SMALL_PENS} litStation={null} />
      {laid.dimensions.map((dimension, i) => (
        <DimensionMark
          key={i}
          dimension={dimension}
          mmPerUnit={mmPerUnit}
          figureMm={figureMm}
          pens={SMALL_PENS}
          lit={false}
          tapping={null}
        />
      ))}
      <EdgeLettering laid={laid} />
    </svg>
  )
}

function Lettering({ mark }: { readonly mark: TextMark }) {
  return (
    <text
      className="paper-text"
      x={mark.xMm}
      y={mark.yMm}
      fontSize={mark.sizePt * MM_PER_PT}
      fontWeight={mark.weight === 'strong' ? 600 : 400}
      textAnchor={mark.anchor}
    >
      {mark.text}
    </text>
  )
}

function FigureShape({ mark }: { readonly mark: FigureMark }) {
  const sizeMm = mark.sizePt * MM_PER_PT
  const parts = figureParts(mark.figure, mark.word, mark.sizePt)
  return (
    <text
      className="paper-text paper-figure"
      x={mark.xMm}
      y={mark.yMm}
      fontSize={sizeMm}
      fontWeight={mark.weight === 'strong' ? 600 : 400}
      textAnchor={mark.anchor}
    >
      {parts.map((part, i) => (
        <tspan key={i} dy={((parts[i - 1]?.raise ?? 0) - part.raise) * sizeMm} fontSize={part.scale * sizeMm}>
          {part.text}
        </tspan>
      ))}
    </text>
  )
}

function BoxShape({ mark }: { readonly mark: BoxMark }) {
  return (
    <rect
      className="paper-line"
      x={mark.xMm}
      y={mark.yMm}
      width={mark.widthMm}
      height={mark.heightMm}
      strokeWidth={mark.penMm}
      data-purpose={mark.purpose}
    />
  )
}

/** A triangle with a bang: drawn, since the lettering may not have it. */
function SignShape({ mark: { xMm, yMm, sizeMm } }: { readonly mark: SignMark }) {
  const at = (x: number, y: number) => `${xMm + x * sizeMm},${yMm + y * sizeMm}`
  return (
    <g className="paper-sign">
      <polygon
        className="paper-line"
        points={[at(0.5, 0.06), at(0.98, 0.92), at(0.02, 0.92)].join(' ')}
        strokeWidth={0.4}
      />
      <line
        className="paper-line"
        x1={xMm + 0.5 * sizeMm}
        y1={yMm + 0.36 * sizeMm}
        x2={xMm + 0.5 * sizeMm}
        y2={yMm + 0.64 * sizeMm}
        strokeWidth={0.1 * sizeMm}
      />
      <circle className="paper-ink" cx={xMm + 0.5 * sizeMm} cy={yMm + 0.78 * sizeMm} r={0.06 * sizeMm} />
    </g>
  )
}

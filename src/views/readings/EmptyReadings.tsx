import { Link } from 'wouter'
import { READINGS_PAGE_WORDS } from '../../words/measured.ts'
import { useCommission } from '../workshop.ts'

/** Nothing was measured: what would happen, in a small drawing, and where readings come from. */
export function EmptyReadings() {
  const id = useCommission((state) => state.id) ?? ''
  const words = READINGS_PAGE_WORDS
  return (
    <section className="measured-empty">
      <svg className="measured-drawing" viewBox="0 20 440 140" role="img" aria-label={words.emptyPicture}>
        <path className="measured-edge" d="M60 40 H330 M60 40 V138 L330 118 V40" />
        <path className="measured-hidden" d="M60 128 L330 108" />
        <g className="measured-lines">
          <path d="M60 40 H22 M60 128 H22 M28 40 V128 M24 44 L32 36 M24 132 L32 124" />
          <path d="M330 40 H392 M330 118 H392 M386 40 V118 M382 44 L390 36 M382 122 L390 114" />
        </g>
        <g className="measured-words">
          <text x="22" y="84" textAnchor="middle" transform="rotate(-90 22 84)">
            {words.planned}
          </text>
          <text x="408" y="79" textAnchor="middle" transform="rotate(-90 408 79)">
            {words.read}
          </text>
        </g>
      </svg>
      <div className="measured-empty-words">
        <h2>{words.empty}</h2>
        <p>{words.emptyHow}</p>
        <Link className="button button-next" href={`/i/${id}/typeIn`}>
          {words.toTypeIn}
        </Link>
      </div>
    </section>
  )
}

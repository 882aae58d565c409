import { Link } from 'wouter'
import { formatDate } from '../../format/formatDate.ts'
import type { StageDone } from '../../record/facts.ts'
import { AT_HAND_WORDS as words } from '../../words/atHand.ts'
import { TITLE_BLOCK_WORDS } from '../../words/instrument.ts'
import { useCommission } from '../workshop.ts'

interface Props {
  readonly id: string
  readonly number: string
  readonly place: number
  readonly count: number
  readonly title: string
  readonly done: StageDone | null
}

/** One slim line: which instrument, which stage, whether it is safe, and the way back. */
export function BenchHead({ id, number, place, count, title, done }: Props) {
  const save = useCommission((state) => state.save)
  const isElsewhere = useCommission((state) => state.readOnly !== null)
  return (
    <header className="bench-head">
      <Link className="bench-back" href={`/i/${id}`} aria-label={words.back(number)}>
        <svg viewBox="0 0 20 20" aria-hidden="true">
          <path d="M12 4 L6 10 L12 16" />
        </svg>
        {number}
      </Link>
      <h1>{title}</h1>
      {done !== null && <span className="bench-signed">{words.signedOn(formatDate(done.at.slice(0, 10)))}</span>}
      <span className="bench-place">
        <span className="out-of-sight">{words.stageName} </span>
        {words.stage(place, count)}
      </span>
      <output className="bench-saved" data-save={save}>
        {isElsewhere ? TITLE_BLOCK_WORDS.elsewhere : words.saved[save]}
      </output>
    </header>
  )
}

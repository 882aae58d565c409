import { useDeferredValue, useId } from 'react'
import type { Finding } from '../../core/findings.ts'
import type { PlanField } from '../../core/planFields.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { FIELD_WORDS } from '../../words/fields.ts'
import { findingSentence, WEIGHT_WORDS } from '../../words/findings.ts'
import { FINDINGS_WORDS } from '../../words/sheetLeads.ts'
import { FindingMark } from '../FindingMark.tsx'
import { insideOf } from './goToField.ts'
import { useSheetBench } from './sheetBench.ts'

const MOST_WAYS = 3

interface Props {
  readonly fields: readonly PlanField[]
  /** One line that opens, so that a drawing over it stays where it is. */
  readonly isFolded?: boolean
}

/** What does not fit about some fields, each with ways to the fields that mend it. */
export function FindingsHere({ fields, isFolded = false }: Props) {
  // They follow a stroke after the figures have.
  const { findings } = useDeferredValue(useSheetBench().computed)
  const headingId = useId()
  const found = findings.filter((finding) => finding.fields.some((field) => fields.includes(field)))
  if (found.length === 0) return null
  const kinds = [...new Set(found.map(({ code }) => code))].map((code) => found.filter((one) => one.code === code))
  const rows = kinds.map((alike) => <FindingRow key={alike[0]?.code} alike={alike} />)
  if (isFolded)
    return (
      <details className="findings-folded more">
        <summary>
          <FoldedHeading kinds={kinds} />
        </summary>
        <div className="findings">{rows}</div>
      </details>
    )
  return (
    <section className="findings" aria-labelledby={headingId} aria-live="polite">
      <h2 className="out-of-sight" id={headingId}>
        {FINDINGS_WORDS.heading}
      </h2>
      {rows}
    </section>
  )
}

/** All that does not fit, on one line: how grave, and what. */
function FoldedHeading({ kinds }: { readonly kinds: readonly (readonly Finding[])[] }) {
  const { units } = useSheetBench()
  const weight = kinds.flat().some((finding) => finding.weight === 'cannot') ? 'cannot' : 'care'
  const titles = kinds.flatMap(([first]) =>
    first === undefined
      ? []
      : [findingSentence(first, (value, quantity) => figureText(formatQuantity(value, quantity, units))).title],
  )
  return (
    <>
      <span className="finding-folded-mark" data-weight={weight}>
        <FindingMark className="finding-mark" weight={weight} />
      </span>
      <h2 aria-live="polite">
        <span className="finding-weight">{WEIGHT_WORDS[weight]}</span>
        {titles.join('. ')}
      </h2>
    </>
  )
}

/** Of findings that stand together, the first that is about this field says where in it. */
function insideOfAny(alike: readonly Finding[], field: PlanField): string | null {
  const about = alike.find((finding) => finding.fields.includes(field))
  return about === undefined ? null : insideOf(about, field)
}

/** Findings of one kind, as of three rings with one cutter, stand together. */
function FindingRow({ alike }: { readonly alike: readonly Finding[] }) {
  const titleId = useId()
  const { units, goToField } = useSheetBench()
  const texts = alike.map((finding) =>
    findingSentence(finding, (value, quantity) => figureText(formatQuantity(value, quantity, units))),
  )
  const weight = alike.some((finding) => finding.weight === 'cannot') ? 'cannot' : 'care'
  const fields = [...new Set(alike.flatMap((finding) => finding.fields))].slice(0, MOST_WAYS)
  return (
    <article className="finding" data-weight={weight} aria-labelledby={titleId}>
      <FindingMark className="finding-mark" weight={weight} />
      <div>
        <h3 id={titleId}>
          <span className="finding-weight">{WEIGHT_WORDS[weight]}</span>
          {texts[0]?.title}
        </h3>
        {texts.map(({ title, sentence }, i) => (
          <p key={title}>
            {i > 0 && <strong>{title}. </strong>}
            {sentence}
          </p>
        ))}
        <p className="second">{texts[0]?.mend}</p>
      </div>
      <div className="finding-ways">
        {fields.map((field) => (
          <button
            className="button"
            type="button"
            key={field}
            onClick={() => goToField(field, insideOfAny(alike, field))}
          >
            {FINDINGS_WORDS.goTo} {FIELD_WORDS[field].name}
          </button>
        ))}
      </div>
    </article>
  )
}

import type { Finding } from '../../core/findings.ts'
import type { PlanField } from '../../core/planFields.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { OVERVIEW_WORDS } from '../../words/instrument.ts'
import { FIELD_WORDS } from '../../words/fields.ts'
import { findingSentence, WEIGHT_WORDS } from '../../words/findings.ts'
import { FindingMark } from '../FindingMark.tsx'
import { insideOf } from '../sheets/goToField.ts'
import { useShop } from '../workshop.ts'

interface Props {
  readonly findings: readonly Finding[]
  readonly onGo: (field: PlanField, inside: string | null) => void
}

/** What does not fit, one by one, with a way to the first field that mends it. */
export function OverviewFindingList({ findings, onGo }: Props) {
  const units = useShop((state) => state.shop.units)
  return (
    <ul className="overview-findings">
      {findings.map((finding, i) => {
        const { title, sentence } = findingSentence(finding, (value, quantity) =>
          figureText(formatQuantity(value, quantity, units)),
        )
        const [field] = finding.fields
        return (
          <li key={`${finding.code} ${i}`} data-weight={finding.weight}>
            <FindingMark className="overview-mark" weight={finding.weight} />
            <div>
              <h3>
                {WEIGHT_WORDS[finding.weight]}: {title}
              </h3>
              <p>{sentence}</p>
              {field !== undefined && (
                <button
                  className="button button-plain"
                  type="button"
                  onClick={() => onGo(field, insideOf(finding, field))}
                >
                  {OVERVIEW_WORDS.goTo} {FIELD_WORDS[field].name}
                </button>
              )}
            </div>
          </li>
        )
      })}
    </ul>
  )
}

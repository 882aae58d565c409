import { useEffect, useState } from 'react'
import { Link } from 'wouter'
import { aboutNumber } from '../../core/catalogue.ts'
import type { Computed } from '../../core/compute.ts'
import { type NumberKey, readNumbers } from '../../core/numbers.ts'
import { standingOf } from '../../record/standing.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { formatTolerance } from '../../format/formatTolerance.ts'
import { effectiveTolerance } from '../../papers/effectiveTolerance.ts'
import type { CommissionDoc } from '../../record/commission.ts'
import { figuresOfStage, getsBox } from '../../record/patterns/figuresOfStage.ts'
import type { StageFigures as Figures } from '../../record/patterns/stages/stagePattern.ts'
import type { StageKey } from '../../record/patterns/stages.ts'
import { FigureText } from '../../ui/FigureText.tsx'
import { ESTIMATE_MARK, FIGURE_WORDS, SHEET_TITLES, type Sheet } from '../../words/sheets.ts'
import { fetchNumberNames, type SomeNumberNames } from '../../words/someNumberNames.ts'
import { useCommission, useShop } from '../workshop.ts'

interface Props {
  readonly stage: StageKey
  /** What its maker has otherwise than the pattern. */
  readonly own: Partial<Figures> | undefined
  /** The stages of the instrument. */
  readonly present: readonly StageKey[]
  readonly doc: CommissionDoc
  readonly computed: Computed
}

/** The two or three numbers a stage turns on: the first as large as an arm is long; a table of many rows is a way to its sheet. */
export function StageFigures({ stage, own, present, doc, computed }: Props) {
  const units = useShop((state) => state.shop.units)
  const shopTolerances = useShop((state) => state.shop.tolerances)
  const id = useCommission((state) => state.id) ?? ''
  const pattern = figuresOfStage(stage, present, own)
  const keys = pattern.numbers
  // What will be measured comes before what is only looked up.
  const single = keys
    .filter((key) => !key.includes('[]'))
    .toSorted((a, b) => Number(getsBox(pattern, b)) - Number(getsBox(pattern, a)))
    .slice(0, 3)
  const names = useNumberNames(single)
  const tableSheets = [...new Set(keys.filter((key) => key.includes('[]')).map(sheetOfNumber))]
  if (keys.length === 0) return null
  return (
    <>
      <dl className="stage-figures">
        {single.map((key) => {
          const { quantity } = aboutNumber(key)
          const tolerance = effectiveTolerance(key, doc.tolerances, shopTolerances)
          const value = readNumbers(computed.numbers, key)[0] ?? 'none'
          return (
            <div key={key}>
              <dt>
                {names[key] ?? '\u00a0'}
                {standingOf(key, doc.plan) === 'estimate' && ` (${ESTIMATE_MARK})`}
              </dt>
              <dd>
                <FigureText figure={formatQuantity(value, quantity, units)} words={FIGURE_WORDS} />
                {tolerance !== null && (
                  <span className="stage-tolerance">{`\u00b1\u2009${figureText(formatTolerance(tolerance, quantity, units))}`}</span>
                )}
              </dd>
            </div>
          )
        })}
      </dl>
      {tableSheets.length > 0 && (
        <p className="stage-tables">
          {tableSheets.map((sheet) => (
            <Link key={sheet} href={`/i/${id}/${sheet}`}>
              {SHEET_TITLES[sheet]}
            </Link>
          ))}
        </p>
      )}
    </>
  )
}

/** The names of these numbers; none until they have been fetched. */
function useNumberNames(keys: readonly NumberKey[]): SomeNumberNames {
  const [names, setNames] = useState<SomeNumberNames>({})
  const asked = keys.join(' ')
  useEffect(() => {
    let isAsked = true
    const take = async (): Promise<void> => {
      const fetched = await fetchNumberNames(asked.split(' ') as NumberKey[])
      if (isAsked) setNames(fetched)
    }
    if (asked !== '') void take()
    return () => {
      isAsked = false
    }
  }, [asked])
  return names
}

/** The question sheet that answers for a number. */
function sheetOfNumber(key: NumberKey): Sheet {
  const [part = ''] = key.split(/[.[]/u)
  if (/Proud(Outer|Inner)Mm$/u.test(key)) return 'linings'
  switch (part) {
    case 'body':
    case 'pieces':
    case 'readings':
    case 'fit':
    case 'cutaway':
      return 'outline'
    case 'sides':
    case 'blanks':
    case 'rim':
    case 'trebleRim':
    case 'places':
    case 'treblePlaces':
      return 'sides'
    case 'top':
    case 'back':
      return 'domes'
    case 'blocks':
      return 'blocks'
    case 'linings':
    case 'sideBraces':
    case 'trebleBraces':
    case 'caul':
      return 'linings'
    case 'braces':
    case 'braceArch':
    case 'braceCrossings':
    case 'jointStrip':
      return 'bracing'
    case 'edges':
    case 'edgePlaces':
    case 'trebleEdgePlaces':
    case 'edgeStrips':
      return 'edges'
    default:
      return 'rosette'
  }
}

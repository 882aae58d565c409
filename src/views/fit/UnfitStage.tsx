import { useId, useState } from 'react'
import { aboutNumber } from '../../core/catalogue.ts'
import type { UnfitNumber } from '../../core/signedWork.ts'
import { figureText } from '../../format/figure.ts'
import { formatDate } from '../../format/formatDate.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { formatTolerance } from '../../format/formatTolerance.ts'
import type { BuiltFit, StageFit } from '../../state/builtFit.ts'
import { BUILT_FIT_WORDS } from '../../words/builtFit.ts'
import { LIST_WORDS, type NumberListName } from '../../words/names/lists.ts'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { STAGE_TITLES } from '../../words/stageTitles.ts'
import { rowNames } from '../sheets/rowNames.ts'
import { TableScroll } from '../sheets/TableScroll.tsx'
import { useShop } from '../workshop.ts'
import { UnfitActs } from './UnfitActs.tsx'

const words = BUILT_FIT_WORDS
/** Rows that are shown at once: of a rim that no longer fits every station is listed. */
const MOST_ROWS = 8

interface Props {
  readonly fit: BuiltFit
  readonly of: StageFit
}

/** The numbers of one stage that no longer fit, and the three ways on. */
export function UnfitStage({ fit, of }: Props) {
  const titleId = useId()
  const [showsAll, setShowsAll] = useState(false)
  const title = of.stage.own?.title ?? STAGE_TITLES[of.stage.key]
  const hidden = of.numbers.length - MOST_ROWS
  const shown = showsAll ? of.numbers : of.numbers.slice(0, MOST_ROWS)
  return (
    <section className="unfit" aria-labelledby={titleId}>
      <h2 id={titleId}>
        {title} <span className="second small">{words.signedOn(formatDate(of.signed.on))}</span>
      </h2>
      {of.numbers.length > 0 && (
        <TableScroll caption={words.caption(title)}>
          <table className="table unfit-table">
            <thead>
              <tr>
                <th scope="col">{words.columns.number}</th>
                <th scope="col" data-figures="true">
                  {words.columns.built}
                </th>
                <th scope="col" data-figures="true">
                  {words.columns.asked}
                </th>
                <th scope="col" data-figures="true">
                  {words.columns.by}
                </th>
                <th scope="col" data-figures="true">
                  {words.columns.tolerance}
                </th>
              </tr>
            </thead>
            <tbody>
              {shown.map((one) => (
                <UnfitRow key={one.name} one={one} of={of} />
              ))}
            </tbody>
          </table>
        </TableScroll>
      )}
      {hidden > 0 && (
        <button
          className="button button-plain unfit-more"
          type="button"
          aria-expanded={showsAll}
          onClick={() => setShowsAll(!showsAll)}
        >
          {showsAll ? words.fewer : words.more(hidden)}
        </button>
      )}
      {of.gone.map(({ list }) => (
        <p key={list}>{words.gone(LIST_WORDS[list as NumberListName].title)}</p>
      ))}
      <UnfitActs fit={fit} of={of} title={title} />
    </section>
  )
}

function UnfitRow({ one, of }: { readonly one: UnfitNumber; readonly of: StageFit }) {
  const units = useShop((state) => state.shop.units)
  const { quantity } = aboutNumber(one.place.key)
  const off = formatTolerance(Math.abs(one.by), quantity, units)
  return (
    <tr>
      <th scope="row">{nameOf(one, of)}</th>
      <td data-figures="true">
        {figureText(formatQuantity(one.wood, quantity, units))}{' '}
        <span className="second small">{words.from[one.from]}</span>
      </td>
      <td data-figures="true">{figureText(formatQuantity(one.asked, quantity, units))}</td>
      <td data-figures="true" className="unfit-by">
        {one.by < 0 ? '−' : '+'}
        {figureText(off)}
      </td>
      <td data-figures="true">± {figureText(formatTolerance(one.tolerance, quantity, units))}</td>
    </tr>
  )
}

/** A number with the row it stands in, as the rows were called when the stage was signed off. */
function nameOf({ place: { key, row } }: UnfitNumber, { builtThen: { numbers, plan } }: StageFit): string {
  const at = key.indexOf('[]')
  if (at < 0) return NUMBER_NAMES[key]
  const list = key.slice(0, at) as NumberListName
  const name = rowNames(list, row + 1, numbers, plan)[row] ?? String(row + 1)
  const isCounted = /^\d+$/u.test(name)
  return words.at(NUMBER_NAMES[key], isCounted ? `${LIST_WORDS[list].head.toLowerCase()} ${name}` : name.toLowerCase())
}

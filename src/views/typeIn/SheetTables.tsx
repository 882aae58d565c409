import { aboutNumber, type NumberKey } from '../../core/catalogue.ts'
import { figureText } from '../../format/figure.ts'
import { formatQuantity } from '../../format/formatQuantity.ts'
import { formatTolerance } from '../../format/formatTolerance.ts'
import { effectiveTolerance, type Tolerances } from '../../papers/effectiveTolerance.ts'
import type { BoxCell, BoxTable } from '../../papers/stageBoxes.ts'
import { askedOfBox, type ReadingSite } from '../../record/bench/readingOf.ts'
import { FigureText } from '../../ui/FigureText.tsx'
import { TYPE_IN_WORDS } from '../../words/measured.ts'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { FIGURE_WORDS } from '../../words/sheets.ts'
import { TableScroll } from '../sheets/TableScroll.tsx'
import { useShop } from '../workshop.ts'
import { BoxField } from './BoxField.tsx'
import '../sheets/tables.css'

interface Props {
  readonly tables: readonly BoxTable[]
  readonly stageId: string
  readonly site: ReadingSite
  readonly tolerances: Tolerances
}

const words = TYPE_IN_WORDS

/** The tables of the sheet with a field in the place of every box. */
export function SheetTables({ tables, ...shared }: Props) {
  return tables.map((table, i) => <SheetTable key={String(i)} table={table} {...shared} />)
}

type TableProps = Omit<Props, 'tables'> & { readonly table: BoxTable }

function SheetTable({ table, ...shared }: TableProps) {
  const { title, head, columns, rows } = table
  const caption = [title, columns.map(({ name }) => name).join(', ') || head].filter((part) => part !== null).join(': ')
  return (
    <section className="type-in-table" aria-label={caption}>
      {title !== null && <h2>{title}</h2>}
      <TableScroll caption={caption}>
        <table className="table">
          <caption className="out-of-sight">{caption}</caption>
          <thead>
            <tr>
              <th scope="col">{head}</th>
              {(columns.length === 0 ? [{ name: '', number: null }] : columns).map(({ name, number }) => (
                <ColumnHeads
                  key={name}
                  name={name}
                  number={number}
                  boxes={boxesOf(
                    table,
                    columns.findIndex((one) => one.name === name),
                  )}
                  {...shared}
                />
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ name, cells }, i) => (
              <tr key={String(i)}>
                <th scope="row">{name}</th>
                {cells.map((cell, at) =>
                  cell === null ? (
                    <td key={String(at)} colSpan={1 + boxesOf(table, at)}>
                      {FIGURE_WORDS.none}
                    </td>
                  ) : (
                    <Cells
                      key={String(at)}
                      cell={cell}
                      rowName={columns.length === 0 ? '' : rowName(table, name, at)}
                      {...shared}
                    />
                  ),
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </TableScroll>
    </section>
  )
}

/** A row by its name, where that is a count under the head that says of what; of rings it is the column that names the place. */
const rowName = ({ head, columns }: BoxTable, name: string, at: number): string => {
  if (columns[at]?.number === null) return columns[at]?.name ?? ''
  return /^\d/u.test(name) ? `${head} ${name}` : name
}

const boxesOf = ({ rows }: BoxTable, at: number): number =>
  Math.max(1, ...rows.map(({ cells }) => cells[Math.max(at, 0)]?.sides.length ?? 0))

type HeadsProps = Pick<Props, 'tolerances'> & {
  readonly name: string
  readonly number: NumberKey | null
  readonly boxes: number
}

/** Over a number: its name and what is allowed, over the boxes of either half their names. */
function ColumnHeads({ name, number, boxes, tolerances }: HeadsProps) {
  const allowed = useAllowed(tolerances)
  const within = number === null ? '' : allowed(number)
  return (
    <>
      <th scope="col" className="type-in-target">
        {name === '' ? words.target : name}
        {within !== '' && <span className="column-unit">{within}</span>}
      </th>
      {boxes === 2 ? (
        <>
          <th scope="col">{words.bass}</th>
          <th scope="col">{words.treble}</th>
        </>
      ) : (
        <th scope="col">{words.whole}</th>
      )}
    </>
  )
}

type CellProps = Pick<Props, 'stageId' | 'site' | 'tolerances'> & {
  readonly cell: BoxCell
  readonly rowName: string
}

function Cells({ cell, rowName: named, stageId, site, tolerances }: CellProps) {
  const units = useShop((state) => state.shop.units)
  const shopTolerances = useShop((state) => state.shop.tolerances)
  const allowed = useAllowed(tolerances)
  const { number, row, sides } = cell
  const tolerance = effectiveTolerance(number, tolerances, shopTolerances)
  const [first = 'whole'] = sides
  const asked = askedOfBox(site, { number, row, side: first })
  const own = named === '' ? allowed(number) : ''
  return (
    <>
      <td className="type-in-target" data-figures>
        <FigureText figure={formatQuantity(asked, aboutNumber(number).quantity, units)} words={FIGURE_WORDS} />
        {own !== '' && <span className="column-unit">{own}</span>}
      </td>
      {sides.map((side) => (
        <td key={side}>
          <BoxField
            box={{ number, row, side }}
            called={words.box(NUMBER_NAMES[number], named, side === 'whole' ? '' : words[side])}
            stageId={stageId}
            site={site}
            tolerance={tolerance}
          />
        </td>
      ))}
    </>
  )
}

/** What a number may be off, as it is printed; '' where nothing is said. */
function useAllowed(own: Tolerances): (number: NumberKey) => string {
  const units = useShop((state) => state.shop.units)
  const shop = useShop((state) => state.shop.tolerances)
  return (number) => {
    const tolerance = effectiveTolerance(number, own, shop)
    return tolerance === null
      ? ''
      : words.within(figureText(formatTolerance(tolerance, aboutNumber(number).quantity, units)))
  }
}

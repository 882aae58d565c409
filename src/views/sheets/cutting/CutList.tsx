import { useMemo } from 'react'
import type { StockGroup } from '../../../core/wood/stock.ts'
import { printPage } from '../../../device/printPage.ts'
import { todayHere } from '../../../device/today.ts'
import { formatDate } from '../../../format/formatDate.ts'
import { CUTTING_WORDS } from '../../../words/box/cutting.ts'
import { partName, WOOD_WORDS } from '../../../words/wood.ts'
import { FigureRows } from '../FigureRows.tsx'
import { useSheetBench } from '../sheetBench.ts'
import { TableTools } from '../TableTools.tsx'
import { buyingOf, buyingTable, cutListTable, headingOf, partsTable, sumsOf, woodsTable } from './cutTables.ts'

/** What to buy, and every part by the board it is sawn from: what goes on paper. */
export function CutList({ groups }: { readonly groups: readonly StockGroup[] }) {
  const { number, title, plan, units } = useSheetBench()
  const { woods } = plan.cutting
  if (groups.length === 0) return <p>{CUTTING_WORDS.noParts}</p>
  return (
    <div className="cut-list">
      <p className="cut-list-paper">
        <strong>{CUTTING_WORDS.dash(number, title)}</strong>
        <span>{CUTTING_WORDS.printed(formatDate(todayHere()))}</span>
      </p>
      <section aria-label={CUTTING_WORDS.buying}>
        <h2>{CUTTING_WORDS.buying}</h2>
        <FigureRows table={buyingTable(groups, woods, units)} caption={CUTTING_WORDS.buying} />
        <p className="second small">{WOOD_WORDS.boughtNote}</p>
        <TableTools table={() => buyingTable(groups, woods, units)} fileName="buying-list" />
        <h3>{CUTTING_WORDS.byWood}</h3>
        <FigureRows table={woodsTable(groups, woods, units)} caption={CUTTING_WORDS.byWood} />
      </section>
      <section aria-label={CUTTING_WORDS.cutList}>
        <h2>{CUTTING_WORDS.cutList}</h2>
        <p>{CUTTING_WORDS.caution}</p>
        <TableTools table={() => cutListTable(groups, woods)} fileName="cut-list" />
        <div className="commands">
          <button className="button" type="button" onClick={printPage}>
            {CUTTING_WORDS.print}
          </button>
        </div>
      </section>
      {groups.map((group) => (
        <Group key={`${group.role}.${group.material}.${group.quarters}`} group={group} />
      ))}
    </div>
  )
}

/** What comes out of boards of one wood and one thickness. */
function Group({ group }: { readonly group: StockGroup }) {
  const { plan, units } = useSheetBench()
  const heading = headingOf(group, plan.cutting.woods, units)
  const table = useMemo(() => partsTable(group), [group])
  const bookmatched = group.rows.filter(({ part }) => part.isBookmatched)
  return (
    <section className="cut-group" aria-label={heading}>
      <h3>{heading}</h3>
      <FigureRows table={table} caption={heading} />
      {bookmatched.map(({ part }) => (
        <p className="second small" key={part.id}>
          {CUTTING_WORDS.bookmatched(partName(part), WOOD_WORDS.bookmatched)}
        </p>
      ))}
      <p className="second small">{sumsOf(group, units)}</p>
      <p className="cut-buy">{buyingOf(group, units)}</p>
    </section>
  )
}

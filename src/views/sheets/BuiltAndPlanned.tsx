import type { NumberKey } from '../../core/catalogue.ts'
import { readNumbers } from '../../core/numbers.ts'
import { TABLE_WORDS } from '../../words/bodySheets.ts'
import { FROM_READING_WORDS } from '../../words/fromReading.ts'
import { LIST_WORDS, type NumberListName } from '../../words/names/lists.ts'
import { plannedBeside, plannedText } from './planned.ts'
import { rowNames } from './rowNames.ts'
import { useSheetBench } from './sheetBench.ts'

/** In the help of a number that follows a reading: as built and as planned, row by row where it stands in a list. */
export function BuiltAndPlanned({ number }: { readonly number: NumberKey }) {
  const bench = useSheetBench()
  const { computed, builtPlan, units, planned } = bench
  const values = readNumbers(computed.numbers, number)
  const rows = values.flatMap((now, row) => {
    const before = plannedBeside(bench, number, row)
    return before === null ? [] : [{ row, now, before }]
  })
  if (planned === null || rows.length === 0) return null
  const list = number.includes('[]') ? (number.slice(0, number.lastIndexOf('[]')) as NumberListName) : null
  const names = list === null ? [] : rowNames(list, values.length, computed.numbers, builtPlan)
  return (
    <section>
      <h3>{FROM_READING_WORDS.helpHeading}</h3>
      <p>{FROM_READING_WORDS.help}</p>
      <table className="table">
        <thead>
          <tr>
            {list !== null && <th scope="col">{LIST_WORDS[list].head}</th>}
            <th scope="col">{FROM_READING_WORDS.now}</th>
            <th scope="col">{TABLE_WORDS.planned}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map(({ row, now, before }) => (
            <tr key={row}>
              {list !== null && <th scope="row">{names[row]}</th>}
              <td>{plannedText(now, number, units)}</td>
              <td>{plannedText(before, number, units)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <div className="commands">
        <button className="button" type="button" onClick={planned.goToReadings}>
          {FROM_READING_WORDS.toReadings}
        </button>
      </div>
    </section>
  )
}

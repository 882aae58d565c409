import { useMemo } from 'react'
import { formatWorkHours } from '../../format/formatWorkHours.ts'
import { allHours, hoursByPart, stageStates } from '../../record/bench/stageStates.ts'
import { partOfStage, STAGES_PLACE_WORDS, WORK_PARTS } from '../../words/stagesPlace.ts'
import { useCommission } from '../workshop.ts'
import { useOrderBench } from './orderBench.ts'

const words = STAGES_PLACE_WORDS

/** Hours done and likely left, by part of the work. */
export function OrderHours() {
  const { stages, doc } = useOrderBench()
  const facts = useCommission((state) => state.facts)
  const parts = useMemo(() => {
    const found = hoursByPart(stages, stageStates(facts), (id) => partOfStage(doc.stages[id]?.key ?? 'ownWork'))
    return WORK_PARTS.flatMap((part) => found.filter((one) => one.part === part))
  }, [stages, facts, doc.stages])
  const all = allHours(parts)
  const cells = [
    ...parts.map(({ part, spentH, leftH }) => ({ name: words.parts[part], spentH, leftH })),
    { name: words.allParts, ...all },
  ]
  return (
    <div className="order-hours">
      <table className="table">
        <thead>
          <tr>
            <th scope="col">{words.hoursHead}</th>
            {cells.map(({ name }) => (
              <th scope="col" key={name}>
                {name}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {(['spentH', 'leftH'] as const).map((row) => (
            <tr key={row}>
              <th scope="row">{row === 'spentH' ? words.spent : words.left}</th>
              {cells.map((cell) => (
                <td key={cell.name}>{cell[row] > 0 ? words.hours(formatWorkHours(cell[row])) : '–'}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  )
}

import { Link } from 'wouter'
import type { PlanField } from '../../core/planFields.ts'
import type { ShopUnits } from '../../core/quantity.ts'
import type { ModelDifference } from '../../record/modelDifferences.ts'
import { sameJson } from '../../record/path.ts'
import { fieldCalled, MODEL_WORDS } from '../../words/models.ts'
import { SHEET_NAMES } from '../../words/sheetNames.ts'
import { sheetOfField } from '../sheets/sheetOfField.ts'
import { PlanValue } from './PlanValue.tsx'

interface Props {
  readonly id: string
  readonly difference: ModelDifference
  readonly units: ShopUnits
  readonly isLocked: boolean
  readonly onTake: (field: PlanField, from: 'asTaken' | 'today') => void
}

/** One field in which an instrument and its model differ, what each holds, and what can be taken over. */
export function DifferenceRow({ id, difference, units, isLocked, onTake }: Props) {
  const { field, here, asTaken, today } = difference
  const knowsTaken = Object.hasOwn(difference, 'asTaken')
  const knowsToday = Object.hasOwn(difference, 'today')
  const isToday = knowsToday && sameJson(here, today)
  const isTaken = knowsTaken && sameJson(here, asTaken)
  const offersTaken = knowsTaken && !isTaken && !(knowsToday && sameJson(asTaken, today))
  const state = isToday ? 'today' : isTaken ? 'taken' : 'own'
  const name = fieldCalled(field)
  const sheet = sheetOfField(field)
  const cell = { field, units }
  return (
    <tr data-state={state}>
      <th scope="row">
        <span className="difference-name">{name}</span>
        <Link className="difference-sheet second small" href={`/i/${id}/${sheet}`}>
          {SHEET_NAMES[sheet]}
        </Link>
      </th>
      {knowsTaken && (
        <td data-label={MODEL_WORDS.asTaken}>
          <PlanValue {...cell} value={asTaken} beside={[]} />
        </td>
      )}
      {knowsToday && (
        <td data-label={MODEL_WORDS.today}>
          <PlanValue {...cell} value={today} beside={knowsTaken ? [asTaken] : []} />
        </td>
      )}
      <td className="difference-here" data-label={MODEL_WORDS.here}>
        <PlanValue {...cell} value={here} beside={[...(knowsTaken ? [asTaken] : []), ...(knowsToday ? [today] : [])]} />
        <span className="second small">{MODEL_WORDS.states[state]}</span>
      </td>
      <td>
        <span className="commands difference-commands">
          {knowsToday && !isToday && (
            <button
              className="button"
              type="button"
              disabled={isLocked}
              aria-label={MODEL_WORDS.takeTodayOf(name)}
              onClick={() => onTake(field, 'today')}
            >
              {MODEL_WORDS.takeToday}
            </button>
          )}
          {offersTaken && (
            <button
              className="button button-plain"
              type="button"
              disabled={isLocked}
              aria-label={MODEL_WORDS.takeTakenOf(name)}
              onClick={() => onTake(field, 'asTaken')}
            >
              {MODEL_WORDS.takeTaken}
            </button>
          )}
        </span>
      </td>
    </tr>
  )
}

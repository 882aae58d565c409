import { useId, useState } from 'react'
import { aboutNumber, NUMBER_KEYS, type NumberKey } from '../../core/catalogue.ts'
import { setStageDetail } from '../../record/changes/stages.ts'
import { getsBox } from '../../record/patterns/figuresOfStage.ts'
import type { StageInHand } from '../../record/stageInHand.ts'
import { NUMBER_NAMES } from '../../words/numberNames.ts'
import { PART_WORDS } from '../../words/parts.ts'
import { STAGES_PLACE_WORDS } from '../../words/stagesPlace.ts'
import { useWorkshop } from '../workshop.ts'
import { useOrderBench } from './orderBench.ts'

const words = STAGES_PLACE_WORDS
const MOST_FOUND = 12

/** Which numbers belong to a stage, which of them get a box, and a search for more. */
export function NumberPicker({ stage }: { readonly stage: StageInHand }) {
  const { newGesture } = useWorkshop()
  const { change, isLocked } = useOrderBench()
  const [wanted, setWanted] = useState('')
  const searchId = useId()
  const { id, numbers, lookUp } = stage
  const found = search(wanted, numbers)
  const set = (keys: readonly NumberKey[]): void => change(setStageDetail(id, 'numbers', [...keys]))
  const remove = (key: NumberKey): void => {
    const gesture = newGesture()
    const rest = numbers.filter((one) => one !== key)
    change(setStageDetail(id, 'numbers', rest), gesture)
    if (lookUp.includes(key))
      change(
        setStageDetail(
          id,
          'lookUp',
          lookUp.filter((one) => one !== key),
        ),
        gesture,
      )
  }
  const box = (key: NumberKey, gets: boolean): void =>
    change(setStageDetail(id, 'lookUp', gets ? lookUp.filter((one) => one !== key) : [...lookUp, key]))
  return (
    <>
      {numbers.length === 0 && <p className="second">{words.noNumbers}</p>}
      <ul className="detail-numbers">
        {numbers.map((key) => (
          <li key={key}>
            <span>
              {NUMBER_NAMES[key]} <span className="second small">{partOf(key)}</span>
            </span>
            {aboutNumber(key).measured === null ? (
              <span className="second">{words.lookedUp}</span>
            ) : (
              <label className="check">
                <input
                  type="checkbox"
                  checked={getsBox(stage, key)}
                  disabled={isLocked}
                  onChange={({ target }) => box(key, target.checked)}
                />
                <span>
                  {words.getsBox}
                  <span className="out-of-sight">: {NUMBER_NAMES[key]}</span>
                </span>
              </label>
            )}
            <button
              className="button button-plain"
              type="button"
              disabled={isLocked}
              aria-label={words.removeNumber(NUMBER_NAMES[key])}
              onClick={() => remove(key)}
            >
              {words.removeShort}
            </button>
          </li>
        ))}
      </ul>
      <div className="field field-text">
        <label className="field-label" htmlFor={searchId}>
          {words.findNumber}
        </label>
        <input
          className="field-input"
          id={searchId}
          value={wanted}
          autoComplete="off"
          disabled={isLocked}
          onChange={({ target }) => setWanted(target.value)}
        />
      </div>
      {wanted.trim() !== '' && found.length === 0 && <p className="second">{words.noSuchNumber}</p>}
      <ul className="detail-found">
        {found.map((key) => (
          <li key={key}>
            <button
              className="button"
              type="button"
              disabled={isLocked}
              aria-label={`${words.addNumber(NUMBER_NAMES[key])} (${partOf(key)})`}
              onClick={() => {
                set([...numbers, key])
                setWanted('')
              }}
            >
              {NUMBER_NAMES[key]} <span className="second small">{partOf(key)}</span>
            </button>
          </li>
        ))}
      </ul>
    </>
  )
}

const PARTS: Readonly<Partial<Record<string, string>>> = PART_WORDS
const partOf = (key: NumberKey): string => PARTS[key.split(/[.[]/u)[0] ?? ''] ?? ''

/** Numbers whose name or part has every word that was typed. */
function search(wanted: string, taken: readonly NumberKey[]): readonly NumberKey[] {
  const asked = wanted.toLowerCase().split(/\s+/u).filter(Boolean)
  if (asked.length === 0) return []
  const fits = (key: NumberKey): boolean => {
    const text = `${NUMBER_NAMES[key]} ${partOf(key)}`.toLowerCase()
    return !taken.includes(key) && asked.every((word) => text.includes(word))
  }
  return NUMBER_KEYS.filter(fits).slice(0, MOST_FOUND)
}

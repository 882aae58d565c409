import { useId, useState } from 'react'
import type { ShopUnits } from '../core/quantity.ts'
import { formatMoment } from '../format/formatMoment.ts'
import type { CommissionDoc } from '../record/commission.ts'
import { recentGestures } from '../record/recentGestures.ts'
import type { GestureLabel } from '../record/undo.ts'
import { changesSinceRevision, type SinceRevision } from '../record/revision.ts'
import { useCommission, useShop, useWorkshop } from '../views/workshop.ts'
import { valueText } from '../views/valueText.ts'
import { REVISION_WORDS } from '../words/instrument.ts'
import { placeName } from '../words/places.ts'
import { STAGE_TITLES } from '../words/stageTitles.ts'
import { gestureName, placeHere } from './gestureNames.ts'
import './revision.css'

const SHOWN = 8

/** Undo and redo, the last changes, and what has changed since a sheet was printed. */
export function RevisionContent() {
  const { commission } = useWorkshop()
  const undo = useCommission((state) => state.undo)
  const redo = useCommission((state) => state.redo)
  const isLocked = useCommission((state) => state.readOnly !== null)
  const changes = useCommission((state) => state.changes)
  const facts = useCommission((state) => state.facts)
  const doc = useCommission((state) => state.record?.doc ?? null)
  const units = useShop((state) => state.shop.units)
  const stageName = (id: string): string => {
    const stage = doc?.stages[id]
    return stage === undefined ? placeName('facts') : (stage.own?.title ?? STAGE_TITLES[stage.key])
  }
  const recent = recentGestures(changes, facts, SHOWN)
  const whatOf = (label: GestureLabel): string => {
    const known = recent.find((one) => one.gesture === label.gesture)
    return known === undefined
      ? gestureName(label, changes)
      : gestureName(known, changes, known.stageIds.map(stageName))
  }
  return (
    <>
      <div className="commands">
        <button className="button" type="button" disabled={isLocked || undo === null} onClick={() => commission.undo()}>
          {REVISION_WORDS.undo}
          {undo !== null && `: ${whatOf(undo)}`}
        </button>
        <button className="button" type="button" disabled={isLocked || redo === null} onClick={() => commission.redo()}>
          {REVISION_WORDS.redo}
          {redo !== null && `: ${whatOf(redo)}`}
        </button>
      </div>
      {doc !== null && <SincePaper doc={doc} units={units} />}
      <h3>{REVISION_WORDS.history}</h3>
      <ol className="revision-list">
        {recent.map((one) => (
          <li key={one.gesture}>
            <span>
              {gestureName(one, changes, one.stageIds.map(stageName))}
              {one.undoes && ` (${REVISION_WORDS.takenBack})`}
            </span>
            <span className="second small">{formatMoment(one.at)}</span>
          </li>
        ))}
      </ol>
    </>
  )
}

function SincePaper({ doc, units }: { readonly doc: CommissionDoc; readonly units: ShopUnits }) {
  const inputId = useId()
  const hintId = useId()
  const changes = useCommission((state) => state.changes)
  const [code, setCode] = useState('')
  const isWhole = code.replaceAll(/[\s-]/gu, '').length >= 6
  return (
    <div className="field">
      <label className="field-label" htmlFor={inputId}>
        {REVISION_WORDS.since}
      </label>
      <input
        className="field-input revision-code"
        id={inputId}
        size={10}
        value={code}
        autoComplete="off"
        autoCapitalize="characters"
        spellCheck={false}
        aria-describedby={hintId}
        onChange={(event) => setCode(event.target.value)}
      />
      <p className="field-hint" id={hintId}>
        {REVISION_WORDS.sinceHint}
      </p>
      <output className="revision-answer">
        {isWhole && <Answer since={changesSinceRevision(code, doc, changes)} units={units} />}
      </output>
    </div>
  )
}

function Answer({ since, units }: { readonly since: SinceRevision; readonly units: ShopUnits }) {
  if (since.kind === 'unknown') return <p>{REVISION_WORDS.unknown}</p>
  if (since.kind === 'unchanged') return <p>{REVISION_WORDS.unchanged}</p>
  return (
    <>
      <p>{REVISION_WORDS.changed(formatMoment(since.stoodAt))}</p>
      <ul className="revision-list">
        {since.differences.map(({ field, before, now }) => (
          <li key={field}>
            <span>{placeHere(field)}</span>
            <span>{REVISION_WORDS.wasNow(valueText(field, before, units), valueText(field, now, units))}</span>
          </li>
        ))}
      </ul>
    </>
  )
}

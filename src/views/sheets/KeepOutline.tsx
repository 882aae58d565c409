import { useState } from 'react'
import { addFixture, type NewFixture } from '../../record/changes/fixtures.ts'
import { FIXTURE_RANGES, MOST_FIXTURES } from '../../record/fields.ts'
import type { FieldBinding } from '../../ui/fieldBinding.ts'
import { LengthField, type LengthValue } from '../../ui/LengthField.tsx'
import { TextField } from '../../ui/TextField.tsx'
import { FIXTURE_WORDS, fixtureName, MOULD_WORDS } from '../../words/fixtures.ts'
import { useSheetBench } from './sheetBench.ts'

/** Writes this outline, as it is now, down among the shop's fixtures: as a mould, or as a form that bends stand over. */
export function KeepOutline() {
  const { number, plan, units, fixtures, editShop, newId } = useSheetBench()
  const [name, setName] = useState(number)
  const [insetMm, setInsetMm] = useState<number>(plan.rim.sideThicknessMm)
  const [keptName, setKeptName] = useState<string | null>(null)
  const isFull = Object.keys(fixtures).length >= MOST_FIXTURES
  const keep = (fixture: NewFixture): void => {
    if (editShop === null) return
    editShop(addFixture(newId(), fixture), newId())
    setKeptName(fixtureName(fixture.name, fixture.kind))
  }
  const { outline } = plan
  return (
    <details className="more">
      <summary>{MOULD_WORDS.keepHeading}</summary>
      <div className="mould-keep">
        <p className="second">{MOULD_WORDS.keepLead}</p>
        <TextField label={MOULD_WORDS.name} binding={held('keepOutline.name', name, setName)} most={200} />
        <button
          className="button"
          type="button"
          disabled={editShop === null || isFull}
          onClick={() => keep({ kind: 'mould', name, outline })}
        >
          {MOULD_WORDS.keepMould}
        </button>
        <LengthField
          label={MOULD_WORDS.inset}
          binding={held<LengthValue>('keepOutline.insetMm', insetMm, (value) => {
            if (typeof value === 'number') setInsetMm(value)
          })}
          range={FIXTURE_RANGES.insetMm}
          units={units}
        />
        <button
          className="button"
          type="button"
          disabled={editShop === null || isFull}
          onClick={() => keep({ kind: 'bendingForm', name, outline, insetMm })}
        >
          {MOULD_WORDS.keepForm}
        </button>
        {isFull && <p className="second small">{FIXTURE_WORDS.full}</p>}
        <output>{keptName !== null && MOULD_WORDS.kept(keptName)}</output>
      </div>
    </details>
  )
}

/** A field that is written down nowhere until its command is given. */
const held = <Value,>(name: string, value: Value, take: (value: Value) => void): FieldBinding<Value> => ({
  name,
  value,
  draft: null,
  readOnly: false,
  begin: () => undefined,
  end: () => undefined,
  take,
  keepDraft: () => undefined,
  dropDraft: () => undefined,
})

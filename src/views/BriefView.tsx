import type { CommissionDoc } from '../record/commission.ts'
import { FAMILIES } from '../record/family.ts'
import { ChoiceField } from '../ui/ChoiceField.tsx'
import { DateField } from '../ui/DateField.tsx'
import { TextField } from '../ui/TextField.tsx'
import { BRIEF_SCREEN_WORDS, FAMILY_WORDS } from '../words/instrument.ts'
import { BRIEF_WORDS, placeName } from '../words/places.ts'
import { useBinding } from './useBinding.ts'
import './brief.css'

/** What was agreed with the client. */
export function BriefView() {
  const family = useBinding<CommissionDoc['family']>('family')
  return (
    <>
      <header className="view-head">
        <h1>{BRIEF_SCREEN_WORDS.title}</h1>
        <p className="second">{BRIEF_SCREEN_WORDS.lead}</p>
      </header>
      <div className="brief">
        <div className="brief-column">
          <Line field="number" label={placeName('number')} most={40} />
          <Line field="title" label={placeName('title')} most={200} />
          <ChoiceField
            label={BRIEF_SCREEN_WORDS.family}
            binding={family}
            choices={FAMILIES.map((value) => ({ value, label: FAMILY_WORDS[value] }))}
          />
          <Line field="brief.client" label={`${BRIEF_WORDS.client} (${BRIEF_SCREEN_WORDS.forStock})`} most={200} />
          <Line field="brief.contact" label={BRIEF_WORDS.contact} most={200} />
          <div className="brief-dates">
            <Day field="brief.orderedOn" label={BRIEF_WORDS.orderedOn} />
            <Day field="brief.promisedOn" label={BRIEF_WORDS.promisedOn} />
          </div>
        </div>
        <div className="brief-column">
          <Line field="brief.wishes" label={BRIEF_WORDS.wishes} most={20000} lines={7} />
          <Line field="brief.notes" label={BRIEF_WORDS.notes} most={20000} lines={9} />
        </div>
      </div>
    </>
  )
}

interface LineProps {
  readonly field: string
  readonly label: string
  readonly most: number
  readonly lines?: number
}

function Line({ field, label, most, lines }: LineProps) {
  const binding = useBinding<string>(field)
  return <TextField label={label} binding={binding} most={most} {...(lines === undefined ? {} : { lines })} />
}

function Day({ field, label }: { readonly field: string; readonly label: string }) {
  const binding = useBinding<string | null>(field)
  return <DateField label={label} binding={binding} />
}

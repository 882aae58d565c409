import { BRACE_SIDES, BRACE_STOPS, BRACE_TAPERS, type BraceEndPlan } from '../../../core/boxPlan.ts'
import { BRACE_END_RANGES } from '../../../record/boxFields.ts'
import { changeBraceEnd } from '../../../record/changes/braces.ts'
import { ChoiceField } from '../../../ui/ChoiceField.tsx'
import { LengthField, type LengthValue } from '../../../ui/LengthField.tsx'
import { BRACE_SIDE_WORDS, BRACE_STOPS_WORDS, BRACE_TAPER_WORDS, BRACING_WORDS } from '../../../words/box/bracing.ts'
import { BRACE_END_WORDS } from '../../../words/fields/box.ts'
import { useSheetBench } from '../sheetBench.ts'
import { useSheetField } from '../useSheetField.ts'
import type { NamedBrace } from './braceNames.ts'
import { SelectField } from '../../../ui/SelectField.tsx'

const STOPS = BRACE_STOPS.map((value) => ({ value, label: BRACE_STOPS_WORDS[value] }))
const SIDES = BRACE_SIDES.map((value) => ({ value, label: BRACE_SIDE_WORDS[value] }))
const TAPERS = BRACE_TAPERS.map((value) => ({ value, label: BRACE_TAPER_WORDS[value] }))

type EndLength = 'xMm' | 'yMm' | 'letInMm' | 'taperMm' | 'endHeightMm'

interface Props {
  readonly chosen: NamedBrace
  readonly end: 'from' | 'to'
  readonly others: readonly NamedBrace[]
}

/** Where a brace ends, and how its height runs out there. */
export function BraceEndFields({ chosen, end, others }: Props) {
  const { units } = useSheetBench()
  const { id, brace } = chosen
  const at = brace[end]
  const name = (field: keyof BraceEndPlan) => `plan.bracing.braces.${id}.${end}.${field}`
  const label = (field: keyof BraceEndPlan) => BRACE_END_WORDS[field].name
  const change = (values: Partial<BraceEndPlan>) => changeBraceEnd(id, end, values)
  const stops = useSheetField<BraceEndPlan['stops']>(name('stops'), at.stops, (value) => change({ stops: value }))
  const side = useSheetField<BraceEndPlan['side']>(name('side'), at.side, (value) => change({ side: value }))
  const other = useSheetField<string>(name('braceId'), at.braceId ?? '', (value) =>
    change({ braceId: value === '' ? null : value }),
  )
  const taper = useSheetField<BraceEndPlan['taper']>(name('taper'), at.taper, (value) => change({ taper: value }))
  const atRim = at.stops === 'rimAt' || at.stops === 'rimBeyond'
  const length = (field: EndLength) => <EndLengthField chosen={chosen} end={end} field={field} />
  return (
    <fieldset className="piece brace-end">
      <legend>{BRACING_WORDS[end]}</legend>
      <div className="piece-values" data-long={units.bodyLength === 'fractionalInch'}>
        <SelectField label={label('stops')} binding={stops} choices={STOPS} />
        {at.stops === 'rimAt' && <ChoiceField label={label('side')} binding={side} choices={SIDES} />}
        {at.stops === 'brace' && (
          <SelectField
            label={label('braceId')}
            binding={other}
            choices={[
              { value: '', label: BRACING_WORDS.noneChosen },
              ...others.map((one) => ({ value: one.id, label: one.name })),
            ]}
          />
        )}
        {length('xMm')}
        {at.stops !== 'rimAt' && length('yMm')}
        {atRim && length('letInMm')}
        <ChoiceField label={label('taper')} binding={taper} choices={TAPERS} />
        {at.taper !== 'none' && length('taperMm')}
        {at.taper !== 'none' && length('endHeightMm')}
      </div>
      {at.stops !== 'rimAt' && <p className="second small">{BRACING_WORDS.acrossNote}</p>}
    </fieldset>
  )
}

interface LengthProps {
  readonly chosen: NamedBrace
  readonly end: 'from' | 'to'
  readonly field: EndLength
}

/** One length of an end. */
function EndLengthField({ chosen: { id, brace }, end, field }: LengthProps) {
  const { units } = useSheetBench()
  const now = brace[end][field]
  const binding = useSheetField<LengthValue>(`plan.bracing.braces.${id}.${end}.${field}`, now, (value) =>
    changeBraceEnd(id, end, { [field]: typeof value === 'number' ? value : now }),
  )
  return (
    <LengthField label={BRACE_END_WORDS[field].name} binding={binding} range={BRACE_END_RANGES[field]} units={units} />
  )
}

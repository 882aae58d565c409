import { BRACE_KINDS, BRACE_UNDERSIDES, type BracePlan } from '../../../core/boxPlan.ts'
import { BRACE_RANGES } from '../../../record/boxFields.ts'
import { changeBrace } from '../../../record/changes/braces.ts'
import { ChoiceField } from '../../../ui/ChoiceField.tsx'
import { LengthField, type LengthValue } from '../../../ui/LengthField.tsx'
import { BRACE_KIND_WORDS, BRACE_UNDERSIDE_WORDS, BRACING_WORDS } from '../../../words/box/bracing.ts'
import { BRACE_WORDS } from '../../../words/fields/box.ts'
import { useSheetBench } from '../sheetBench.ts'
import { useSheetField } from '../useSheetField.ts'
import { BraceEndFields } from './BraceEndFields.tsx'
import type { NamedBrace } from './braceNames.ts'
import { SelectField } from '../../../ui/SelectField.tsx'

const KINDS = BRACE_KINDS.map((value) => ({ value, label: BRACE_KIND_WORDS[value] }))
const UNDERSIDES = BRACE_UNDERSIDES.map((value) => ({ value, label: BRACE_UNDERSIDE_WORDS[value] }))

interface Props {
  readonly chosen: NamedBrace
  readonly others: readonly NamedBrace[]
}

/** One brace: its section, its gluing face, its two ends. */
export function BraceFields({ chosen, others }: Props) {
  const bench = useSheetBench()
  const { units } = bench
  const { id, brace } = chosen
  const name = (field: keyof BracePlan) => `plan.bracing.braces.${id}.${field}`
  const kind = useSheetField<BracePlan['kind']>(name('kind'), brace.kind, (value) => changeBrace(id, { kind: value }))
  const underside = useSheetField<BracePlan['underside']>(name('underside'), brace.underside, (value) =>
    changeBrace(id, { underside: value }),
  )
  const check = (field: 'twin' | 'lapped', text: string) => (
    <label className="check" data-field={name(field)}>
      <input
        type="checkbox"
        checked={brace[field]}
        disabled={bench.readOnly}
        onChange={(event) => bench.edit(changeBrace(id, { [field]: event.target.checked }), bench.newId())}
      />
      <span>{text}</span>
    </label>
  )
  return (
    <>
      <div className="piece-values" data-long={units.bodyLength === 'fractionalInch'}>
        <SelectField label={BRACE_WORDS.kind.name} binding={kind} choices={KINDS} />
        <BraceLengthField chosen={chosen} field="widthMm" />
        <BraceLengthField chosen={chosen} field="heightMm" />
        <ChoiceField label={BRACE_WORDS.underside.name} binding={underside} choices={UNDERSIDES} />
        {brace.underside === 'own' && <BraceLengthField chosen={chosen} field="archRadiusMm" />}
        {check('twin', BRACING_WORDS.twin)}
        {check('lapped', BRACING_WORDS.lapped)}
      </div>
      <BraceEndFields key={`${id} from`} chosen={chosen} end="from" others={others} />
      <BraceEndFields key={`${id} to`} chosen={chosen} end="to" others={others} />
    </>
  )
}

interface LengthProps {
  readonly chosen: NamedBrace
  readonly field: 'widthMm' | 'heightMm' | 'archRadiusMm'
}

/** One length of a brace. */
function BraceLengthField({ chosen: { id, brace }, field }: LengthProps) {
  const { units } = useSheetBench()
  const now = brace[field]
  const binding = useSheetField<LengthValue>(`plan.bracing.braces.${id}.${field}`, now, (value) =>
    changeBrace(id, { [field]: typeof value === 'number' ? value : now }),
  )
  return <LengthField label={BRACE_WORDS[field].name} binding={binding} range={BRACE_RANGES[field]} units={units} />
}

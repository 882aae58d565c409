import { useMemo, useState } from 'react'
import type { UnitChoice } from '../../files/drawingLines.ts'
import type { OpenedDrawing } from '../../files/openDrawing.ts'
import {
  DRAWING_RANGES,
  type DrawingChoice,
  readLines,
  type TakenOutline,
  takeOutline,
} from '../../files/takeOutline.ts'
import { setDrawnPath } from '../../record/changes/outline.ts'
import { FIELDS } from '../../record/fields.ts'
import { Dialog } from '../../ui/Dialog.tsx'
import type { FieldBinding } from '../../ui/fieldBinding.ts'
import { LengthField, type LengthRange, type LengthValue } from '../../ui/LengthField.tsx'
import { DRAWN_PATH_WORDS, TAKE_PROBLEM } from '../../words/drawnPath.ts'
import { DrawingDone, OutlineFound } from './DrawingFound.tsx'
import { LineChoice } from './LineChoice.tsx'
import { useSheetBench } from './sheetBench.ts'
import { Switch } from '../../ui/Switch.tsx'

interface Props {
  readonly drawing: OpenedDrawing
  readonly onClose: () => void
}

type Choice = Omit<DrawingChoice, 'unit'> & { readonly unit: UnitChoice | 'unsaid' }

const STARTING: Omit<Choice, 'unit' | 'bodyLengthMm'> = {
  line: null,
  end: 'asFound',
  // Seen from the front with the neck to the right, as drawings of bodies mostly are, the treble side lies below.
  treble: 'swapped',
  axis: 'found',
  axisAtMm: null,
  symmetry: null,
  readToMm: 0.2,
}
const STARTING_LENGTH_MM = 490

/** Everything that is asked of an opened drawing, on one page, and the outline it gives: nothing changes before it is taken. */
export function DrawingDialog({ drawing, onClose }: Props) {
  const { edit, newId, readOnly, computed } = useSheetBench()
  const { file, fileName } = drawing
  const { lengthMm } = computed.numbers.body
  const [choice, setChoice] = useState<Choice>({
    ...STARTING,
    unit: file.unit === null ? 'unsaid' : 'asFile',
    bodyLengthMm: typeof lengthMm === 'number' ? lengthMm : STARTING_LENGTH_MM,
  })
  const choose = (part: Partial<Choice>) => setChoice((before) => ({ ...before, ...part }))
  const { unit, bodyLengthMm, line, end, treble, axis, axisAtMm, symmetry, readToMm } = choice
  const read = useMemo(
    () => (unit === 'unsaid' ? null : readLines(drawing, { unit, bodyLengthMm, line })),
    [drawing, unit, bodyLengthMm, line],
  )
  const result = useMemo(
    () =>
      read === null
        ? null
        : takeOutline(read.line, { end, treble, axis, axisAtMm, symmetry, readToMm: STARTING.readToMm }, fileName),
    [read, end, treble, axis, axisAtMm, symmetry, fileName],
  )
  const taken = result?.ok === true ? result.value : null

  const take = (): void => {
    if (taken === null) return
    edit(setDrawnPath({ ...taken.plan, readToMm }), newId())
    onClose()
  }

  return (
    <Dialog title={DRAWN_PATH_WORDS.title(fileName)} onClose={onClose}>
      <div className="dialog-body drawing-dialog">
        <UnitQuestion drawing={drawing} choice={choice} choose={choose} />
        {read !== null && (
          <>
            <LineChoice read={read} onChoose={(key) => choose({ line: key })} />
            {result?.ok === false && (
              <p role="alert" className="field-problem">
                {TAKE_PROBLEM[result.problem]}
              </p>
            )}
            {taken !== null && <OutlineFound taken={taken} />}
            <ReadingQuestions taken={taken} choice={choice} choose={choose} />
            <DrawingDone healed={read.healed} outline={taken?.outline ?? null} leftOut={file.leftOut} />
          </>
        )}
        {readOnly && <p>{DRAWN_PATH_WORDS.readOnly}</p>}
        {taken !== null && (
          <div className="commands">
            <button className="button button-next" type="button" disabled={readOnly} onClick={take}>
              {DRAWN_PATH_WORDS.take}
            </button>
          </div>
        )}
      </div>
    </Dialog>
  )
}

interface Questions {
  readonly choice: Choice
  readonly choose: (part: Partial<Choice>) => void
}

const choicesOf = <Name extends string>(words: Readonly<Record<Name, string>>) =>
  (Object.keys(words) as Name[]).map((value) => ({ value, label: words[value] }))

function UnitQuestion({ drawing, choice, choose }: Questions & { readonly drawing: OpenedDrawing }) {
  const { unit: said } = drawing.file
  const { units } = DRAWN_PATH_WORDS
  const choices: readonly { readonly value: Choice['unit']; readonly label: string }[] =
    said === null
      ? choicesOf(units)
      : [
          { value: 'asFile', label: DRAWN_PATH_WORDS.unitSaid(said) },
          { value: 'byLength', label: units.byLength },
        ]
  return (
    <section className="sheet-fields">
      {said === null && <p>{DRAWN_PATH_WORDS.unitAsked}</p>}
      <Switch
        label={DRAWN_PATH_WORDS.unit}
        value={choice.unit}
        choices={choices}
        onChoose={(unit) => choose({ unit })}
      />
      {choice.unit === 'byLength' && (
        <Length
          label={DRAWN_PATH_WORDS.howLong}
          name="drawing.bodyLengthMm"
          value={choice.bodyLengthMm}
          range={DRAWING_RANGES.bodyLengthMm}
          take={(value) => typeof value === 'number' && choose({ bodyLengthMm: value })}
        />
      )}
    </section>
  )
}

function ReadingQuestions({ taken, choice, choose }: Questions & { readonly taken: TakenOutline | null }) {
  const isHalf = taken?.outline.drawnAs === 'half'
  const alongOrUp = choice.axis !== 'found'
  return (
    <section className="sheet-fields">
      <Switch
        label={DRAWN_PATH_WORDS.end}
        value={choice.end}
        choices={choicesOf(DRAWN_PATH_WORDS.ends)}
        onChoose={(end) => choose({ end })}
      />
      {!isHalf && (
        <>
          <Switch
            label={DRAWN_PATH_WORDS.axis}
            value={choice.axis}
            choices={choicesOf(DRAWN_PATH_WORDS.axes)}
            onChoose={(axis) => choose({ axis, axisAtMm: null })}
          />
          {alongOrUp && (
            <Length
              key={choice.axis}
              label={DRAWN_PATH_WORDS.axisAt}
              hint={DRAWN_PATH_WORDS.axisAtHint}
              name="drawing.axisAtMm"
              value={choice.axisAtMm}
              range={DRAWING_RANGES.axisAtMm}
              take={(value) => value !== 'flat' && choose({ axisAtMm: value })}
            />
          )}
        </>
      )}
      {taken?.sidesDiffer === true && (
        <>
          <Switch
            label={DRAWN_PATH_WORDS.treble}
            value={choice.treble}
            choices={choicesOf(DRAWN_PATH_WORDS.trebles)}
            onChoose={(treble) => choose({ treble })}
          />
          <Switch
            label={DRAWN_PATH_WORDS.symmetry}
            value={taken.symmetry}
            choices={choicesOf(DRAWN_PATH_WORDS.symmetries)}
            onChoose={(symmetry) => choose({ symmetry })}
          />
        </>
      )}
      <Length
        label={DRAWN_PATH_WORDS.readTo}
        hint={DRAWN_PATH_WORDS.readToHint}
        name="drawing.readToMm"
        value={choice.readToMm}
        range={FIELDS['outline.halfWidths.readToMm']}
        take={(value) => typeof value === 'number' && choose({ readToMm: value })}
      />
    </section>
  )
}

interface LengthProps {
  readonly label: string
  readonly hint?: string
  readonly name: string
  readonly value: LengthValue
  readonly range: LengthRange
  readonly take: (value: LengthValue) => void
}

/** A length that is no part of the record: it lives as long as the dialog. */
function Length({ label, hint, name, value, range, take }: LengthProps) {
  const { units } = useSheetBench()
  const nothing = () => undefined
  const binding: FieldBinding<LengthValue> = {
    name,
    value,
    draft: null,
    readOnly: false,
    begin: nothing,
    end: nothing,
    take,
    keepDraft: nothing,
    dropDraft: nothing,
  }
  return (
    <div>
      <LengthField label={label} binding={binding} range={range} units={units} />
      {hint !== undefined && <p className="second small">{hint}</p>}
    </div>
  )
}

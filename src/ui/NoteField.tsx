import { formatNote, parseNote } from '../format/formatNote.ts'
import { NOTE_WORDS } from '../words/fieldProblem.ts'
import type { CountRange } from './CountField.tsx'
import type { FieldBinding } from './fieldBinding.ts'
import { TypedField } from './TypedField.tsx'
import { type Reading, useTypedText } from './useTypedText.ts'

interface Props {
  readonly label: string
  /** By MIDI's count. */
  readonly binding: FieldBinding<number>
  readonly range: CountRange
}

/** A note as a maker types it: E2, F#3, Bb2. */
export function NoteField({ label, binding, range }: Props) {
  const allowed = `${formatNote(range.min)} – ${formatNote(range.max)}`
  const read = (text: string): Reading<number> => {
    const note = parseNote(text)
    if (note === null || note < range.min || note > range.max)
      return { ok: false, sentence: NOTE_WORDS.problem(label, allowed), spellings: null }
    return { ok: true, value: note }
  }
  const typed = useTypedText<number>(binding, read, formatNote)
  return (
    <TypedField label={label} name={binding.name} typed={typed} unit="" understood={null} range={allowed} width={4} />
  )
}

import { type ChangeEvent, type KeyboardEvent, useEffect, useId, useRef, useState } from 'react'
import type { FieldBinding } from './fieldBinding.ts'

/** What a field makes of a text: a value, or a sentence saying why not, with the two spellings where it could mean two things. */
export type Reading<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly sentence: string; readonly spellings: readonly [string, string] | null }

export interface TypedText<Value> {
  readonly id: string
  readonly text: string
  /** The text is being typed or could not be taken; false: the field shows what is stored. */
  readonly isTyped: boolean
  readonly isFocused: boolean
  /** What the text comes to; null while the stored value is shown. */
  readonly reading: Reading<Value> | null
  readonly type: (text: string) => void
  readonly forget: () => void
  readonly inputProps: {
    readonly id: string
    readonly value: string
    readonly readOnly: boolean
    readonly onFocus: () => void
    readonly onBlur: () => void
    readonly onChange: (event: ChangeEvent<HTMLInputElement | HTMLTextAreaElement>) => void
    readonly onKeyDown: (event: KeyboardEvent<HTMLInputElement | HTMLTextAreaElement>) => void
  }
}

/**
 * Text typed into a field: read at every keystroke; what can be taken goes to the record at once, what cannot stays as typed and is
 * kept as a draft. Leaving the field with a taken text shows the stored value again; Escape puts back what stood there before.
 */
export function useTypedText<Value>(
  binding: FieldBinding<Value>,
  read: (text: string) => Reading<Value>,
  write: (value: Value) => string,
  entersLines = false,
): TypedText<Value> {
  const id = useId()
  const [typed, setTyped] = useState<string | null>(binding.draft)
  const [isFocused, setFocused] = useState(false)
  const [ours, setOurs] = useState(binding.value)
  const atFocus = useRef<Value>(binding.value)

  // A draft that was read from storage after the field first stood; a value that was set elsewhere, as by undo.
  const [knownDraft, setKnownDraft] = useState(binding.draft)
  if (binding.draft !== knownDraft) {
    setKnownDraft(binding.draft)
    if (typed === null && binding.draft !== null && !isFocused) setTyped(binding.draft)
  }
  if (!sameValue(binding.value, ours)) {
    setOurs(binding.value)
    if (typed !== null && read(typed).ok) setTyped(null)
  }

  const reading = typed === null ? null : read(typed)

  // A tab that was closed mid-word may have kept the text and not yet the value: the text goes in when the field comes back.
  // A field that is left by leaving its sheet has put its value in, so a text that was taken is done with.
  const atEnds = useRef({ binding, read, typed })
  useEffect(() => {
    atEnds.current = { binding, read, typed }
  })
  useEffect(() => {
    const start = atEnds.current
    const left = start.typed === null ? null : start.read(start.typed)
    if (left?.ok && !start.binding.readOnly && !sameValue(left.value, start.binding.value)) {
      start.binding.begin()
      start.binding.take(left.value)
      start.binding.end()
    }
    return () => {
      const end = atEnds.current
      if (end.typed !== null && end.read(end.typed).ok) end.binding.dropDraft()
    }
  }, [])

  const type = (text: string): void => {
    setTyped(text)
    binding.keepDraft(text)
    const next = read(text)
    if (!next.ok) return
    setOurs(next.value)
    if (!sameValue(next.value, binding.value)) binding.take(next.value)
  }
  const forget = (): void => {
    setTyped(null)
    binding.dropDraft()
  }
  const putBack = (): void => {
    if (typed === null) return
    if (!sameValue(binding.value, atFocus.current)) {
      setOurs(atFocus.current)
      binding.take(atFocus.current)
    }
    forget()
  }

  return {
    id,
    text: typed ?? write(binding.value),
    isTyped: typed !== null,
    isFocused,
    reading,
    type,
    forget,
    inputProps: {
      id,
      value: typed ?? write(binding.value),
      readOnly: binding.readOnly,
      onFocus: () => {
        setFocused(true)
        if (binding.readOnly) return
        atFocus.current = binding.value
        binding.begin()
      },
      onBlur: () => {
        setFocused(false)
        if (binding.readOnly) return
        if (typed !== null && read(typed).ok) forget()
        binding.end()
      },
      onChange: (event) => {
        if (!binding.readOnly) type(event.target.value)
      },
      onKeyDown: (event) => {
        if (event.key === 'Escape' && typed !== null) {
          event.preventDefault()
          event.stopPropagation()
          putBack()
        }
        if (event.key === 'Enter' && !entersLines) event.currentTarget.blur()
      },
    },
  }
}

const sameValue = (a: unknown, b: unknown): boolean => Object.is(a, b)

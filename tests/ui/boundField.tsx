import { useEffect, useState } from 'react'
import type { FieldBinding } from '../../src/ui/fieldBinding.ts'

/** What a field did to its record, in order, and a hand to set the record from outside. */
export interface Bench<Value> {
  readonly taken: Value[]
  readonly log: string[]
  readonly draft: () => string | null
  readonly keepDraft: (text: string | null) => void
  readonly connect: (set: (value: Value) => void) => void
  readonly set: (value: Value) => void
}

export function makeBench<Value>(left: string | null = null): Bench<Value> {
  let draft = left
  let setValue = (_value: Value): void => undefined
  return {
    taken: [],
    log: [],
    draft: () => draft,
    keepDraft: (text) => {
      draft = text
    },
    connect: (set) => {
      setValue = set
    },
    set: (value) => setValue(value),
  }
}

/** A record of one value in memory, with everything a field may do to it written down. */
export function Bound<Value>(props: {
  readonly start: Value
  readonly bench: Bench<Value>
  readonly readOnly?: boolean
  readonly children: (binding: FieldBinding<Value>) => React.ReactNode
}) {
  const { bench, readOnly = false } = props
  const [value, setValue] = useState(props.start)
  const [draft] = useState(bench.draft)
  useEffect(() => bench.connect(setValue), [bench])
  return props.children({
    name: 'plan.rim.depthAtTailMm',
    value,
    draft,
    readOnly,
    begin: () => bench.log.push('begin'),
    end: () => bench.log.push('end'),
    take: (next) => {
      bench.taken.push(next)
      setValue(next)
    },
    keepDraft: bench.keepDraft,
    dropDraft: () => bench.keepDraft(null),
  })
}

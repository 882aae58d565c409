import type { Change, Fact } from '../record/commission.ts'
import { type Bundle, type DocumentRecord, nextSeq, seenIn } from '../record/document.ts'
import { type EditMeta, editDocument, type Recipe, replaceDocument } from '../record/edit.ts'
import { readFact } from '../record/door.ts'
import type { DoorProblem } from '../record/problem.ts'
import { accept, type Result, refuse } from '../record/result.ts'
import { takeBack } from '../record/undo.ts'
import type { DocumentWrite } from '../storage/documents.ts'
import type { WriteProblem } from '../storage/writeDurably.ts'
import { mergeKeystrokes } from './mergeKeystrokes.ts'
import { rebase } from './rebase.ts'

/** 'saved' is said only when the transaction that holds the last edit is complete; 'unsaved' means that writing failed. */
export type SaveStatus = 'saved' | 'saving' | 'unsaved'

export interface Kept<Row extends DocumentRecord> extends Bundle<Row> {
  readonly save: SaveStatus
  readonly saveProblem: WriteProblem | null
}

export interface KeeperNeeds<Row extends DocumentRecord> {
  readonly deviceId: string
  readonly now: () => string
  readonly newId: () => string
  readonly save: (write: DocumentWrite<Row>) => Promise<Result<null, WriteProblem>>
  /** The document as it is stored by now, for when another tab has written to it. */
  readonly reload: () => Promise<Bundle<Row> | null>
  readonly onChange: (kept: Kept<Row>) => void
  /** Longest time an edit waits for others to be written with it, ms. */
  readonly waitMs?: number
}

export interface Keeper<Row extends DocumentRecord> {
  readonly kept: () => Kept<Row>
  /** Edits the document; gestures are uuids, and one that has been left is begun anew. */
  readonly edit: (recipe: Recipe<Row>, gesture: string) => Result<null, DoorProblem>
  readonly replaceWhole: (
    next: Row,
    addFacts: (row: Row, meta: EditMeta) => readonly Fact[],
    gesture: string,
  ) => Result<null, DoorProblem>
  readonly takeBack: (gesture: string) => Result<null, DoorProblem>
  /** Facts in one action: all of them, or none. Each takes the place after the one before, whatever place it was made with. */
  readonly addFacts: (make: (row: Row, meta: EditMeta) => readonly Fact[], gesture: string) => Result<null, DoorProblem>
  /** Takes what another tab has stored, unless something of this tab's still waits. */
  readonly take: (stored: Bundle<Row>) => void
  /** Writes what waits, now; resolved when it is stored or has failed. */
  readonly flush: () => Promise<void>
  readonly hasUnsaved: () => boolean
}

const WAIT_MS = 120

/**
 * Holds one open document: every edit goes through `record`, stands at once, and is written in at most one transaction each `waitMs`.
 * `unwritten`: the beginning of a document that is stored only once something is edited.
 */
export function createKeeper<Row extends DocumentRecord>(
  start: Bundle<Row>,
  needs: KeeperNeeds<Row>,
  unwritten: readonly Change[] = [],
): Keeper<Row> {
  let { row, changes, facts } = start
  let save: SaveStatus = 'saved'
  let saveProblem: WriteProblem | null = null
  let waiting: { changes: readonly Change[]; facts: readonly Fact[] } = { changes: unwritten, facts: [] }
  let sent: { changes: readonly Change[]; facts: readonly Fact[] } = { changes: [], facts: [] }
  let timer: ReturnType<typeof setTimeout> | null = null
  let running: Promise<void> | null = null
  const renamed = new Map<string, string>()

  const kept = (): Kept<Row> => ({ row, changes, facts, save, saveProblem })
  const tell = (): void => needs.onChange(kept())
  const isWaiting = (): boolean => waiting.changes.length + waiting.facts.length > 0
  const metaOf = (gesture: string): EditMeta => ({
    deviceId: needs.deviceId,
    at: needs.now(),
    gesture,
    newId: needs.newId,
  })

  /** A gesture goes on only while nothing else has been entered; after that the same name begins another one. */
  function gestureFor(name: string): string {
    const now = renamed.get(name) ?? name
    const last = lastEntry(changes, facts)
    const known = changes.some((one) => one.gesture === now) || facts.some((one) => one.gesture === now)
    if (!known || last?.gesture === now) return now
    const fresh = needs.newId()
    renamed.set(name, fresh)
    return fresh
  }

  function enter(next: Row, newChanges: readonly Change[], newFacts: readonly Fact[]): void {
    if (newChanges.length + newFacts.length === 0) return
    const merged = mergeKeystrokes(waiting.changes, newChanges, changes)
    row = merged === null ? next : { ...next, seen: { ...next.seen, [merged.deviceId]: merged.seq } }
    if (merged === null) {
      changes = [...changes, ...newChanges]
      waiting = { changes: [...waiting.changes, ...newChanges], facts: [...waiting.facts, ...newFacts] }
    } else {
      changes = [...changes.slice(0, -1), merged]
      waiting = { changes: [...waiting.changes.slice(0, -1), merged], facts: waiting.facts }
    }
    facts = [...facts, ...newFacts]
    save = 'saving'
    tell()
    timer ??= setTimeout(() => void flush(), needs.waitMs ?? WAIT_MS)
  }

  async function write(): Promise<void> {
    sent = waiting
    waiting = { changes: [], facts: [] }
    const answer = await needs.save({ row, changes: sent.changes, facts: sent.facts, allFacts: facts })
    if (!answer.ok)
      waiting = { changes: [...sent.changes, ...waiting.changes], facts: [...sent.facts, ...waiting.facts] }
    sent = { changes: [], facts: [] }
    if (answer.ok) {
      save = isWaiting() ? 'saving' : 'saved'
      saveProblem = null
      return
    }
    save = 'unsaved'
    saveProblem = answer.problem
  }

  /** Another tab has written in between: what waits here is entered again on top of it. False where that cannot be done. */
  async function catchUp(): Promise<boolean> {
    const stored = await needs.reload()
    const again = stored === null ? null : rebase(stored, waiting)
    if (again === null) return false
    row = again.row
    changes = again.changes
    facts = again.facts
    waiting = again.waiting
    return true
  }

  async function run(): Promise<void> {
    await write()
    if (saveProblem?.code === 'changedElsewhere' && (await catchUp())) await write()
    tell()
  }

  async function flush(): Promise<void> {
    if (timer !== null) clearTimeout(timer)
    timer = null
    for (let before = running; before !== null; before = running) await before
    if (!isWaiting() || save === 'saved') return
    if (save !== 'saving') {
      save = 'saving'
      tell()
    }
    running = run()
    try {
      await running
    } finally {
      running = null
    }
  }

  return {
    kept,
    edit(recipe, name) {
      const edited = editDocument(row, changes, recipe, metaOf(gestureFor(name)))
      if (!edited.ok) return edited
      enter(edited.value.row, edited.value.changes, [])
      return accept(null)
    },
    replaceWhole(next, addFacts, gesture) {
      const meta = metaOf(gesture)
      const edited = replaceDocument(row, changes, next, meta)
      if (!edited.ok) return edited
      const added = addFacts(edited.value.row, meta)
      enter({ ...edited.value.row, seen: seenIn(added, edited.value.row.seen) }, edited.value.changes, added)
      return accept(null)
    },
    takeBack(gesture) {
      const taken = takeBack(row, changes, facts, gesture, metaOf(needs.newId()))
      if (!taken.ok) return taken
      if (taken.value.changes.length + taken.value.facts.length === 0) return refuse({ code: 'wrongField' })
      enter(taken.value.row, taken.value.changes, taken.value.facts)
      return accept(null)
    },
    addFacts(make, gesture) {
      const first = nextSeq(row)
      const added: Fact[] = []
      for (const [i, made] of make(row, metaOf(gesture)).entries()) {
        const fact = readFact({ ...made, seq: first + i })
        if (!fact.ok) return fact
        added.push(fact.value)
      }
      enter({ ...row, seen: seenIn(added, row.seen) }, [], added)
      return accept(null)
    },
    take(stored) {
      if (save !== 'saved' || running !== null) return
      waiting = { changes: [], facts: [] }
      row = stored.row
      changes = stored.changes
      facts = stored.facts
      tell()
    },
    flush,
    hasUnsaved: () => save !== 'saved',
  }
}

function lastEntry(changes: readonly Change[], facts: readonly Fact[]): Change | Fact | undefined {
  const [change, fact] = [changes.at(-1), facts.at(-1)]
  return (fact?.seq ?? 0) > (change?.seq ?? 0) ? fact : change
}

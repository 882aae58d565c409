/** How a field hangs on the record: what it shows, where it puts what was typed, and where half-typed text is kept. */
export interface FieldBinding<Value> {
  /** Dotted name of the place, once on a screen: 'plan.rim.depthAtTailMm'. */
  readonly name: string
  readonly value: Value
  /** Text that was typed and not taken, as it was left; null: none. */
  readonly draft: string | null
  /** Another tab holds the pen, or the record is away. */
  readonly readOnly: boolean
  /** Opens a gesture: all that is taken until `end` is undone in one step. */
  readonly begin: () => void
  readonly end: () => void
  readonly take: (value: Value) => void
  readonly keepDraft: (text: string) => void
  readonly dropDraft: () => void
}

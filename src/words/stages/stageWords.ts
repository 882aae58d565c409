/** What there is to do at a stage: two to five short lines, each able to stand alone. */
export interface StageLines {
  readonly lines: readonly string[]
  /** The lines where finer stages are not in the building order and their work is done with this one; left out: the same. */
  readonly whole?: readonly string[]
}

/** And what it is called at the bench. */
export interface StageWords extends StageLines {
  readonly title: string
}

/** What a stage is called at the bench, and what there is to do: two to five short lines, each able to stand alone. */
export interface StageWords {
  readonly title: string
  readonly lines: readonly string[]
  /** The lines where finer stages are not in the building order and their work is done with this one; left out: the same. */
  readonly whole?: readonly string[]
}

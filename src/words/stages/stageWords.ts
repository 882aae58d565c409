/** What a stage is called at the bench, and what there is to do: two to five short lines, each able to stand alone. */
export interface StageWords {
  readonly title: string
  readonly lines: readonly string[]
}

/** The one stage a maker asked to have on paper, from another sheet. */
let asked: string | null = null

export function askForStage(stageId: string): void {
  asked = stageId
}

/** What was asked for, once. */
export function takeAskedStage(): string | null {
  const stage = asked
  asked = null
  return stage
}

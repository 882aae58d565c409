import { adoptFile, type TolerancesHere } from '../record/adopt.ts'
import type { Bundle } from '../record/document.ts'
import { readCommissionFile } from '../record/door.ts'
import type { DoorProblem } from '../record/problem.ts'
import { accept, type Result } from '../record/result.ts'
import { putDocument } from '../storage/documents.ts'
import { readDeviceValue, writeDeviceValue } from '../storage/deviceValues.ts'
import { writeDurably, type WriteProblem } from '../storage/writeDurably.ts'
import { metaOf, type StoredNeeds } from './editStored.ts'

/** True where the demo was neither taken nor declined on this device yet. */
export async function isDemoUnanswered(needs: Pick<StoredNeeds, 'database'>): Promise<boolean> {
  return (await readDeviceValue(needs.database, 'demoAnswer').catch(() => null)) === null
}

export const answerDemo = (needs: Pick<StoredNeeds, 'database'>, answer: 'taken' | 'declined' | 'removed') =>
  writeDeviceValue(needs.database, 'demoAnswer', answer)

/** Takes all demo files in, in one transaction; one that is here already stays as it is. All are marked as demo, whatever they say. */
export async function installDemo(
  needs: StoredNeeds,
  files: readonly unknown[],
  tolerancesHere: TolerancesHere,
): Promise<Result<null, DoorProblem | WriteProblem>> {
  const bundles: Bundle[] = []
  for (const file of files) {
    const read = readCommissionFile(file)
    if (!read.ok) return read
    const adopted = adoptFile({ ...read.value, demo: true }, tolerancesHere, metaOf(needs))
    if (!adopted.ok) return adopted
    bundles.push(adopted.value)
  }
  const { documents, changes, facts, heads } = needs.database.dexie
  const saved = await writeDurably(needs.database, [documents, changes, facts, heads], async () => {
    for (const bundle of bundles) {
      if ((await documents.get(bundle.row.id)) !== undefined) continue
      await putDocument(needs.database, { ...bundle, allFacts: bundle.facts })
    }
    return null
  })
  if (!saved.ok) return saved
  needs.onSaved?.()
  await answerDemo(needs, 'taken')
  return accept(null)
}

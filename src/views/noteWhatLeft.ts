import type { PaperPrint } from '../record/printed.ts'
import type { CommissionStore } from '../state/commissionStore.ts'

/** Notes papers in the record they left from, once what they show has been marked; nowhere where another instrument has been opened since. */
export async function noteWhatLeft(
  commission: Pick<CommissionStore<unknown>, 'store' | 'writes' | 'notePrint'>,
  revision: string,
  prints: Promise<readonly PaperPrint[] | null>,
): Promise<void> {
  const { id } = commission.store.getState()
  const marked = await prints.catch(() => null)
  if (marked !== null && id !== null && commission.writes(id)) commission.notePrint(revision, marked)
}

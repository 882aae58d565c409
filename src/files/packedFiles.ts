/** Files that come with the program, fetched only when they are asked for. What they hold is unknown until it has passed the door. */
const COMMISSIONS = import.meta.glob('../../demo-data/commissions/*.json', { import: 'default' })
const MODELS = import.meta.glob('../../demo-data/models/*.json', { import: 'default' })

const fetchAll = (files: Readonly<Record<string, () => Promise<unknown>>>): Promise<unknown[]> =>
  Promise.all(
    Object.entries(files)
      .toSorted(([a], [b]) => (a < b ? -1 : 1))
      .map(([, fetchOne]) => fetchOne()),
  )

/** The commissions of the demo. */
export const fetchDemoCommissions = (): Promise<unknown[]> => fetchAll(COMMISSIONS)

/** The models an instrument can be begun from. */
export const fetchModels = (): Promise<unknown[]> => fetchAll(MODELS)

import { createContext, useContext, useEffect } from 'react'

/** What a sheet tells its title block about the drawing that leads it. */
export interface SheetFacts {
  /** From where it is seen. */
  readonly seenFrom?: string
  /** Scale of the drawing as it stands, exaggeration included: '1 : 2, heights × 10'. */
  readonly scale?: string
}

export const SheetFactsContext = createContext<(facts: SheetFacts) => void>(() => undefined)

/** Writes into the title block while the view stands. */
export function useSheetFacts({ seenFrom, scale }: SheetFacts): void {
  const tell = useContext(SheetFactsContext)
  useEffect(() => {
    tell({ ...(seenFrom === undefined ? {} : { seenFrom }), ...(scale === undefined ? {} : { scale }) })
    return () => tell({})
  }, [tell, seenFrom, scale])
}

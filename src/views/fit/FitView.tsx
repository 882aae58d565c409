import { stagesDone } from '../../record/facts.ts'
import { BUILT_FIT_WORDS } from '../../words/builtFit.ts'
import { useCommission } from '../workshop.ts'
import { UnfitStage } from './UnfitStage.tsx'
import { useBuiltFit } from './useBuiltFit.ts'
import '../../ui/field.css'
import '../sheets/tables.css'
import './fit.css'

const words = BUILT_FIT_WORDS

/** What is done and no longer fits, stage by stage, each with what can be done about it. */
export function FitView() {
  const fit = useBuiltFit()
  const facts = useCommission((state) => state.facts)
  const stages = fit?.stages ?? []
  const isAnyDone = stagesDone(facts).size > 0
  return (
    <>
      <header className="view-head">
        <h1>{words.title}</h1>
        {stages.length > 0 && <p className="second">{words.lead}</p>}
      </header>
      {fit === null || stages.length === 0 ? (
        <output>{isAnyDone ? words.fits : words.nothingDone}</output>
      ) : (
        <>
          {stages.map((stage) => (
            <UnfitStage key={stage.signed.factId} fit={fit} of={stage} />
          ))}
          <p className="second small">{words.fromHint}</p>
        </>
      )}
    </>
  )
}

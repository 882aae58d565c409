import { stageAsPattern } from '../../record/changes/stages.ts'
import type { StageInHand } from '../../record/stageInHand.ts'
import { STAGES_PLACE_WORDS } from '../../words/stagesPlace.ts'
import { useOrderBench } from './orderBench.ts'
import { StageActs } from './StageActs.tsx'
import { StageFields } from './StageFields.tsx'
import { StageHistory } from './StageHistory.tsx'
import { StageMoves } from './StageMoves.tsx'
import { StageNeeds } from './StageNeeds.tsx'
import { StageNumbers } from './StageNumbers.tsx'
import './stageDetail.css'

const words = STAGES_PLACE_WORDS

interface Props {
  readonly stage: StageInHand
  readonly onShow: (id: string) => void
}

/** All that belongs to one stage: what is done on it, where it stands, what it is, needs and is built to. */
export function StageDetail({ stage, onShow }: Props) {
  const { isLocked, change } = useOrderBench()
  const { title: _title, ...own } = stage.own
  const isOwn = Object.keys(stage.key === 'ownWork' ? own : stage.own).length > 0
  return (
    <>
      <StageActs stage={stage} />
      <StageHistory stage={stage} />
      <StageMoves stage={stage} onShow={onShow} />
      <StageFields stage={stage} />
      <StageNeeds stage={stage} />
      <StageNumbers stage={stage} />
      {isOwn && (
        <div className="commands">
          <span className="second">{words.isOwn}</span>
          <button className="button" type="button" disabled={isLocked} onClick={() => change(stageAsPattern(stage.id))}>
            {words.asPattern}
          </button>
        </div>
      )}
    </>
  )
}

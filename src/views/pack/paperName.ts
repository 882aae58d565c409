import type { Computed } from '../../core/compute.ts'
import { parsePaperId } from '../../papers/paperId.ts'
import type { CommissionDoc } from '../../record/commission.ts'
import { PACK_WORDS } from '../../words/press.ts'
import { STAGE_TITLES } from '../../words/stageTitles.ts'
import { templateName } from '../fullSize/templateName.ts'

/** What a paper is called; one that this program does not know, or no longer finds, by the name it was kept under. */
export function paperName(id: string, stages: CommissionDoc['stages'], computed: Computed): string {
  const paper = parsePaperId(id)
  if (paper === null) return id
  switch (paper.kind) {
    case 'whole':
      return PACK_WORDS.whole[paper.paper]
    case 'stage': {
      const stage = stages[paper.stageId]
      return stage === undefined ? PACK_WORDS.stages(1) : PACK_WORDS.stage(stage.own?.title ?? STAGE_TITLES[stage.key])
    }
    case 'template':
      return templateName(paper.ref, computed)
  }
}

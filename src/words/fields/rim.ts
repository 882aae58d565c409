import type { RIM_METHODS } from '../../core/plan.ts'
import type { FieldsUnder, FieldWords } from './fieldWords.ts'

export const RIM_FIELDS: Record<FieldsUnder<'rim'>, FieldWords> = {
  'rim.depthAtTailMm': { name: 'Rim depth at the tail', hint: 'Without plates.' },
  'rim.depthAtNeckMm': { name: 'Rim depth at the neck', hint: 'Without plates, before planing.' },
  'rim.sideThicknessMm': { name: 'Side thickness', hint: 'Before bending.' },
  'rim.topAllowanceMm': {
    name: 'Top allowance',
    hint: 'Straight edge of the blank over the top edge.',
  },
  'rim.backAllowanceMm': { name: 'Back allowance', hint: 'Left outside the back edge when sawing.' },
  'rim.trimEachEndMm': { name: 'Trim at each end', hint: 'Extra length of the blank.' },
  'rim.stationStepMm': {
    name: 'Step between stations',
    hint: 'Along the outer face. Left open: the widest round step that gives 40 stations.',
  },
  'rim.method': { name: 'Back edge is shaped', hint: 'Stations are printed for the way chosen.' },
  'rim.firstLeavesTopMm': {
    name: 'First dishing leaves, top edge',
    hint: 'Left on the bare side for the second time, with the linings on.',
  },
  'rim.firstLeavesBackMm': {
    name: 'First dishing leaves, back edge',
    hint: 'Left on the bare side for the second time, with the linings on.',
  },
}

export const RIM_METHOD_WORDS: Record<(typeof RIM_METHODS)[number], string> = {
  beforeBending: 'On the flat blank, before bending',
  onTheRim: 'On the bent rim',
}

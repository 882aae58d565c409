import type { Sheet } from './sheets.ts'

/** Sheets as their tabs are called. */
export const SHEET_NAMES: Record<Sheet, string> = {
  outline: 'Outline',
  sides: 'Sides',
  domes: 'Domes',
  blocks: 'Blocks',
  linings: 'Linings',
  rosette: 'Rosette',
  bracing: 'Bracing',
  edges: 'Edges',
  air: 'Air',
  cutting: 'Cutting',
  frets: 'Frets',
  strings: 'Strings',
  neckSet: 'Neck set',
  bridge: 'Bridge',
  neck: 'Neck cut',
  numbers: 'Numbers',
}

/** What stands on a template drawn at full size, and on the sheets it is printed on. */
export const FULL_SIZE_WORDS = {
  instrument: (number: string, title: string) => (number === '' ? title : `${number}  ${title}`),
  revision: (code: string, date: string) => `Revision ${code}, ${date}`,
  scale: (unit: string, seenFrom: string) => `Full size, 1 : 1. Figures in ${unit}. ${seenFrom}.`,
  /** How the shop's unit of body lengths is named there; on a drawing no figure stands in 64ths. */
  units: { mm: 'mm', decimalInch: 'inches', fractionalInch: 'inches' },

  measure: {
    title: 'Measure this box before you cut',
    says: 'The box is 100 mm wide and 20 mm high. The scale under it is 4 in, the one at the left edge 100 mm.',
    off: 'If they are not: print at 100 %, or enter what they measure.',
    corrected: (across: string, along: string) => `Set for your printer: × ${across} across, × ${along} along.`,
    /** The last figure of the inch scale. */
    inches: (count: number) => `${count} in`,
    upright: '100',
  },

  page: (page: number, count: number) => `Page ${page} of ${count}, print at 100 %`,
  tile: (name: string, row: number, rows: number, column: number, columns: number) =>
    `${name}: row ${row} of ${rows}, column ${column} of ${columns}`,
  /** How a sheet goes together with those it is laid over, by name: the next one to the right, and the one below. */
  join: {
    both: (right: string, below: string) =>
      `Cut along the frame right and below, lay over ${right} and ${below}, cross on cross.`,
    right: (right: string) => `Cut along the frame at the right, lay over ${right}, cross on cross.`,
    below: (below: string) => `Cut along the frame below, lay over ${below}, cross on cross.`,
    /** One that has neighbours at the left and above only. */
    under: (others: readonly string[]) =>
      `Do not cut along the frame: ${others.join(' and ')} ${others.length === 1 ? 'lies' : 'lie'} over this sheet, cross on cross.`,
  },
} as const
export type FullSizeWords = typeof FULL_SIZE_WORDS

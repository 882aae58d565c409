/** Sheets that a template can be printed on. */
export const FULL_SIZE_SHEETS = ['A4', 'Letter', 'A3', 'Tabloid', 'A1', 'A0', 'roll'] as const

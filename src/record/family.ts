/** What kind of instrument it is: picks the stages, and the model it can be begun from. */
export const FAMILIES = ['steelString', 'nylonString', 'small'] as const
export type Family = (typeof FAMILIES)[number]

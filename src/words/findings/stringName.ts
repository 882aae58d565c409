/** Which string a finding means, inside a sentence; strings are counted from 1 at the bass side. */
export const stringName = (place: number | null): string =>
  place === null ? 'one string' : `string ${place}, counted from the bass,`

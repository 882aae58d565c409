/** What is said where a newer version of the program lies on the device. */
export const NEW_VERSION_WORDS = {
  waits: 'A new version is here.',
  waitsForSaving: 'A new version is here. It waits: not everything is saved yet.',
  taken: 'Another tab has taken a new version. Save or close what is open here, then take it too.',
  take: 'Take it now',
  later: 'Later',
} as const

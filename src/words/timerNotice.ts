/** What the device itself says when a timer runs out. */
export const TIMER_NOTICE = {
  title: (label: string): string => `Ready: ${label}`,
  body: (number: string): string => `${number}. The time you set has run out.`,
} as const

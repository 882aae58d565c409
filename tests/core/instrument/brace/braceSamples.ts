import type { BraceEndPlan, BracePlan } from '../../../../src/core/boxPlan.ts'
import { compute } from '../../../../src/core/compute.ts'
import type { Plan } from '../../../../src/core/plan.ts'

export const end = (values: Partial<BraceEndPlan> = {}): BraceEndPlan => ({
  stops: 'here',
  side: 'bass',
  xMm: 100,
  yMm: 0,
  braceId: null,
  letInMm: 2,
  taper: 'none',
  taperMm: 0,
  endHeightMm: 3,
  ...values,
})
export const here = (xMm: number, yMm: number, values: Partial<BraceEndPlan> = {}) => end({ xMm, yMm, ...values })
export const beyond = (xMm: number, yMm: number, values: Partial<BraceEndPlan> = {}) =>
  end({ stops: 'rimBeyond', xMm, yMm, ...values })
export const rimAt = (side: 'bass' | 'treble', xMm: number, values: Partial<BraceEndPlan> = {}) =>
  end({ stops: 'rimAt', side, xMm, ...values })
export const atBrace = (braceId: string | null, xMm: number, yMm: number) => end({ stops: 'brace', braceId, xMm, yMm })

export const brace = (from: BraceEndPlan, to: BraceEndPlan, values: Partial<BracePlan> = {}): BracePlan => ({
  order: 'm',
  plate: 'top',
  kind: 'other',
  twin: false,
  from,
  to,
  widthMm: 8,
  heightMm: 16,
  underside: 'dome',
  archRadiusMm: 6000,
  lapped: false,
  ...values,
})

/** A plan with these braces alone, in their order. */
export const withBraces = (plan: Plan, braces: Readonly<Record<string, BracePlan>>): Plan => ({
  ...plan,
  bracing: {
    ...plan.bracing,
    braces: Object.fromEntries(
      Object.entries(braces).map(([id, one], i) => [id, { ...one, order: String.fromCharCode(97 + i) }]),
    ),
  },
})

export const computed = (plan: Plan, braces: Readonly<Record<string, BracePlan>>) => compute(withBraces(plan, braces))
export const codesOf = (plan: Plan, braces: Readonly<Record<string, BracePlan>>): string[] =>
  computed(plan, braces)
    .findings.map(({ code }) => code)
    .filter((code) => /^brace|Brace$|^plate(MissesFeet|Over)/.test(code))

import type { OutlinePlan, Radius } from './plan.ts'

export const FIXTURE_KINDS = ['contourBoard', 'dish', 'mould', 'bendingForm'] as const
export type FixtureKind = (typeof FIXTURE_KINDS)[number]

/** Something of the shop's own that gives work its shape. Lengths in mm. */
export type Fixture = { readonly order: string; readonly name: string } & (
  | {
      /** A board with a round edge that block faces are sanded or checked on. */
      readonly kind: 'contourBoard'
      readonly radiusMm: Radius
    }
  | {
      /** A hollow dish that rims are radiused in and plates are braced in. */
      readonly kind: 'dish'
      readonly radiusMm: number
      readonly diameterMm: number
    }
  | {
      /** An outside mould: holds the outer face of the bent sides. */
      readonly kind: 'mould'
      readonly outline: OutlinePlan
    }
  | {
      /** What sides are bent over: its surface stands inside the outer face of the outline it was made to. */
      readonly kind: 'bendingForm'
      readonly outline: OutlinePlan
      readonly insetMm: number
    }
)
/** The shop's fixtures by their ids. */
export type Fixtures = Readonly<Record<string, Fixture>>

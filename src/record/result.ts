/** What a step that can refuse gives: the value, or a plain reason as data. Nothing throws. */
export type Result<Value, Problem> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly problem: Problem }

export const accept = <Value>(value: Value): { readonly ok: true; readonly value: Value } => ({ ok: true, value })
export const refuse = <Problem>(problem: Problem): { readonly ok: false; readonly problem: Problem } => ({
  ok: false,
  problem,
})

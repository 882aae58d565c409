import type { Finding } from '../core/findings.ts'

interface Props {
  readonly weight: Finding['weight']
  readonly className: string
}

/** The sign beside a finding's word: a cross for what cannot be built, a triangle for what takes care. */
export function FindingMark({ weight, className }: Props) {
  return (
    <svg className={className} viewBox="0 0 24 24" aria-hidden="true">
      {weight === 'cannot' ? <path d="M4 4 20 20 M20 4 4 20" /> : <path d="M12 3 22 21 H2 Z" />}
    </svg>
  )
}

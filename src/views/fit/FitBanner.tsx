import { Link } from 'wouter'
import { BUILT_FIT_WORDS } from '../../words/builtFit.ts'
import { useUnfitCount } from './useBuiltFit.ts'

interface Props {
  readonly id: string
  /** A line among others, or the banner over a sheet. */
  readonly as: 'banner' | 'line'
}

/** How much of what is built no longer fits, and the way to it; nothing while all does. */
export function FitBanner({ id, as }: Props) {
  const count = useUnfitCount()
  if (count === 0) return null
  const said = (
    <>
      {BUILT_FIT_WORDS.banner(count)} <Link href={`/i/${id}/fit`}>{BUILT_FIT_WORDS.see}</Link>
    </>
  )
  return as === 'banner' ? <output className="banner">{said}</output> : <p>{said}</p>
}

import { Link } from 'wouter'
import { BUILT_FIT_WORDS } from '../../words/builtFit.ts'
import { useUnfitCount } from './useBuiltFit.ts'

/** How much of what is built no longer fits, and the way to it; nothing while all does. */
export function FitBanner({ id }: { readonly id: string }) {
  const count = useUnfitCount()
  if (count === 0) return null
  return (
    <output className="banner">
      {BUILT_FIT_WORDS.banner(count)} <Link href={`/i/${id}/fit`}>{BUILT_FIT_WORDS.see}</Link>
    </output>
  )
}

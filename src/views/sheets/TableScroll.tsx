import type { ReactNode } from 'react'

/** A table that is wider than its place scrolls by itself, by finger and by key. */
export function TableScroll({ caption, children }: { readonly caption: string; readonly children: ReactNode }) {
  return (
    // The keys that scroll it need it to hold the focus.
    // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
    <section className="table-scroll" tabIndex={0} aria-label={caption}>
      {children}
    </section>
  )
}

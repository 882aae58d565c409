import type { ReactNode } from 'react'
import { BENCH_WORDS } from '../../words/bench.ts'

/** An empty bench: the four sizes an instrument begins with, drawn, and what can be done. */
export function EmptyBench({ children }: { readonly children: ReactNode }) {
  return (
    <section className="empty">
      <svg className="empty-drawing" viewBox="0 0 446 262" aria-hidden="true">
        <g className="empty-edge">
          <path d="M60 95 C60 35 105 18 150 22 C190 26 205 52 235 52 C265 52 275 34 310 36 C345 38 352 66 352 95 C352 124 345 152 310 154 C275 156 265 138 235 138 C205 138 190 164 150 168 C105 172 60 155 60 95 Z" />
          <circle cx="262" cy="95" r="21" />
        </g>
        <path className="empty-centre" d="M40 95 H372" />
        <g className="empty-measure">
          <path d="M60 172 V198 M352 100 V198 M60 192 H352 M56 196 L64 188 M348 196 L356 188" />
          <path d="M150 22 H22 M150 168 H22 M28 22 V168 M24 26 L32 18 M24 172 L32 164" />
          <path d="M235 52 V138 M231 56 L239 48 M231 142 L239 134" />
        </g>
        <g className="empty-side">
          <path d="M60 228 H352 V246 L60 254 Z" />
          <path
            className="empty-measure"
            d="M352 228 H388 M352 246 H388 M382 228 V246 M378 232 L386 224 M378 250 L386 242"
          />
        </g>
        <g className="empty-words">
          <text x="206" y="184" textAnchor="middle">
            {BENCH_WORDS.emptyLength}
          </text>
          <text x="24" y="95" textAnchor="middle" transform="rotate(-90 24 95)">
            {BENCH_WORDS.emptyBouts}
          </text>
          <text x="231" y="112" textAnchor="end">
            {BENCH_WORDS.emptyWaist}
          </text>
          <text x="394" y="242">
            {BENCH_WORDS.emptyDepth}
          </text>
        </g>
      </svg>
      <div className="empty-words-beside">
        <h2>{BENCH_WORDS.empty}</h2>
        <p>{BENCH_WORDS.emptyLead}</p>
        {children}
      </div>
    </section>
  )
}

import type { PlateSide } from '../../../core/boxPlan.ts'
import { startBracing } from '../../../record/changes/braces.ts'
import { BRACING_PATTERNS, type BracingPattern, bracingSiteOf } from '../../../record/patterns/bracings.ts'
import { BRACING_PATTERN_WORDS, BRACING_WORDS } from '../../../words/box/bracing.ts'
import { useSheetBench } from '../sheetBench.ts'

/** Bracings to start from, laid out for this body. */
export function BracePatterns({ plate, onLaid }: { readonly plate: PlateSide; readonly onLaid: () => void }) {
  const bench = useSheetBench()
  const count = bench.computed.numbers.braces.filter((row) => row.plate === plate).length
  const lay = (pattern: BracingPattern): void => {
    const site = bracingSiteOf(bench.plan, bench.computed.numbers)
    bench.edit(startBracing(plate, pattern(site, bench.newId)), bench.newId())
    onLaid()
  }
  return (
    <section className="sheet-fields" aria-labelledby="brace-patterns">
      <h2 id="brace-patterns">{BRACING_WORDS.patterns}</h2>
      <p className="second small">{BRACING_WORDS.patternsHint(count, plate)}</p>
      <div className="commands">
        {Object.entries(BRACING_PATTERNS[plate]).map(([key, pattern]) => (
          <button className="button" type="button" key={key} disabled={bench.readOnly} onClick={() => lay(pattern)}>
            {BRACING_PATTERN_WORDS[key] ?? key}
          </button>
        ))}
      </div>
    </section>
  )
}

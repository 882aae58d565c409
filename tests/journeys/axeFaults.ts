import axe from 'axe-core'
import type { Page } from 'playwright-core'

/** What axe holds against the page, of WCAG 2.2 up to AA: one line for each element. */
export async function faultsOf(page: Page): Promise<string[]> {
  await page.evaluate(axe.source)
  return page.evaluate(async () => {
    const { axe: here } = globalThis as unknown as { axe: typeof axe }
    // What has just come is still fading in: colours are judged once it stands.
    const frame = () => new Promise((resolve) => requestAnimationFrame(resolve))
    await frame()
    await frame()
    await Promise.allSettled(document.getAnimations().map((animation) => animation.finished))
    const { violations } = await here.run(document, {
      preload: false,
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
    })
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id} ${target.join(' ')} ${failureSummary ?? ''}`),
    )
  })
}

import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'

const WCAG_22_AA = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa']

/** What a rule of a scan may find: all of WCAG 2.2 AA, or by night, when only the ink is another, what concerns colours. */
type Scope = 'all' | 'colours'

/**
 * What a scan of the page, or of what a selector finds of it, finds fault with: the rule and the elements. The page has no frames, so the
 * scan needs no page of its own to gather them in, which takes longer than scanning.
 */
export const faults = async (page: Page, within = 'html', scope: Scope = 'all'): Promise<string[]> => {
  const runOnly =
    scope === 'all'
      ? { type: 'tag' as const, values: WCAG_22_AA }
      : { type: 'rule' as const, values: ['color-contrast'] }
  const scan = new AxeBuilder({ page }).include(within).options({ runOnly, resultTypes: ['violations'] })
  const { violations } = await scan.setLegacyMode().analyze()
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)
}

import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'

const WCAG_22_AA = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa']

/** What a rule of a scan may find: all of WCAG 2.2 AA, or by night, when only the ink is another, what concerns colours. */
type Scope = 'all' | 'colours'

/** What a scan of the page, or of what a selector finds of it, finds fault with: the rule and the elements. */
export const faults = async (page: Page, within = 'html', scope: Scope = 'all'): Promise<string[]> => {
  const scan = new AxeBuilder({ page }).include(within)
  const { violations } = await (
    scope === 'all' ? scan.withTags(WCAG_22_AA) : scan.withRules(['color-contrast'])
  ).analyze()
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)
}

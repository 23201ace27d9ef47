import AxeBuilder from '@axe-core/playwright'
import type { Page } from '@playwright/test'

const WCAG_22_AA = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22a', 'wcag22aa']

/** What a scan of the page, or of what a selector finds of it, finds fault with: the rule and the elements. */
export const faults = async (page: Page, within = 'html'): Promise<string[]> => {
  const { violations } = await new AxeBuilder({ page }).include(within).withTags(WCAG_22_AA).analyze()
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ target }) => target.join(' ')).join(', ')}`)
}

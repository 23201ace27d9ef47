import { expect, type Locator, type Page } from '@playwright/test'

type Run = 'Water run' | 'Falls home' | 'Rack bench' | 'Saw bench' | 'Counter' | 'Crew box'

/** The drawer at the foot of the page, as a person has it before them. */
export interface Drawer {
  readonly foot: Locator
  readonly toggle: Locator
  readonly tab: (name: string) => Locator
  readonly figure: (name: string) => Locator
  /** Opens a run, where it is not open already. */
  readonly open: (run: Run) => Promise<void>
  /** Opens the run that a view belongs to, turns to the view, and waits until it has found what it shows. */
  readonly turnTo: (view: string, run?: Run) => Promise<Locator>
  /** Text of the cells of one line of a table. */
  readonly line: (table: string, name: string | RegExp) => Promise<string[]>
}

export const drawerOn = (page: Page): Drawer => {
  const foot = page.getByRole('region', { name: 'Drawer', exact: true })
  const toggle = foot.getByRole('button', { name: 'Water run' })
  const tab = (name: string) => foot.getByRole('tab', { name, exact: true })
  const open = async (run: Run) => {
    const opens = foot.getByRole('button', { name: run })
    if ((await opens.getAttribute('aria-expanded')) === 'false') await opens.click()
    await expect(foot.getByRole('tablist', { name: run })).toBeVisible()
  }
  return {
    foot,
    toggle,
    tab,
    open,
    figure: (name) => foot.getByRole('figure', { name }),
    turnTo: async (view, run = 'Water run') => {
      await open(run)
      await tab(view).click()
      const panel = foot.getByRole('tabpanel')
      await expect(panel).toBeVisible()
      await expect(panel).not.toContainText('…')
      await expect(panel.locator('[aria-busy="true"]')).toHaveCount(0)
      return panel
    },
    line: (table, name) =>
      foot
        .getByRole('region', { name: table })
        .getByRole('row')
        .filter({ has: page.getByRole('rowheader', { name }) })
        .getByRole('cell')
        .allInnerTexts(),
  }
}

import { expect } from '@playwright/test'
import { drawerOn } from './support/drawer'
import { test } from './support/planner'

test('the pump is stopped on the section: time is slid through, and the pit says where its water ends with a check valve and without', async ({
  planner,
}) => {
  await planner.openSample()
  const { foot, turnTo, line } = drawerOn(planner.page)
  const panel = await turnTo('Stop the pump', 'Falls home')
  await expect(panel).toContainText('Holds')
  await expect(panel).toContainText('Nothing runs over.')
  // Worked example of the trade notes: 480 towers x 0.15 gal.
  expect((await line('What comes home', 'Towers'))[0]).toBe('72 gal')

  const time = foot.getByRole('slider', { name: 'After the stop' })
  await expect(time).toHaveAttribute('aria-valuetext', 'running')
  await time.focus()
  await time.press('End')
  await expect(time).toHaveAttribute('aria-valuetext', '30 min')

  const ends = panel.getByRole('paragraph').first()
  const before = await ends.textContent()
  await foot.getByRole('button', { name: 'Without', exact: true }).click()
  await expect(ends).not.toHaveText(before ?? '')
  await expect(foot.getByRole('rowheader', { name: 'Mains, through the pump' })).toBeVisible()
})

test('what may go wrong is a table with minutes and what to do', async ({ planner }) => {
  await planner.openSample()
  const { foot, turnTo } = drawerOn(planner.page)
  await turnTo('What if', 'Falls home')
  const blocked = foot.getByRole('row', { name: /The return is blocked/ })
  // Worked example of the trade notes: from running to pump off in 3.6 min.
  await expect(blocked).toContainText('3.6 min')
  await expect(blocked).toContainText('Stop the pump')
  await expect(foot.getByRole('row')).toHaveCount(7)
})

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from '@playwright/test'

const picture = join(import.meta.dirname, '../public/planner.png')

/** Width and height stand in the first chunk of a PNG, 16 bytes from its start. */
const sizeOf = (png: Buffer) => ({ width: png.readUInt32BE(16), height: png.readUInt32BE(20) })

test('the picture of the README is there, as wide as the page; UPDATE_PICTURE=1 takes it anew', async ({
  page,
}) => {
  await page.goto('./')
  await page.getByRole('button', { name: 'Keep the sample' }).click()
  await expect(page.getByText('480 towers')).toBeVisible()
  await page.evaluate(() => document.fonts.ready)
  if (process.env['UPDATE_PICTURE'] === '1') await page.screenshot({ path: picture, animations: 'disabled' })
  expect(sizeOf(readFileSync(picture))).toEqual({ width: 1280, height: 800 })
})

import { spawnSync } from 'node:child_process'
import { canUseApt } from './browser.mjs'
import { run } from './command.mjs'

/** True if a reader of PDFs that is not the browser's own is here, or could be installed; the print test reads less without it. */
export const findPoppler = async () => {
  if (spawnSync('pdfinfo', ['-v']).error === undefined) return true
  if (!canUseApt()) return false
  const quiet = { DEBIAN_FRONTEND: 'noninteractive' }
  await run('apt-get', ['update', '-qq'], quiet)
  return run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'poppler-utils'], quiet)
}

import { existsSync, readFileSync } from 'node:fs'
import { delimiter, join } from 'node:path'
import { run, runTool } from './command.mjs'

const onPath = (names) =>
  (process.env.PATH ?? '').split(delimiter).flatMap((folder) => names.map((name) => join(folder, name)))

const linux = () =>
  onPath([
    'chromium',
    'chromium-browser',
    'google-chrome',
    'google-chrome-stable',
    'microsoft-edge',
    'microsoft-edge-stable',
  ])

const mac = () =>
  ['Chromium', 'Google Chrome', 'Microsoft Edge'].map(
    (name) => `/Applications/${name}.app/Contents/MacOS/${name}`,
  )

const windows = () =>
  ['ProgramFiles', 'ProgramFiles(x86)', 'LocalAppData'].flatMap((variable) => {
    const folder = process.env[variable]
    if (folder === undefined) return []
    return [
      'Google/Chrome/Application/chrome.exe',
      'Microsoft/Edge/Application/msedge.exe',
      'Chromium/Application/chrome.exe',
    ].map((path) => join(folder, path))
  })

const systemBrowser = () => {
  const places = process.platform === 'win32' ? windows() : process.platform === 'darwin' ? mac() : linux()
  return places.find((path) => existsSync(path))
}

const playwrightBrowser = async () => {
  const { chromium } = await import('@playwright/test')
  const path = chromium.executablePath()
  return existsSync(path) ? path : undefined
}

/** Debian's own packages can be installed only there and only by root; elsewhere `chromium` is another thing or not there. */
export const canUseApt = () =>
  process.getuid?.() === 0 &&
  existsSync('/etc/os-release') &&
  /^ID=debian$/m.test(readFileSync('/etc/os-release', 'utf8'))

const installBrowser = async () => {
  const quiet = { DEBIAN_FRONTEND: 'noninteractive' }
  if (canUseApt()) {
    await run('apt-get', ['update', '-qq'], quiet)
    if (await run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], quiet))
      return systemBrowser()
  }
  await runTool('playwright', ['install', 'chromium'])
  return playwrightBrowser()
}

/** Path of a Chromium-like browser: the one named by CHROMIUM_PATH, else the system's, else one installed now. */
export const findBrowser = async () => {
  const named = process.env.CHROMIUM_PATH
  if (named) return existsSync(named) ? named : undefined
  return systemBrowser() ?? (await playwrightBrowser()) ?? installBrowser()
}

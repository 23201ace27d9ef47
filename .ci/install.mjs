import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { run, top } from './command.mjs'

const packagesOf = (file) => {
  const path = join(top, file)
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')).packages : {}
}

/**
 * True if node_modules holds what package-lock.json asks for. npm notes what it installed in a lock file of its own;
 * packages for other systems are optional and stay away.
 */
const isInstalled = () => {
  const installed = packagesOf('node_modules/.package-lock.json')
  const wanted = Object.entries(packagesOf('package-lock.json')).filter(([path]) => path !== '')
  const matches = ([path, { version, optional }]) =>
    installed[path] ? installed[path].version === version : optional === true
  return wanted.length > 0 && wanted.every(matches)
}

/**
 * Brings in the packages. `npm ci` refuses a lock that this npm reads otherwise; then `npm install` mends it. What npm says goes to
 * this terminal, or to another file by its number.
 */
export const install = async (output = 'inherit') => {
  if (isInstalled()) return true
  // --include=dev: the build needs them also where NODE_ENV is `production`.
  const npm = (does) => run('npm', [does, '--include=dev'], {}, output)
  return (await npm('ci')) || npm('install')
}

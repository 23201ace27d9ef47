import { spawn } from 'node:child_process'
import { dirname, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The top of the checkout. */
export const top = resolve(dirname(fileURLToPath(import.meta.url)), '..')

/**
 * Runs a command at the top of the checkout, with this terminal's output (or another file's, by its number) and no input; true if
 * it ended well.
 * npm and npx are .cmd files on Windows, which only a shell can start.
 */
export const run = (command, args, env = {}, output = 'inherit') =>
  new Promise((settle) => {
    const child = spawn(command, args, {
      cwd: top,
      env: { ...process.env, ...env },
      stdio: ['ignore', output, 'inherit'],
      shell: process.platform === 'win32',
    })
    child.once('error', () => settle(false))
    child.once('exit', (code) => settle(code === 0))
  })

/** Runs a command of an installed package. `--no-install`: a missing one is an error, never a download. */
export const runTool = (name, args, env) => run('npx', ['--no-install', name, ...args], env)

// A build that a device can keep: writes the worker that does so beside the page, with the names of all files to keep.
import { createHash } from 'node:crypto'
import { readdirSync, readFileSync, statSync } from 'node:fs'
import { join, resolve } from 'node:path'
import { type Plugin, type Rolldown, transformWithOxc } from 'vite'

const SOURCE = 'src/app/offline/serviceWorker.ts'
/** Only who works on the program reads these; the picture of the README is not shown by the page. */
const LEFT_OUT = /\.map$|^\.vite\/|^planner\.png$|^layout\.schema\.json$/

const filesBelow = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
    statSync(join(folder, name)).isFile(),
  )

const bytesOf = (output: Rolldown.OutputChunk | Rolldown.OutputAsset): string | Uint8Array =>
  output.type === 'chunk' ? output.code : output.source

export const offline = (): Plugin => {
  let publicDir = ''
  return {
    name: 'offline',
    apply: 'build',
    enforce: 'post',
    configResolved(config) {
      publicDir = config.publicDir
    },
    async generateBundle(_, bundle) {
      const hash = createHash('sha256')
      const built = Object.values(bundle).filter(({ fileName }) => !LEFT_OUT.test(fileName))
      const kept = filesBelow(publicDir).filter((file) => !LEFT_OUT.test(file))
      for (const output of built) hash.update(output.fileName).update(bytesOf(output))
      for (const file of kept) hash.update(file).update(readFileSync(join(publicDir, file)))
      const files = [
        './',
        ...built.map(({ fileName }) => `./${fileName}`),
        ...kept.map((file) => `./${file}`),
      ].toSorted()
      const path = resolve(SOURCE)
      const { code } = await transformWithOxc(readFileSync(path, 'utf8'), path)
      const constants = `const BUILD_FILES = ${JSON.stringify(files)}\nconst BUILD_NAME = '${hash.digest('hex').slice(0, 16)}'\n`
      // A script without imports runs in browsers that know no modules in such a worker.
      const source = `(() => {\n${constants}${code.replace(/^export\s*\{\s*\};?$/m, '')}\n})()\n`
      this.emitFile({ type: 'asset', fileName: 'offline.js', source })
    },
  }
}

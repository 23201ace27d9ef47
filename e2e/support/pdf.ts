import { execFileSync, spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { type Picture, readPng } from './png'

/** What the programs of poppler read in a printed file: a reader that knows nothing of the one who wrote it. */

export interface SizePt {
  readonly width: number
  readonly height: number
}

/** .ci/test.mjs installs poppler where it may. */
export const hasPoppler = spawnSync('pdfinfo', ['-v']).error === undefined

const said = (program: string, ...args: string[]): string =>
  execFileSync(program, args, { encoding: 'utf8', maxBuffer: 100_000_000 })

/** The sizes of all pages in their order, points of 1/72 in, as the file itself has them. */
export const boxesIn = (file: string): SizePt[] =>
  [...readFileSync(file, 'latin1').matchAll(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/g)].map(
    ([, width, height]) => ({ width: Number(width), height: Number(height) }),
  )

/** The sizes of all pages in their order, points of 1/72 in. */
export const pageSizes = (file: string): SizePt[] =>
  [
    ...said('pdfinfo', '-f', '1', '-l', '9999', file).matchAll(/^Page +\d+ size: +([\d.]+) x ([\d.]+) pts/gm),
  ].map(([, width, height]) => ({ width: Number(width), height: Number(height) }))

/** Words of the file as a person selects them, a page each. */
export const pageTexts = (file: string): string[] =>
  said('pdftotext', '-layout', file, '-').split('\f').slice(0, -1)

/** Each font: its name, and whether the file carries it. */
export const fontsIn = (file: string): { readonly name: string; readonly isEmbedded: boolean }[] =>
  said('pdffonts', file)
    .split('\n')
    .slice(2)
    .filter((line) => line.trim() !== '')
    .map((line) => {
      const [isEmbedded] = line.trim().split(/\s+/).slice(-5)
      return { name: line.split(/\s+/)[0]!, isEmbedded: isEmbedded === 'yes' }
    })

/** One page as a picture. */
export const pagePicture = (file: string, page: number, dpi: number): Picture => {
  const one = ['-f', String(page), '-l', String(page), '-singlefile']
  execFileSync('pdftoppm', ['-r', String(dpi), '-png', ...one, file, `${file}-${page}`])
  return readPng(readFileSync(`${file}-${page}.png`))
}

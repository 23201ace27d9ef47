// What a visitor downloads before the page shows: each step's entries, all that they import statically, and their styles.
import { readFileSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'

/** The frame of the page; then the plan with the bay on it, which is asked for at once. */
const STEPS = [
  { until: 'before the first paint', keys: ['index.html'], limitKb: 250 },
  { until: 'until the bay is drawn', keys: ['index.html', 'src/canvas/FloorPlan.tsx'], limitKb: 300 },
]
const BYTES_PER_KB = 1000

const dist = resolve(dirname(fileURLToPath(import.meta.url)), '../dist')
const manifest = JSON.parse(readFileSync(join(dist, '.vite/manifest.json'), 'utf8'))

const collect = (key, seen) => {
  if (seen.has(key)) return seen
  seen.add(key)
  for (const imported of manifest[key].imports ?? []) collect(imported, seen)
  return seen
}

const filesOf = (keys) => {
  const all = keys.reduce((seen, key) => collect(key, seen), new Set())
  return new Set([...all].flatMap((key) => [manifest[key].file, ...(manifest[key].css ?? [])]))
}

const kbOf = (file) => gzipSync(readFileSync(join(dist, file))).length / BYTES_PER_KB

for (const { until, keys, limitKb } of STEPS) {
  const rows = [...filesOf(keys)].map((file) => ({ file, kb: kbOf(file) })).sort((a, b) => b.kb - a.kb)
  const totalKb = rows.reduce((sum, { kb }) => sum + kb, 0)
  for (const { file, kb } of rows) console.log(`${kb.toFixed(1).padStart(8)} KB  ${file}`)
  console.log(`${totalKb.toFixed(1).padStart(8)} KB gzip ${until}, limit ${limitKb} KB`)
  if (totalKb > limitKb) process.exitCode = 1
}

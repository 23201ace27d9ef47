// What a visitor downloads before the first paint: the entry, all that it imports statically, and their styles.
import { readFileSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'

const LIMIT_KB = 250
const BYTES_PER_KB = 1000

const dist = resolve(dirname(fileURLToPath(import.meta.url)), '../dist')
const manifest = JSON.parse(readFileSync(join(dist, '.vite/manifest.json'), 'utf8'))

const collect = (key, seen = new Set()) => {
  if (seen.has(key)) return seen
  seen.add(key)
  for (const imported of manifest[key].imports ?? []) collect(imported, seen)
  return seen
}

const files = new Set(
  [...collect('index.html')].flatMap((key) => [manifest[key].file, ...(manifest[key].css ?? [])]),
)
const rows = [...files]
  .map((file) => ({ file, kb: gzipSync(readFileSync(join(dist, file))).length / BYTES_PER_KB }))
  .sort((a, b) => b.kb - a.kb)
const totalKb = rows.reduce((sum, { kb }) => sum + kb, 0)

for (const { file, kb } of rows) console.log(`${kb.toFixed(1).padStart(8)} KB  ${file}`)
console.log(`${totalKb.toFixed(1).padStart(8)} KB gzip before the first paint, limit ${LIMIT_KB} KB`)
if (totalKb > LIMIT_KB) process.exit(1)

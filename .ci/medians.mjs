// Prints what `vitest bench` measured as one table: the median is what a person feels, the 99th percentile what annoys.
import { readFileSync } from 'node:fs'
import { cpus } from 'node:os'
import { join } from 'node:path'
import { top } from './command.mjs'

const { files } = JSON.parse(readFileSync(join(top, '.cache/bench.json'), 'utf8'))
const benchmarks = files.flatMap(({ groups }) => groups.flatMap((group) => group.benchmarks))
const width = Math.max(...benchmarks.map(({ name }) => name.length))
const ms = (value) => value.toFixed(3).padStart(10)

console.log(`\n${cpus().length} x ${cpus()[0].model}, Node ${process.versions.node}; ms`)
console.log(`${''.padEnd(width)}    median       p99   samples`)
for (const { name, median, p99, sampleCount } of benchmarks)
  console.log(`${name.padEnd(width)}${ms(median)}${ms(p99)}${String(sampleCount).padStart(10)}`)

// Pairs of the same job, ours and another engine's, are told as a ratio of medians of the same run.
const other = ', by the independent engine'
for (const { name, median } of benchmarks) {
  const ours = benchmarks.find((each) => `${each.name}${other}` === name)
  if (ours)
    console.log(`${ours.name}: ${(median / ours.median).toFixed(1)} times as fast as the independent engine`)
}

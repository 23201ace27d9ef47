import type { PumpFacts } from '../../model/supplyFacts'
import type { HeadBoxWater, PumpWater } from '../../model/water'
import type { Writer } from '../../units/writer'
import { dutyFor, type PumpStudy, type Trace } from './pumpStudy'

/** A pump fits where the towers get what is wanted to within this share of it: what a hand-set valve holds. */
const FITS_WITHIN = 0.05

const aside = (trace: Trace, targetLph: number, { flowTotal, pumpHead }: Writer): string => {
  const duty = dutyFor(trace, targetLph)
  return duty
    ? `One that gives ${flowTotal(duty.flowLph)} at ${pumpHead(duty.headMm)} would do`
    : 'It is off by more than a third of its speed'
}

/** Whether the pump suits the bay, by how much not, and which would. */
export const pumpVerdict = (
  pump: PumpWater,
  facts: PumpFacts,
  { clean }: PumpStudy,
  targetLph: number,
  writer: Writer,
): string => {
  const { flow, pumpHead, share } = writer
  const shutOffMm = facts.curve[0]?.headMm ?? 0
  if (!pump.isLifting)
    return `The pump can’t lift the water to the tube ends: they lie ${pumpHead(pump.staticMm)} above the water that it draws from, and it gives ${pumpHead(shutOffMm)} at most. Take one with more head, or lower the racks.`
  const meanLph = clean.own?.meanLph ?? 0
  const ratio = meanLph / targetLph
  const filter = facts.filterDirtyK > 0 ? 'with its filter clean ' : ''
  const gets = `${filter}a tower gets ${flow(meanLph)} on average where ${flow(targetLph)} is wanted`
  if (Math.abs(ratio - 1) <= FITS_WITHIN) return `The pump fits: ${gets}.`
  return ratio < 1
    ? `The pump is too small by ${share(1 - ratio)}: ${gets}. ${aside(clean, targetLph, writer)}.`
    : `The pump is larger than need be by ${share(ratio - 1)}: ${gets}. ${aside(clean, targetLph, writer)}; else valves must burn the rest.`
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0)

/** Of a bay whose towers are fed from head boxes: a pump has only to keep them full, whatever the towers get. */
export const boxVerdict = (boxes: readonly HeadBoxWater[], { flowTotal }: Writer): string => {
  const inLph = sumOf(boxes.map((box) => box.inLph))
  const outLph = sumOf(boxes.map((box) => box.outLph))
  const told = `The pump fills a head box and the box feeds the towers: it gets ${flowTotal(inLph)} and gives ${flowTotal(outLph)}`
  return inLph >= outLph
    ? `${told}; the rest falls back to the pit.`
    : `${told}, so it runs dry. Take a larger pump.`
}

export interface Comparison {
  readonly columns: readonly string[]
  readonly rows: readonly (readonly string[])[]
}

/** The pump with its filter clean and due for cleaning, side by side. */
export const filterRows = ({ clean, dirty }: PumpStudy, writer: Writer): Comparison => {
  const { flow, flowTotal, pumpHead, watts } = writer
  const row = (name: string, words: (trace: NonNullable<Trace['own']>) => string) => [
    name,
    ...[clean, dirty].map(({ own }) => (own ? words(own) : 'not computed')),
  ]
  return {
    columns: ['', 'Filter clean', 'Filter due for cleaning'],
    rows: [
      row('Pump gives', ({ flowLph }) => flowTotal(flowLph)),
      row('against', ({ headMm }) => pumpHead(headMm)),
      row('Power in the water', (own) => watts(own.watts)),
      row('Mean tower', ({ meanLph }) => flow(meanLph)),
      row('Least tower', ({ leastLph }) => flow(leastLph)),
    ],
  }
}

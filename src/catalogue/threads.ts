import { inches } from '../units/length'
import { fittingOf, sizeOf } from './fittings'

/** Outside of a pipe thread by its nominal size, mm. Source: ASME B1.20.1, pipe threads, general purpose, from memory. */
const OUTSIDE_MM: Readonly<Record<string, number>> = {
  '1/2': inches(0.84),
  '3/4': inches(1.05),
  '1': inches(1.315),
  '1-1/4': inches(1.66),
  '1-1/2': inches(1.9),
  '2': inches(2.375),
}

/** Threads outside, which the tape is wound on; what they go into has its threads inside. */
const THREADS: Readonly<Record<string, number>> = { adapter: 1, nipple: 2 }

/** Turns of tape on a plastic thread. Common practice, no source. */
const TURNS = 4

/** PTFE tape on the threads of one fitting, mm; 0 for one without a thread outside. */
export const tapeOf = (item: string): number => {
  const { noun } = fittingOf(item)
  const threads = THREADS[noun]
  if (threads === undefined) return 0
  return threads * TURNS * Math.PI * (OUTSIDE_MM[sizeOf(item.slice(noun.length + 1))] ?? 0)
}

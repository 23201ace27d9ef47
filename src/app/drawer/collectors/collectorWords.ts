import type { CollectorChoice } from '../../../evaluate/returns/collectors'
import { drainPipeOf } from '../../../catalogue/pipe'
import { FALL_DEPTH_MM, LADDER_DEPTH_MM, SHORING_DEPTH_MM } from '../../../model/digCautions'
import type { Writer } from '../../../units/writer'

type Told = Pick<Writer, 'length' | 'onTape' | 'fall' | 'flowTotal' | 'share' | 'earth'>

const AXES = { x: 'east and west', y: 'north and south' } as const

/** Ways under one heading. */
export const wayWords = ({ way, axis }: CollectorChoice): string => {
  if (way === 'as-drawn') return 'As drawn'
  const along = axis === undefined ? '' : AXES[axis]
  return way === 'collected' ? `Collectors, ${along}` : `Drains carried on, ${along}`
}

/** What lies in the ground, such as `8 in drain pipe at 1/16 in/ft`. */
export const pipeWords = ({ pipe, slopeMmPerM }: CollectorChoice, { fall }: Told): string =>
  pipe === undefined || slopeMmPerM === undefined
    ? 'each drain to its pit'
    : `${drainPipeOf(pipe).title} at ${fall(slopeMmPerM)}`

/** What digging so deep asks for beyond care; empty above all thresholds. */
export const depthAsks = (depthMm: number): string => {
  if (depthMm >= SHORING_DEPTH_MM) return 'sides held'
  if (depthMm >= LADDER_DEPTH_MM) return 'ladder'
  return depthMm >= FALL_DEPTH_MM ? 'fenced' : ''
}

/** The same as a sentence. */
const ASKED: Readonly<Record<string, string>> = {
  fenced: ' A dig so deep is fenced or covered.',
  ladder: ' A dig so deep asks for a ladder and for a competent person’s look at its sides every day.',
  'sides held': ' A dig so deep asks for sides sloped back or shored before anyone goes in.',
}

const deepWords = (depthMm: number, { onTape }: Told): string => {
  const asks = depthAsks(depthMm)
  return asks === '' ? onTape(depthMm) : `${onTape(depthMm)}, ${asks}`
}

export const COLLECTOR_COLUMNS = [
  'Pits',
  'Carries',
  'Full',
  'State',
  'Falls by',
  'Deepest trench',
  'Deepest pit',
  'To dig',
  'Pipe laid',
] as const

/** One choice in words, but for its name and its state. */
export const collectorRow = (choice: CollectorChoice, words: Told) => ({
  pits: String(choice.pits),
  carries: words.flowTotal(choice.flowLph),
  full: choice.share >= 1 ? 'full' : words.share(choice.share),
  fall: words.onTape(choice.fallMm),
  trench: deepWords(choice.deepestTrenchMm, words),
  pit: deepWords(choice.deepestPitMm, words),
  dig: words.earth(choice.digL),
  pipe: words.length(choice.pipeMm),
})

/** Of the choices that run well, the one whose deepest pit is least, among those with fewer pits than drawn. */
const shallowest = (choices: readonly CollectorChoice[]): CollectorChoice | undefined =>
  choices
    .filter(({ way, state }) => way !== 'as-drawn' && state === 'Falls')
    .toSorted((a, b) => a.deepestPitMm - b.deepestPitMm)[0]

const more = (a: number, b: number): string => (a >= b ? 'more' : 'less')

/** What the comparison comes to, in plain words. */
export const choiceSentence = (choices: readonly CollectorChoice[], words: Told): string => {
  const [drawn] = choices
  if (!drawn) return ''
  if (choices.length === 1)
    return drawn.pits === 1
      ? 'One pit takes all the water of this bay, so there is nothing to join up.'
      : 'No two pits of this bay stand in one line, so no straight line would take their drains together.'
  const best = shallowest(choices)
  if (!best)
    return 'No pipe up to 8 in takes the water together without backing up: the pits as they are drawn are the better way.'
  const dig = Math.abs(best.digL - drawn.digL)
  const what = `${wayWords(best).toLowerCase()} in ${pipeWords(best, words)}`
  const pits = `${best.pits} ${best.pits === 1 ? 'pit' : 'pits'} instead of ${drawn.pits}`
  const deep = `${words.onTape(best.deepestPitMm)} deep instead of ${words.onTape(drawn.deepestPitMm)}`
  const asks = ASKED[depthAsks(best.deepestPitMm)] ?? ''
  const asked = depthAsks(best.deepestPitMm) === depthAsks(drawn.deepestPitMm) ? '' : asks
  return `The gentlest on the spade is ${what}: ${pits}, the deepest ${deep}, and ${words.earth(dig)} ${more(best.digL, drawn.digL)} to dig.${asked}`
}

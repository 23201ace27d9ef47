import type { Words } from '../../checks/context'
import { inches } from '../../units/length'
import { gallons } from '../../units/volume'
import type { StepsPiece } from '../piece'
import type { GutterRun } from './gutterRuns'

type Step = StepsPiece['steps'][number]

/** Plastic grows: so much stays open in a joiner. Common practice, no source. */
const OPEN_MM = inches(1 / 4)
/** A puddle deeper than this breeds flies and rots roots. Common practice, no source. */
const PUDDLE_MM = inches(1 / 8)
/** Poured in at the high end, it has run off within a minute. Common practice, no source. */
const POURED_L = gallons(1)

const restStep = ({ shims, inRow }: GutterRun, { onTape }: Words): Step => {
  const [first] = shims
  const last = shims.at(-1)
  return inRow && first && last
    ? {
        key: 'shims',
        text: `Fix the shims on every bearer, thickest below, from ${onTape(first.shimMm)} at bearer 1 to ${onTape(last.shimMm)} at bearer ${shims.length}. Sight along their tops: one straight fall, and no bearer that stands out of it.`,
      }
    : {
        key: 'blocks',
        text: 'Set the blocks and pack each to the underside of the trough. Sight along their tops: one straight fall.',
      }
}

const outletStep = ({ outletFromHighMm, inRow }: GutterRun, write: Words): Step => ({
  key: 'outlet',
  text: `Drill the outlet on the ground, ${write.length(outletFromHighMm)} from the high end of the assembled line and never over a ${inRow ? 'bearer' : 'block'}. Wipe off all swarf.`,
})

const joinStep = ({ lengths, outletBoreMm }: GutterRun, write: Words): Step => {
  const laps = `each length laps over the one below it, so that water never meets an edge; leave ${write.onTape(OPEN_MM)} open in it for the gutter to grow`
  return {
    key: 'join',
    text:
      `Seal the end caps and the outlet (${write.onTape(outletBoreMm)} inside)` +
      (lengths.length > 1 ? `, then the joiners with the flow: ${laps}.` : '.'),
  }
}

/** How a line of gutter is hung, in order, with its own numbers. Common practice, no source. */
export const gutterSteps = (run: GutterRun, write: Words): readonly Step[] => [
  restStep(run, write),
  outletStep(run, write),
  joinStep(run, write),
  ...(run.inRow
    ? [
        {
          key: 'hang',
          text: `Lay each line on its shims with its high end ${write.onTape(run.inRow.beginsMm)} from the row’s high end. One strap on each bearer, loose enough to slide; a screw goes through the back lip only, never through the bottom.`,
        },
      ]
    : []),
  { key: 'dry', text: 'Let the sealant dry 24 hours.' },
  {
    key: 'pour',
    text: `Pour ${write.volume(POURED_L)} in at the high end: it is gone within 60 seconds and leaves no puddle over ${write.onTape(PUDDLE_MM)}. Then cover what lies in the light, or algae will grow.`,
  },
]

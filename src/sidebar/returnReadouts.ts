import { isOverHalf } from '../model/drainState'
import { stateWords, type StateWord } from '../model/finding'
import type { PartId } from '../model/ids'
import type { DrainReturn, PitReturn, Returns, Transit, TroughReturn } from '../model/returns'
import { feetPerSecond } from '../units/velocity'
import type { Writer } from '../units/writer'
import type { Readout } from './readouts'

/** What is known of the water on its way home through one part. */
export interface ReturnReadouts {
  /** Of a drain or a pit. */
  readonly state?: { readonly word: StateWord; readonly rank: number }
  readonly lines: readonly Readout[]
  /** The view of the drawer that shows more. */
  readonly view?: 'cut' | 'stop'
}

const NOTHING: ReturnReadouts = { lines: [] }

const SCOUR_MS = feetPerSecond(2)

/** Why slow water in a drain is no fault: said wherever the water runs slower than scours. */
const scourWords = ({ scourLph, fullest }: DrainReturn, { flowTotal, velocity }: Writer): string => {
  const wants = `${velocity(SCOUR_MS)}, at which water scours a pipe,`
  const how =
    scourLph > 0 ? `wants ${flowTotal(scourLph)} at this fall` : 'is more than any water at this fall runs at'
  const isFull = isOverHalf(fullest.share)
  return `Slow${isFull ? '' : ', not full'}: ${wants} ${how}. What settles is rodded out at the cleanouts.`
}

const drainLines = (drain: DrainReturn, writer: Writer): Readout[] => {
  const { flowLph, fullest, halfFullLph, scourLph } = drain
  const { flowTotal, share, velocity } = writer
  const carries = halfFullLph > 0 ? flowTotal(halfFullLph) : 'nothing: it does not fall'
  if (flowLph <= 0)
    return [
      { name: 'Water in it', value: 'none comes in' },
      { name: 'Half full it carries', value: carries },
    ]
  const isSlow = scourLph === 0 || fullest.flowLph < scourLph
  return [
    { name: 'Flow at its low end', value: flowTotal(flowLph) },
    { name: 'Where it is fullest', value: `${share(fullest.share)} full` },
    { name: 'Half full it carries', value: carries },
    {
      name: 'Velocity there',
      value: velocity(fullest.velocityMS),
      ...(isSlow && { why: scourWords(drain, writer) }),
    },
    { name: 'Air over the water', value: `${share(1 - fullest.share)} of the bore` },
  ]
}

const FROM: readonly (readonly [string, Exclude<keyof Transit, 'totalL'>, string?])[] = [
  ['of it from towers', 'towersL'],
  [
    'from troughs',
    'troughsL',
    'An upper estimate: reckoned as deep over their whole length as at their outlets.',
  ],
  ['from drains', 'drainsL', 'A quarter full, or what runs in them if that is more.'],
  ['from mains', 'mainsL'],
  ['from laterals and risers', 'lateralsL'],
]

const transitLines = (transit: Transit, { volume }: Writer): Readout[] =>
  FROM.filter(([, key]) => transit[key] > 0).map(([name, key, why]) => ({
    name,
    value: volume(transit[key]),
    ...(why !== undefined && { why }),
  }))

const pitLines = (pit: PitReturn, writer: Writer): Readout[] => {
  const { flowTotal, volume } = writer
  return [
    { name: 'Drains bring', value: flowTotal(pit.inLph) },
    { name: 'Comes home when the pump stops', value: volume(pit.transit.totalL) },
    ...transitLines(pit.transit, writer),
    { name: 'With a quarter more', value: volume(pit.designL) },
    { name: 'Room over the running level', value: volume(Math.max(pit.roomL, 0)) },
    { name: 'Pump off to running', value: volume(pit.swingL) },
    { name: 'Under pump off', value: volume(pit.deadL) },
    { name: 'Overflow to rim', value: volume(pit.freeboardL) },
    { name: 'A stuck make-up valve brings, until someone comes', value: volume(pit.surgeL) },
  ]
}

const REGIMES: Readonly<Record<TroughReturn['outletRegime'], string>> = {
  weir: 'Its rim holds the water back, as a weir.',
  orifice: 'Its bore holds the water back, as a hole.',
}

const WANTED = 'No water is solved for it: reckoned with the flow that is wanted of each tower.'

/** Only where water drips in. */
const runningLines = (trough: TroughReturn, { onTape, length, flowTotal }: Writer): Readout[] => {
  const { flowLph, ventedLph } = trough
  const gulps = flowLph > ventedLph ? { why: 'More than that comes: it gulps air.' } : {}
  return [
    {
      name: `Line ${trough.line} carries most`,
      value: flowTotal(flowLph),
      ...(trough.isWanted && { why: WANTED }),
    },
    {
      name: 'Deepest water',
      value: `${onTape(trough.deepestMm)}, ${length(trough.deepestAtMm)} from the high end`,
    },
    {
      name: 'Water over the outlet',
      value: onTape(trough.outletDepthMm),
      why: REGIMES[trough.outletRegime],
    },
    { name: 'Outlet swallows its air up to', value: flowTotal(ventedLph), ...gulps },
    { name: 'Water to lip', value: onTape(trough.freeboardMm) },
    { name: 'with an outlet blocked for a minute', value: onTape(trough.blockedFreeboardMm) },
    ...(trough.tipAirMm === undefined
      ? []
      : [{ name: 'Tips over the water', value: onTape(trough.tipAirMm) }]),
  ]
}

const GROWTH =
  'Plastic, 30 °C (54 °F) from a frosty night to a hot noon: an assumption. Screwed tight it bows; leave the room at each joiner.'

/** Only of gutters that are joined. */
const growthLines = ({ joinerGrowthMm, joinerRoomMm }: TroughReturn, { onTape }: Writer): Readout[] =>
  joinerRoomMm > 0
    ? [
        {
          name: 'A section grows in the heat',
          value: `${onTape(joinerGrowthMm)}, joiners have ${onTape(joinerRoomMm)}`,
          why: GROWTH,
        },
      ]
    : []

const troughLines = (trough: TroughReturn, writer: Writer): Readout[] => [
  ...(trough.flowLph > 0 ? runningLines(trough, writer) : []),
  { name: 'Puddle behind the outlet', value: writer.onTape(trough.puddleMm) },
  ...growthLines(trough, writer),
]

/** What the water on its way home does in a part; nothing of one that no such water passes. */
export const returnReadouts = (returns: Returns, part: PartId, writer: Writer): ReturnReadouts => {
  const drain = returns.drains.get(part)
  if (drain) {
    const state = { word: drain.state, rank: stateWords.drain.indexOf(drain.state) }
    return { state, lines: drainLines(drain, writer), view: 'cut' }
  }
  const pit = returns.pits.get(part)
  if (pit) {
    const state = { word: pit.state, rank: stateWords.pit.indexOf(pit.state) }
    return { state, lines: pitLines(pit, writer), view: 'stop' }
  }
  const trough = returns.troughs.get(part)
  return trough ? { lines: troughLines(trough, writer), view: 'cut' } : NOTHING
}

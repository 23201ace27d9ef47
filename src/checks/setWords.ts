import { outletOf } from '../catalogue/outlet'
import { drainPipes, polyOf } from '../catalogue/pipe'
import { pumpCurveRowOf } from '../catalogue/pumpCurves'
import type { Mend } from '../model/finding'
import type { Words } from './context'

type SetMend = Mend & { readonly kind: 'set' }
type Say = (name: string, value: SetMend['value'], words: Words) => string

const pipe = (value: SetMend['value']): string => polyOf(String(value)).title

/** A drain line and a main both have a field for their pipe. */
const lineOrMain = (key: string): string =>
  (drainPipes.find((drain) => drain.key === key) ?? polyOf(key)).title

/** What splitting a row's feed once or twice would do. */
export const splitWords = (feed: string, name: string): string =>
  feed === 'double-split' ? `Let ${name} be fed at its quarter points` : `Let ${name} be fed in the middle`

/** What one press does to a field, by the field's name. */
const SAYS: Readonly<Record<string, Say>> = {
  slope: (name, value, { fall }) => `Give ${name} a fall of ${fall(Number(value))}`,
  startInvertMm: (name, value, { level }) =>
    value === null ? `Start ${name} as high as its cover allows` : `Start ${name} at ${level(Number(value))}`,
  cleanouts: (name) => `Give ${name} its cleanouts`,
  firstStickMm: (name, value, { onTape }) =>
    value === null
      ? `Start ${name} with a whole stick at its low end`
      : `Start ${name} with a stick of ${onTape(Number(value))} at its low end`,
  overflowMm: (name, value, { level }) => `Set the overflow of ${name} to ${level(Number(value))}`,
  outletBore: (name, value) => `Give ${name} a ${outletOf(String(value)).title}`,
  outletFromLowMm: (name, value, { onTape }) =>
    `Set the outlet of ${name} ${onTape(Number(value))} from its low end`,
  overflowBore: (name, value) => `Give ${name} an overflow of ${value} in pipe`,
  riserMm: (name) => `Let the risers of ${name} be as long as the levels ask`,
  bracing: (name) => `Give ${name} braces along the row and across it`,
  hold: (name) => `Give ${name} ground anchors at its braced pairs`,
  carriedBy: (name) => `Set the rails of ${name} on risers that stand on the floor`,
  treated: (name) => `Let only the runners and base pieces of ${name} be preserved`,
  drips: (name) => `Give the conduit of ${name} drip ties and end caps`,

  feed: (name, value) => splitWords(String(value), name),
  lateral: (name, value) => `Give ${name} laterals of ${pipe(value)}`,
  header: (name, value) =>
    value === 'next-up'
      ? `Give ${name} a header one size over its laterals`
      : `Give ${name} a header and riser pipe of ${pipe(value)}`,
  microtube: (name, value) => `Give ${name} tubes of ${pipe(value)}`,
  microtubeMm: (name, value, { onTape }) => `Give ${name} tubes of ${onTape(Number(value))}`,
  trimTurns: (name) => `Set the trim valve of ${name} wide open`,
  valve: (name) => `Set the ball valve of ${name} open`,
  valveSet: (name) => `Give ${name} a valve set of its own`,
  waterFrom: (name) => `Let ${name} take its water from the nearest main`,
  flushEnd: (name) => `Give the laterals of ${name} flush caps`,
  sightTube: (name) => `Give the laterals of ${name} sight tubes`,
  lateralAt: (name) => `Lay the laterals of ${name} above the bars`,
  lateralRiseMm: (name) => `Lay the laterals of ${name} level`,
  lateralSagMm: (name, value, { onTape }) =>
    `Let the laterals of ${name} sag no more than ${onTape(Number(value))}`,
  inlet: (name, value) => `Let water into ${name} at its ${value === 'start' ? 'start' : 'end'}`,

  pipe: (name, value) => `Give ${name} ${lineOrMain(String(value))}`,
  discharge: (name, value) => `Give ${name} a discharge of ${pipe(value)}`,
  pump: (name, value) => `Give ${name} a ${pumpCurveRowOf(String(value)).title.toLowerCase()}`,
  pumpOffMm: (name, value, { level }) => `Set the pump-off level of ${name} to ${level(Number(value))}`,
  intakeMm: (name, value, { level }) => `Set the pump intake of ${name} to ${level(Number(value))}`,
  bottomMm: (name, value, { level }) => `Set the bottom of ${name} to ${level(Number(value))}`,
  waterAboveFloorMm: (name, value, { length }) =>
    `Set the water of ${name} to ${length(Number(value))} over the floor`,
}

/** What a mend that sets a field would do: `Give N1 laterals of 1 in poly pipe`. */
export const setWords = ({ part, field, value }: SetMend, words: Words): string => {
  const say = SAYS[field]
  return say ? say(words.name(part), value, words) : `Set ${field} of ${words.name(part)}`
}

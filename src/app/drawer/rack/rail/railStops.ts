import type { Settings } from '../../../../layout/settings'
import type { RailLine } from '../../../../model/strength'
import type { Writer } from '../../../../units/writer'
import type { ChartStop } from '../../chart/chartData'
import { lifts, type NamedSpan, type Reaction, sagWords, stockWords } from './railWords'

const spanStop = ({ name, span }: NamedSpan, settings: Settings, write: Writer): ChartStop => {
  const what = span.isOverhang ? `Overhang, ${name}` : `Span ${name}`
  const found =
    span.used === Infinity
      ? 'rests on too little'
      : `${write.stress(span.stressMpa)}, ${sagWords(span, settings, write)}`
  return {
    x: (span.fromU + span.toU) / 2,
    words: `${what}, ${write.onTape(span.toU - span.fromU)} of ${stockWords(span.stock)}: ${found}. ${span.state}.`,
  }
}

const riserStop = (reaction: Reaction, write: Writer): ChartStop => {
  const lift = lifts(reaction) ? `, and is lifted by up to ${write.force(-reaction.leastN)}` : ''
  return {
    x: reaction.u,
    words: `Riser at ${write.length(reaction.u)}: carries ${write.force(reaction.fullN)} with all hung, ${write.force(reaction.mostN)} at most${lift}.`,
  }
}

/** Where the read-out of a rail stops: every span and every riser, along it. */
export const railStops = (
  { reactions }: RailLine,
  named: readonly NamedSpan[],
  settings: Settings,
  write: Writer,
): readonly ChartStop[] =>
  [
    ...named.map((span) => spanStop(span, settings, write)),
    ...reactions.map((reaction) => riserStop(reaction, write)),
  ].toSorted((a, b) => a.x - b.x)

import { stockOf } from '../catalogue/stock'
import type { Built, Stick } from '../model/built'
import type { Finding } from '../model/finding'
import { lengthAsMeasured } from '../model/measuredStock'
import { rememberEach } from '../model/remember'
import type { Site } from '../model/site'
import type { BayRule } from './context'
import { CLOSE_MM, found, inFeet, term } from './found'

const RULE = 'stock-length-max'

type Offered = Pick<Site, 'lumberMm' | 'measured'>

/** What a tape finds of the longest length on offer, mm. */
const longestOf = (stock: string, { lumberMm, measured }: Offered): number =>
  lengthAsMeasured(
    Math.max(...(stock.startsWith('lumber-') ? lumberMm : stockOf(stock).lengthsMm)),
    stock,
    measured,
  ).measuredMm

const findingOf = (part: string, stick: Stick, longest: number, count: number): Finding =>
  found({
    rule: RULE,
    subject: 'fit',
    state: 'Clash',
    parts: [part],
    detail: stick.mark,
    at: { x: (stick.from.x + stick.to.x) / 2, y: (stick.from.y + stick.to.y) / 2 },
    measured: inFeet(stick.lengthMm),
    limit: inFeet(longest),
    facts: { mark: stick.mark, stock: stockOf(stick.stock).title, count },
    terms: [term('Over the stock', inFeet(stick.lengthMm - longest))],
  })

const ofPart = ({ part, sticks }: Built, site: Offered): readonly Finding[] => {
  const worst = new Map<string, { stick: Stick; count: number }>()
  for (const stick of sticks) {
    if (stick.lengthMm <= longestOf(stick.stock, site) + CLOSE_MM) continue
    const known = worst.get(stick.mark)
    worst.set(stick.mark, {
      stick: known && known.stick.lengthMm >= stick.lengthMm ? known.stick : stick,
      count: (known?.count ?? 0) + 1,
    })
  }
  return [...worst.values()].map(({ stick, count }) =>
    findingOf(part, stick, longestOf(stick.stock, site), count),
  )
}

const inPart = rememberEach<Built, Offered, readonly Finding[]>(ofPart)

/** No piece longer than the stock it is cut from. */
export const stockLengthMax: BayRule = {
  over: 'bay',
  id: RULE,
  title: 'Piece and stock',
  limit: 'No piece longer than the longest stock on offer',
  source: 'Stock lengths of the catalogue and the bay’s settings, as measured',
  mending: 'Offer longer stock in the settings, or shorten the member.',
  check: ({ built, site }) => built.flatMap((each) => inPart(each, site)),
  say: ({ parts, measured, limit, facts }, { length, name }) =>
    `${facts['count']} ${facts['mark']} of ${name(parts[0] ?? '')} are ${length(measured.value)} long; the longest ${facts['stock']} on offer is ${length(limit.value)}.`,
}

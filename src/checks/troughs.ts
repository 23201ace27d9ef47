import type { Point } from '../geometry/point'
import type { Built } from '../model/built'
import type { TroughReturn } from '../model/returns'
import type { TroughFacts } from '../model/troughFacts'
import type { Bay } from './context'

/** A row with troughs or a lone trough, and what runs in it. */
export interface WetTrough {
  readonly built: Built
  readonly facts: TroughFacts
  readonly trough: TroughReturn
}

export const troughsOf = ({ built, returns }: Bay): WetTrough[] =>
  built.flatMap((b) => {
    const trough = returns.troughs.get(b.part)
    return trough && b.trough ? [{ built: b, facts: b.trough, trough }] : []
  })

/** Where a trough lets its water down, on the floor. */
export const outletAt = ({ mouths }: Built, line: number): Point => {
  const outlet = mouths.find((mouth) => mouth.role === 'trough-outlet' && mouth.line === line)
  return outlet ? { x: outlet.at.x, y: outlet.at.y } : { x: 0, y: 0 }
}

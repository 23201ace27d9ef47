import type { ReactNode } from 'react'

/**
 * Small plan symbols for the shelf, 32 x 24, in the inks of the floor plan: what a thing looks like from above.
 * `s-*` classes give the pen; shapes without one are drawn in ink.
 */

/** A row of tower dots. */
const dots = (y: number, xs: readonly number[]): ReactNode =>
  xs.map((x) => <circle key={x} cx={x} cy={y} r="1.6" className="s-crop" />)

const rails = (x0: number, x1: number): ReactNode => (
  <path className="s-steel" d={`M${x0} 8H${x1}M${x0} 16H${x1}`} />
)

const frames = (xs: readonly number[]): ReactNode => (
  <path className="s-timber" d={xs.map((x) => `M${x} 4.5V19.5`).join('')} />
)

const rackRow = (
  <>
    {rails(2, 30)}
    {frames([3, 11.5, 20.5, 29])}
    {dots(12, [7, 16, 25])}
  </>
)

const singleRack = (
  <>
    {rails(9, 23)}
    {frames([10, 22])}
    {dots(12, [13.5, 18.5])}
  </>
)

const lowRack = (
  <>
    <path className="s-steel" d="M2 9.5H16M15 9H30M2 14.5H16M15 15H30" />
    {frames([3, 16, 29])}
    {dots(12, [7.5, 11.5, 20.5, 24.5])}
  </>
)

const trough = (
  <>
    <rect className="s-water" x="3" y="9" width="26" height="6" />
    <circle cx="25" cy="12" r="1.4" />
  </>
)

const drain = (
  <>
    <path className="s-water s-dashed" d="M2.5 12H25" />
    <path className="s-water" d="M23 8 29 12 23 16" />
  </>
)

const pit = (
  <>
    <rect x="6" y="5" width="20" height="14" />
    <path className="s-water" d="M8.5 16.5 17 7.5M13 16.5 21.5 7.5M17.5 16.5 23.5 10" />
  </>
)

const roundPit = (
  <>
    <circle cx="16" cy="12" r="9" />
    <path className="s-water" d="M9.6 5.6 22.4 18.4M22.4 5.6 9.6 18.4" />
  </>
)

const leaningPit = (
  <>
    <rect x="3" y="3" width="26" height="18" />
    <rect className="s-dashed" x="9" y="8" width="14" height="8" />
    <path className="s-water" d="M3 3 9 8M29 3 23 8M3 21 9 16M29 21 23 16" />
  </>
)

/** From the side, as it stands on the floor or in it. */
const toteAt = (y: number): ReactNode => (
  <>
    <path d={`M7 ${y}H25L23.5 ${y + 11}H8.5z`} />
    <path className="s-water" d={`M8.5 ${y + 4}H23.5`} />
  </>
)

const toteOnFloor = (
  <>
    {toteAt(7)}
    <path className="s-wall" d="M2 20H30" />
  </>
)

const toteInFloor = (
  <>
    {toteAt(8)}
    <path className="s-wall" d="M1 10H6.5M25.5 10H31" />
  </>
)

/** Pipe with the bow-tie valve of the public drawing conventions. */
const main = <path className="s-water" d="M2 12H11M21 12H30M11 8 21 16V8L11 16z" />

/** An open tank with what goes over its lip. */
const headBox = (
  <>
    <rect x="7" y="5" width="14" height="14" />
    <path className="s-water" d="M9.5 9H18.5M9.5 12H18.5M9.5 15H18.5M21 12H27V19" />
  </>
)

const post = (
  <>
    <rect className="s-solid" x="12" y="8" width="8" height="8" />
    <circle cx="16" cy="12" r="9" className="s-dashed" />
  </>
)

const heater = (
  <>
    <rect x="8" y="5" width="14" height="14" />
    <path d="M11 9h8M11 12h8M11 15h8M24.5 8.5v7M27.5 9.5v5" />
  </>
)

const panel = (
  <>
    <rect className="s-solid" x="7" y="5" width="4" height="14" />
    <rect className="s-dashed" x="11" y="4" width="14" height="16" />
  </>
)

const tank = (
  <>
    <circle cx="16" cy="12" r="9" />
    <circle cx="16" cy="12" r="6.5" className="s-water" />
  </>
)

const tap = (
  <>
    <circle cx="11" cy="12" r="4" />
    <path className="s-water" d="M15 12h6c2 0 3 1 3 3v2" />
  </>
)

const floorDrain = (
  <>
    <rect x="8" y="4" width="16" height="16" />
    <path className="s-water" d="M8 4 24 20M24 4 8 20" />
    <circle cx="16" cy="12" r="3" />
  </>
)

const box = <path d="M6 5H26V19H6zM6 5 26 19" />

const door = (
  <>
    <path d="M2 18H8M24 18H30" className="s-wall" />
    <path d="M8 18V2" />
    <path d="M8 2A16 16 0 0 1 24 18" className="s-dashed" />
  </>
)

const doubleDoor = (
  <>
    <path d="M2 18H6M26 18H30" className="s-wall" />
    <path d="M6 18V8M26 18V8" />
    <path d="M6 8A10 10 0 0 1 16 18A10 10 0 0 1 26 8" className="s-dashed" />
  </>
)

const gap = (
  <>
    <path d="M2 12H9M23 12H30" className="s-wall" />
    <path d="M9 8V16M23 8V16" />
  </>
)

const byPreset: Readonly<Record<string, ReactNode>> = {
  'single-rack': singleRack,
  'low-rack': lowRack,
  post,
  heater,
  panel,
  tank,
  tap,
  'floor-drain': floorDrain,
  'sump-round': roundPit,
  'sump-battered': leaningPit,
  'tote-on-floor': toteOnFloor,
  'tote-in-floor': toteInFloor,
  'double-door': doubleDoor,
  gap,
}

const byKind: Readonly<Record<string, ReactNode>> = {
  'rack-row': rackRow,
  trough,
  'drain-line': drain,
  sump: pit,
  main,
  'head-box': headBox,
  obstacle: box,
  opening: door,
}

interface PartSymbolProps {
  readonly kind: string
  readonly preset: string
}

/** The symbol of a shelf item: its own, or that of its kind. */
export function PartSymbol({ kind, preset }: PartSymbolProps) {
  return (
    <svg className="symbol" viewBox="0 0 32 24" width="36" height="27" aria-hidden="true">
      {byPreset[preset] ?? byKind[kind] ?? box}
    </svg>
  )
}

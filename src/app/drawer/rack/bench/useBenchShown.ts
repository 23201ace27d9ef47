import { useCallback, useMemo, useState } from 'react'
import type { Frame } from '../../../../evaluate/loads/frame'
import type { RowStrength, Screen } from '../../../../model/strength'
import { screenKey } from './MemberScreens'
import { rackAt, racksOf, type Stretch, wholeRow } from './stretch'

/** What of a row is looked at: a rack of it or all of it, a mark that is lit up, a screen that is open. */
export interface BenchShown {
  readonly stretch: Stretch
  /** The screen that is open, as it now is. */
  readonly screen: Screen | undefined
  readonly lit: string | undefined
  /** Shows a rack, from 1 at the start; undefined for the whole row. */
  readonly showRack: (rack: number | undefined) => void
  readonly light: (mark: string) => void
  readonly open: (screen: Screen | undefined) => void
}

/** At first the rack where most is used of what a member may. */
const firstRack = (racks: readonly Stretch[], strength: RowStrength | undefined): number | undefined => {
  if (racks.length <= 1) return undefined
  const worst = strength?.screens[0]
  return worst ? rackAt(racks, worst.at.u)?.rack : 1
}

export const useBenchShown = (frame: Frame, strength: RowStrength | undefined): BenchShown => {
  const racks = useMemo(() => racksOf(frame), [frame])
  const row = useMemo(() => wholeRow(frame), [frame])
  const [rack, setRack] = useState(() => firstRack(racks, strength))
  const [lit, setLit] = useState<string>()
  const [key, setKey] = useState<string>()
  const screen = strength?.screens.find((each) => screenKey(each) === key)
  const open = (opened: Screen | undefined) => {
    setKey(opened && screenKey(opened))
    setLit(opened?.mark)
    if (opened && rack !== undefined) setRack(rackAt(racks, opened.at.u)?.rack)
  }
  // One function for all drawings, so that members are not drawn anew.
  const light = useCallback((mark: string) => {
    setLit((before) => (before === mark ? undefined : mark))
    setKey((before) => (before?.endsWith(` ${mark}`) ? before : undefined))
  }, [])
  return {
    stretch: (rack === undefined ? undefined : racks[rack - 1]) ?? row,
    screen,
    lit,
    showRack: setRack,
    light,
    open,
  }
}

import type { Bay } from '../../../checks/context'
import { restartInParts } from '../../../evaluate/returns/restart'
import { type Siphon, siphonOf } from '../../../evaluate/returns/siphon'
import { stopInParts } from '../../../evaluate/returns/stopPump'
import { haveCheckValves } from '../../../evaluate/returns/stopSources'
import type { RestartRun, StopRun } from '../../../model/stopRun'
import type { Steps } from '../steps'

/** A stop, and the start after it. */
export interface StopAndStart {
  readonly stop: StopRun
  readonly start: RestartRun | undefined
}

export interface StopAnswer {
  readonly isDrawnWith: boolean
  readonly withValve: StopAndStart
  readonly without: StopAndStart
  readonly siphon: Siphon | undefined
}

function* both(bay: Bay, hasCheckValve: boolean): Steps<StopAndStart | undefined> {
  yield
  const stop = yield* stopInParts(bay, { hasCheckValve })
  if (!stop) return undefined
  yield
  return { stop, start: yield* restartInParts(bay, stop) }
}

/** Undefined where no water runs. */
export function* stopSteps(bay: Bay): Steps<StopAnswer | undefined> {
  const withValve = yield* both(bay, true)
  const without = yield* both(bay, false)
  if (!withValve || !without) return undefined
  yield
  return { isDrawnWith: haveCheckValves(bay), withValve, without, siphon: siphonOf(bay) }
}

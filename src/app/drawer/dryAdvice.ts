import type { DryReason } from '../../model/water'

/** Why a row has no water, and what brings it. */
export const dryAdvice = (row: string, reason: DryReason | undefined): string => {
  switch (reason) {
    case 'no-main':
      return `${row} is joined to no main, so no water comes to it. Lay a main within its reach, or move the row to one.`
    case 'no-supply':
      return `The main that ${row} is joined to meets no pump and no head box. Start the main at a pit with a pump.`
    case 'shut':
      return `${row} is behind a valve that is shut. Open it in the row’s inspector, under Valves.`
    case undefined:
      return `The water of ${row} is not computed.`
  }
}

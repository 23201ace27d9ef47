import { useState } from 'react'
import type { Evaluation } from '../../../evaluate/evaluation'
import { mendsOf, type Mends } from '../../../evaluate/strengthMends/mends'
import type { Layout } from '../../../layout/schema'
import type { PartId } from '../../../model/ids'
import type { Steps } from '../steps'
import { useAnswer } from '../useAnswer'

/** What is found, and the layout that it was found in: while a new one is looked at, the last is told of its own. */
export interface MendsOfBay {
  readonly mends: Mends
  readonly layout: Layout
}

/** The same answer, with what is known so far told as it comes. */
function* telling(
  evaluation: Evaluation,
  rows: readonly PartId[],
  onSoFar: (soFar: MendsOfBay) => void,
): Steps<MendsOfBay> {
  const { layout } = evaluation
  const steps = mendsOf(evaluation, rows)
  for (;;) {
    const step = steps.next()
    if (step.done) return { mends: step.value, layout }
    if (step.value) onSoFar({ mends: step.value, layout })
    yield
  }
}

interface Found {
  /** Of the bay as it stands where `isCurrent` or `isOnItsWay`, else of the bay before. */
  readonly found: MendsOfBay | undefined
  /** All is tried. */
  readonly isCurrent: boolean
  /** Some of the bay as it stands is known already. */
  readonly isOnItsWay: boolean
}

/** What would mend rows, the first of it as soon as it is found; another question, or another bay, stops the search. */
export const useMends = (evaluation: Evaluation, rows: readonly PartId[]): Found => {
  const about = rows.join()
  const [soFar, setSoFar] = useState<{ readonly about: string; readonly part: MendsOfBay }>()
  const { answer, isCurrent } = useAnswer(about, [evaluation], () =>
    telling(evaluation, rows, (part) => setSoFar({ about, part })),
  )
  const isOnItsWay = !isCurrent && soFar?.about === about && soFar.part.layout === evaluation.layout
  return { found: isOnItsWay ? soFar.part : answer, isCurrent, isOnItsWay }
}

import type { ReactNode } from 'react'
import type { FeedFormProps } from './feedForm'
import { GradedTubes } from './GradedTubes'
import { TrimTurns } from './TrimTurns'
import { WaterFrom } from './WaterFrom'

/** Forms of a row's water that no single unit gives, by their field. */
export const feedForms = (props: FeedFormProps): Readonly<Record<string, ReactNode>> => ({
  gradedTubes: <GradedTubes {...props} />,
  waterFrom: <WaterFrom {...props} />,
  trimTurns: <TrimTurns {...props} />,
})

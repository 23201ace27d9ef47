import { createContext, useContext } from 'react'
import { useStore } from 'zustand'
import { useShallow } from 'zustand/react/shallow'
import type { Planner, PlannerState } from './planner'

/** The planner of the page, for every screen below it. */
export const PlannerContext = createContext<Planner | undefined>(undefined)

/** @throws Error where a screen is drawn outside the page that holds the planner. */
export const usePlanner = (): Planner => {
  const planner = useContext(PlannerContext)
  if (!planner) throw new Error('No planner: this screen stands outside PlannerContext.')
  return planner
}

/** What a screen reads of the state; it is drawn again only when that changes. Lists and records are compared item by item. */
export const usePlannerState = <T>(selector: (state: PlannerState) => T): T =>
  useStore(usePlanner().store, useShallow(selector))

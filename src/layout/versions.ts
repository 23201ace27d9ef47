import { done, refusal, type Edited } from './edited'
import { planOf } from './issues'
import { LONGEST_VERSION_NAME, MOST_VERSIONS } from './papers'
import type { KeptPlan, Layout, Papers } from './schema'

/** A named copy of the bay. */
export type Version = Papers['versions'][number]

const withVersions = (layout: Layout, versions: readonly Version[]): Layout => ({
  ...layout,
  papers: { ...layout.papers, versions: [...versions] },
})

const nameFault = ({ papers }: Layout, name: string, but?: string): string | undefined => {
  if (name === '') return 'a version needs a name'
  if (name.length > LONGEST_VERSION_NAME)
    return `this name has ${name.length} letters; a version's can have ${LONGEST_VERSION_NAME}`
  const isTaken = papers.versions.some((version) => version.name === name && version.name !== but)
  return isTaken ? `there is a version “${name}” already` : undefined
}

/** A name that no version has yet: `Version 3`. */
export const freeVersionName = ({ papers }: Layout): string => {
  const taken = new Set(papers.versions.map(({ name }) => name))
  let number = papers.versions.length + 1
  while (taken.has(`Version ${number}`)) number += 1
  return `Version ${number}`
}

/** Keeps the plan as it is under a name; `date` is ISO. Says so where the name is taken, or so many are kept already. */
export const keepVersion = (layout: Layout, name: string, date: string): Edited => {
  const { versions } = layout.papers
  const called = name.trim()
  if (versions.length >= MOST_VERSIONS)
    return refusal(`${MOST_VERSIONS} versions are kept already; drop one that you no longer need`)
  const fault = nameFault(layout, called)
  if (fault) return refusal(fault)
  return done(withVersions(layout, [...versions, { name: called, date, plan: planOf(layout) }]))
}

export const renameVersion = (layout: Layout, from: string, to: string): Edited => {
  const called = to.trim()
  const fault = nameFault(layout, called, from)
  if (fault) return refusal(fault)
  if (called === from) return done(layout)
  const { versions } = layout.papers
  return done(
    withVersions(
      layout,
      versions.map((version) => (version.name === from ? { ...version, name: called } : version)),
    ),
  )
}

export const dropVersion = (layout: Layout, name: string): Layout => {
  const versions = layout.papers.versions.filter((version) => version.name !== name)
  return versions.length === layout.papers.versions.length ? layout : withVersions(layout, versions)
}

/**
 * Makes a plan that was kept the plan again. Papers stay, and so does the saw bench: what is cut is cut, whichever plan it was cut
 * for; and the number of the next issue never falls back.
 */
export const openPlan = (layout: Layout, plan: KeptPlan): Layout => ({
  ...layout,
  ...plan,
  bench: layout.bench,
  settings: { ...plan.settings, issue: layout.settings.issue },
})

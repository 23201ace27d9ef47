import { VERSION } from './schema'

/** A document as it was read, before the schema has seen it. */
export type Document = Readonly<Record<string, unknown>>

/**
 * Brings a document one version up. Pure; the version number itself is written by `broughtUp`. The plans that are kept among the
 * papers take the same step, each as a document of its own without format, version and papers.
 */
export type Migration = (document: Document) => Document

/** The step from version n stands at index n - 1. Version 1 is the first, so there is none yet. */
const migrations: readonly Migration[] = []

const isDocument = (value: unknown): value is Document =>
  typeof value === 'object' && value !== null && !Array.isArray(value)

/** What may stand under a field, taken through a step where it is a plan; what is no plan is left to the schema. */
const stepped = (value: unknown, step: Migration): unknown => (isDocument(value) ? step(value) : value)

const steppedVersion = (version: unknown, step: Migration): unknown =>
  isDocument(version) && 'plan' in version ? { ...version, plan: stepped(version['plan'], step) } : version

/** Plans that are kept among the papers are as old as the document, and take every step with it. */
const withPlans = (document: Document, step: Migration): Document => {
  const { papers } = document
  if (!isDocument(papers)) return document
  const { issued, before, versions } = papers
  return {
    ...document,
    papers: {
      ...papers,
      ...(issued === undefined ? {} : { issued: stepped(issued, step) }),
      ...(before === undefined ? {} : { before: stepped(before, step) }),
      ...(Array.isArray(versions) ? { versions: versions.map((each) => steppedVersion(each, step)) } : {}),
    },
  }
}

/** The document in the newest version, each step taken in turn. `steps` lets a test bring its own. */
export const broughtUp = (
  document: Document,
  version: number,
  steps: readonly Migration[] = migrations,
): Document =>
  steps
    .slice(version - 1)
    .reduce((at, step, index) => ({ ...step(withPlans(at, step)), version: version + index + 1 }), document)

/** The newest version that these steps lead to; the schema's version must be the same. */
export const versionAfter = (steps: readonly Migration[] = migrations): number => steps.length + 1

/** A version that this program can bring up to its own. */
export const isKnownVersion = (version: unknown): version is number =>
  Number.isInteger(version) && Number(version) >= 1 && Number(version) <= VERSION

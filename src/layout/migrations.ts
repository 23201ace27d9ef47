import { VERSION } from './schema'

/** A document as it was read, before the schema has seen it. */
export type Document = Readonly<Record<string, unknown>>

/** Brings a document one version up. Pure; the version number itself is written by `broughtUp`. */
export type Migration = (document: Document) => Document

/** The step from version n stands at index n - 1. Version 1 is the first, so there is none yet. */
const migrations: readonly Migration[] = []

/** The document in the newest version, each step taken in turn. `steps` lets a test bring its own. */
export const broughtUp = (
  document: Document,
  version: number,
  steps: readonly Migration[] = migrations,
): Document =>
  steps
    .slice(version - 1)
    .reduce((at, step, index) => ({ ...step(at), version: version + index + 1 }), document)

/** The newest version that these steps lead to; the schema's version must be the same. */
export const versionAfter = (steps: readonly Migration[] = migrations): number => steps.length + 1

/** A version that this program can bring up to its own. */
export const isKnownVersion = (version: unknown): version is number =>
  Number.isInteger(version) && Number(version) >= 1 && Number(version) <= VERSION

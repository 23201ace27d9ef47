import type { Bay, BayRule, FrameRule, PartRule, Rule } from '../checks/context'
import { rules } from '../checks'
import { withSoundMend } from '../checks/mendRoom'
import type { Settings } from '../layout/settings'
import type { Built } from '../model/built'
import { type Finding, rankOf } from '../model/finding'
import { rememberEach } from '../model/remember'
import type { RowStrength } from '../model/strength'
import { strengthOf } from './5-loads'

const isPartRule = (rule: Rule): rule is PartRule => rule.over === 'part'
const isFrameRule = (rule: Rule): rule is FrameRule => rule.over === 'frame'
const isBayRule = (rule: Rule): rule is BayRule => rule.over === 'bay'

const partRules = rules.filter(isPartRule)
const frameRules = rules.filter(isFrameRule)
const bayRules = rules.filter(isBayRule)

const partFindings = rememberEach<Built, Settings, readonly Finding[]>((built, settings) =>
  partRules.flatMap((rule) => rule.check(built, settings)),
)

/** A row's strength is a new object whenever its built things or the settings are others, so it alone is the key. */
const frameFindings = rememberEach<RowStrength, Bay, readonly Finding[]>(
  (strength, { builtOf, settings }) => {
    const built = builtOf.get(strength.part)
    return built ? frameRules.flatMap((rule) => rule.check(strength, built, settings)) : []
  },
  (a, b) => a.settings === b.settings,
)

/** What must be mended, then what must be looked at, each in the order of the rules. */
const worstFirst = (findings: readonly Finding[]): Finding[] =>
  [2, 1].flatMap((rank) => findings.filter((finding) => rankOf(finding) === rank))

const ofBay = rememberEach<Bay, undefined, readonly Finding[]>((bay) =>
  worstFirst([
    ...bay.built.flatMap((built) => partFindings(built, bay.settings)),
    ...[...strengthOf(bay).values()].flatMap((strength) => frameFindings(strength, bay)),
    ...bayRules.flatMap((rule) => rule.check(bay)).map((finding) => withSoundMend(finding, bay)),
  ]),
)

/**
 * Step 8: every rule over the bay; what must be mended comes first. Remembered for the bay, so that whoever shows findings
 * asks here.
 */
export const findingsOf = (bay: Bay): readonly Finding[] => ofBay(bay, undefined)

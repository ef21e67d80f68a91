import type { Overflow, Source } from '../../source.js';
import type { Draft } from '../../translate.js';
import { finishingRules } from './finishing.js';
import { goodsRules } from './goods.js';
import { layoutRules } from './layout.js';
import { messageRules } from './messages.js';
import type { Older, Rule } from './rule.js';

const RULES: Readonly<Record<string, Rule>> = {
  ...finishingRules,
  ...goodsRules,
  ...layoutRules,
  ...messageRules,
};

/** What is built differently in the older generation, by the name of the newer generation's element. */
export function restructureNewer(older: Older, source: Source, out: Draft, overflow: Overflow): Source {
  const rule = Object.hasOwn(RULES, source.el.local) ? RULES[source.el.local] : undefined;
  return rule === undefined ? source : rule(older, source, out, overflow);
}

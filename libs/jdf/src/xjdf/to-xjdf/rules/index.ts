import type { Overflow, Source } from '../../source.js';
import type { Draft } from '../../translate.js';
import { deliveryRules } from './delivery.js';
import { finishingRules } from './finishing.js';
import { goodsRules } from './goods.js';
import { layoutRules } from './layout.js';
import { messageRules } from './messages.js';
import type { Newer, Rule } from './rule.js';

const RULES: Readonly<Record<string, Rule>> = {
  ...layoutRules,
  ...finishingRules,
  ...goodsRules,
  ...deliveryRules,
  ...messageRules,
};

/** What is built differently in the newer generation, by the name of the older generation's element. */
export function restructureOlder(newer: Newer, source: Source, out: Draft, overflow: Overflow): Source {
  const rule = Object.hasOwn(RULES, source.el.local) ? RULES[source.el.local] : undefined;
  return rule === undefined ? source : rule(newer, source, out, overflow);
}

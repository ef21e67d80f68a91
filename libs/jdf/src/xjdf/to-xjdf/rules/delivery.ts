import { without } from '../../source.js';
import { type Rule, subs } from './rule.js';

const ITEMS = ['Component', 'ExposedMedia', 'Ink', 'Media', 'Pallet', 'Tool', 'Bundle'] as const;

/** What is delivered: one reference, whatever it is. */
const item: Rule = (newer, source, out, overflow) => {
  const found = ITEMS.flatMap((name) => subs(newer, source, name));
  for (const { child, target } of found) {
    if (out.attributes.has('ItemRef')) break;
    const ids =
      child === target ? newer.placer.inline(child, overflow) : newer.placer.refer(target, overflow, child);
    if (ids[0] === undefined) continue;
    out.attributes.set('ItemRef', ids[0]);
    newer.job.ledger.carry(child);
    newer.job.ledger.carryNamed(child, 'rRef');
  }
  return without(
    source,
    found.map(({ child }) => child),
  );
};

export const deliveryRules: Readonly<Record<string, Rule>> = {
  DropItem: item,
  DropItemIntent: item,
  BundleItem: item,
};

import { addAll } from '../../add-all.js';
import { xjdfVocabulary } from '../../facts.js';
import { sourceOf, without } from '../../source.js';
import { carryAttribute, Draft, fillDraft, finish, translate } from '../../translate.js';
import { type Rule, subs } from './rule.js';

const shapeOf = (name: string) => xjdfVocabulary.named(name)!;

/** How goods are bundled is a resource of its own in the newer generation. */
const component: Rule = (newer, source, _out, overflow) => {
  const bundles = subs(newer, source, 'Bundle');
  for (const { child, target } of bundles) {
    if (child === target) newer.placer.inline(child, overflow);
    newer.job.ledger.carry(child);
    newer.job.ledger.carryNamed(child, 'rRef');
  }
  return without(
    source,
    bundles.map(({ child }) => child),
  );
};

/** What a bundle is and holds in all is said by an item around its items. */
const bundle: Rule = (newer, source, out, overflow) => {
  const { direction } = newer;
  const whole = new Draft('BundleItem', shapeOf('BundleItem'));
  const own = source.attributes.filter(({ local }) => local === 'BundleType' || local === 'TotalAmount');
  for (const attribute of own) carryAttribute(direction, 'BundleItem', attribute, whole, overflow);
  const items = source.children.filter(({ local }) => local === 'BundleItem');
  const written = items.flatMap(
    (item) => translate(direction, sourceOf(item), 'BundleItem', shapeOf('BundleItem'), overflow) ?? [],
  );
  if (whole.attributes.size > 0 || written.length === 0) {
    whole.attributes.set('Amount', '1');
    addAll(whole.children, written);
    out.children.push(finish(direction, whole));
  } else addAll(out.children, written);
  return without(
    source,
    items,
    own.map(({ local }) => local),
  );
};

/** A person at work is named by number only. */
const nodeInfo: Rule = (newer, source, out, overflow) => {
  const employees = subs(newer, source, 'Employee');
  for (const { child, target } of employees) {
    const person = target.attributes.find(({ local }) => local === 'PersonalID');
    if (person === undefined) continue;
    if (!carryAttribute(newer.direction, 'NodeInfo', person, out, overflow)) continue;
    newer.job.ledger.carry(child);
    newer.job.ledger.carryNamed(child, 'rRef');
  }
  return without(
    source,
    employees.map(({ child }) => child),
  );
};

/** Whom to speak to is a resource of its own. */
const customer: Rule = (newer, source, _out, overflow) => {
  const found = [...subs(newer, source, 'Contact'), ...subs(newer, source, 'Company')];
  for (const { child, target } of found) {
    if (child === target) newer.placer.inline(child, overflow);
    newer.job.ledger.carry(child);
    newer.job.ledger.carryNamed(child, 'rRef');
  }
  return without(
    source,
    found.map(({ child }) => child),
  );
};

/** Where a file is, one level deeper in the older generation. */
const runList: Rule = (newer, source, out, overflow) => {
  const elements = subs(newer, source, 'LayoutElement');
  for (const { child, target } of elements) {
    fillDraft(newer.direction, sourceOf(target), out, overflow);
    newer.job.ledger.carry(child);
    newer.job.ledger.carryNamed(child, 'rRef', 'ID', 'Class');
  }
  return without(
    source,
    elements.map(({ child }) => child),
  );
};

export const goodsRules: Readonly<Record<string, Rule>> = {
  Component: component,
  Bundle: bundle,
  NodeInfo: nodeInfo,
  CustomerInfo: customer,
  RunList: runList,
};

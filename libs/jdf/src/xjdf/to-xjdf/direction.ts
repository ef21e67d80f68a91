import { splitTokens } from '../../codec/index.js';
import { attributeOf, childElements, type XmlElement } from '../../xml/index.js';
import { jdfVocabulary, xjdfVocabulary } from '../facts.js';
import { attributeNode, taken } from '../ledger.js';
import { rowOfOlder } from '../rows.js';
import { type Overflow, type Source, sourceOf } from '../source.js';
import { carryAttribute, type Direction, Draft, translate } from '../translate.js';
import { asToken } from '../values.js';
import { type Job, NEWER, newerResource } from './job.js';
import type { Placer } from './placer.js';
import { restructureOlder } from './rules/index.js';

/** Elements of the older generation written as the newer: names, values, references and spans. */
export function toNewer(job: Job, placer: Placer): Direction {
  const { ledger } = job;
  const direction: Direction = {
    ledger,
    uri: NEWER,
    to: xjdfVocabulary,
    pair(local, attribute) {
      const pair = rowOfOlder(local)?.attributes?.find(({ jdf }) => jdf === attribute);
      if (pair?.xjdf === '') return null;
      return { to: pair?.xjdf ?? attribute, values: pair?.values };
    },
    typeOf: (local, attribute) =>
      (jdfVocabulary.named(local) ?? jdfVocabulary.shape(`${local}_re`))?.attributes.get(attribute)?.type ??
      '',
    fills: (local) => rowOfOlder(local)?.fill ?? {},
    childName: (_local, child) => RENAMED[child] ?? child,
    restructure: (source, out, overflow) =>
      restructureOlder({ job, direction, placer }, source, out, overflow),
    child(child, source, out, overflow) {
      return (
        asSpan(direction, child, source, out, overflow) ||
        asNames(direction, child, out, overflow) ||
        asReference(job, direction, placer, child, source, out, overflow)
      );
    },
  };
  return direction;
}

/** Sub-elements that have another name wherever they stand. */
const RENAMED: Readonly<Record<string, string>> = {
  GlueLine: 'Glue',
  GlueApplication: 'Glue',
  DropItemIntent: 'DropItem',
  ModuleStatus: 'ModuleInfo',
};

const SPOKEN = ['Actual', 'Preferred', 'Range'] as const;

/** A span of the older generation is one value of the newer: what was agreed, else preferred, else first of the range. */
function asSpan(
  direction: Direction,
  child: XmlElement,
  source: Source,
  out: Draft,
  overflow: Overflow,
): boolean {
  if (attributeOf(child, 'DataType')?.endsWith('Span') !== true) return false;
  const { ledger } = direction;
  const name = SPOKEN.find((one) => attributeOf(child, one) !== undefined);
  if (name === undefined) {
    ledger.reason(child, 'says no value');
    return true;
  }
  const stated = attributeNode(child, name)!;
  const pair = direction.pair(source.el.local, child.local);
  const type = pair && out.shape.attributes.get(pair.to)?.type;
  const words = /^nums(\d)$/.exec(type ?? '')?.[1] ?? '1';
  const first = splitTokens(stated.value.split('~')[0]!).slice(0, Number(words)).join(' ');
  const value = name === 'Range' ? first : stated.value;
  const carried = carryAttribute(direction, source.el.local, stated, out, overflow, {
    local: child.local,
    value,
  });
  if (!carried) {
    if (type !== undefined) ledger.reason(child, 'not a value there');
    return type !== undefined;
  }
  ledger.carry(child, attributeNode(child, 'DataType'));
  for (const attribute of child.attributes)
    ledger.reason(attribute, 'the newer generation has a single value');
  return true;
}

/** Names of separations: elements in the older generation, a list of tokens in the newer. */
function asNames(direction: Direction, child: XmlElement, out: Draft, overflow: Overflow): boolean {
  const specs = child.local === 'SeparationSpec' ? [child] : childElements(child, 'SeparationSpec');
  if (specs.length === 0) return false;
  const wanted = child.local === 'SeparationSpec' ? 'Separations' : child.local;
  if (out.shape.attributes.get(wanted)?.type !== 'toks') return false;
  const names = specs.flatMap((spec) => taken(direction.ledger, spec, 'Name') ?? []);
  const before = out.attributes.get(wanted);
  out.attributes.set(wanted, [...(before === undefined ? [] : [before]), ...names.map(asToken)].join(' '));
  for (const name of names) if (asToken(name) !== name) overflow.originals.push([wanted, name]);
  direction.ledger.carry(child, ...specs);
  return true;
}

/** A sub-resource, inline or referred to: the newer generation refers to it by an attribute where it can. */
function asReference(
  job: Job,
  direction: Direction,
  placer: Placer,
  child: XmlElement,
  source: Source,
  out: Draft,
  overflow: Overflow,
): boolean {
  const { ledger } = job;
  const rRef = child.local.endsWith('Ref') ? attributeOf(child, 'rRef') : undefined;
  const target = rRef === undefined ? child : job.target(rRef);
  if (target === undefined) {
    ledger.reason(child, `there is no resource ${rRef}`);
    return true;
  }
  const local = rRef === undefined ? child.local : child.local.slice(0, -'Ref'.length);
  const row = rowOfOlder(source.el.local);
  const name = direction.childName(source.el.local, local);
  const attribute = row?.refs?.(child, target) ?? referenceTo(name, out);
  const inside = out.shape.byName.get(name);
  if (
    attribute !== undefined &&
    (rRef !== undefined || inside === undefined) &&
    newerResource(target.local)
  ) {
    const ids = rRef === undefined ? placer.inline(child, overflow) : placer.refer(target, overflow, child);
    return ids.length > 0 && setReference(job, child, attribute, ids, out);
  }
  if (rRef === undefined || inside === undefined) return false;
  // Only the content can be inside: it is written there, as an inline element would be.
  const shape = out.count(name) < inside.max ? direction.to.shape(inside.shape) : undefined;
  const made = shape && translate(direction, sourceOf(target), name, shape, overflow);
  if (made !== undefined) {
    out.children.push(made);
    ledger.carry(child);
    ledger.carryNamed(child, 'rRef');
    ledger.carryNamed(target, 'ID', 'Class', 'Status');
  }
  return true;
}

function referenceTo(name: string, out: Draft): string | undefined {
  return [`${name}Ref`, `${name}Refs`].find((one) => out.shape.attributes.get(one)?.type.startsWith('idref'));
}

function setReference(
  job: Job,
  child: XmlElement,
  attribute: string,
  ids: readonly string[],
  out: Draft,
): boolean {
  const { ledger } = job;
  const many = out.shape.attributes.get(attribute)?.type === 'idrefs';
  const before = out.attributes.get(attribute);
  if (before !== undefined && !many) {
    ledger.reason(child, `only one ${attribute} can be there`);
    return true;
  }
  const value = many ? [...(before === undefined ? [] : [before]), ...ids].join(' ') : ids[0]!;
  out.attributes.set(attribute, value);
  if (!many && ids.length > 1)
    ledger.note(child, `refers to ${ids.length} parts; the newer generation to the first`);
  ledger.carry(child);
  ledger.carryNamed(child, 'rRef');
  for (const part of childElements(child, 'Part')) ledger.carryAll(part);
  return true;
}

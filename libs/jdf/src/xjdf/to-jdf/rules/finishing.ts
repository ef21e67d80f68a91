import { splitTokens } from '../../../codec/index.js';
import { attributeOf, childElements, findById, parentOf } from '../../../xml/index.js';
import { attributeNode } from '../../ledger.js';
import { sourceOf, without } from '../../source.js';
import { carryAttribute, Draft, fillDraft, finish } from '../../translate.js';
import { named, type Rule } from './rule.js';

const rounded = (value: number): string => String(Math.round(value * 1e9) / 1e9);

/** The size of a block and where its corner lies. */
const cutBlock: Rule = (older, source, out) => {
  const box = attributeNode(source.el, 'Box');
  const [a, b, c, d] = splitTokens(box?.value ?? '').map(Number);
  if (box === undefined || a === undefined || b === undefined || c === undefined || d === undefined)
    return source;
  out.attributes.set('BlockSize', `${rounded(c - a)} ${rounded(d - b)}`);
  out.attributes.set('BlockTrf', `1 0 0 1 ${rounded(a)} ${rounded(b)}`);
  older.ticket.ledger.carry(box);
  return without(source, [], ['Box']);
};

const OF_HOLES: readonly (readonly [newer: string, older: string])[] = [
  ['Pattern', 'HoleType'],
  ['Center', 'Center'],
  ['CenterReference', 'CenterReference'],
  ['Extent', 'Extent'],
  ['HoleCount', 'HoleCount'],
  ['ReferenceEdge', 'HoleReferenceEdge'],
  ['Shape', 'Shape'],
];

/** The pattern of holes, said by the element that has them. The first is carried; more have no place. */
const holes: Rule = (older, source, out, overflow) => {
  const { direction } = older;
  const [first] = named(source, 'HolePattern');
  if (first === undefined) return source;
  for (const [newer, name] of OF_HOLES) {
    const stated = attributeNode(first, newer);
    if (stated === undefined) continue;
    const span = out.shape.byName.get(name);
    if (span?.shape === 'StringSpan') {
      const draft = new Draft(name, direction.to.shape(span.shape)!);
      draft.attributes.set('DataType', span.shape);
      if (!carryAttribute(direction, 'HolePattern', stated, draft, overflow, { local: 'Actual' })) continue;
      out.children.push(finish(direction, draft));
    } else carryAttribute(direction, 'HolePattern', stated, out, overflow, { local: name });
  }
  older.ticket.ledger.carry(first);
  return without(source, [first]);
};

/** Loose bindings are a resource each, which says itself what the newer generation has in an element inside. */
const loose: Rule = (older, source, out, overflow) => {
  const details = source.children.filter(({ local }) => local.endsWith('Details'));
  for (const one of details) {
    const from = sourceOf(one);
    for (const attribute of from.attributes) {
      const ring = attribute.local === 'Diameter' && out.shape.attributes.has('RingDiameter');
      carryAttribute(
        older.direction,
        one.local,
        attribute,
        out,
        overflow,
        ring ? { local: 'RingDiameter' } : {},
      );
    }
    older.ticket.ledger.carry(one);
  }
  older.ticket.ledger.carryNamed(source.el, 'BindingType');
  const making = out.shape.byName.get('HoleMakingParams');
  const [pattern] = named(source, 'HolePattern');
  if (making === undefined || pattern === undefined) return without(source, details, ['BindingType']);
  const draft = new Draft('HoleMakingParams', older.direction.to.shape(making.shape)!);
  holes(older, { ...source, children: [pattern] }, draft, overflow);
  out.children.push(finish(older.direction, draft));
  return without(source, [...details, pattern], ['BindingType']);
};

/** Two attributes are a range. */
const converting: Rule = (older, source, out) => {
  const taken: string[] = [];
  for (const name of ['SheetHeight', 'SheetWidth']) {
    const ends = [`${name}Min`, `${name}Max`].map((one) => attributeNode(source.el, one));
    const stated = ends.flatMap((one) => (one === undefined ? [] : [one.value]));
    if (stated.length === 0) continue;
    if (!out.put(name, `${stated[0]} ~ ${stated.at(-1)}`)) continue;
    older.ticket.ledger.carry(...ends);
    taken.push(`${name}Min`, `${name}Max`);
  }
  return without(source, [], taken);
};

/** Which shape is meant is said by the links of the process, where it has a link to that shape. */
const repeat: Rule = (older, source) => {
  const reference = attributeNode(source.el, 'ShapeDefRef');
  if (reference === undefined) return source;
  const { doc, ledger } = older.ticket;
  const shape = findById(doc, reference.value.trim());
  const set = shape && parentOf(doc, shape);
  if (set !== undefined && attributeOf(set, 'Usage') === 'Input') ledger.carry(reference);
  else ledger.reason(reference, 'the older generation has no such reference here');
  return without(source, [], ['ShapeDefRef']);
};

/** What stands around the items of a bundle is the bundle itself. */
const bundle: Rule = (older, source, out, overflow) => {
  const items = named(source, 'BundleItem');
  const [only] = items;
  const isWhole = items.length === 1 && attributeOf(only!, 'ItemRef') === undefined;
  if (!isWhole || only === undefined) return source;
  for (const name of ['BundleType', 'TotalAmount']) {
    const stated = attributeNode(only, name);
    if (stated !== undefined) carryAttribute(older.direction, 'Bundle', stated, out, overflow);
  }
  if (attributeOf(only, 'Amount') === '1') older.ticket.ledger.carryNamed(only, 'Amount');
  older.ticket.ledger.carry(only);
  const rest = {
    ...source,
    children: [...source.children.filter((one) => one !== only), ...childElements(only)],
  };
  return { ...rest, attributes: source.attributes };
};

const gluing: Rule = (older, source, out, overflow) => {
  const technique = attributeNode(source.el, 'GluingTechnique');
  const line = out.shape.byName.get('GlueLine');
  if (technique === undefined || line === undefined) return source;
  const draft = new Draft('GlueLine', older.direction.to.shape(line.shape)!);
  fillDraft(older.direction, without(source, [], ['GluingTechnique']), draft, overflow);
  out.children.push(finish(older.direction, draft));
  return { ...source, children: [], attributes: [technique] };
};

export const finishingRules: Readonly<Record<string, Rule>> = {
  CutBlock: cutBlock,
  Media: holes,
  HoleMakingParams: holes,
  HoleMakingIntent: holes,
  LooseBindingParams: loose,
  ConvertingConfig: converting,
  RepeatDesc: repeat,
  Bundle: bundle,
  Glue: gluing,
};

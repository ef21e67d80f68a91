import { splitTokens } from '../../../codec/index.js';
import { attributeOf, childElements, type XmlElement } from '../../../xml/index.js';
import { addAll } from '../../add-all.js';
import { xjdfVocabulary } from '../../facts.js';
import { attributeNode } from '../../ledger.js';
import { sourceOf, without } from '../../source.js';
import { carryAttribute, Draft, fillDraft, finish } from '../../translate.js';
import { type Newer, type Rule, subs } from './rule.js';

const shapeOf = (name: string) => xjdfVocabulary.named(name)!;

/** A block is a box on the sheet; the older generation gives its size and where its corner lies. */
const cutBlock: Rule = (newer, source, out) => {
  const size = attributeNode(source.el, 'BlockSize');
  const at = attributeNode(source.el, 'BlockTrf');
  const box = boxOf(size?.value ?? '', at?.value ?? '1 0 0 1 0 0');
  if (box !== undefined && size !== undefined) {
    out.attributes.set('Box', box);
    newer.job.ledger.carry(size);
    if (at !== undefined) newer.job.ledger.carry(at);
  }
  return without(source, [], ['BlockSize', 'BlockTrf']);
};

/** The box that a block covers: its four corners moved by the matrix. Undefined where a value is no number. */
function boxOf(size: string, matrix: string): string | undefined {
  const [w, h, ...more] = splitTokens(size).map(Number);
  const m = splitTokens(matrix).map(Number);
  if (w === undefined || h === undefined || more.length > 0 || m.length !== 6) return undefined;
  const [a, b, c, d, e, f] = m as [number, number, number, number, number, number];
  const corners = [
    [0, 0],
    [w, 0],
    [0, h],
    [w, h],
  ] as const;
  const xs = corners.map(([x, y]) => a * x + c * y + e);
  const ys = corners.map(([x, y]) => b * x + d * y + f);
  const box = [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
  return box.every(Number.isFinite) ? box.map((n) => String(Math.round(n * 1e9) / 1e9)).join(' ') : undefined;
}

const OF_HOLES: readonly (readonly [string, string])[] = [
  ['HoleType', 'Pattern'],
  ['Center', 'Center'],
  ['CenterReference', 'CenterReference'],
  ['Extent', 'Extent'],
  ['HoleCount', 'HoleCount'],
  ['HoleReferenceEdge', 'ReferenceEdge'],
  ['Shape', 'Shape'],
];

/** Holes are patterns; the older generation says the pattern in the element itself. */
const holes: Rule = (newer, source, out, overflow) => {
  if (!out.shape.byName.has('HolePattern')) return source;
  const span = source.children.find(({ local }) => local === 'HoleType');
  const stated = span && ['Actual', 'Preferred'].map((name) => attributeNode(span, name)).find(Boolean);
  const draft = new Draft('HolePattern', shapeOf('HolePattern'));
  if (stated !== undefined && stated !== null) {
    if (carryAttribute(newer.direction, 'HolePattern', stated, draft, overflow, { local: 'Pattern' })) {
      newer.job.ledger.carry(span, attributeNode(span!, 'DataType'));
    }
  }
  const taken: string[] = [];
  for (const [from, to] of OF_HOLES) {
    const attribute = source.attributes.find(({ local }) => local === from);
    if (attribute === undefined || out.shape.attributes.has(from)) continue;
    taken.push(from);
    if (attribute.value === 'None' && from === 'HoleType') newer.job.ledger.carry(attribute);
    else carryAttribute(newer.direction, 'HolePattern', attribute, draft, overflow, { local: to });
  }
  if (draft.attributes.size > 0) out.children.push(finish(newer.direction, draft));
  return without(source, span === undefined ? [] : [span], taken);
};

/** Loose bindings are one kind of resource, with the details of each in an element of its own. */
const loose =
  (details: string): Rule =>
  (newer, source, out, overflow) => {
    const draft = new Draft(details, shapeOf(details));
    const names = new Map([['RingDiameter', 'Diameter']]);
    const left = source.attributes.filter((attribute) => {
      const to = names.get(attribute.local) ?? attribute.local;
      return !carryAttribute(newer.direction, details, attribute, draft, overflow, { local: to });
    });
    out.children.push(finish(newer.direction, draft));
    const making = subs(newer, source, 'HoleMakingParams');
    for (const { child, target } of making) {
      const holder = new Draft('LooseBindingParams', out.shape);
      holes(newer, sourceOf(target), holder, overflow);
      addAll(out.children, holder.children);
      newer.job.ledger.carry(child);
      newer.job.ledger.carryNamed(child, 'rRef', 'ID', 'Class');
    }
    return without(
      { ...source, attributes: left },
      making.map(({ child }) => child),
    );
  };

const glueApplication: Rule = (newer, source, out, overflow) => {
  const lines = subs(newer, source, 'GlueLine');
  for (const { child, target } of lines) {
    fillDraft(newer.direction, sourceOf(target), out, overflow);
    newer.job.ledger.carry(child);
  }
  return without(
    source,
    lines.map(({ child }) => child),
  );
};

/** Which shape a die is laid out for: the older generation links the shape to the process. */
const repeat: Rule = (newer, source, out) => {
  const number = siblingsBefore(newer, source.el);
  const shapes = newer.job.linked('ShapeDef');
  const target = shapes[number] ?? (shapes.length === 1 ? shapes[0] : undefined);
  const id = target && newer.job.idsFor(target, {})[0];
  if (id !== undefined) out.attributes.set('ShapeDefRef', id);
  return source;
};

function siblingsBefore(newer: Newer, el: XmlElement): number {
  const around = newer.job.parent(el);
  return around === undefined ? 0 : childElements(around, el.local).indexOf(el);
}

/** A range of sheet sizes is two attributes. */
const converting: Rule = (newer, source, out) => {
  const taken: string[] = [];
  for (const name of ['SheetHeight', 'SheetWidth']) {
    const value = attributeOf(source.el, name);
    const attribute = attributeNode(source.el, name);
    const numbers = splitTokens((value ?? '').replace('~', ' ')).map(Number);
    if (attribute === undefined || numbers.length === 0 || !numbers.every(Number.isFinite)) continue;
    out.attributes.set(`${name}Min`, String(numbers.reduce((least, one) => Math.min(least, one))));
    out.attributes.set(`${name}Max`, String(numbers.reduce((most, one) => Math.max(most, one))));
    newer.job.ledger.carry(attribute);
    taken.push(name);
  }
  return without(source, [], taken);
};

export const finishingRules: Readonly<Record<string, Rule>> = {
  CutBlock: cutBlock,
  Media: holes,
  HoleMakingParams: holes,
  HoleMakingIntent: holes,
  GlueApplication: glueApplication,
  RepeatDesc: repeat,
  ConvertingConfig: converting,
  CoilBindingParams: loose('CoilBindingDetails'),
  PlasticCombBindingParams: loose('CombBindingDetails'),
  WireCombBindingParams: loose('CombBindingDetails'),
  RingBindingParams: loose('RingBindingDetails'),
  ChannelBindingParams: loose('ChannelBindingDetails'),
  StripBindingParams: loose('StripBindingDetails'),
};

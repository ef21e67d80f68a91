import type { XmlElement } from '../../../xml/index.js';
import { xjdfVocabulary } from '../../facts.js';
import { type Overflow, sourceOf, without } from '../../source.js';
import { carryAttribute, Draft, fillDraft, finish, translate } from '../../translate.js';
import { asToken } from '../../values.js';
import { type Newer, type Rule, subs } from './rule.js';

const shapeOf = (name: string) => xjdfVocabulary.named(name)!;

/** What is placed on a sheet has a place of its own in the newer generation, with the object or mark in it. */
const layout: Rule = (newer, source, out, overflow) => {
  const { direction } = newer;
  const objects = source.children.filter(({ local }) => local === 'ContentObject' || local === 'MarkObject');
  for (const object of objects) {
    const placed = new Draft('PlacedObject', shapeOf('PlacedObject'));
    const inner = new Draft(object.local, shapeOf(object.local));
    const from = sourceOf(object);
    fillDraft(direction, { ...from, children: [] }, placed, overflow);
    const left = from.attributes.filter(({ local }) => !placed.attributes.has(local));
    fillDraft(direction, { ...from, attributes: left }, inner, overflow);
    if (!placed.attributes.has('CTM')) {
      direction.ledger.reason(object, 'the newer generation asks for @CTM');
      continue;
    }
    placed.children.push(finish(direction, inner));
    out.children.push(finish(direction, placed));
    direction.ledger.carry(object);
  }
  return without(source, objects);
};

/** Stripping is part of the layout: each position says which binding signature lies there. */
const stripping: Rule = (newer, source, out, overflow) => {
  const { direction, job } = newer;
  const signatures = subs(newer, source, 'BinderySignature');
  const positions = source.children.filter(({ local }) => local === 'Position');
  const named = overflow.keys.BinderySignatureName;
  const cells = source.children.find(({ local }) => local === 'StripCellParams');
  const ids = signatures.flatMap(({ child, target }) => {
    const placed =
      child === target ? newer.placer.inline(child, overflow) : newer.placer.refer(target, overflow, child);
    job.ledger.carry(child);
    job.ledger.carryNamed(child, 'rRef');
    for (const id of placed) {
      const use = job.signatures.get(id) ?? { names: new Set<string>(), cells: new Map<string, string>() };
      job.signatures.set(id, use);
      if (named !== undefined) use.names.add(asToken(named));
      if (cells !== undefined) cellsInto(newer, cells, use.cells, overflow);
    }
    return placed.map(asToken);
  });
  const names = named !== undefined ? [asToken(named)] : ids;
  const written = positions.map((position) => {
    const made = translate(direction, sourceOf(position), 'Position', shapeOf('Position'), overflow);
    return made ?? undefined;
  });
  const frames = written.length > 0 ? written : names.length > 0 ? [undefined] : [];
  frames.forEach((frame, i) => {
    const name = names[Math.min(i, names.length - 1)];
    const draft = new Draft('Position', shapeOf('Position'));
    if (name !== undefined) draft.attributes.set('BinderySignatureID', name);
    const made = finish(direction, draft);
    out.children.push(
      frame === undefined ? made : { ...frame, attributes: [...frame.attributes, ...made.attributes] },
    );
  });
  const children = [...signatures.map(({ child }) => child), ...positions, ...(cells ? [cells] : [])];
  return without(source, children);
};

/** Margins of cells are said by the cells themselves; what two sheets say differently stays with the first. */
function cellsInto(newer: Newer, cells: XmlElement, into: Map<string, string>, overflow: Overflow): void {
  const draft = new Draft('SignatureCell', shapeOf('SignatureCell'));
  const left = sourceOf(cells).attributes.filter(
    (attribute) => !into.has(attribute.local) || into.get(attribute.local) === attribute.value,
  );
  fillDraft(newer.direction, { ...sourceOf(cells), attributes: left, children: [] }, draft, overflow);
  for (const [name, value] of draft.attributes) into.set(name, value);
  newer.job.ledger.carry(cells);
}

/** Plates that nobody described are plates of some kind. */
const exposed: Rule = (newer, source, out) => {
  if (subs(newer, source, 'Media').length > 0) return source;
  out.attributes.set('MediaRef', newer.job.plainMedia(newer.direction));
  return source;
};

const preview: Rule = (newer, source, out, overflow) => {
  const url = source.attributes.find(({ local }) => local === 'URL');
  if (url === undefined) return source;
  const spec = new Draft('FileSpec', shapeOf('FileSpec'));
  if (carryAttribute(newer.direction, 'FileSpec', url, spec, overflow))
    out.children.push(finish(newer.direction, spec));
  return without(source, [], ['URL']);
};

/** Pools of colours are gone: each colour is a resource. */
const colours: Rule = (newer, source) => {
  const pools = subs(newer, source, 'ColorPool');
  for (const { child, target } of pools) {
    if (child === target) newer.placer.colours(target);
    newer.job.ledger.carry(child);
    newer.job.ledger.carryNamed(child, 'rRef', 'ID', 'Class');
  }
  return without(
    source,
    pools.map(({ child }) => child),
  );
};

export const layoutRules: Readonly<Record<string, Rule>> = {
  Layout: layout,
  StrippingParams: stripping,
  ExposedMedia: exposed,
  Preview: preview,
  ColorantControl: colours,
  ColorIntent: colours,
};

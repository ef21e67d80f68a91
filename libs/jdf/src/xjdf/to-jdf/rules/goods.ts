import { jdfVocabulary } from '../../facts.js';
import { attributeNode } from '../../ledger.js';
import { sourceOf, without } from '../../source.js';
import { carryAttribute, Draft, finish, translate } from '../../translate.js';
import { asToken } from '../../values.js';
import { named, type Rule } from './rule.js';

const ELEMENT = new Set(['ClipPath', 'SourceBleedBox', 'SourceClipBox', 'SourceMediaBox', 'SourceTrimBox']);

/** Where a file is and what of it is shown lies one level deeper in the older generation. */
const runList: Rule = (older, source, out, overflow) => {
  const { direction } = older;
  const files = named(source, 'FileSpec');
  const own = source.attributes.filter(({ local, uri }) => uri === '' && ELEMENT.has(local));
  const place = out.shape.byName.get('LayoutElement');
  if ((files.length === 0 && own.length === 0) || place === undefined) return source;
  const draft = new Draft('LayoutElement', direction.to.shape(place.shape)!);
  for (const attribute of own) carryAttribute(direction, 'LayoutElement', attribute, draft, overflow);
  for (const file of files) {
    const made = translate(direction, sourceOf(file), 'FileSpec', jdfVocabulary.shape('FileSpec')!, overflow);
    if (made !== undefined) draft.children.push(made);
  }
  out.children.push(finish(direction, draft));
  return without(source, files, [...ELEMENT]);
};

/** A colour is known by its name, which the newer generation has as a partition. */
const color: Rule = (_older, _source, out, overflow) => {
  const name = overflow.keys.Separation;
  if (name !== undefined && out.shape.attributes.has('Name')) out.attributes.set('Name', name);
  return _source;
};

/** What somebody is to be spoken to about. */
const contact: Rule = (_older, source, out, overflow) => {
  const types = [...new Set(overflow.contactTypes ?? [])];
  if (out.shape.attributes.has('ContactTypes')) {
    out.attributes.set('ContactTypes', types.length === 0 ? 'Customer' : types.map(asToken).join(' '));
  }
  return source;
};

/** A person at work is an element. */
const nodeInfo: Rule = (older, source, out, overflow) => {
  const person = attributeNode(source.el, 'PersonalID');
  const place = out.shape.byName.get('Employee');
  if (person === undefined || place === undefined) return source;
  const draft = new Draft('Employee', older.direction.to.shape(place.shape)!);
  if (carryAttribute(older.direction, 'Employee', person, draft, overflow))
    out.children.push(finish(older.direction, draft));
  return without(source, [], ['PersonalID']);
};

const preview: Rule = (older, source, out, overflow) => {
  const [file] = named(source, 'FileSpec');
  const url = file && attributeNode(file, 'URL');
  if (file === undefined || url === undefined) return source;
  if (carryAttribute(older.direction, 'Preview', url, out, overflow)) older.ticket.ledger.carry(file);
  return without(source, [file]);
};

/** What is delivered together is a drop. */
const delivery: Rule = (older, source, out, overflow) => {
  const items = named(source, 'DropItem');
  const place = out.shape.byName.get('Drop');
  const id = overflow.dropId;
  if (place === undefined || (items.length === 0 && id === undefined)) return source;
  const drop = new Draft('Drop', older.direction.to.shape(place.shape)!);
  if (id !== undefined) drop.attributes.set('DropID', id);
  for (const item of items) {
    const shape = older.direction.to.shape(drop.shape.byName.get('DropItem')!.shape)!;
    const made = translate(older.direction, sourceOf(item), 'DropItem', shape, overflow);
    if (made !== undefined) drop.children.push(made);
  }
  out.children.push(finish(older.direction, drop));
  return without(source, items);
};

export const goodsRules: Readonly<Record<string, Rule>> = {
  RunList: runList,
  Color: color,
  Contact: contact,
  NodeInfo: nodeInfo,
  Preview: preview,
  DeliveryParams: delivery,
};

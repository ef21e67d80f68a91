import { withChildren, type XmlAttribute, type XmlElement } from '../xml/index.js';
import type { ElementShape, Vocabulary } from './facts.js';
import type { Ledger } from './ledger.js';
import type { AttributePair } from './row.js';
import { type Overflow, type Source, sourceOf } from './source.js';
import { asToken, valueFor } from './values.js';
import { adopted, inOrder, attribute as made } from './write.js';

/** One direction of the conversion: what the generic walk cannot know. */
export interface Direction {
  readonly ledger: Ledger;
  readonly uri: string;
  readonly to: Vocabulary;
  /** The attribute of the target that an attribute of an element becomes, with its values; null: it becomes none. */
  pair(
    local: string,
    attribute: string,
  ): { readonly to: string; readonly values: AttributePair['values'] } | null;
  /** The value type that the source's schema gives, where it matters. */
  typeOf(local: string, attribute: string): string;
  fills(local: string): Readonly<Record<string, string>>;
  /** Takes the sub-elements that only it understands; the rest goes the common way. */
  restructure(source: Source, out: Draft, overflow: Overflow): Source;
  /** A child that the target has under another name or as an attribute. True when it is done with it. */
  child(child: XmlElement, source: Source, out: Draft, overflow: Overflow): boolean;
  childName(local: string, child: string): string;
  /** An attribute that the target has in another way. True when it is done with it. */
  attribute?(attribute: XmlAttribute, source: Source, out: Draft, overflow: Overflow): boolean;
}

/** An element of the target while it is being made. */
export class Draft {
  readonly attributes = new Map<string, string>();
  readonly foreign: XmlAttribute[] = [];
  readonly children: XmlElement[] = [];
  text = '';
  /** Line of what it was made from, so that a finding in the result can name its place. */
  line = 0;

  constructor(
    readonly name: string,
    readonly shape: ElementShape,
  ) {}

  /** Sets an attribute if the element has it and it can have this value. */
  put(name: string, value: string): boolean {
    const allowed = this.shape.attributes.get(name)?.allows(value) ?? false;
    if (allowed) this.attributes.set(name, value);
    return allowed;
  }

  /** How many children of a name there are. */
  count(name: string): number {
    return this.children.filter((child) => child.local === name).length;
  }
}

/** Writes a source element as an element of the target; undefined, with the reasons entered, where it cannot be one. */
export function translate(
  direction: Direction,
  source: Source,
  name: string,
  shape: ElementShape,
  overflow: Overflow,
): XmlElement | undefined {
  const mark = direction.ledger.mark;
  const nodes = overflow.nodes.length;
  const originals = overflow.originals.length;
  const draft = new Draft(name, shape);
  fillDraft(direction, source, draft, overflow);
  const missing = complete(direction, source, draft);
  if (missing !== undefined) {
    direction.ledger.back(mark);
    overflow.nodes.splice(nodes);
    overflow.originals.splice(originals);
    direction.ledger.reason(source.el, `the other generation asks for ${missing}, which is not said here`);
    return undefined;
  }
  direction.ledger.carry(source.el);
  return finish(direction, draft);
}

/** Puts attributes and children of a source into a draft. */
export function fillDraft(direction: Direction, source: Source, draft: Draft, overflow: Overflow): void {
  if (draft.line === 0) draft.line = source.el.line;
  const rest = direction.restructure(source, draft, overflow);
  for (const attribute of rest.attributes) {
    if (direction.attribute?.(attribute, source, draft, overflow)) continue;
    carryAttribute(direction, source.el.local, attribute, draft, overflow);
  }
  for (const child of rest.children) carryChild(direction, child, source, draft, overflow);
  if (draft.shape.text && draft.text === '') draft.text = textIn(source.el);
}

/** How an attribute is read where it is not taken as it stands. */
export interface ReadAs {
  readonly local?: string;
  readonly value?: string;
}

/** One attribute into a draft that has it. True when the draft has it now. */
export function carryAttribute(
  direction: Direction,
  local: string,
  attribute: XmlAttribute,
  draft: Draft,
  overflow: Overflow,
  as: ReadAs = {},
): boolean {
  const { ledger } = direction;
  if (attribute.uri !== '') {
    if (!attribute.uri.startsWith('http://www.w3.org/')) {
      draft.foreign.push(attribute);
      ledger.carry(attribute);
    }
    return true;
  }
  const name = as.local ?? attribute.local;
  const value = original(direction, overflow, name, as.value ?? attribute.value);
  const pair = direction.pair(local, name);
  if (pair === null) return false;
  const wanted = draft.shape.attributes.get(pair.to);
  if (wanted === undefined || draft.attributes.has(pair.to)) return false;
  const from = direction.typeOf(local, name);
  const asIs = valueFor(value, wanted, from);
  const mapped = asIs?.exact === true ? undefined : pair.values?.find(([other]) => other === value);
  const fitted = mapped === undefined ? asIs : valueFor(mapped[1], wanted, from);
  if (fitted === undefined) {
    ledger.reason(attribute, `not a value of ${pair.to} in the other generation`);
    return false;
  }
  draft.attributes.set(pair.to, fitted.value);
  if (mapped?.[2] === '~') {
    ledger.reason(attribute, `the nearest that the other generation can say is ${pair.to}="${fitted.value}"`);
  } else ledger.carry(attribute);
  if (!fitted.exact) overflow.originals.push([pair.to, value]);
  return true;
}

/** A name as it was before it became a token, where that is known. */
export function original(direction: Direction, overflow: Overflow, name: string, value: string): string {
  const kept = overflow.kept?.find((one) => one.name === name && asToken(one.original) === value);
  if (kept === undefined) return value;
  direction.ledger.carryAll(kept.by);
  return kept.original;
}

function carryChild(
  direction: Direction,
  child: XmlElement,
  source: Source,
  draft: Draft,
  overflow: Overflow,
): void {
  const { ledger, to } = direction;
  if (child.uri !== source.el.uri) {
    const copy = adopted(child);
    ledger.carryAll(child);
    if (draft.shape.foreign) draft.children.push(copy);
    else overflow.nodes.push(copy);
    return;
  }
  if (direction.child(child, source, draft, overflow)) return;
  const name = direction.childName(source.el.local, child.local);
  const place = draft.shape.byName.get(name);
  if (place === undefined || draft.count(name) >= place.max) {
    if (place !== undefined) ledger.reason(child, `only ${place.max} can be there`);
    else if (child.local === 'Comment' || child.local === 'GeneralID') spill(direction, child, overflow);
    return;
  }
  const shape = to.shape(place.shape);
  const made = shape && translate(direction, sourceOf(child), name, shape, overflow);
  if (made !== undefined) draft.children.push(made);
}

/** Comments and identifiers go to the nearest element around that may hold them. */
function spill(direction: Direction, child: XmlElement, overflow: Overflow): void {
  const shape = direction.to.named(child.local) ?? direction.to.shape(child.local);
  const made = shape && translate(direction, sourceOf(child), child.local, shape, overflow);
  if (made !== undefined) overflow.nodes.push(made);
}

/** Fills what is required and has a neutral value; the name of what is still missing, if anything is. */
export function complete(direction: Direction, source: Source, draft: Draft): string | undefined {
  const fills = direction.fills(source.el.local);
  for (const [name, { required }] of draft.shape.attributes) {
    if (!required || draft.attributes.has(name)) continue;
    const value = fills[name];
    if (value === undefined) return `@${name}`;
    draft.attributes.set(name, value);
  }
  for (const { name, min } of draft.shape.children) {
    if (min > 0 && draft.count(name) < min) return name;
  }
  return undefined;
}

/** The element that a draft has become, its children in the order of its kind. */
export function finish(direction: Pick<Direction, 'uri'>, draft: Draft): XmlElement {
  const attributes = [...[...draft.attributes].map(([name, value]) => made(name, value)), ...draft.foreign];
  const el: XmlElement = {
    kind: 'element',
    name: draft.name,
    prefix: '',
    local: draft.name,
    uri: direction.uri,
    attributes,
    children: [],
    line: draft.line,
  };
  const children = inOrder(draft.children, draft.shape);
  if (draft.text === '') return withChildren(el, children);
  return withChildren(el, [{ kind: 'text', value: draft.text }, ...children]);
}

function textIn(el: XmlElement): string {
  return el.children
    .map((node) => (node.kind === 'text' || node.kind === 'cdata' ? node.value : ''))
    .join('');
}

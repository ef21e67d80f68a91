import { splitTokens } from '../codec/index.js';
import { partsOf } from '../partition/index.js';
import { attributeOf, withAttributes, type XmlElement } from '../xml/index.js';
import { holds } from './scope.js';

export type CopyMode = 'RO' | 'RW';
/** How a resource was copied under a token: from the lists of the Spawned audits. */
export type ModeOf = (token: string) => CopyMode | undefined;

/** The tokens of a part: its own SpawnIDs, else those around it. */
function tokensAt(el: XmlElement, around: readonly string[]): readonly string[] {
  const own = attributeOf(el, 'SpawnIDs');
  return own === undefined ? around : splitTokens(own);
}

/** Every part of a resource, itself first, with the tokens that hold there. */
export function* marksOf(
  el: XmlElement,
  around: readonly string[] = [],
): Generator<{
  readonly place: XmlElement;
  readonly tokens: readonly string[];
  readonly around: readonly string[];
}> {
  const tokens = tokensAt(el, around);
  yield { place: el, tokens, around };
  for (const part of partsOf(el)) yield* marksOf(part, tokens);
}

/** The outermost parts that a token holds in. */
export function placesMarked(resource: XmlElement, token: string): XmlElement[] {
  return [...marksOf(resource)]
    .filter(({ tokens, around }) => tokens.includes(token) && !around.includes(token))
    .map(({ place }) => place);
}

/** A part given away read-write that overlaps one of these places. */
export function givenAway(
  resource: XmlElement,
  places: readonly XmlElement[],
  modeOf: ModeOf,
): { readonly place: XmlElement; readonly token: string } | undefined {
  for (const { place, tokens } of marksOf(resource)) {
    const token = tokens.find((one) => modeOf(one) === 'RW');
    const overlaps = (other: XmlElement): boolean => holds(place, other) || holds(other, place);
    if (token !== undefined && places.some(overlaps)) return { place, token };
  }
  return undefined;
}

/** The resource with a token at some of its places. */
export function withToken(
  resource: XmlElement,
  token: string,
  places: readonly XmlElement[],
  modeOf: ModeOf,
): XmlElement {
  return restamped(resource, modeOf, (tokens, within) => (within ? union(tokens, [token]) : tokens), places);
}

/** The resource without a token; where none is left nothing says any more that it was given away. */
export function withoutToken(resource: XmlElement, token: string, modeOf: ModeOf): XmlElement {
  return restamped(resource, modeOf, (tokens) => tokens.filter((one) => one !== token), []);
}

function restamped(
  resource: XmlElement,
  modeOf: ModeOf,
  change: (tokens: readonly string[], within: boolean) => readonly string[],
  places: readonly XmlElement[],
): XmlElement {
  const visit = (
    el: XmlElement,
    before: readonly string[],
    after: readonly string[],
    inside: boolean,
  ): XmlElement => {
    const within = inside || places.includes(el);
    const stated = tokensAt(el, before);
    const tokens = change(stated, within);
    const parts = new Set(partsOf(el));
    const marked = withAttributes(el, same(tokens, after) ? NONE : stamp(tokens, modeOf));
    const children = el.children.map((child) =>
      child.kind === 'element' && parts.has(child) ? visit(child, stated, tokens, within) : child,
    );
    return { ...marked, attributes: sameAttributes(el, marked), children };
  };
  return visit(resource, [], [], false);
}

const NONE = { SpawnStatus: undefined, SpawnIDs: undefined };

function stamp(tokens: readonly string[], modeOf: ModeOf): Record<string, string | undefined> {
  if (tokens.length === 0) return NONE;
  const status = tokens.some((token) => modeOf(token) === 'RW') ? 'SpawnedRW' : 'SpawnedRO';
  return { SpawnStatus: status, SpawnIDs: tokens.join(' ') };
}

/** The old list of attributes where nothing changed, so that the tag stays as it was written. */
function sameAttributes(before: XmlElement, after: XmlElement): XmlElement['attributes'] {
  const changed =
    before.attributes.length !== after.attributes.length ||
    after.attributes.some((attribute, i) => attribute.value !== before.attributes[i]?.value);
  return changed ? after.attributes : before.attributes;
}

function union(a: readonly string[], b: readonly string[]): readonly string[] {
  return [...new Set([...a, ...b])];
}

function same(a: readonly string[], b: readonly string[]): boolean {
  return a.length === b.length && a.every((one) => b.includes(one));
}

/** A copy of a resource as it goes into another ticket: without the marks of the ticket it comes from. */
export function unmarked(resource: XmlElement): XmlElement {
  const visit = (el: XmlElement): XmlElement => {
    const parts = new Set(partsOf(el));
    const bare = withAttributes(el, NONE);
    const children = el.children.map((child) =>
      child.kind === 'element' && parts.has(child) ? visit(child) : child,
    );
    return { ...bare, attributes: sameAttributes(el, bare), children };
  };
  return visit(resource);
}

import { attributeOf, descendants, parentOf, pathOf, type XmlDocument, type XmlElement } from '#libs/jdf';
import { error, type Problem, warning } from '#libs/kernel';
import { unescaped } from './multipart-header.js';
import type { Package, PackagePart } from './package.js';
import { isInside, resolveReference } from './resolve-reference.js';
import { withinPart } from './ticket-in.js';

/** What of a part matters to references. */
type Named = Pick<PackagePart, 'name' | 'contentId'>;

/** A message or ticket of a package, read; `null` for one that could not be. */
export interface PartDocument {
  readonly part: Named;
  readonly document: XmlDocument | null;
}

/** A place where a document names something by an address. */
export interface Reference {
  readonly el: XmlElement;
  readonly attribute: string;
  readonly url: string;
}

/**
 * The addresses in a document that name a part of the package it lies in: `cid:` in any attribute, and relative ones in
 * the attribute URL. Left out are relative ones that count from elsewhere (a Directory, an archive that the file lies in)
 * and those of a file that is still to be made.
 */
export function* partReferences(doc: XmlDocument): Generator<Reference> {
  for (const el of descendants(doc.root)) {
    for (const { local, value } of el.attributes) {
      const isCid = /^cid:/i.test(value);
      const counts = isCid || (local === 'URL' && value !== '' && isInside(value) && countsFromHere(doc, el));
      if (counts) yield { el, attribute: local, url: value };
    }
  }
}

function countsFromHere(doc: XmlDocument, el: XmlElement): boolean {
  if (el.children.some((child) => child.kind === 'element' && child.local === 'Container')) return false;
  for (let at: XmlElement | undefined = el; at !== undefined; at = parentOf(doc, at)) {
    if (attributeOf(at, 'Directory') !== undefined) return false;
    if (attributeOf(at, 'Status') === 'Unavailable' || attributeOf(at, 'Usage') === 'Output') return false;
    if (at.local === 'ResourcePool' || at.local === 'ResourceSet') break;
  }
  return true;
}

/** What the parts of a package can be found by. */
export type PartList = Pick<Package, 'container'> & { readonly parts: readonly Named[] };

/**
 * The addresses in one document of a package: each leads to a part, and no file address climbs. `used` are the parts that
 * it refers to. Paths are those of the document alone. Errors: PACKAGE_PART_MISSING, URL_REFUSED.
 */
export function checkPartReferences(
  pack: PartList,
  from: Named,
  document: XmlDocument,
): { readonly problems: readonly Problem[]; readonly used: readonly Named[] } {
  const problems: Problem[] = [];
  const used: Named[] = [];
  const place = (el: XmlElement) => ({ line: el.line || null, path: pathOf(document, el) });
  for (const { el, attribute, url } of partReferences(document)) {
    const found = resolveReference(pack, from, url);
    if (found.ok) used.push(found.value);
    else {
      const message = `${attribute}="${url.slice(0, 200)}" of ${el.name} names no part of the package.`;
      const hint = found.problems[0]!.hint ?? hintFor(pack, url);
      problems.push(error('PACKAGE_PART_MISSING', message, { ...place(el), hint }));
    }
  }
  for (const { el, attribute, url } of climbingFiles(document)) {
    const message = `${attribute}="${url.slice(0, 200)}" of ${el.name} climbs with "..".`;
    const hint = 'Write the path of the file without "..".';
    problems.push(error('URL_REFUSED', message, { ...place(el), hint }));
  }
  return { problems, used };
}

/**
 * The addresses of a package, as far as documents and parts are concerned: each leads to a part, each part is led to (a
 * warning), no file address climbs. Paths are `part!path`.
 */
export function checkReferences(pack: PartList, documents: readonly PartDocument[]): Problem[] {
  const problems: Problem[] = [];
  const used = new Set<Named>(pack.parts.slice(0, 1));
  for (const { part, document } of documents) {
    if (document === null) continue;
    const found = checkPartReferences(pack, part, document);
    for (const one of found.used) used.add(one);
    problems.push(...found.problems.map((problem) => withinPart(part, problem)));
  }
  // What an unreadable document refers to, nobody knows.
  if (documents.some(({ document }) => document === null)) return problems;
  for (const part of pack.parts.filter((one) => !used.has(one))) {
    const message = `Nothing in the package refers to the part "${part.name}".`;
    problems.push(
      warning('PACKAGE_PART_UNUSED', message, { path: `${part.name}!`, hint: hintToRefer(pack, part) }),
    );
  }
  return problems;
}

function hintFor({ container, parts }: { container: string; parts: readonly Named[] }, url: string): string {
  const names = parts.flatMap(({ name, contentId }) =>
    container === 'zip' ? [name] : contentId === null ? [] : [`cid:${contentId}`],
  );
  if (container === 'multipart' && !/^cid:/i.test(url)) {
    return 'In a multipart package parts are named by cid: and their Content-ID.';
  }
  return names.length === 0 ? 'No part has a Content-ID.' : `There are ${names.slice(0, 10).join(', ')}.`;
}

function hintToRefer({ container }: { container: string }, { name, contentId }: Named): string {
  if (container === 'zip') return `Refer to it by URL="${encodeURI(name)}", or leave it out.`;
  return contentId === null
    ? 'Give it a Content-ID and refer to it by cid:, or leave it out.'
    : `Refer to it by URL="cid:${contentId}", or leave it out.`;
}

function* climbingFiles(doc: XmlDocument): Generator<Reference> {
  for (const el of descendants(doc.root)) {
    for (const { local, value } of el.attributes) {
      if (!/^file:/i.test(value)) continue;
      const steps = unescaped(value).split(/[/\\]/);
      if (steps.includes('..')) yield { el, attribute: local, url: value };
    }
  }
}

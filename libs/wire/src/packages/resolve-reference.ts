import { done, error, type Result, refuse } from '#libs/kernel';
import { canonicalId, unescaped } from './multipart-header.js';
import type { Package, PackagePart } from './package.js';

/** Parts as far as addresses find them. */
type Parts<P> = Pick<Package, 'container'> & { readonly parts: readonly P[] };
type Named = Pick<PackagePart, 'name' | 'contentId'>;

/** Whether an address names a part of the package that it stands in, and nothing outside. */
export function isInside(url: string): boolean {
  return /^cid:/i.test(url) || !/^[a-z][a-z0-9+.-]*:|^\/\//i.test(url);
}

/**
 * The part that an address in the part `from` names: by `cid:` (RFC 2392), or inside a ZIP by a relative address.
 * Refusal: PACKAGE_PART_MISSING, also for addresses that lead out of the package.
 */
export function resolveReference<P extends Named>(pack: Parts<P>, from: Named, url: string): Result<P> {
  if (/^cid:/i.test(url)) return resolveCid(pack, url);
  return pack.container === 'zip' ? resolveRelative(pack, from.name, url) : missing(url);
}

/** The part that a `cid:` address names, in either container. Refusal: PACKAGE_PART_MISSING. */
export function resolveCid<P extends Named>(pack: Parts<P>, url: string): Result<P> {
  const id = canonicalId(/^cid:(.*)$/is.exec(url)?.[1] ?? '');
  const part = pack.parts.find(({ contentId }) => contentId !== null && canonicalId(contentId) === id);
  return part === undefined ? missing(url) : done(part);
}

/**
 * The part that a relative address names inside a ZIP, seen from the part `from` (the standard's second generation, from
 * memory). The address stays inside the package: one that climbs out of it names nothing.
 */
function resolveRelative<P extends Named>(pack: Parts<P>, from: string, url: string): Result<P> {
  if (!isInside(url) || url === '') return missing(url);
  const steps = url.startsWith('/') ? [] : from.split('/').slice(0, -1);
  for (const step of url
    .replace(/[?#].*$/s, '')
    .split('/')
    .map(unescaped)) {
    if (step === '..' && steps.pop() === undefined) return missing(url, 'It climbs out of the package.');
    if (step !== '' && step !== '.' && step !== '..') steps.push(step);
  }
  const path = steps.join('/').toLowerCase();
  const part = pack.parts.find(({ name }) => name.toLowerCase() === path);
  return part === undefined ? missing(url) : done(part);
}

function missing(url: string, hint: string | null = null): Result<never> {
  const message = `No part of the package is "${url.slice(0, 200)}".`;
  return refuse(error('PACKAGE_PART_MISSING', message, { hint }));
}

import { done, error, type Result, refuse } from '#libs/kernel';
import type { Package, PackagePart } from './package.js';

/**
 * The part that a `cid:` address names (RFC 2392; JDF specification: compared without regard to case and %-escapes,
 * angle brackets stand in the header only). Refusal: PACKAGE_PART_MISSING.
 */
export function resolveCid(pack: Package, url: string): Result<PackagePart> {
  const id = unescaped(/^cid:(.*)$/is.exec(url)?.[1] ?? '');
  const part = id === '' ? undefined : pack.parts.find(({ contentId }) => same(contentId, id));
  return part === undefined ? missing(url) : done(part);
}

/**
 * The part that a relative address names inside a ZIP, seen from the part `from` (the standard's second generation, from
 * memory). The address stays inside the package: climbing out of it leads back to its root. PACKAGE_PART_MISSING.
 */
export function resolveRelative(pack: Package, from: string, url: string): Result<PackagePart> {
  if (/^[a-z][a-z0-9+.-]*:|^\/\//i.test(url)) return missing(url);
  const base = `http://package.invalid/${from.split('/').map(encodeURIComponent).join('/')}`;
  if (!URL.canParse(url, base)) return missing(url);
  const path = unescaped(new URL(url, base).pathname.slice(1)).toLowerCase();
  const part = pack.parts.find(({ name }) => name.toLowerCase() === path);
  return part === undefined ? missing(url) : done(part);
}

function missing(url: string): Result<PackagePart> {
  return refuse(error('PACKAGE_PART_MISSING', `No part of the package is "${url.slice(0, 200)}".`));
}

function same(contentId: string | null, id: string): boolean {
  return contentId !== null && unescaped(contentId).toLowerCase() === id.toLowerCase();
}

function unescaped(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}

import { constants } from 'node:fs';
import { lstat, open, realpath } from 'node:fs/promises';
import { isAbsolute, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { done, error, type Problem, type Result, refuse } from '#libs/kernel';

/**
 * A `file:` URL is judged as text first: everything that has two readings (dots, encoded slashes, backslashes, look-alike
 * characters) is refused before anybody resolves it. Then the real path must lie inside a configured root.
 */
export function readFileUrl(url: string): Result<string> {
  const no = (why: string): Result<string> => refuse(urlRefused(url, why));
  const match = /^file:\/\/(localhost)?(\/.*)$/is.exec(url);
  if (match === null) return no('only file:///absolute/path is read, on this machine');
  const encoded = match[2]!;
  if (/[?#]/.test(encoded)) return no('a file address has no query and no fragment');
  if (/[\\]|%5c|%2f|%2e/i.test(encoded)) return no('it hides a slash, a backslash or a dot');
  let path: string;
  try {
    path = decodeURIComponent(encoded);
  } catch {
    return no('its %-escapes are not UTF-8');
  }
  if (hasControl(path)) return no('it holds a control character');
  if (path.startsWith('//')) return no('it names another machine');
  if (process.platform !== 'win32' && /^\/[a-z]:/i.test(path)) return no('it names a drive');
  if (dotted(path) || dotted(path.normalize('NFKC'))) return no('it climbs or doubles back');
  if (slashes(path.normalize('NFKC')) !== slashes(path)) return no('it holds look-alikes of a slash');
  return done(fileURLToPath(`file://${encoded}`));
}

/** The real path of `path` when it exists inside one of `roots` and its last step is not a link. */
export async function insideRoots(
  url: string,
  path: string,
  roots: readonly string[],
): Promise<Result<string>> {
  if (roots.length === 0) return refuse(urlRefused(url, 'no folder is open to tickets'));
  let real: string;
  try {
    if ((await lstat(path)).isSymbolicLink()) return refuse(urlRefused(url, 'it is a link'));
    real = await realpath(path);
  } catch {
    // The same words for "absent" and "not yours to see": an address must not be a way to ask what exists.
    return refuse(urlRefused(url, 'there is no such file inside the folders open to tickets'));
  }
  for (const root of roots) {
    const realRoot = await realpath(root).catch(() => null);
    if (realRoot !== null && isInside(real, realRoot)) return done(real);
  }
  return refuse(urlRefused(url, 'there is no such file inside the folders open to tickets'));
}

/**
 * Bytes of a regular file whose real path was checked. Opened without following a link and compared with the path
 * again afterwards, so that a swap between check and reading is noticed. At most `maxBytes`.
 */
export async function readCheckedFile(
  url: string,
  real: string,
  maxBytes: number,
): Promise<Result<Uint8Array>> {
  const unreadable = (why: string): Result<Uint8Array> => refuse(urlUnreadable(url, why));
  const handle = await open(real, constants.O_RDONLY | constants.O_NOFOLLOW | constants.O_NONBLOCK).catch(
    () => null,
  );
  if (handle === null) return unreadable('the file could not be opened');
  try {
    const opened = await handle.stat();
    if (!opened.isFile()) return unreadable('it is not a regular file');
    if (opened.size > maxBytes) return unreadable(`it is larger than ${maxBytes} bytes`);
    const now = await realpath(real).catch(() => null);
    const there = await lstat(real).catch(() => null);
    if (now !== real || there === null || there.ino !== opened.ino || there.dev !== opened.dev) {
      return unreadable('it changed while it was read');
    }
    const bytes = await handle.readFile();
    return bytes.length > maxBytes ? unreadable(`it is larger than ${maxBytes} bytes`) : done(bytes);
  } catch {
    return unreadable('reading failed');
  } finally {
    await handle.close();
  }
}

/** The address is shown without control characters and cut, because it comes from a stranger and goes into logs. */
export function urlRefused(url: string, why: string): Problem {
  return error('URL_REFUSED', `The address "${shown(url)}" must not be used: ${why}.`);
}

export function urlUnreadable(url: string, why: string): Problem {
  return error('URL_UNREADABLE', `The address "${shown(url)}" could not be read: ${why}.`);
}

function shown(url: string): string {
  const clean = [...url.slice(0, 200)].map((c) => (hasControl(c) ? '�' : c)).join('');
  // What stands before an @ may be a password.
  return clean.replace(/^([a-z][a-z0-9+.-]*:\/\/)[^/?#]*@/i, '$1…@');
}

function hasControl(text: string): boolean {
  return [...text].some((c) => c.charCodeAt(0) < 0x20 || c.charCodeAt(0) === 0x7f);
}

function dotted(path: string): boolean {
  return path.split(/[/\\]/).some((step) => /^\.{1,2}$/.test(step.trim()) || /^\.\.?;/.test(step));
}

function slashes(text: string): number {
  return text.split(/[/\\∕⁄]/).length;
}

function isInside(path: string, root: string): boolean {
  const way = relative(root, path);
  return way === '' || (!isAbsolute(way) && way !== '..' && !way.startsWith(`..${sep}`));
}

import { z } from 'zod';
import { type Code, error, type Problem } from '#libs/kernel';

/** JSON Pointer of a path (RFC 6901). */
export function jsonPointer(path: readonly PropertyKey[]): string {
  return path.map((part) => `/${String(part).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
}

function valueAt(input: unknown, path: readonly PropertyKey[]): unknown {
  return path.reduce<unknown>(
    (at, key) =>
      typeof at === 'object' && at !== null ? (at as Record<PropertyKey, unknown>)[key] : undefined,
    input,
  );
}

/** What each kind of finding says to the person who wrote the document; zod's own words where they are plain enough. */
function wordsOf(issue: z.core.$ZodIssue, input: unknown, path: string): string {
  const name = path === '' ? 'The document' : path;
  if (path !== '' && valueAt(input, issue.path) === undefined) return `${name} is missing.`;
  switch (issue.code) {
    case 'invalid_type':
      return `${name} must be ${/^[aeiou]/.test(issue.expected) ? 'an' : 'a'} ${issue.expected}.`;
    case 'invalid_value':
      return `${name} must be one of ${issue.values.map(String).join(', ')}.`;
    case 'too_small':
      return `${name} must be ${issue.inclusive ? 'at least' : 'more than'} ${issue.minimum}.`;
    case 'too_big':
      return `${name} must be ${issue.inclusive ? 'at most' : 'less than'} ${issue.maximum}.`;
    default:
      return `${name}: ${issue.message}.`;
  }
}

/**
 * Findings of a schema as problems with a JSON Pointer: unknown fields by name, one problem each. `hintOf` says for a
 * pointer what would be possible.
 */
export function schemaProblems(
  code: Code,
  found: z.ZodError,
  input: unknown,
  hintOf: (path: string) => string | null,
): Problem[] {
  return found.issues.flatMap((issue) => {
    if (issue.code === 'unrecognized_keys') {
      return issue.keys.map((key) => {
        const path = jsonPointer([...issue.path, key]);
        return error(code, `${path} is not a field that is known here.`, {
          path,
          hint: hintOf(jsonPointer(issue.path)) ?? 'Correct its name, or leave it out.',
        });
      });
    }
    const path = jsonPointer(issue.path);
    return [error(code, wordsOf(issue, input, path), { path, hint: hintOf(path) })];
  });
}

import type { Use } from '../state/ticket.js';

/** The use of a step that a resource name of the standard means; null for what the books do not follow. */
export function useNamed(
  all: readonly Use[],
  stepId: string,
  resource: { readonly name: string; readonly mediaType: string | null; readonly separation: string | null },
): Use | null {
  const uses = all.filter((use) => use.stepId === stepId);
  const isPlate = resource.name === 'ExposedMedia' || resource.mediaType === 'Plate';
  if (isPlate) return uses.find((use) => use.unit === 'plates') ?? null;
  if (resource.name === 'Media')
    return uses.find((use) => use.unit === 'sheets') ?? uses.find((use) => use.unit === 'plates') ?? null;
  if (resource.name !== 'Ink') return null;
  const inks = uses.filter((use) => use.unit === 'kg');
  return inks.find((use) => use.item.endsWith(`/${resource.separation}`)) ?? null;
}

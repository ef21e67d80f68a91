/** Puts lists of any length at the end of another: as arguments of one call, more than some 100,000 would be a fault. */
export function addAll<T>(to: T[], ...lists: readonly (readonly T[])[]): void {
  for (const list of lists) for (const one of list) to.push(one);
}

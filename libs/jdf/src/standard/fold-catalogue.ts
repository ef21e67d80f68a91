/**
 * Facts of the open standard: the codes of the folding catalogue, by pages of the folded section: how many schemes there
 * are of each. Source: the finishing-template keywords jdf-f* of PWG 5100.1, which name every code.
 */
const SCHEMES: ReadonlyMap<number, number> = new Map([
  [2, 1],
  [4, 2],
  [6, 8],
  [8, 7],
  [10, 3],
  [12, 14],
  [14, 1],
  [16, 14],
  [18, 9],
  [20, 2],
  [24, 11],
  [28, 1],
  [32, 9],
  [36, 2],
  [40, 1],
  [48, 2],
  [64, 2],
]);

/** The pages of the section that a code of the catalogue folds, both sides printed; undefined for what is no code. */
export function pagesOfFoldCode(code: string): number | undefined {
  const [, pages, scheme] = /^F(\d+)-(\d+)$/.exec(code.trim()) ?? [];
  const schemes = SCHEMES.get(Number(pages));
  const known = schemes !== undefined && Number(scheme) >= 1 && Number(scheme) <= schemes;
  return known ? Number(pages) : undefined;
}

/** The page counts that have codes. */
export const foldedPageCounts: readonly number[] = [...SCHEMES.keys()];

/** A folded section and the reader pages that it carries, in the order in which the folded section shows them. */
export interface Section {
  pages: number[];
}

/**
 * Divides a page count into the fewest sections of the given sizes, largest first (common practice; fewest because each
 * size divides the next larger). Null when the count is no multiple of the smallest size.
 */
export function sectionSizes(pages: number, sizes: readonly number[]): number[] | null {
  const result: number[] = [];
  let left = pages;
  for (const size of sizes.toSorted((a, b) => b - a)) {
    while (left >= size) {
      result.push(size);
      left -= size;
    }
  }
  return left === 0 && pages > 0 ? result : null;
}

/**
 * Nests sections as saddle stitching collects them: the first is the outermost, every section takes half of its pages
 * from the front and half from the end of what is left. So the innermost section's middle is the book's middle.
 */
export function nestedSections(sizes: readonly number[]): Section[] {
  let first = 1;
  let last = sizes.reduce((sum, size) => sum + size, 0);
  return sizes.map((size) => {
    const half = size / 2;
    const low = Array.from({ length: half }, (_, i) => first + i);
    const high = Array.from({ length: half }, (_, i) => last - half + 1 + i);
    first += half;
    last -= half;
    return { pages: [...low, ...high] };
  });
}

/**
 * As sectionSizes, in the order in which the sections of a glued book lie: the largest outside, the smallest before the
 * last, since four pages at either end of the block tear off (common practice; handbook, section 2).
 */
export function gatheredSizes(pages: number, sizes: readonly number[]): number[] | null {
  const found = sectionSizes(pages, sizes);
  if (found === null) return null;
  const [first, ...rest] = found;
  const last = rest.shift();
  if (first === undefined || last === undefined) return found;
  if (found.length === 2 && Math.min(first, last) === 4) return null;
  return [first, ...rest, last];
}

/** Sections that lie one behind the other: each carries the pages that follow those of the one before. */
export function gatheredSections(sizes: readonly number[]): Section[] {
  let before = 0;
  return sizes.map((size) => {
    const pages = Array.from({ length: size }, (_, i) => before + i + 1);
    before += size;
    return { pages };
  });
}

/** Number, from the outside, of the nested leaf fold that carries a page of a saddle-stitched book of `pages` pages. */
export function nestedFold(page: number, pages: number): number {
  return Math.ceil(Math.min(page, pages + 1 - page) / 2);
}

/**
 * How far the image of a page moves towards the spine, mm: leaf fold k from the outside stands out (k − 1) calipers
 * (exact stack of nested sheets; handbook, "Creep").
 */
export function creepShiftMm(page: number, pages: number, caliperUm: number): number {
  return ((nestedFold(page, pages) - 1) * caliperUm) / 1000;
}

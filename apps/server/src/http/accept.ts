/** What an Accept header says of a type: how much it is wanted (RFC 9110, section 12.5.1), and where it is named. */
function wantOf(accept: string, type: RegExp): { readonly quality: number; readonly place: number } {
  const ranges = accept.split(',').map((range) => range.trim().toLowerCase());
  const place = ranges.findIndex((range) => type.test(range));
  if (place < 0) return { quality: 0, place: Number.POSITIVE_INFINITY };
  const stated = /;\s*q\s*=\s*([\d.]+)/.exec(ranges[place]!)?.[1];
  return { quality: stated === undefined ? 1 : Number(stated), place };
}

/** Whether XJDF is wanted more than JDF, or as much and named first. */
export function prefersXjdf(accept: string): boolean {
  const newer = wantOf(accept, /^application\/vnd\.cip4-xjdf/);
  const older = wantOf(accept, /^application\/vnd\.cip4-jdf/);
  if (newer.quality === 0) return false;
  return newer.quality > older.quality || (newer.quality === older.quality && newer.place < older.place);
}

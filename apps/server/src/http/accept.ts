import type { Package } from '#libs/wire';

/** What an Accept header says of a type: how much it is wanted (RFC 9110, section 12.5.1), and where it is named. */
function wantOf(accept: string, type: RegExp): { readonly quality: number; readonly place: number } {
  const ranges = accept.split(',').map((range) => range.trim().toLowerCase());
  const place = ranges.findIndex((range) => type.test(range));
  if (place < 0) return { quality: 0, place: Number.POSITIVE_INFINITY };
  const stated = /;\s*q\s*=\s*([\d.]+)/.exec(ranges[place]!)?.[1];
  return { quality: stated === undefined ? 1 : Number(stated), place };
}

/** Whether a media type, given with or without parameters, may be sent: by its name, as one of its kind, or as anything. */
export function accepts(accept: string, mediaType: string): boolean {
  const essence = mediaType.split(';')[0]!.trim().toLowerCase();
  const [kind] = essence.split('/');
  // The most exact range counts, as in a refusal with q=0.
  const ranges = [essence, `${kind}/*`, '*/*'].map((range) => {
    const exact = new RegExp(`^${range.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&')}\\s*(;|$)`);
    return wantOf(accept, exact);
  });
  return (ranges.find(({ place }) => Number.isFinite(place))?.quality ?? 0) > 0;
}

/** The package that is asked for, or null for the bare ticket. */
export function containerOf(accept: string): Package['container'] | null {
  if (/multipart\/related/i.test(accept)) return 'multipart';
  return /application\/zip/i.test(accept) ? 'zip' : null;
}

/** Whether XJDF is wanted more than JDF, or as much and named first. */
export function prefersXjdf(accept: string): boolean {
  const newer = wantOf(accept, /^application\/vnd\.cip4-xjdf/);
  const older = wantOf(accept, /^application\/vnd\.cip4-jdf/);
  if (newer.quality === 0) return false;
  return newer.quality > older.quality || (newer.quality === older.quality && newer.place < older.place);
}

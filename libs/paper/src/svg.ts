/** Text that may stand in an SVG document. Control characters that XML forbids are left out. */
export function escapeText(text: string): string {
  return [...text]
    .filter((c) => c >= ' ' || c === '\t' || c === '\n')
    .join('')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

/** Millimetres as SVG writes them: 0.01 mm is finer than any line drawn here. */
export function mm(value: number): string {
  return String(Math.round(value * 100) / 100);
}

type Attributes = Record<string, string | number>;

export function tag(name: string, attributes: Attributes, content = ''): string {
  const text = Object.entries(attributes)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? mm(value) : escapeText(value)}"`)
    .join('');
  return content === '' ? `<${name}${text}/>` : `<${name}${text}>${content}</${name}>`;
}

export function rect(x: number, y: number, width: number, height: number, more: Attributes = {}): string {
  return tag('rect', { x, y, width, height, fill: 'none', stroke: '#000', 'stroke-width': 0.5, ...more });
}

export function line(x1: number, y1: number, x2: number, y2: number, more: Attributes = {}): string {
  return tag('line', { x1, y1, x2, y2, stroke: '#000', 'stroke-width': 0.5, ...more });
}

export function text(x: number, y: number, size: number, words: string, more: Attributes = {}): string {
  return tag('text', { x, y, 'font-size': size, 'font-family': 'sans-serif', ...more }, escapeText(words));
}

/** An arrow from one point to another; with both heads for a direction that has no sense, such as grain. */
export function arrow(x1: number, y1: number, x2: number, y2: number, bothHeads = false): string {
  const more: Attributes = { 'marker-end': 'url(#head)', 'stroke-width': 1.2 };
  if (bothHeads) more['marker-start'] = 'url(#head)';
  return line(x1, y1, x2, y2, more);
}

const definitions = `<defs><marker id="head" markerWidth="8" markerHeight="8" refX="7" refY="4" orient="auto-start-reverse"><path d="M0 1 L7 4 L0 7 z"/></marker><pattern id="waste" width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><line x1="0" y1="0" x2="0" y2="4" stroke="#000" stroke-width="0.4"/></pattern></defs>`;

/** A drawing in millimetres, black on white, as a document of its own. */
export function drawing(
  title: string,
  widthMm: number,
  heightMm: number,
  content: readonly string[],
): string {
  const width = mm(widthMm);
  const height = mm(heightMm);
  return [
    `<?xml version="1.0" encoding="UTF-8"?>`,
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}">`,
    `<title>${escapeText(title)}</title>`,
    definitions,
    rect(0, 0, widthMm, heightMm, { fill: '#fff', stroke: 'none' }),
    ...content,
    '</svg>',
    '',
  ].join('\n');
}

/** Breaks words into lines of at most `most` characters. */
export function wrapped(words: string, most: number): string[] {
  const lines: string[] = [];
  for (const word of words.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= most)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

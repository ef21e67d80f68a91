import { readParameters } from './media-type.js';

/**
 * The name under which the sender shows a part, from Content-Disposition or the older `name` of Content-Type: a label for
 * people, its folders cut off, null where there is none. Extended values in pieces and with a character set (RFC 2231)
 * come before plain ones; encoded words (RFC 2047) are not allowed there, but mail software writes them.
 */
export function readFileName(
  disposition: string | undefined,
  contentType: string | undefined,
): string | null {
  for (const [field, parameter] of [
    [disposition, 'filename'],
    [contentType, 'name'],
  ] as const) {
    const parameters = field === undefined ? undefined : readParameters(field)?.parameters;
    const name = parameters && (extended(parameters, parameter) ?? parameters.get(parameter));
    const shown = name === undefined ? null : lastStep(withoutEncodedWords(name));
    if (shown !== null) return shown;
  }
  return null;
}

function lastStep(name: string): string | null {
  const last = name.split(/[/\\]/).at(-1)!.trim();
  return last === '' || last === '.' || last === '..' || hasControl(last) ? null : last;
}

/** `name*` or `name*0*`, `name*1` …: RFC 2231 sections 3 and 4. Undefined when there is none or it cannot be read. */
function extended(parameters: ReadonlyMap<string, string>, name: string): string | undefined {
  const whole = parameters.get(`${name}*`);
  const pieces: { text: string; isEscaped: boolean }[] =
    whole === undefined ? [] : [{ text: whole, isEscaped: true }];
  for (let n = 0; whole === undefined; n++) {
    const escaped = parameters.get(`${name}*${n}*`);
    const plain = parameters.get(`${name}*${n}`);
    if (escaped !== undefined) pieces.push({ text: escaped, isEscaped: true });
    else if (plain !== undefined) pieces.push({ text: plain, isEscaped: false });
    else break;
  }
  const first = pieces[0];
  if (first === undefined) return undefined;
  const charset = first.isEscaped ? /^([^']*)'[^']*'(.*)$/s.exec(first.text) : null;
  if (first.isEscaped && charset === null) return undefined;
  if (charset !== null) pieces[0] = { text: charset[2]!, isEscaped: true };
  const bytes = pieces.map(({ text, isEscaped }) => (isEscaped ? percentDecoded(text) : Buffer.from(text)));
  if (bytes.some((piece) => piece === null)) return undefined;
  return decoded(Buffer.concat(bytes as Buffer[]), charset?.[1] || 'utf-8');
}

function percentDecoded(text: string): Buffer | null {
  if (/%(?![0-9a-f]{2})/i.test(text)) return null;
  const latin = text.replace(/%([0-9a-f]{2})/gi, (_, hex: string) => String.fromCharCode(parseInt(hex, 16)));
  return Buffer.from(latin, 'latin1');
}

/** `=?charset?B?…?=` and `=?charset?Q?…?=`; white space between two of them is not content (RFC 2047 section 6.2). */
function withoutEncodedWords(text: string): string {
  return text
    .replace(/(\?=)\s+(?==\?)/g, '$1')
    .replace(
      /=\?([^?*\s]+)(?:\*[^?\s]*)?\?([bq])\?([^?\s]*)\?=/gi,
      (word, charset: string, form: string, value: string) => {
        const bytes =
          form.toLowerCase() === 'b'
            ? Buffer.from(value, 'base64')
            : percentDecoded(value.replaceAll('%', '%25').replaceAll('_', ' ').replaceAll('=', '%'));
        return (bytes && decoded(bytes, charset)) ?? word;
      },
    );
}

function decoded(bytes: Uint8Array, charset: string): string | undefined {
  try {
    return new TextDecoder(charset, { fatal: true }).decode(bytes);
  } catch {
    // Bytes that are not of that character set, or one that nobody knows.
    return undefined;
  }
}

/** Whether a control character other than a tab is in a text. */
export function hasControl(text: string): boolean {
  return [...text].some((c) => c.charCodeAt(0) < 0x20 && c !== '\t');
}

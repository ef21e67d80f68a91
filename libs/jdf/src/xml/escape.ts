const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&apos;',
  '\n': '&#10;',
  '\r': '&#13;',
  '\t': '&#9;',
};

/** A value as the text of an attribute between these quotes. */
export function escapeAttribute(value: string, quote: '"' | "'" = '"'): string {
  // A reader turns unescaped line ends and tabs into blanks (XML 1.0 section 3.3.3).
  const special = quote === '"' ? /[&<"\n\r\t]/g : /[&<'\n\r\t]/g;
  return writable(value).replace(special, (c) => ENTITIES[c]!);
}

/** A value as text between tags. A reader turns an unescaped carriage return into a line feed (section 2.11). */
export function escapeText(value: string): string {
  return writable(value).replace(/[&<>\r]/g, (c) => ENTITIES[c]!);
}

/** XML has no way to write some characters (XML 1.0 production 2); in their place stands the replacement character. */
export function writable(value: string): string {
  return value.replace(/[\p{Cc}\p{Cs}\ufffe\uffff]/gu, (c) =>
    /[\t\n\r\u007f-\u009f]/.test(c) ? c : '\ufffd',
  );
}

/** Characters outside an encoding as references, where references may stand. */
export function referring(text: string, misfit: RegExp): string {
  return text.replace(misfit, (c) => `&#x${c.codePointAt(0)!.toString(16).toUpperCase()};`);
}

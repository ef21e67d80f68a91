/** A name in its parts. One object for each name of a document, so that its many uses share one text. */
export interface XmlName {
  readonly name: string;
  readonly prefix: string;
  readonly local: string;
  /** The end tag of an element of this name, as it is usually written. */
  readonly end: string;
  /** Whether it is a name by Namespaces in XML 1.0, productions 7 to 11: one colon at most, and two names around it. */
  readonly sound: boolean;
}

// Characters that a name may contain and not begin with; XML 1.0 productions 4 and 4a.
const NO_BEGINNING = /^(?:[-.\d\u00b7\u203f\u2040]|[\u0300-\u036f])/;

/** The names of one document. */
export class XmlNames {
  readonly #known = new Map<string, XmlName>();

  of(name: string): XmlName {
    const known = this.#known.get(name);
    if (known !== undefined) return known;
    const colon = name.indexOf(':');
    const prefix = colon < 0 ? '' : name.slice(0, colon);
    const local = colon < 0 ? name : name.slice(colon + 1);
    const sound =
      colon < 0 || (colon > 0 && local !== '' && !local.includes(':') && !NO_BEGINNING.test(local));
    const made = { name, prefix, local, end: `</${name}>`, sound };
    this.#known.set(name, made);
    return made;
  }
}

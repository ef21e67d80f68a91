import type { Findings } from '../codec/index.js';
import type { ElementType } from '../standard/index.js';
import { attributeOf, XML_NAMESPACE, XMLNS_NAMESPACE, type XmlElement, XSI_NAMESPACE } from '../xml/index.js';
import { type BoundPrefixes, namespaceOf, scopeIn } from './bound-prefixes.js';
import { checkCounts } from './counts.js';
import type { Kind, Since } from './kind.js';
import { nearest } from './nearest.js';
import { checkSequence } from './sequence.js';
import type { StructureRules } from './structure-rules.js';

/**
 * Attributes, their values and the elements of a document against the fact tables of its generation: what the official
 * schema says, and as warnings what the schema only notes (numbers of children, versions). Foreign elements are passed
 * over, but elements of the standard inside them are not. Codes: JDF_MISSING, JDF_VALUE, JDF_UNKNOWN; JDF_CHILDREN and
 * JDF_VERSION as warnings.
 */
export function checkStructure(root: XmlElement, rules: StructureRules, findings: Findings): void {
  new StructureCheck(rules, findings, root).foreign(root, null);
}

class StructureCheck {
  readonly #version: number;

  constructor(
    private readonly rules: StructureRules,
    private readonly findings: Findings,
    root: XmlElement,
  ) {
    const stated = root.attributes.find(({ name }) => name === 'Version')?.value.trim() ?? '';
    const known = rules.versions.indexOf(stated);
    this.#version = known < 0 ? rules.versions.length : known;
  }

  /** An element where anything may stand: of the standard if it has one of that name, else what is inside it. */
  foreign(el: XmlElement, around: BoundPrefixes | null): void {
    const type = el.uri === this.rules.namespace ? this.rules.dictionary.elementType(el.local) : undefined;
    if (type !== undefined) {
      this.element(el, this.rules.kindOf(type), around);
      return;
    }
    const scope = scopeIn(el, around);
    for (const child of el.children) if (child.kind === 'element') this.foreign(child, scope);
  }

  element(el: XmlElement, declared: Kind, around: BoundPrefixes | null): void {
    if (this.findings.full) return;
    // Most elements bind no prefix and have no type of their own: nothing is looked up for them.
    const plain = isPlain(el);
    const scope = plain ? around : scopeIn(el, around);
    const kind = plain ? declared : this.#strictKind(el, declared, scope);
    if (kind === undefined) return;
    this.#attributes(el, kind);
    this.#content(el, kind, scope);
  }

  #strictKind(el: XmlElement, declared: Kind, scope: BoundPrefixes | null): Kind | undefined {
    const type = this.#strictType(el, declared.type, scope);
    return type && this.rules.kindOf(type);
  }

  /** The type that xsi:type chooses among those made from the declared one; undefined when it cannot be checked. */
  #strictType(el: XmlElement, declared: ElementType, scope: BoundPrefixes | null): ElementType | undefined {
    const stated = attributeOf(el, 'type', XSI_NAMESPACE)?.trim();
    if (stated === undefined) return declared;
    const uri = namespaceOf(stated, scope);
    const name = stated.slice(stated.indexOf(':') + 1);
    if (uri !== this.rules.namespace && uri !== '' && uri !== undefined) {
      // A type of somebody else's schema: allowed as an extension, and nothing is known of it.
      this.findings.warning(
        'JDF_UNKNOWN',
        el,
        `The type ${stated} of ${el.name} is not the standard's, so it is not checked.`,
      );
      return undefined;
    }
    const strict = this.rules.dictionary.namedType(name);
    if (strict === undefined || uri !== this.rules.namespace) {
      this.findings.error(
        'JDF_VALUE',
        el,
        `xsi:type="${stated}" names no type of the standard.`,
        uri === undefined
          ? `The prefix of ${stated} is bound to no namespace.`
          : suggestion(name, [declared.key]),
        'xsi:type',
      );
      return declared;
    }
    if (!derives(strict, declared) || strict.abstract) {
      const hint = `The type must be made for ${declared.key}.`;
      this.findings.error(
        'JDF_VALUE',
        el,
        `xsi:type="${stated}" is not possible in ${el.name}.`,
        hint,
        'xsi:type',
      );
      return declared;
    }
    return strict;
  }

  #attributes(el: XmlElement, kind: Kind): void {
    const { type } = kind;
    let present = 0;
    for (const { name, local, uri, value } of el.attributes) {
      if (uri !== '') {
        if (uri === this.rules.namespace || (!type.foreignAttributes && !BUILT_IN.has(uri)))
          this.#unknownAttribute(el, type, name);
        continue;
      }
      if (name === 'xmlns') continue;
      const rule = kind.attribute(local);
      if (rule === undefined) {
        this.#unknownAttribute(el, type, name);
        continue;
      }
      if (rule.required) present++;
      if (!rule.value.possible(value)) this.findings.wrong(el, name, value, rule.value.expects);
      else if (rule.fixed !== null && value.trim() !== rule.fixed) {
        this.findings.wrong(el, name, value, `always ${rule.fixed} here`);
      }
      if (this.#isTooNew(rule.since)) this.#tellSince(el, `attribute ${name}`, rule.since);
    }
    if (present === type.required.length) return;
    for (const { name } of type.required) {
      if (!el.attributes.some(({ local, uri }) => local === name && uri === '')) {
        this.findings.missing(el, `attribute ${name}`);
      }
    }
  }

  #unknownAttribute(el: XmlElement, type: ElementType, name: string): void {
    const hint =
      suggestion(name, type.attributes.keys()) ?? 'Take it out, or give it a namespace of its own.';
    this.findings.error(
      'JDF_UNKNOWN',
      el,
      `${el.name} has no attribute ${name} in the standard.`,
      hint,
      name,
    );
  }

  #content(el: XmlElement, kind: Kind, scope: BoundPrefixes | null): void {
    const { type } = kind;
    const known: XmlElement[] = [];
    for (const child of el.children) {
      if (child.kind !== 'element') {
        if (!type.text && (child.kind === 'text' || child.kind === 'cdata') && child.value.trim() !== '')
          this.#strayText(el);
        continue;
      }
      if (child.uri !== this.rules.namespace) {
        if (!type.foreignElements || child.uri === '') this.#unknownElement(child, el, type);
        else this.foreign(child, scope);
        continue;
      }
      const rule = kind.child(child.local);
      if (rule === undefined) {
        this.#unknownElement(child, el, type);
        continue;
      }
      known.push(child);
      if (this.#isTooNew(rule.since)) this.#tellSince(child, child.name, rule.since);
      this.element(child, rule.kind, scope);
    }
    if (type.sequence !== null) checkSequence(el, type, type.sequence, this.rules, this.findings);
    else checkCounts(el, kind, known, this.findings);
  }

  #strayText(el: XmlElement): void {
    const hint = 'Take the text out, or put it into a Comment.';
    this.findings.error('JDF_UNKNOWN', el, `Text stands in ${el.name}, which holds elements only.`, hint);
  }

  #unknownElement(child: XmlElement, el: XmlElement, type: ElementType): void {
    const where =
      this.rules.dictionary.elementType(child.local) === undefined ? 'is not known' : 'may not stand';
    const message = `${child.name} ${where} in ${el.name}.`;
    const hint =
      child.uri === ''
        ? 'It has no namespace.'
        : (suggestion(child.local, type.children.keys()) ?? 'Move it to where it belongs, or take it out.');
    this.findings.error('JDF_UNKNOWN', child, message, hint);
  }

  #isTooNew(since: Since | null): since is Since {
    return since !== null && since.at > this.#version;
  }

  #tellSince(el: XmlElement, what: string, { version }: Since): void {
    const stated = this.rules.versions[this.#version];
    this.findings.warning(
      'JDF_VERSION',
      el,
      `The standard has ${what} since version ${version}; this document says ${stated}.`,
      `State Version="${version}" or higher, or leave it out.`,
    );
  }
}

/** Whether it has no attribute but those of its own kind. */
function isPlain({ attributes }: XmlElement): boolean {
  for (const { uri, name } of attributes) if (uri !== '' || name === 'xmlns') return false;
  return true;
}

const BUILT_IN: ReadonlySet<string> = new Set([XMLNS_NAMESPACE, XSI_NAMESPACE, XML_NAMESPACE]);

function derives(type: ElementType, from: ElementType): boolean {
  for (let at: ElementType | null = type; at !== null; at = at.base) if (at.key === from.key) return true;
  return false;
}

function suggestion(name: string, names: Iterable<string>): string | null {
  const near = nearest(name, names);
  return near === undefined || near === name ? null : `Did you mean ${near}?`;
}

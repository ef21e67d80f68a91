import type { Problem } from '#libs/kernel';
import { Findings, splitTokens } from '../../codec/index.js';
import {
  attributeOf,
  childElements,
  descendants,
  type XmlDocument,
  type XmlElement,
} from '../../xml/index.js';
import { xjdfVocabulary } from '../facts.js';
import { BESIDE_SPECIFIC } from '../resource-set.js';
import { checkParts } from './check-parts.js';
import { checkReferences } from './check-references.js';

/**
 * What no schema finds in an XJDF ticket (XJDF ResourceSet, Part, ProductList): resources that fit their set,
 * parts that say what is needed and no more, references to what they are named for, products with a root.
 */
export function checkXjdf(doc: XmlDocument): readonly Problem[] {
  const findings = new Findings(doc, { missing: 'JDF_MISSING', wrong: 'JDF_VALUE' });
  checkReferences(doc, findings);
  const sets = [...descendants(doc.root)].filter(
    ({ local, uri }) => local === 'ResourceSet' && uri === doc.root.uri,
  );
  for (const set of sets) {
    checkResources(set, findings);
    checkParts(set, findings);
  }
  checkDoubled(childElements(doc.root, 'ResourceSet'), findings);
  checkProcesses(doc.root, sets, findings);
  checkProducts(doc.root, findings);
  return findings.problems;
}

/** At most one specific resource, called as its set. One that says nothing may be left out. */
function checkResources(set: XmlElement, findings: Findings): void {
  const name = attributeOf(set, 'Name') ?? '';
  for (const resource of childElements(set, 'Resource')) {
    const specific = resource.children.filter(
      (child): child is XmlElement =>
        child.kind === 'element' && (child.uri !== set.uri || !BESIDE_SPECIFIC.has(child.local)),
    );
    const own = specific.filter(({ uri }) => uri === set.uri);
    if (own.length > 1) {
      findings.error(
        'JDF_STRUCTURE',
        own[1]!,
        `A Resource holds one resource, not ${own.length}.`,
        'Give each a Resource.',
      );
    }
    const [found] = own;
    if (
      found !== undefined &&
      found.local !== name &&
      xjdfVocabulary.isMember('SpecificResource', found.local)
    ) {
      findings.error(
        'JDF_LINK',
        found,
        `The set is called ${name}, but here is a ${found.local}.`,
        `Put it into a ResourceSet with Name="${found.local}".`,
      );
    }
  }
}

/** Two sets that are used alike are one, with all the Resources. */
function checkDoubled(sets: readonly XmlElement[], findings: Findings): void {
  const seen = new Map<string, XmlElement>();
  for (const set of sets) {
    const usage = attributeOf(set, 'Usage');
    if (usage === undefined) continue;
    const use = ['Name', 'Usage', 'ProcessUsage', 'CombinedProcessIndex'].map(
      (name) => attributeOf(set, name) ?? '',
    );
    const key = use.join('|');
    if (!seen.has(key)) seen.set(key, set);
    else {
      findings.error(
        'JDF_STRUCTURE',
        set,
        `There is a set ${use[0]} for the same use already.`,
        'Put all its Resources into one ResourceSet.',
      );
    }
  }
}

/** CombinedProcessIndex counts the processes in Types. */
function checkProcesses(root: XmlElement, sets: readonly XmlElement[], findings: Findings): void {
  const count = splitTokens(attributeOf(root, 'Types') ?? '').length;
  for (const set of sets) {
    for (const index of splitTokens(attributeOf(set, 'CombinedProcessIndex') ?? '')) {
      const n = Number(index);
      if (Number.isInteger(n) && n >= 0 && n < count) continue;
      const last = count - 1;
      findings.wrong(set, 'CombinedProcessIndex', index, `a position in Types, 0 to ${last}`);
    }
  }
}

/** A list of products needs one that is the whole; what holds others together names products. */
function checkProducts(root: XmlElement, findings: Findings): void {
  for (const list of childElements(root, 'ProductList')) {
    const products = childElements(list, 'Product');
    if (products.length > 0 && products.every((one) => isFalse(attributeOf(one, 'IsRoot')))) {
      findings.error(
        'JDF_STRUCTURE',
        list,
        'No product is the root.',
        'Give the finished product IsRoot="true".',
      );
    }
    const ids = new Set(products.flatMap((one) => attributeOf(one, 'ID') ?? []));
    for (const el of descendants(list)) {
      for (const name of PRODUCT_REFERENCES[el.local] ?? []) {
        for (const id of splitTokens(attributeOf(el, name) ?? '')) {
          if (ids.has(id)) continue;
          findings.error(
            'JDF_DANGLING',
            el,
            `${name}="${id}" names no Product.`,
            'Name a Product of this ProductList.',
          );
        }
      }
    }
  }
}

const PRODUCT_REFERENCES: Readonly<Record<string, readonly string[]>> = {
  AssemblingIntent: ['Container'],
  AssemblyItem: ['ChildRef'],
  BindIn: ['ChildRef'],
  BindingIntent: ['ChildRefs'],
  BlowIn: ['ChildRef'],
  StickOn: ['ChildRef'],
};

/** A product that does not say so is a root. */
function isFalse(value: string | undefined): boolean {
  return value === 'false' || value === '0';
}

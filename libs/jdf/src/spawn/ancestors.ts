import type { PartKeys } from '../elements/part.js';
import { partsNamed, partsOf } from '../partition/index.js';
import { singleInput } from '../ticket/administration.js';
import { lineageOf } from '../ticket/node.js';
import {
  attributeOf,
  childElements,
  elementsLike,
  firstChild,
  withAttributes,
  withChildren,
  type XmlAttribute,
  type XmlDocument,
  type XmlElement,
  XSI_NAMESPACE,
} from '../xml/index.js';
import { XMLNS_NAMESPACE } from '../xml/namespaces.js';
import { type Bindings, bindingsIn, settled } from './bindings.js';
import { compatible } from './scope.js';

// What an Ancestor repeats of its node, and NodeInfo and CustomerInfo inside it. Source: the official JDF 1.9 schema.
const EVERYWHERE = [
  'BestEffortExceptions',
  'CommentURL',
  'DescriptiveName',
  'MustHonorExceptions',
  'OperatorInterventionExceptions',
  'SettingsPolicy',
];
const OF_NODE = [
  'Activation',
  'Category',
  'ICSVersions',
  'JobID',
  'JobPartID',
  'MaxVersion',
  'ProjectID',
  'RelatedJobID',
  'RelatedJobPartID',
  'RelatedProjectID',
  'SpawnID',
  'Status',
  'StatusDetails',
  'Template',
  'TemplateID',
  'TemplateVersion',
  'Type',
  'Types',
  'Version',
];
const OF_INFO = {
  CustomerInfo: {
    attributes: ['BillingCode', 'CustomerID', 'CustomerJobName', 'CustomerOrderID', 'CustomerProjectID'],
    elements: ['Comment', 'Company', 'CompanyRef', 'Contact', 'ContactRef', 'CustomerMessage', 'GeneralID'],
  },
  NodeInfo: {
    attributes: [
      'CleanupDuration',
      'DueLevel',
      'End',
      'FirstEnd',
      'FirstStart',
      'IPPVersion',
      'JobPriority',
      'LastEnd',
      'LastStart',
      'NaturalLang',
      'Route',
      'SetupDuration',
      'Start',
      'TargetRoute',
      'TotalDuration',
    ],
    elements: ['BusinessInfo', 'Comment', 'Employee', 'EmployeeRef', 'GeneralID', 'MISDetails'],
  },
} as const;

/** The IDs of the nodes around a node, outermost first, those that a spawned ticket has left behind too. */
export function ancestorIds(doc: XmlDocument, node: XmlElement): string[] {
  const here = lineageOf(doc, node).slice(1).reverse();
  return [
    ...namedAncestors(doc.root).map((ancestor) => attributeOf(ancestor, 'NodeID') ?? ''),
    ...here.map((one) => attributeOf(one, 'ID') ?? ''),
  ];
}

/** The Ancestor elements of a spawned ticket. */
export function namedAncestors(root: XmlElement): XmlElement[] {
  const pool = firstChild(root, 'AncestorPool');
  return pool === undefined ? [] : childElements(pool, 'Ancestor');
}

/**
 * The partitions that a ticket spawned from this one is for: those asked for within those that this one is for; undefined
 * where they lie outside.
 */
export function partsWithin(root: XmlElement, asked: readonly PartKeys[]): readonly PartKeys[] | undefined {
  const pool = firstChild(root, 'AncestorPool');
  const own = pool === undefined ? [] : partsNamed(pool);
  if (own.length === 0 || asked.length === 0) return asked.length === 0 ? own : asked;
  const both = own.flatMap((one) =>
    asked.flatMap((part) => (compatible(one, part) ? [{ ...one, ...part }] : [])),
  );
  return both.length < asked.length ? undefined : both;
}

/**
 * The AncestorPool of the ticket that a node leaves in: all nodes around it, outermost first, each with its attributes,
 * schedule and customer, then the partitions. `inside` are the namespaces in force in the new ticket.
 */
export function ancestorPool(
  doc: XmlDocument,
  node: XmlElement,
  parts: readonly PartKeys[],
  inside: Bindings,
): XmlElement {
  const make = elementsLike(node);
  const here = lineageOf(doc, node).slice(1).reverse();
  const left = namedAncestors(doc.root).map((one) => settled(one, bindingsIn(doc, one), inside));
  return make('AncestorPool', {}, [
    ...left,
    ...here.map((one) => ancestor(doc, one, node, inside)),
    ...parts.map((part) => make('Part', part)),
  ]);
}

function ancestor(doc: XmlDocument, of: XmlElement, like: XmlElement, inside: Bindings): XmlElement {
  const infos = (['CustomerInfo', 'NodeInfo'] as const).flatMap((name) => {
    const found = singleInput(doc, of, name);
    return found === undefined ? [] : [settled(inline(found.view, name), bindingsIn(doc, found.at), inside)];
  });
  const bare = elementsLike(like)('Ancestor', { NodeID: attributeOf(of, 'ID') }, infos);
  const repeated = { ...bare, attributes: [...bare.attributes, ...repeat(of, OF_NODE)] };
  return settled(repeated, bindingsIn(doc, of), inside);
}

/** A linked resource as the plain element that an Ancestor holds: no resource attributes, no parts, no IDs. */
function inline(view: XmlElement, name: keyof typeof OF_INFO): XmlElement {
  const { attributes, elements } = OF_INFO[name];
  const inner = new Set(partsOf(view));
  const children = view.children.flatMap((child) => {
    if (child.kind !== 'element') return [];
    const wanted = child.uri !== view.uri || (elements as readonly string[]).includes(child.local);
    return wanted && !inner.has(child) ? [withoutIds(child)] : [];
  });
  return withChildren({ ...view, attributes: repeat(view, attributes) }, children);
}

function withoutIds(el: XmlElement): XmlElement {
  const children = el.children.map((child) => (child.kind === 'element' ? withoutIds(child) : child));
  return withChildren(
    attributeOf(el, 'ID') === undefined ? el : withAttributes(el, { ID: undefined }),
    children,
  );
}

/** Attributes by name, and all foreign ones. */
function repeat(el: XmlElement, names: readonly string[]): XmlAttribute[] {
  return el.attributes.filter(({ uri, local }) =>
    uri === ''
      ? names.includes(local) || EVERYWHERE.includes(local)
      : uri !== XMLNS_NAMESPACE && uri !== XSI_NAMESPACE,
  );
}

import { splitTokens } from '../../codec/index.js';
import { inventoryOf, resourcesUsed } from '../../spawn/inventory.js';
import { activationOf, lineageOf, nodesOf } from '../../ticket/node.js';
import {
  attributeOf,
  childElements,
  documentOf,
  firstChild,
  indented,
  type XmlAttribute,
  type XmlDocument,
  type XmlElement,
} from '../../xml/index.js';
import { addAll } from '../add-all.js';
import { attributeNode, type Lost } from '../ledger.js';
import type { Overflow } from '../source.js';
import { carryAttribute, type Direction, Draft, finish } from '../translate.js';
import { asToken } from '../values.js';
import { adopted, declaredAtRoot } from '../write.js';
import { amountPool, withLinkAttributes } from './amounts.js';
import { convertAudits } from './audits.js';
import { Job, newerResource, type SetDraft, UNUSED } from './job.js';
import { selectedLeaves } from './leaves.js';
import { type UseOfResource, usesOf } from './links.js';
import { carryPart } from './parts.js';
import { convertProducts } from './products.js';
import { identifiers, Resources, shapeOf } from './resources.js';
import { finishSignatures } from './signatures.js';
import { nodeInfos } from './status.js';
import { type Steps, stepsOf } from './steps.js';

export interface Converted {
  readonly doc: XmlDocument;
  readonly lost: readonly Lost[];
}

const ROOT = [
  'JobID',
  'JobPartID',
  'ProjectID',
  'RelatedJobID',
  'RelatedJobPartID',
  'RelatedProjectID',
] as const;
const ALSO = ['Category', 'ICSVersions', 'DescriptiveName', 'CommentURL'] as const;

/** A JDF ticket, or one node of it, as XJDF. */
export function ticketToXjdf(doc: XmlDocument, node?: XmlElement): Converted {
  const job = new Job(doc);
  const resources = new Resources(job);
  const steps = stepsOf(doc.root, node);
  const nodes = node === undefined ? [...nodesOf(doc.root)] : [node];
  const uses = usesOf(job, steps);
  const draft = new Draft('XJDF', shapeOf('XJDF'));
  const overflow: Overflow = { nodes: [], originals: [], keys: {} };
  const main = node ?? doc.root;
  rootAttributes(job, resources, main, steps, draft, overflow);
  const products = convertProducts(job, resources, nodes, uses, overflow);
  const scope = node === undefined ? everything(doc.root) : usedBy(job, node);
  placeResources(job, resources, scope, uses, products.taken);
  finishSignatures(job, resources);
  nodeInfos(job, resources, steps);
  const audits = convertAudits(job, resources, nodes);
  if (audits !== undefined) draft.children.push(audits);
  if (products.list !== undefined) draft.children.push(products.list);
  for (const one of nodes) nodeContent(job, resources, one, main, draft, overflow);
  const sets = job.sets.filter((set) => set.resources.length > 0 || set.use.usage !== undefined);
  addAll(
    draft.children,
    sets.map((set) => setElement(resources, set)),
  );
  const isStandard = ({ uri }: XmlElement): boolean => uri === resources.direction.uri;
  addAll(draft.children, overflow.nodes.filter(isStandard), identifiers(overflow));
  const foreign = overflow.nodes.filter((one) => !isStandard(one));
  addAll(
    draft.children,
    foreign.map((one) => foreignSet(resources, one)),
  );
  for (const one of nodes) {
    job.ledger.carry(one);
    job.ledger.carryNamed(one, 'ID', 'Type', 'Types', 'Version', 'MaxVersion');
    const activation = attributeNode(one, 'Activation');
    if (activation?.value === 'Active') job.ledger.carry(activation);
    const part = one === main ? undefined : attributeNode(one, 'JobPartID');
    if (part !== undefined)
      job.ledger.reason(part, 'one document stands for all nodes; convert the node by itself');
  }
  const root = finish(resources.direction, draft);
  return { doc: documentOf(indented(declaredAtRoot(root, doc.root))), lost: job.ledger.losses() };
}

function rootAttributes(
  job: Job,
  resources: Resources,
  node: XmlElement,
  steps: Steps,
  draft: Draft,
  overflow: Overflow,
): void {
  const { ledger } = job;
  for (const name of [...ROOT, ...ALSO]) {
    const attribute = attributeNode(node, name) ?? inherited(job, node, name);
    if (attribute !== undefined) carryAttribute(resources.direction, 'XJDF', attribute, draft, overflow);
  }
  for (const attribute of node.attributes) {
    if (attribute.uri !== '') carryAttribute(resources.direction, 'XJDF', attribute, draft, overflow);
  }
  if (!draft.attributes.has('JobID'))
    draft.attributes.set('JobID', asToken(attributeOf(node, 'ID') ?? 'Unknown'));
  if (!draft.put('Types', steps.types.map(asToken).join(' '))) draft.attributes.set('Types', 'ProcessGroup');
  draft.attributes.set('Version', '2.2');
  const { value } = activationOf(job.doc, node);
  const stated = attributeNode(node, 'Activation');
  if (stated === undefined) return;
  if (value === 'Active') ledger.carry(stated);
  else ledger.reason(stated, 'the newer generation says it when the job is submitted, not in the ticket');
}

/** Names of the job hold for all nodes below. */
function inherited(job: Job, node: XmlElement, name: string): XmlAttribute | undefined {
  const isOfJob = (ROOT as readonly string[]).includes(name) && name !== 'JobPartID';
  return isOfJob && node !== job.doc.root ? attributeNode(job.doc.root, name) : undefined;
}

/** The resources that a conversion is about, and the pools that they lie in. */
interface Scope {
  readonly pools: readonly XmlElement[];
  readonly found: ReadonlySet<XmlElement>;
}

const poolsOf = (nodes: readonly XmlElement[]): XmlElement[] =>
  nodes.flatMap((node) => childElements(node, 'ResourcePool'));

function everything(root: XmlElement): Scope {
  const pools = poolsOf([...nodesOf(root)]);
  return { pools, found: new Set(pools.flatMap((pool) => childElements(pool))) };
}

/** What one node uses, of its own and of the nodes around it. All else stays behind, each with that reason. */
function usedBy(job: Job, node: XmlElement): Scope {
  const { root } = job.doc;
  const used = new Set([...resourcesUsed(inventoryOf(root), [node]).values()].map((pooled) => pooled.root));
  const all = [...nodesOf(root)];
  for (const other of all) {
    if (other !== node) job.ledger.reason(other, 'another node; the document is of one node alone');
  }
  const pools = poolsOf(lineageOf(job.doc, node));
  const inPools = pools.flatMap((pool) => childElements(pool));
  for (const other of inPools) {
    if (!used.has(other)) job.ledger.reason(other, 'the node does not use it');
  }
  return { pools, found: new Set(inPools.filter((resource) => used.has(resource))) };
}

/** Places every resource of the nodes' pools in the sets of its uses; what is not linked, in a set without a use. */
function placeResources(
  job: Job,
  resources: Resources,
  { pools, found }: Scope,
  uses: ReadonlyMap<XmlElement, readonly UseOfResource[]>,
  taken: ReadonlySet<XmlElement>,
): void {
  for (const resource of found) {
    if (taken.has(resource)) continue;
    if (resource.local === 'ColorPool') {
      resources.colours(resource);
      carryLinks(job, resources.direction, uses.get(resource) ?? []);
      continue;
    }
    if (newerResource(resource.local) === undefined) {
      job.ledger.reason(resource, 'the newer generation has no such resource');
      continue;
    }
    const linked = uses.get(resource) ?? [];
    if (linked.length === 0) placeUse(job, resources, resource, { links: [], use: UNUSED, parts: [] });
    for (const one of linked) placeUse(job, resources, resource, one);
    if (linked.length === 0) continue;
    const used = new Set(linked.flatMap(({ parts }) => selectedLeaves(resource, parts)));
    const left = job.placing(resource).leaves.filter(({ leaf }) => !used.has(leaf));
    if (left.length > 0) resources.place(resource, UNUSED, left, true);
  }
  for (const pool of pools) job.ledger.carry(pool);
}

function placeUse(job: Job, resources: Resources, resource: XmlElement, one: UseOfResource): void {
  const { ledger } = job;
  const { byLeaf } = job.placing(resource);
  const chosen = selectedLeaves(resource, one.parts).flatMap((leaf) => byLeaf.get(leaf) ?? []);
  const placed = resources.place(resource, one.use, chosen);
  if (placed === undefined) return;
  const { set } = placed;
  for (const { leaf, at } of placed.written) {
    const written = set.resources[at]!;
    const amounts = amountPool(
      job,
      resources,
      resource,
      leaf.chain,
      one.links,
      leaf.keys,
      chosen.length === 1,
    );
    const children = amounts === undefined ? written.children : [amounts, ...written.children];
    set.resources[at] = withLinkAttributes(resources, { ...written, children }, one.links);
  }
  const unit = attributeNode(resource, 'Unit');
  if (unit !== undefined && set.unit === undefined) {
    set.unit = splitTokens(unit.value)[0];
    ledger.carry(unit);
  }
  carryLinks(job, resources.direction, [one]);
}

function carryLinks(job: Job, direction: Direction, uses: readonly UseOfResource[]): void {
  const { ledger } = job;
  for (const link of uses.flatMap(({ links }) => links)) {
    ledger.carry(link);
    ledger.carryNamed(link, 'rRef', 'Usage', 'ProcessUsage', 'CombinedProcessIndex');
    for (const part of childElements(link, 'Part')) carryPart(direction, part);
    const pool = firstChild(link, 'AmountPool');
    if (pool !== undefined && childElements(pool).length === 0) ledger.carry(pool);
  }
}

function setElement(resources: Resources, set: SetDraft): XmlElement {
  const draft = new Draft('ResourceSet', shapeOf('ResourceSet'));
  const { usage, processUsage, indexes } = set.use;
  draft.attributes.set('Name', set.name);
  if (usage !== undefined) draft.put('Usage', usage);
  if (processUsage !== undefined) draft.put('ProcessUsage', asToken(processUsage));
  if (indexes.length > 0) draft.put('CombinedProcessIndex', indexes.join(' '));
  if (set.id !== undefined) draft.attributes.set('ID', set.id);
  if (set.unit !== undefined) draft.put('Unit', set.unit);
  addAll(draft.children, set.dependents, set.resources);
  return finish(resources.direction, draft);
}

/** Comments, identifiers and foreign elements that stand in a node or its pools. */
function nodeContent(
  job: Job,
  resources: Resources,
  node: XmlElement,
  main: XmlElement,
  draft: Draft,
  overflow: Overflow,
): void {
  const { ledger } = job;
  const pools = ['ResourcePool', 'ResourceLinkPool', 'AuditPool'].flatMap((name) =>
    childElements(node, name),
  );
  for (const pool of pools) ledger.carry(pool);
  for (const el of [node, ...pools].flatMap((one) => one.children)) {
    if (el.kind !== 'element') continue;
    if (el.uri !== main.uri) {
      overflow.nodes.push(adopted(el));
      ledger.carryAll(el);
    } else if (el.local === 'Comment' || el.local === 'GeneralID') {
      const made = resources.plain(el, overflow);
      if (made !== undefined) draft.children.push(made);
    }
  }
}

/** A foreign element of a ticket: the newer generation has room for it in a Resource. */
function foreignSet(resources: Resources, el: XmlElement): XmlElement {
  const resource = new Draft('Resource', shapeOf('Resource'));
  resource.children.push(el);
  const set = new Draft('ResourceSet', shapeOf('ResourceSet'));
  set.attributes.set('Name', el.name);
  set.children.push(finish(resources.direction, resource));
  return finish(resources.direction, set);
}

import {
  attributeOf,
  childElements,
  descendants,
  type LinkedResource,
  type ProcessNode,
  parseXml,
  readProcessNode,
  type XmlDocument,
  type XmlElement,
} from '#libs/jdf';
import type { Problem } from '#libs/kernel';
import type { Profile } from '../profiles/index.js';
import type { Work, WorkInput } from './work.js';

export type ReadWork =
  | { readonly ok: true; readonly work: Work }
  | { readonly ok: false; readonly code: number; readonly text: string };

/** Return codes of the JDF 1.4 specification, appendix D. */
const XML_FAULTY = 3;
const NOT_CAPABLE = 101;
const NO_EXECUTABLE_NODE = 102;

/**
 * What a ticket asks of a machine of this kind: its first node whose processes the machine can all execute, whose Status
 * is Waiting or Ready and whose Activation allows it. Refusals carry the standard's ReturnCode.
 */
export function readWork(text: string, profile: Profile): ReadWork {
  const parsed = parseXml(text);
  if (!parsed.ok) return no(XML_FAULTY, inWords(parsed.problems));
  const doc = parsed.value;
  if (attributeOf(doc.root, 'Template') === 'true') return no(NOT_CAPABLE, 'The ticket is a template.');
  for (const el of descendants(doc.root)) {
    if (el.local !== 'JDF' || el.uri !== doc.root.uri) continue;
    const read = readProcessNode(doc, attributeOf(el, 'JobPartID'));
    if (read.ok && read.value.node === el && isExecutable(read.value, profile)) {
      return { ok: true, work: workOf(doc, read.value) };
    }
  }
  return no(NO_EXECUTABLE_NODE, `The ticket has no node that a ${profile.kind} can execute now.`);
}

function no(code: number, text: string): ReadWork {
  return { ok: false, code, text };
}

function inWords(problems: readonly Problem[]): string {
  return problems
    .map(({ line, message }) => (line === null ? message : `Line ${line}: ${message}`))
    .join(' ');
}

function isExecutable({ types, status, activation }: ProcessNode, profile: Profile): boolean {
  return (
    types.length > 0 &&
    types.every((type) => profile.processes.includes(type)) &&
    (status === 'Waiting' || status === 'Ready') &&
    (activation === 'Active' || activation === 'TestRunAndGo')
  );
}

function workOf(doc: XmlDocument, step: ProcessNode): Work {
  const outputs = step.outputs.filter(
    ({ name, processUsage }) => COUNTED.has(name) && processUsage !== 'Waste',
  );
  const outAmount = outputs.length === 0 ? null : sum(outputs.map(plannedOut));
  const outUnit =
    outputs.map(({ view }) => attributeOf(view, 'Unit')).find((unit) => unit !== undefined) ?? null;
  const inputs = step.inputs.filter(isPhysical).map((input) => inputOf(step, input, outAmount, outUnit));
  return {
    nodeId: step.id,
    jobId: step.jobId || ancestorsJob(doc),
    jobPartId: step.jobPartId,
    types: step.types,
    setupS: step.setupS ?? null,
    runS: step.runS ?? null,
    cleanupS: step.cleanupS ?? null,
    speedPerHour: speedOf(step),
    inputs,
    outputs: step.outputs.map(({ id, name }) => ({ resourceId: id, name })),
    outAmount,
    outUnit,
    feedPieces: feedPieces(inputs),
  };
}

/** What pieces are, coming out of a machine. */
const COUNTED = new Set(['Component', 'ExposedMedia']);
const PHYSICAL = new Set(['Media', 'Component', 'ExposedMedia']);

function isPhysical({ name, processUsage }: LinkedResource): boolean {
  return PHYSICAL.has(name) && processUsage !== 'Proof' && processUsage !== 'Waste';
}

function sum(amounts: readonly (number | null)[]): number | null {
  const known = amounts.filter((amount) => amount !== null);
  return known.length === 0 ? null : known.reduce((total, amount) => total + amount, 0);
}

/** Plates are often named one by one and not counted: then their leaves are. */
function plannedOut(output: LinkedResource): number | null {
  const planned = plannedOf(output, (condition) => !/waste/i.test(condition));
  if (planned !== null || output.name !== 'ExposedMedia') return planned;
  return Math.max(1, output.leaves.length);
}

function plannedOf(link: LinkedResource, counts: (condition: string) => boolean): number | null {
  const parts = (link.partAmounts ?? []).filter(({ parts = [] }) =>
    parts.every(({ Condition = 'Good' }) => counts(Condition)),
  );
  return sum(parts.map(({ amount }) => amount ?? null)) ?? link.amount ?? null;
}

function inputOf(
  step: ProcessNode,
  input: LinkedResource,
  outAmount: number | null,
  outUnit: string | null,
): WorkInput {
  const fed = attributeOf(input.resource, 'Class') !== 'Handling' && input.name !== 'ExposedMedia';
  const amount = plannedOf(input, () => true) ?? (input.name === 'ExposedMedia' ? input.leaves.length : null);
  const unit = attributeOf(input.view, 'Unit') ?? null;
  const divides = fed && step.types.includes('Cutting') && (unit === null || unit !== outUnit);
  return {
    resourceId: input.id,
    name: input.name,
    processUsage: input.processUsage ?? null,
    amount,
    unit,
    fed,
    piecesPerUnit: divides ? piecesOfOne(step, amount, outAmount) : 1,
    attributes: plainAttributes(input.resource),
  };
}

/** A cut sheet gives as many pieces as it has blocks; where none are named, as many as the planned amounts tell. */
function piecesOfOne(step: ProcessNode, amount: number | null, outAmount: number | null): number {
  if (amount === null || amount <= 0 || outAmount === null || outAmount <= amount) return 1;
  const blocks = step.inputs
    .filter(({ name }) => name === 'CuttingParams')
    .flatMap(({ resource }) => childElements(resource, 'CutBlock')).length;
  return blocks > 0 ? blocks : Math.ceil(outAmount / amount);
}

/** Those without a prefix and namespace: a message need not carry what is foreign. */
function plainAttributes(el: XmlElement): Record<string, string> {
  return Object.fromEntries(
    el.attributes
      .filter(({ uri, name }) => uri === '' && name !== 'xmlns' && name !== 'PartIDKeys')
      .map(({ name, value }) => [name, value]),
  );
}

/** The scarcest input ends the run. */
function feedPieces(inputs: readonly WorkInput[]): number | null {
  const pieces = inputs.flatMap(({ fed, amount, piecesPerUnit }) =>
    fed && amount !== null ? [Math.floor(amount) * piecesPerUnit] : [],
  );
  return pieces.length === 0 ? null : Math.min(...pieces);
}

/** Speed of the process's parameters, in pieces an hour. */
function speedOf({ inputs }: ProcessNode): number | null {
  for (const { view } of inputs) {
    const speed = Number(attributeOf(view, 'Speed') ?? '');
    if (Number.isFinite(speed) && speed > 0) return speed;
  }
  return null;
}

/** A spawned ticket names its job in the AncestorPool, outermost first (JDF specification, spawning). */
function ancestorsJob(doc: XmlDocument): string {
  for (const el of descendants(doc.root)) {
    const jobId = el.local === 'Ancestor' ? attributeOf(el, 'JobID') : undefined;
    if (jobId !== undefined) return jobId;
  }
  return '';
}

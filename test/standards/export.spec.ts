/** What leaves here is judged by the standard's own schema (JDF.xsd, with xmllint) and by the ticket checks. */
import { readdirSync, readFileSync } from 'node:fs';
import type { Plan } from '#libs/craft';
import {
  checkProfile,
  exportTicket,
  processTicket,
  readDocument,
  type StoredDocument,
  type TicketFile,
} from '#libs/flow';
import {
  attributeOf,
  checkDocument,
  convertDocument,
  descendants,
  nodesOf,
  parseXml,
  readProcessNode,
  writeXml,
  type XmlDocument,
} from '#libs/jdf';
import { bookletPlan, cardPlan } from '../kit/booklet-plan.js';
import { demoPlant } from '../kit/demo-plant.js';
import { coveredPlan, creasedPlan, gluedPlan, leafletPlan, versionsPlan } from '../kit/planned-jobs.js';
import { sectionsPlan } from '../kit/sections-plan.js';
import { type FileState, MONDAY, storedDocument, ticketFile } from '../kit/ticket-files.js';
import { valueIn } from '../kit/value-in.js';
import { DEVICE_NOTE, workedTicket } from '../kit/worked-ticket.js';
import { bytesOf, samples, textOfSample } from './samples.js';
import { schemaFaults } from './xmllint.js';

const XJDF = 'application/vnd.cip4-xjdf+xml';
const states: readonly FileState[] = ['planned', 'running', 'completed', 'aborted'];
const sample = samples().find(({ path }) => path.endsWith('lifecycle/ProductIntentNode.jdf'))!;
const text = textOfSample(sample);
/** The same ticket written with a prefix for the standard's namespace, and without a binding for xsi. */
const prefixed = text
  .replaceAll(/<(\/?)([A-Z])/g, '<$1j:$2')
  .replace('xmlns=', 'xmlns:j=')
  .replace(/\s+xmlns:xsi="[^"]*" xsi:type="Product"/, '');

const files = storedDocument('{"files":["https://example.test/pages.pdf"]}', 'application/json');
const inputs = {
  order: { kind: 'order', original: files },
  sample: { kind: 'jdf', original: storedDocument(text) },
  prefixed: { kind: 'jdf', original: storedDocument(prefixed) },
} as const;
const plans: Readonly<Record<string, Plan>> = {
  booklet: bookletPlan(),
  cards: cardPlan(),
  sections: sectionsPlan(),
  covered: coveredPlan(),
  glued: gluedPlan(),
};
const plant = demoPlant();

/** Every document that leaves for one ticket: the whole in each state, and each step for its device. */
function leaving(name: string, plan: Plan, kind: 'order' | 'jdf', original: StoredDocument): void {
  for (const state of states) {
    const file = ticketFile(plan, state, kind);
    const now = MONDAY + 1200 * 60_000;
    documents[`${name}-${state}.jdf`] = valueIn(
      exportTicket(file, original, { now, version: '0.1.0', plant }),
    );
    for (const step of plan.steps) {
      const device = { now, jmfUrl: 'http://127.0.0.1:7420/jmf', senderId: 'sidelay', plant };
      const sent = `${name}-${state}-${step.id}.jdf`;
      documents[sent] = valueIn(processTicket(file, original, step.id, device));
      forDevices.add(sent);
    }
    if (state === 'running' || state === 'completed') {
      const all = { now, version: '0.1.0', plant, returned: returnedOf(file, original) };
      documents[`${name}-${state}-returned.jdf`] = valueIn(exportTicket(file, original, all));
    }
  }
}

/** What devices gave back for all steps that have ended. */
function returnedOf(file: TicketFile, original: StoredDocument): ReadonlyMap<string, Uint8Array> {
  const device = { now: MONDAY, jmfUrl: 'http://127.0.0.1:7420/jmf', senderId: 'sidelay', plant };
  const before = { ...ticketFile(file.ticket.plan!, 'planned', 'jdf'), entries: file.entries };
  return new Map(
    file.entries.map(({ id, stepId }) => {
      const sent = valueIn(processTicket(before, original, stepId, device));
      const phases = file.phases.filter((phase) => phase.stepId === stepId);
      return [id, new TextEncoder().encode(workedTicket(sent, phases))];
    }),
  );
}

/** The demo's own orders and tickets, read and planned as the server does. */
function demoDocuments(): readonly { file: string; bytes: Uint8Array }[] {
  const folder = (name: string): URL => new URL(`../../demo-data/${name}/`, import.meta.url);
  return ['orders', 'tickets'].flatMap((name) =>
    readdirSync(folder(name)).map((file) => ({
      file,
      bytes: new Uint8Array(readFileSync(new URL(file, folder(name)))),
    })),
  );
}

const documents: Record<string, string> = {};
const forDevices = new Set<string>();
// The sample asks for sixteen pages, which no leaflet has.
for (const [name, plan] of Object.entries({
  leaflet: leafletPlan(),
  creased: creasedPlan(),
  versions: versionsPlan('one form'),
  forms: versionsPlan('two forms'),
})) {
  leaving(name, plan, 'order', inputs.order.original);
}
for (const [planName, plan] of Object.entries(plans)) {
  for (const [inputName, { kind, original }] of Object.entries(inputs)) {
    leaving(`${planName}-${inputName}`, plan, kind, original);
  }
}
for (const { file, bytes } of [...demoDocuments(), { file: 'standard.jdf', bytes: bytesOf(sample) }]) {
  const { plan } = readDocument(bytes, plant);
  const original = { ...storedDocument(''), bytes };
  if (plan === null) throw new Error(`${file} was not planned`);
  leaving(file.replace('.', '-'), plan, file.endsWith('.jdf') ? 'jdf' : 'order', original);
  if (!file.endsWith('.jdf')) continue;
  // The same as a ticket of the newer generation, which states how far the job is in NodeInfo.
  const newer = valueIn(convertDocument(valueIn(parseXml(bytes)), 'xjdf'));
  leaving(`${file.replace('.', '-')}-newer`, plan, 'jdf', storedDocument(writeXml(newer.doc), XJDF));
}
const parsed = new Map<string, XmlDocument>(
  Object.entries(documents).map(([name, document]) => [name, valueIn(parseXml(document))]),
);

describe('tickets that leave', () => {
  it('are valid against the schema in every state, whatever the ticket came as', () => {
    expect(schemaFaults(documents)).toEqual({});
  });

  it('would not pass the schema with a status that it does not know', () => {
    const [name, document] = Object.entries(documents)[0]!;
    const wrong = document.replace(/Status="[A-Za-z]+"/, 'Status="Done"');
    expect(Object.keys(schemaFaults({ [name]: wrong }))).toEqual([name]);
  });

  it('read back as the order they were made from', () => {
    for (const { file, bytes } of demoDocuments().filter((demo) => demo.file.endsWith('.json'))) {
      const before = readDocument(bytes, plant).order!;
      const name = `${file.replace('.', '-')}-planned.jdf`;
      const after = readDocument(new TextEncoder().encode(documents[name]!), plant).order!;
      const size = [after.trimWidthMm, after.trimHeightMm].map((mm) => Math.round(mm * 100) / 100);
      expect({ ...after, trimWidthMm: size[0], trimHeightMm: size[1] }).toMatchObject({
        jobId: before.jobId,
        quantity: before.quantity,
        trimWidthMm: before.trimWidthMm,
        trimHeightMm: before.trimHeightMm,
        pages: before.pages,
        binding: before.binding,
        stock: before.stock,
        inksFront: before.inksFront,
        inksBack: before.inksBack,
      });
    }
  });

  it('leave nothing to find for our own checks, of the structure and beyond', () => {
    const faults = [...parsed].flatMap(([name, document]) =>
      checkDocument(document)
        .problems.filter(
          // A device is sent a step without its log, before it begins: one that has ended is written here only to try every
          // status. In the ticket as a whole each ended step has its run.
          ({ message }) => !forDevices.has(name) || !message.includes('no ProcessRun'),
        )
        .map((problem) => `${name} ${problem.path} ${problem.message}`),
    );
    expect(faults).toEqual([]);
  });

  it('ask for nothing that the plant they were planned for cannot do', () => {
    const beyond = [...parsed]
      .filter(([name]) => /^\d|^paper|^ferry/.test(name))
      .flatMap(([name, document]) =>
        checkProfile(document, plant).map((problem) => `${name} ${problem.path} ${problem.message}`),
      );
    expect(beyond).toEqual([]);
  });

  it('say of each step whether a device has it, and what came back from it', () => {
    const running = Object.entries(documents).filter(([name]) => /-running(-returned)?\.jdf$/.test(name));
    expect(running.length).toBeGreaterThan(20);
    for (const [name, text] of running) {
      const doc = parsed.get(name)!;
      const nodes = [...nodesOf(doc.root)].filter((node) => attributeOf(node, 'Type') !== 'Product');
      const audits = [...descendants(doc.root)].map(({ local }) => local);
      const count = (wanted: string): number => audits.filter((one) => one === wanted).length;
      // All steps have left; the last is still out, as the kit's file has it.
      expect([name, count('Spawned') - count('Merged')]).toEqual([name, 1]);
      expect(count('Spawned')).toBe(nodes.length);
      expect(nodes.map((node) => attributeOf(node, 'Status'))).toEqual([
        ...nodes.slice(1).map(() => 'Completed'),
        'Spawned',
      ]);
      const notes = text.split(DEVICE_NOTE).length - 1;
      expect([name, notes]).toEqual([name, name.includes('returned') ? nodes.length - 1 : 0]);
      // Whoever tells of a run, it is told once.
      expect(count('ProcessRun')).toBe(nodes.length - 1);
    }
  });

  // Source: the links of each process that the schema's Constraint elements ask for; prepress and printing tickets lack
  // the RunList of the press, as the standard's own samples do.
  it('give every process what it cannot do without', () => {
    const needed: Readonly<Record<string, readonly string[]>> = {
      Stripping: ['StrippingParams', 'Assembly'],
      Imposition: ['Layout', 'RunList'],
      Interpreting: ['InterpretingParams'],
      Screening: ['ScreeningParams'],
      ImageSetting: ['Media', 'RunList', 'ExposedMedia'],
      ConventionalPrinting: ['ConventionalPrintingParams', 'ExposedMedia', 'Component'],
      Cutting: ['CuttingParams', 'Component'],
      Folding: ['FoldingParams', 'Component'],
      Collecting: ['Component'],
      Stitching: ['StitchingParams', 'Component'],
      Trimming: ['TrimmingParams', 'Component'],
    };
    const lacking = [...parsed].flatMap(([name, document]) => {
      const node = readProcessNode(document);
      if (!node.ok) return [name];
      const linked = [...node.value.inputs, ...node.value.outputs].map((resource) => resource.name);
      const wanted = node.value.types.flatMap((type) => needed[type] ?? []);
      return wanted.filter((resource) => !linked.includes(resource)).map((resource) => `${name} ${resource}`);
    });
    expect(lacking).toEqual([]);
  });

  it('name every plate of the sample ticket once for its press', () => {
    const names = [...parsed.keys()].filter((name) => /^standard-jdf-planned-print/.test(name));
    const leaves = names.flatMap((name) => {
      const node = valueIn(readProcessNode(parsed.get(name)!));
      return node.inputs.find((input) => input.name === 'ExposedMedia')?.leaves ?? [];
    });
    const { plan } = readDocument(bytesOf(sample), plant);
    expect(leaves).toHaveLength(plan!.totals.plates);
    expect(new Set(leaves.map((leaf) => JSON.stringify(leaf))).size).toBe(plan!.totals.plates);
  });
});

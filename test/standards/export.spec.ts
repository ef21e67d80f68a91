/** What leaves here is judged by the standard's own schema (JDF.xsd, with xmllint) and by the ticket checks. */
import type { Plan } from '#libs/craft';
import { checkTicket, parseXml, type XmlDocument } from '#libs/jdf';
import { exportTicket, processTicket } from '../../libs/flow/src/process/index.js';
import { bookletPlan, cardPlan, sectionsPlan } from '../kit/booklet-plan.js';
import { type FileState, MONDAY, storedDocument, ticketFile } from '../kit/ticket-files.js';
import { samples, textOfSample } from './samples.js';
import { schemaFaults } from './xmllint.js';

const states: readonly FileState[] = ['planned', 'running', 'completed', 'aborted'];
const sample = samples().find(({ path }) => path.endsWith('lifecycle/ProductIntentNode.jdf'))!;
const text = textOfSample(sample);
/** The same ticket written with a prefix for the standard's namespace, and without a binding for xsi. */
const prefixed = text
  .replaceAll(/<(\/?)([A-Z])/g, '<$1j:$2')
  .replace('xmlns=', 'xmlns:j=')
  .replace(/\s+xmlns:xsi="[^"]*" xsi:type="Product"/, '');

const inputs = {
  order: {
    kind: 'order',
    original: storedDocument('{"files":["https://example.test/pages.pdf"]}', 'application/json'),
  },
  sample: { kind: 'jdf', original: storedDocument(text) },
  prefixed: { kind: 'jdf', original: storedDocument(prefixed) },
} as const;
const plans: Readonly<Record<string, Plan>> = {
  booklet: bookletPlan(),
  cards: cardPlan(),
  sections: sectionsPlan(),
};

function value<T>(result: { ok: true; value: T } | { ok: false; problems: readonly unknown[] }): T {
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
}

const documents: Record<string, string> = {};
for (const [planName, plan] of Object.entries(plans)) {
  for (const [inputName, { kind, original }] of Object.entries(inputs)) {
    for (const state of states) {
      const file = ticketFile(plan, state, kind);
      const options = { now: MONDAY + 600 * 60_000, version: '0.1.0' };
      documents[`${planName}-${inputName}-${state}.jdf`] = value(exportTicket(file, original, options));
      for (const step of plan.steps) {
        const device = { now: options.now, jmfUrl: 'http://127.0.0.1:7420/jmf', senderId: 'sidelay' };
        documents[`${planName}-${inputName}-${state}-${step.id}.jdf`] = value(
          processTicket(file, original, step.id, device),
        );
      }
    }
  }
}
const parsed = new Map<string, XmlDocument>(
  Object.entries(documents).map(([name, document]) => [name, value(parseXml(document))]),
);

describe('tickets that leave', () => {
  it('are valid against the schema in every state, whatever the ticket came as', () => {
    expect(schemaFaults(documents)).toEqual({});
  });

  it('pass our own checks of links, references and partitions', () => {
    const faults = [...parsed].flatMap(([name, document]) =>
      checkTicket(document).map((problem) => `${name} ${problem.path} ${problem.message}`),
    );
    expect(faults).toEqual([]);
  });
});
